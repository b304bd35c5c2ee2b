package growingon.nursery.number;

/** What is too small to count. */
public final class Negligible {
  private static final double AMOUNT = 1e-9;

  private Negligible() {}

  /**
   * Whether an amount is nothing, or only what rounding left of sums and of dividing: a billionth
   * of a plant, a square metre, an hour or a unit of money, or less; a value that is no number is
   * nothing too.
   */
  public static boolean is(double amount) {
    return !(amount > AMOUNT);
  }
}
