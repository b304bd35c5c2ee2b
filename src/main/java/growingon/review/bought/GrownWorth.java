package growingon.review.bought;

/**
 * What a plant of a lot would fetch at list price if it were sold when the plan sold it.
 *
 * @param asPlanned with trunks as planned, plan currency
 * @param asMeasured with trunks as measured
 */
record GrownWorth(double asPlanned, double asMeasured) {
  /** Nothing was to be sold, so that growth is worth nothing. */
  static final GrownWorth NONE = new GrownWorth(0, 0);

  /** What growth makes a plant worth more. */
  double more() {
    return asMeasured - asPlanned;
  }
}
