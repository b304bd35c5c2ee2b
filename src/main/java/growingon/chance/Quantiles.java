package growingon.chance;

import java.util.Arrays;
import java.util.List;

/**
 * P10, P50, P90 and mean of a sample, each with its sampling error. A quantile's error is half the
 * distance between the order statistics one standard deviation of the binomial count below and
 * above it; the mean's is its standard error. All eight are in the unit of the sample.
 *
 * @param p10 what a tenth of the sample stays below
 * @param p50 its middle
 * @param p90 what nine tenths of it stay below
 * @param mean its mean
 * @param p10Error half the distance between the quantiles at p − √(p (1 − p)/n) and p + the same
 * @param p50Error the same about the middle
 * @param p90Error the same about p90
 * @param meanError deviation / √n; 0 of a sample of one
 */
public record Quantiles(
    double p10,
    double p50,
    double p90,
    double mean,
    double p10Error,
    double p50Error,
    double p90Error,
    double meanError) {
  /**
   * Of a sample, which stays as it is.
   *
   * @param sample [draw], in any order, at least one number
   * @throws ArrayIndexOutOfBoundsException of an empty sample
   */
  public static Quantiles of(double[] sample) {
    double[] sorted = sample.clone();
    Arrays.sort(sorted);
    double mean = Arrays.stream(sample).sum() / sample.length;
    double squares = Arrays.stream(sample).map(each -> (each - mean) * (each - mean)).sum();
    double deviation = sample.length < 2 ? 0 : Math.sqrt(squares / (sample.length - 1));
    return new Quantiles(
        at(sorted, 0.1),
        at(sorted, 0.5),
        at(sorted, 0.9),
        mean,
        error(sorted, 0.1),
        error(sorted, 0.5),
        error(sorted, 0.9),
        deviation / Math.sqrt(sample.length));
  }

  /** Of each of several samples: [sample][draw], none of them empty. */
  static List<Quantiles> each(double[][] samples) {
    return Arrays.stream(samples).map(Quantiles::of).toList();
  }

  /**
   * Quantile by linear interpolation between order statistics at (n − 1) p (Hyndman-Fan type 7).
   */
  private static double at(double[] sorted, double share) {
    double place = (sorted.length - 1) * Math.max(0, Math.min(1, share));
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  private static double error(double[] sorted, double share) {
    double step = Math.sqrt(share * (1 - share) / sorted.length);
    return (at(sorted, share + step) - at(sorted, share - step)) / 2;
  }
}
