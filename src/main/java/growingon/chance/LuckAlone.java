package growingon.chance;

import java.util.List;

/**
 * What the draws say with growth, losses, prices and demand taken as the plan has them: the spread
 * that no measuring can narrow.
 *
 * @param draws number of draws, on the luck of the first of the plan's own
 * @param sales money by season
 * @param cash cash at the end of each month
 * @param standing plants alive at the end of each season
 * @param gains gain of each bought lot where it is judged
 */
public record LuckAlone(
    int draws,
    List<Quantiles> sales,
    List<Quantiles> cash,
    List<Quantiles> standing,
    List<Quantiles> gains) {
  static LuckAlone of(Samples samples, int draws) {
    return new LuckAlone(
        draws,
        Quantiles.each(samples.sales),
        Quantiles.each(samples.cash),
        Quantiles.each(samples.standing),
        Quantiles.each(samples.gains));
  }

  /**
   * Share of the variance that is not knowing: 1 − (width with luck alone/width)², nil if negative.
   *
   * @param both of draws with luck and not knowing
   * @param luck of draws with luck alone
   */
  public static double shareNotKnown(Quantiles both, Quantiles luck) {
    double width = both.p90() - both.p10();
    double alone = (luck.p90() - luck.p10()) / width;
    return width <= 0 ? 0 : Math.max(0, 1 - alone * alone);
  }
}
