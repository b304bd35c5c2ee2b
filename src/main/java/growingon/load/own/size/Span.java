package growingon.load.own.size;

/**
 * A size as typed, one number or a class.
 *
 * @param from the number or the lower one
 * @param to the higher one, the same where there is one number
 * @param pointed whether it was written with decimals
 */
public record Span(double from, double to, boolean pointed) {
  private static final double BY_TWO_FROM = 4;
  private static final double BY_TWO_TO = 20;
  private static final double BY_FIVE_TO = 50;

  public Span {
    if (!(from <= to)) {
      throw new IllegalArgumentException("a class rises, but found " + from + " to " + to);
    }
  }

  public static Span of(double from, double to) {
    return new Span(from, to, false);
  }

  public Span times(double factor) {
    return new Span(rounded(from * factor), rounded(to * factor), pointed);
  }

  /** 2.2 m are 220 cm, and not a billionth more. */
  private static double rounded(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  public boolean isClass() {
    return to > from;
  }

  /** Girth classes of the trade, cm: by 2 to 20, by 5 to 50, then by 10 (BS 3936-1). */
  public boolean isGirthClass() {
    double step = from < BY_TWO_TO ? 2 : from < BY_FIVE_TO ? 5 : 10;
    return isClass() && from >= BY_TWO_FROM && from % step == 0 && to == from + step;
  }

  public double middle() {
    return (from + to) / 2;
  }
}
