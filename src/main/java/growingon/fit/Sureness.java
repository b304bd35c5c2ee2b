package growingon.fit;

/**
 * How sure a value is, in the planner's measure: p means as sure as 10 p/(1 − p) plants of one's
 * own would make it, and 1 that it is taken as known.
 */
final class Sureness {
  private static final double PLANTS = 10;

  private Sureness() {}

  /** How many plants a sureness is worth: 10 p/(1 − p). */
  static double plants(double sure) {
    return PLANTS * sure / (1 - sure);
  }

  /** The sureness of so many plants: n/(n + 10). */
  static double ofPlants(double plants) {
    return plants / (plants + PLANTS);
  }

  /**
   * Standard deviation of the logarithm of a growth speed that is so sure: ½ √((1 − p)/p), which is
   * a quarter at 80 % (own choice: √(2.5/n) of the plants it is worth).
   */
  static double deviation(double sure) {
    return Math.sqrt((1 - sure) / sure) / 2;
  }

  /** The inverse of {@link #deviation}, by its square: 1/(1 + 4 C). */
  static double ofVariance(double variance) {
    return 1 / (1 + 4 * variance);
  }
}
