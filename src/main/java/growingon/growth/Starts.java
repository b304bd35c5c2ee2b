package growingon.growth;

import growingon.nursery.species.Curve;
import growingon.nursery.species.Curve.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Where to look for the parameters of a law: a grid of values for each of them, by the trunks seen
 * and not by what was assumed before. Values stand in the order of the law's parameters.
 */
final class Starts {
  /** Final sizes to start from, over the thickest trunk seen (own choice). */
  private static final double[] SIZES = {1.05, 1.5, 3};

  /** Growth in the longest time to start from: rates in equal ratios (own choice). */
  private static final double LEAST_RATE = 0.05;

  private static final double MOST_RATE = 20;
  private static final int RATES = 13;

  /** Exponents p and q to start from (own choice). */
  private static final double[] SHAPES = {0.5, 1, 2};

  private Starts() {}

  /**
   * Parameters to start from.
   *
   * @param thickestMm thickest trunk seen, mm
   * @param longest longest time between two trunks, growth years
   */
  static List<double[]> of(Curve.Law law, double thickestMm, double longest) {
    List<double[]> starts = new ArrayList<>();
    for (int step = 0; step < RATES; step++) {
      double ratio = Math.pow(MOST_RATE / LEAST_RATE, (double) step / (RATES - 1));
      double rate = LEAST_RATE * ratio / longest;
      List<double[]> begun = List.of(new double[0]);
      for (Parameter parameter : law.parameters()) {
        begun = withEach(begun, values(parameter, thickestMm, rate));
      }
      starts.addAll(begun);
    }
    return starts;
  }

  private static double[] values(Parameter parameter, double thickestMm, double rate) {
    if (parameter.isShape()) {
      return SHAPES;
    }
    if (parameter.isRate()) {
      return new double[] {parameter == Parameter.STEADY_MM ? rate * thickestMm : rate};
    }
    double[] sizes = SIZES.clone();
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] *= thickestMm;
    }
    return sizes;
  }

  /** Every beginning with every one of some values behind it. */
  private static List<double[]> withEach(List<double[]> beginnings, double[] values) {
    List<double[]> longer = new ArrayList<>();
    for (double[] beginning : beginnings) {
      for (double value : values) {
        double[] with = Arrays.copyOf(beginning, beginning.length + 1);
        with[beginning.length] = value;
        longer.add(with);
      }
    }
    return longer;
  }

  /** The curve of values in the order of a law's parameters. */
  static Curve curve(Curve.Law law, double[] values) {
    Map<Parameter, Double> named = new EnumMap<>(Parameter.class);
    for (int i = 0; i < values.length; i++) {
      named.put(law.parameters().get(i), values[i]);
    }
    return law.of(named);
  }
}
