package growingon.buying;

import java.util.Arrays;

/**
 * What differences come to over draws.
 *
 * @param mean their mean
 * @param p10 the value that 10 of 100 stay below
 * @param p50 the middle
 * @param p90 the value that 90 of 100 stay below
 * @param shareAbove share of the draws in which there is a gain, 0 to 1
 * @param error standard error of the mean
 */
public record Spread(
    double mean, double p10, double p50, double p90, double shareAbove, double error) {
  private static final double ROUNDING = 1e-9;

  static Spread of(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    long above = Arrays.stream(values).filter(each -> each >= -ROUNDING).count();
    return new Spread(
        Sample.mean(values),
        at(sorted, 0.1),
        at(sorted, 0.5),
        at(sorted, 0.9),
        (double) above / values.length,
        Sample.error(values));
  }

  /** Between order statistics at (n − 1) p (Hyndman-Fan type 7), as all quantiles of a plan. */
  private static double at(double[] sorted, double share) {
    double place = (sorted.length - 1) * share;
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
