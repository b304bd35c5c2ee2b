package growingon.growth;

import growingon.nursery.species.Curve;
import growingon.nursery.species.Curve.Parameter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/**
 * A growth law fitted to trunks that were measured twice, by weighted least squares.
 *
 * @param curve the law with its parameters
 * @param finalMm its final size, mm; empty for a law without one
 * @param squares sum of ((seen − law)/deviation)²
 * @param aicc Akaike's criterion with the correction for few values: n ln s² + 2 Σ ln(deviation) +
 *     n + 2k + 2k(k + 1)/(n − k − 1), s² the mean of the squares, k the parameters and s²; the
 *     smaller the better (Hurvich and Tsai, Biometrika 76, 1989, from memory); infinite where there
 *     are too few values for it
 */
public record CurveFit(Curve curve, OptionalDouble finalMm, double squares, double aicc) {
  /** So many starts of least squares are followed to their minimum. */
  private static final int FOLLOWED = 3;

  /** Logarithms of parameters beyond this are no sizes, rates or exponents of a tree. */
  private static final double FURTHEST = 30;

  /**
   * The best fit of every law, the best first by its criterion.
   *
   * @param growths at least one
   */
  public static List<CurveFit> ofEveryLaw(List<TwoTrunks> growths) {
    return Arrays.stream(Curve.Law.values())
        .map(law -> of(law, growths))
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(CurveFit::aicc))
        .toList();
  }

  /** The best fit of a law; empty where none of its starts leads to a minimum. */
  static Optional<CurveFit> of(Curve.Law law, List<TwoTrunks> growths) {
    LeastSquares problem = problem(law, growths);
    return starts(law, growths, problem).stream()
        .map(start -> problem.from(start, CurveFit::within))
        .flatMap(Optional::stream)
        .min(Comparator.comparingDouble(LeastSquares.Result::squares))
        .map(best -> of(law, growths, best));
  }

  private static CurveFit of(Curve.Law law, List<TwoTrunks> growths, LeastSquares.Result best) {
    double logs = growths.stream().mapToDouble(each -> Math.log(each.deviationMm())).sum();
    Curve curve = Starts.curve(law, exp(best.parameters()));
    return new CurveFit(
        curve,
        finalMm(curve),
        best.squares(),
        aicc(growths.size(), best.squares(), logs, law.parameters().size() + 1));
  }

  private static OptionalDouble finalMm(Curve curve) {
    Double size = curve.values().get(Parameter.FINAL_MM);
    return size == null ? OptionalDouble.empty() : OptionalDouble.of(size);
  }

  /** The law held against the growths, its parameters as logarithms. */
  static LeastSquares problem(Curve.Law law, List<TwoTrunks> growths) {
    return new LeastSquares(
        logs -> said(Starts.curve(law, exp(logs)), growths),
        growths.stream().mapToDouble(TwoTrunks::toMm).toArray(),
        growths.stream().mapToDouble(each -> 1 / each.deviationMm()).toArray());
  }

  private static double[] said(Curve curve, List<TwoTrunks> growths) {
    Flow flow = Flow.of(curve);
    return growths.stream()
        .mapToDouble(each -> flow.advance(each.fromMm(), each.years()))
        .toArray();
  }

  /** The starts of least squares, as logarithms. */
  static List<double[]> starts(Curve.Law law, List<TwoTrunks> growths, LeastSquares problem) {
    double thickest =
        growths.stream().mapToDouble(each -> Math.max(each.fromMm(), each.toMm())).max().orElse(1);
    double longest = growths.stream().mapToDouble(TwoTrunks::years).max().orElse(1);
    return Starts.of(law, thickest, longest).stream()
        .map(CurveFit::log)
        .sorted(Comparator.comparingDouble(problem::squares))
        .limit(FOLLOWED)
        .toList();
  }

  /**
   * Akaike's criterion with the correction for few values.
   *
   * @param values n
   * @param squares weighted sum of squares
   * @param logDeviations sum of the logarithms of the deviations that the weights come from
   * @param parameters k, the parameters of the law and s²
   */
  static double aicc(int values, double squares, double logDeviations, int parameters) {
    int left = values - parameters - 1;
    if (left <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    return values * Math.log(squares / values)
        + 2 * logDeviations
        + values
        + 2 * parameters
        + 2.0 * parameters * (parameters + 1) / left;
  }

  /** Whether another curve is of the same law. */
  public boolean isOfTheLawOf(Curve other) {
    return curve.law() == other.law();
  }

  private static double[] exp(double[] logs) {
    return DoubleStream.of(logs).map(Math::exp).toArray();
  }

  private static double[] log(double[] values) {
    return DoubleStream.of(values).map(Math::log).toArray();
  }

  private static double[] within(double[] logs) {
    UnaryOperator<Double> held = each -> Math.max(-FURTHEST, Math.min(FURTHEST, each));
    return DoubleStream.of(logs).map(held::apply).toArray();
  }
}
