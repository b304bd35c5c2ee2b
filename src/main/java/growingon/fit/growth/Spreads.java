package growingon.fit.growth;

import growingon.fit.evidence.Evidence;
import growingon.fit.loss.Losses;
import growingon.fit.past.Measured;
import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/** Spreads between plants, seasons and losses, as they are learnt from what differs. */
final class Spreads {
  /** Years' worth of records that an assumed spread counts as (own choice). */
  private static final double SURE = 10;

  private static final double YEARS_SURE = 4;
  private static final int YEARS = 41;
  private static final double LEAST_YEARS = 0.2;
  private static final double MOST_YEARS = 5;

  private Spreads() {}

  /**
   * A spread as learnt.
   *
   * @param old as assumed
   * @param spread the new one
   * @param p10 one in ten it is less
   * @param p90 one in ten it is more
   * @param weight weight of the records, 0 to 1
   * @param freedom ν, how many plants or seasons it counts as
   */
  record Learnt(double old, double spread, double p10, double p90, double weight, double freedom) {}

  /** What was assumed and what was seen put together, each by its degrees of freedom. */
  static Learnt together(double seenSquare, double freedom, double assumed) {
    double all = SURE + freedom;
    double square = (SURE * assumed * assumed + freedom * Math.max(0, seenSquare)) / all;
    ChiSquaredDistribution range = new ChiSquaredDistribution(all);
    return new Learnt(
        assumed,
        Math.sqrt(square),
        Math.sqrt(all * square / range.inverseCumulativeProbability(0.9)),
        Math.sqrt(all * square / range.inverseCumulativeProbability(0.1)),
        freedom / all,
        freedom);
  }

  /**
   * Spread between plants by what each grew from its first reading to its last.
   *
   * @param curves the law they grew by in each condition
   * @param growths one a plant
   */
  static Learnt vigour(
      List<Evidence.PlantGrowth> growths, Map<String, Curve> curves, double assumed) {
    double[] speeds = new double[growths.size()];
    double errors = 0;
    for (int i = 0; i < speeds.length; i++) {
      Evidence.PlantGrowth each = growths.get(i);
      Flow flow = Flow.of(curves.get(each.condition()));
      double slope = slope(flow, each.fromMm(), each.years());
      speeds[i] = speed(flow, each, slope);
      errors += 2 * Measured.READING_MM * Measured.READING_MM / (slope * slope);
    }
    return vigour(speeds, errors / speeds.length, assumed);
  }

  private static Learnt vigour(double[] speeds, double error, double assumed) {
    double mean = mean(speeds, each -> each);
    double variance = mean(speeds, each -> (each - mean) * (each - mean));
    variance *= speeds.length / (speeds.length - 1.0);
    double square = (variance - error) / (mean * mean);
    double ofError = error / (mean * mean);
    double part = assumed * assumed / (assumed * assumed + ofError);
    return together(square, (speeds.length - 1) * part * part, assumed);
  }

  private static double mean(double[] values, DoubleUnaryOperator of) {
    double sum = 0;
    for (double each : values) {
      sum += of.applyAsDouble(each);
    }
    return sum / values.length;
  }

  /** Growth over the whole time by the logarithm of the vigour, mm. */
  private static double slope(Flow flow, double fromMm, double years) {
    double step = 1e-4;
    double more = flow.advance(fromMm, years * (1 + step));
    double less = flow.advance(fromMm, years * (1 - step));
    return Math.max(1e-9, (more - less) / (2 * step));
  }

  /** How fast a plant grew against its law, 1 as fast. */
  private static double speed(Flow flow, Evidence.PlantGrowth each, double slope) {
    if (each.toMm() <= each.fromMm()) {
      return (each.toMm() - each.fromMm()) / slope;
    }
    double low = 0;
    double high = 1;
    while (flow.advance(each.fromMm(), high * each.years()) < each.toMm()) {
      high *= 2;
      if (high > 1 << 10) {
        return 1 + (each.toMm() - flow.advance(each.fromMm(), each.years())) / slope;
      }
    }
    for (int i = 0; i < 200 && high - low > 1e-13 * high; i++) {
      double middle = (low + high) / 2;
      if (flow.advance(each.fromMm(), middle * each.years()) < each.toMm()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Spread of the later loss between seasons. */
  static Learnt losses(List<Losses.Unit> seasons, double assumed) {
    double exposure = 0;
    double deaths = 0;
    for (Losses.Unit season : seasons) {
      exposure += season.exposure();
      deaths += season.deaths();
    }
    double mean = deaths / exposure;
    double[] ratios =
        seasons.stream().mapToDouble(each -> each.deaths() / each.exposure()).toArray();
    double middle = mean(ratios, each -> each);
    double variance =
        mean(ratios, each -> (each - middle) * (each - middle))
            * ratios.length
            / (ratios.length - 1.0);
    double byChance =
        seasons.stream().mapToDouble(each -> (1 - mean) / (each.exposure() * mean)).sum()
            / seasons.size();
    double part = assumed * assumed / (assumed * assumed + byChance);
    double freedom = (ratios.length - 1) * part * part;
    return together(variance / (mean * mean) - byChance, freedom, assumed);
  }

  /**
   * One factor on all spreads between seasons.
   *
   * @param p10 one in ten it is less
   * @param factor the median
   * @param p90 one in ten it is more
   */
  record Years(double p10, double factor, double p90) {}

  /** The factor by which the seasons differ more than assumed. */
  static Years years(SpeedFit.Fitted fitted) {
    double[] logs = new double[YEARS];
    double[] density = new double[YEARS];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < YEARS; i++) {
      double low = Math.log(LEAST_YEARS);
      logs[i] = low + (Math.log(MOST_YEARS) - low) * i / (YEARS - 1);
      double factor = Math.exp(logs[i]);
      density[i] =
          fitted.law().logDensity(fitted.logs(), factor)
              - YEARS_SURE * logs[i]
              - YEARS_SURE / 2 / (factor * factor);
      most = Math.max(most, density[i]);
    }
    double[] sums = new double[YEARS];
    for (int i = 0; i < YEARS; i++) {
      sums[i] = (i == 0 ? 0 : sums[i - 1]) + Math.exp(density[i] - most);
    }
    return new Years(
        quantile(logs, sums, 0.1), quantile(logs, sums, 0.5), quantile(logs, sums, 0.9));
  }

  /** Between points straight in the logarithm. */
  private static double quantile(double[] logs, double[] sums, double share) {
    double wanted = share * sums[sums.length - 1];
    for (int i = 0; i < sums.length; i++) {
      if (sums[i] >= wanted) {
        double before = i == 0 ? 0 : sums[i - 1];
        double part = (wanted - before) / (sums[i] - before);
        double from = i == 0 ? logs[0] : logs[i - 1];
        return Math.exp(from + part * (logs[i] - from));
      }
    }
    return Math.exp(logs[logs.length - 1]);
  }
}
