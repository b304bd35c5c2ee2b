package growingon.buying.question;

import growingon.chance.Quantiles;
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

  /** Of one difference a draw. */
  public static Spread of(double[] values) {
    Quantiles quantiles = Quantiles.of(values);
    long above = Arrays.stream(values).filter(each -> each >= -ROUNDING).count();
    return new Spread(
        Sample.mean(values),
        quantiles.p10(),
        quantiles.p50(),
        quantiles.p90(),
        (double) above / values.length,
        Sample.error(values));
  }
}
