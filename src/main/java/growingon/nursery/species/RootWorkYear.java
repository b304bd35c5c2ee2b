package growingon.nursery.species;

/** How long ago the roots of a plant were cut, as far as its growth is checked by it. */
public enum RootWorkYear {
  /** The month of the work and the 11 after. */
  FIRST,
  /** The 12 months after that. */
  SECOND,
  /** Later, before it, or never. */
  NONE;

  private static final int MONTHS = 12;

  /** So many whole months after root work; negative before it. */
  public static RootWorkYear after(int months) {
    if (months < 0 || months >= 2 * MONTHS) {
      return NONE;
    }
    return months < MONTHS ? FIRST : SECOND;
  }

  /** The first number of months after a number of months in which it may be another year. */
  public static int nextAfter(int months) {
    if (months < 0) {
      return 0;
    }
    return months < MONTHS ? MONTHS : months < 2 * MONTHS ? 2 * MONTHS : Integer.MAX_VALUE / 2;
  }
}
