package growingon.growth;

import growingon.nursery.species.Curve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The six growth laws as families of curves, with where to look for their parameters. */
enum Law {
  STEADY(1, p -> new Curve.Steady(p[0], Double.POSITIVE_INFINITY)),
  LEVELLING(2, p -> new Curve.Levelling(p[0], p[1])),
  LOGISTIC(2, p -> new Curve.Logistic(p[0], p[1])),
  GOMPERTZ(2, p -> new Curve.Gompertz(p[0], p[1])),
  RICHARDS(3, p -> new Curve.Richards(p[0], p[1], p[2])),
  THETA_LOGISTIC(3, p -> new Curve.ThetaLogistic(p[0], p[1], p[2]));

  /** Final sizes to start from, over the thickest trunk seen (own choice). */
  private static final double[] SIZES = {1.05, 1.5, 3};

  /** Growth in the longest time to start from: rates in equal ratios (own choice). */
  private static final double LEAST_RATE = 0.05;

  private static final double MOST_RATE = 20;
  private static final int RATES = 13;

  /** Exponents p and q to start from (own choice). */
  private static final double[] SHAPES = {0.5, 1, 2};

  private final int parameters;
  private final Function<double[], Curve> curve;

  Law(int parameters, Function<double[], Curve> curve) {
    this.parameters = parameters;
    this.curve = curve;
  }

  /** How many parameters it has. */
  int parameters() {
    return parameters;
  }

  /** The curve of some parameters: final size D, rate, exponent, as far as the law has them. */
  Curve of(double[] values) {
    return curve.apply(values);
  }

  /** The final size among some parameters; empty for a law without one. */
  OptionalDouble finalMm(double[] values) {
    return this == STEADY ? OptionalDouble.empty() : OptionalDouble.of(values[0]);
  }

  /** The law that a curve is of. */
  static Law of(Curve curve) {
    for (Law law : values()) {
      double[] any = new double[law.parameters];
      Arrays.fill(any, 1);
      if (law.of(any).getClass() == curve.getClass()) {
        return law;
      }
    }
    throw new IllegalArgumentException("no law for the curve " + curve);
  }

  /**
   * Parameters to start from, by the trunks seen and not by what was assumed before.
   *
   * @param thickestMm thickest trunk seen, mm
   * @param longest longest time between two trunks, growth years
   */
  List<double[]> starts(double thickestMm, double longest) {
    List<double[]> starts = new ArrayList<>();
    for (int step = 0; step < RATES; step++) {
      double ratio = Math.pow(MOST_RATE / LEAST_RATE, (double) step / (RATES - 1));
      double rate = LEAST_RATE * ratio / longest;
      if (this == STEADY) {
        starts.add(new double[] {rate * thickestMm});
        continue;
      }
      for (double size : SIZES) {
        addStarts(size * thickestMm, rate, starts);
      }
    }
    return starts;
  }

  private void addStarts(double finalMm, double rate, List<double[]> starts) {
    if (parameters == 2) {
      starts.add(new double[] {finalMm, rate});
      return;
    }
    for (double shape : SHAPES) {
      starts.add(new double[] {finalMm, rate, shape});
    }
  }
}
