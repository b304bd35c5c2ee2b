package growingon.fit.growth;

import growingon.fit.evidence.Interval;
import growingon.fit.growth.Expectations.Slopes;
import growingon.nursery.Settings;
import growingon.nursery.species.Species;
import java.util.List;
import java.util.Map;

/**
 * Errors of what was measured against what is expected: those of the measurements, which intervals
 * with a measurement in common share; the luck of a lot and its plants; and that of seasons, which
 * is told apart from the rest.
 */
record Errors(Map<String, Species> species, Settings settings) {

  private static double logVariance(double spread) {
    return Math.log1p(spread * spread);
  }

  /** ω of a species, the standard deviation of the logarithm of a season's growth. */
  double season(String name) {
    return Math.sqrt(logVariance(species.get(name).yearSpread()));
  }

  /** Covariance of two intervals but for seasons, mm². */
  double covariance(Interval one, Interval other, int i, int j, Slopes slopes) {
    double gi = slopes.byFirst()[i];
    double gj = slopes.byFirst()[j];
    double measured =
        one.second().covariance(other.second())
            - gj * one.second().covariance(other.first())
            - gi * one.first().covariance(other.second())
            + gi * gj * one.first().covariance(other.first());
    return measured + slopes.all(i) * slopes.all(j) * luck(one, other);
  }

  /** What two intervals of one lot share by its luck and that of its plants. */
  private double luck(Interval one, Interval other) {
    if (!one.root().equals(other.root())) {
      return 0;
    }
    Species grown = species.get(one.species());
    return logVariance(grown.lotSpread().orElse(settings.lotSpread()))
        + logVariance(grown.vigourSpread()) / Math.max(one.plants(), other.plants());
  }

  /** What two intervals share by the luck of seasons: Σ over seasons of their clocks. */
  double seasons(Interval one, Interval other, int i, int j, Slopes slopes) {
    double shared = 0;
    for (Map.Entry<Integer, Double> each : List.copyOf(one.bySeason().entrySet())) {
      shared +=
          each.getValue()
              / one.clock()
              * other.bySeason().getOrDefault(each.getKey(), 0.0)
              / other.clock();
    }
    double alike = one.species().equals(other.species()) ? 1 : 0.5;
    return slopes.all(i)
        * slopes.all(j)
        * alike
        * season(one.species())
        * season(other.species())
        * shared;
  }
}
