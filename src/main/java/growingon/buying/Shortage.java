package growingon.buying;

/**
 * What is short of one thing in one month.
 *
 * @param what room, hours or cash
 * @param place index of the place in the order of the table; for hours the number of places, for
 *     cash one more
 * @param month index of the month
 * @param amount square metres, hours or money over the limit, greater than 0
 * @param limit what there may be of it
 */
public record Shortage(Lack.Kind what, int place, int month, double amount, double limit) {
  private static final double ROUNDING = 1e-9;

  /** A scale for shortages of limits that are nil. */
  private static final double ONE = 1;

  /** How far it is over its limit, as a share of that; 0 for what is only rounding. */
  public double share() {
    return amount > ROUNDING ? amount / Math.max(ONE, Math.abs(limit)) : 0;
  }
}
