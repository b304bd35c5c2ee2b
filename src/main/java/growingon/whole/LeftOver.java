package growingon.whole;

import growingon.nursery.market.Quality;

/**
 * What lots were given too many so far, in whole plants less those expected: what the next lots
 * make good for.
 */
final class LeftOver {
  private static final double EVERY_SEASON = 20;
  private static final double URGENT_SEASON = 400;
  private static final double MAY_BE_OFF = 0.05;

  private final double[][] sold;
  private final double[][] ofQuality;
  private final double[] gone;
  private final boolean[][] strict;
  private int urgent = -1;

  /**
   * Nothing was given yet.
   *
   * @param sold [season][row] plants expected to be sold up to a season's end, less those due
   * @param strict [season][row] whether what is due to a row leaves no room for a plant more or
   *     less
   * @param months months of the plan
   */
  LeftOver(double[][] sold, boolean[][] strict, int months) {
    this.sold = sold;
    this.strict = strict;
    this.ofQuality = new double[sold.length][Quality.values().length];
    this.gone = new double[months + 1];
  }

  /** Number of seasons. */
  int seasons() {
    return sold.length;
  }

  /** Plants sold to each row up to a season's end over what is due. */
  double[] sold(int season) {
    return sold[season];
  }

  /** Plants sold of each quality up to a season's end over what is expected. */
  double[] ofQuality(int season) {
    return ofQuality[season];
  }

  /** Plants gone up to a month's end, −1 for that before the plan. */
  double gone(int month) {
    return gone[month + 1];
  }

  void addGone(int month, double plants) {
    gone[month + 1] += plants;
  }

  /** What a plant too many or too few counts at a season's end. */
  double weight(int season) {
    return season == urgent ? URGENT_SEASON : EVERY_SEASON;
  }

  /** What a plant too many or too few of a row counts at a season's end. */
  double weight(int season, int row) {
    return strict[season][row] ? weight(season) : MAY_BE_OFF * weight(season);
  }

  /** Whether rows have what is due to them up to the end of a season. */
  boolean isEven(int[] rows, int season) {
    for (int row : rows) {
      if (Math.abs(sold[season][row]) > 0.5) {
        return false;
      }
    }
    return true;
  }

  /** How many plants rows have too many or too few, at all season ends together. */
  double uneven(int[] rows) {
    double sum = 0;
    for (int season = 0; season < sold.length; season++) {
      for (int row : rows) {
        sum += (strict[season][row] ? 1 : MAY_BE_OFF) * Math.abs(sold[season][row]);
      }
    }
    return sum;
  }

  /** The end of this season counts for more than those of others. */
  void hurry(int season) {
    urgent = season;
  }
}
