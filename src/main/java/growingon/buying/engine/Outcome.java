package growingon.buying.engine;

/**
 * What a candidate comes to in one run; arrays are read, never changed.
 *
 * @param value present value, what is unsold at the end counted in as the plan says, less {@code
 *     extra}
 * @param sales present value of the sales
 * @param space square metres needed, [place in the order of the table][month]
 * @param hours hours needed by month
 * @param cash cash at the end of each month
 * @param extra present value of what room and hours over what there is cost
 */
public record Outcome(
    double value, double sales, double[][] space, double[] hours, double[] cash, double extra) {
  /** Lowest cash at the end of a month. */
  public double lowestCash() {
    return cash[lowestMonth()];
  }

  /** The first month in which cash is lowest. */
  public int lowestMonth() {
    int lowest = 0;
    for (int month = 1; month < cash.length; month++) {
      lowest = cash[month] < cash[lowest] ? month : lowest;
    }
    return lowest;
  }
}
