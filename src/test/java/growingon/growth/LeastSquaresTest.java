package growingon.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.species.Curve;
import growingon.nursery.species.Curve.Law;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Least squares against NIST's certified values and those of R's nls. Where the data were read
 * stands in src/test/resources/growth/README.md; certified values and starts are those of the same
 * files of NIST, values of nls those that R 4.2.2 gave for these data.
 */
class LeastSquaresTest {
  private static final double SIX_DIGITS = 5e-7;
  private static final double FOUR_DIGITS = 5e-5;

  /**
   * R's nls stops at a relative offset of 1e-5, so its parameters are off by up to 7e-6 of
   * themselves here. Where six digits are asked for, they come from Gauss and Newton's method with
   * exact slopes, run on to the last digit apart from this program (numpy 2.4).
   */
  private static final double AS_NLS = 1e-5;

  /** Times and what was measured at them. */
  record Series(double[] x, double[] y) {}

  static Series series(String file, String set) {
    List<double[]> rows = new ArrayList<>();
    try (Reader reader =
        new InputStreamReader(
            LeastSquaresTest.class.getResourceAsStream("/growth/" + file),
            StandardCharsets.UTF_8)) {
      for (CSVRecord row : CSVFormat.DEFAULT.parse(reader)) {
        if (set.isEmpty() ? row.getRecordNumber() > 1 : row.get(0).equals(set)) {
          rows.add(new double[] {Double.parseDouble(row.get(1)), Double.parseDouble(row.get(2))});
        }
      }
    } catch (IOException cannotRead) {
      throw new IllegalStateException(cannotRead);
    }
    return new Series(
        rows.stream().mapToDouble(row -> row[0]).toArray(),
        rows.stream().mapToDouble(row -> row[1]).toArray());
  }

  /** A function of parameters and a time. */
  private interface Formula {
    double at(double[] b, double x);
  }

  private static LeastSquares problem(Series series, Formula formula) {
    return new LeastSquares(
        b -> DoubleStream.of(series.x).map(x -> formula.at(b, x)).toArray(),
        series.y,
        DoubleStream.of(series.y).map(each -> 1).toArray());
  }

  private static void assertDigits(double[] found, double tolerance, double... certified) {
    for (int i = 0; i < certified.length; i++) {
      assertThat(found[i]).isCloseTo(certified[i], within(tolerance * Math.abs(certified[i])));
    }
  }

  private static void assertCertified(
      LeastSquares problem, double[] start, double squares, double[] values, double[] errors) {
    LeastSquares.Result result = problem.from(start).orElseThrow();
    assertDigits(result.parameters(), SIX_DIGITS, values);
    assertDigits(new double[] {result.squares()}, SIX_DIGITS, squares);
    assertDigits(result.errors(), FOUR_DIGITS, errors);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void rat42_fromBothStarts_isNistsCertifiedFit(int start) {
    double[][] starts = {{100, 1, 0.1}, {75, 2.5, 0.07}};
    assertCertified(
        problem(series("nist-data.csv", "Rat42"), (b, x) -> b[0] / (1 + Math.exp(b[1] - b[2] * x))),
        starts[start - 1],
        8.0565229338,
        new double[] {7.2462237576e1, 2.6180768402, 6.7359200066e-2},
        new double[] {1.7340283401, 8.8295217536e-2, 3.4465663377e-3});
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void rat43_fromBothStarts_isNistsCertifiedFit(int start) {
    double[][] starts = {{100, 10, 1, 1}, {700, 5, 0.75, 1.3}};
    assertCertified(
        problem(
            series("nist-data.csv", "Rat43"),
            (b, x) -> b[0] * Math.pow(1 + Math.exp(b[1] - b[2] * x), -1 / b[3])),
        starts[start - 1],
        8.7864049080e3,
        new double[] {6.9964151270e2, 5.2771253025, 7.5962938329e-1, 1.2792483859},
        new double[] {1.6302297817e1, 2.0828735829, 1.9566123451e-1, 6.8761936385e-1});
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void misra1a_fromBothStarts_isNistsCertifiedFit(int start) {
    double[][] starts = {{500, 0.0001}, {250, 0.0005}};
    assertCertified(
        problem(series("nist-data.csv", "Misra1a"), LeastSquaresTest::levellingFromNothing),
        starts[start - 1],
        1.2455138894e-1,
        new double[] {2.3894212918e2, 5.5015643181e-4},
        new double[] {2.7070075241, 7.2668688436e-6});
  }

  private static double levellingFromNothing(double[] b, double x) {
    return b[0] * (1 - Math.exp(-b[1] * x));
  }

  private static final double[] BOX_BOD = {2.1380940889e2, 5.4723748542e-1};

  @Test
  void boxBod_fromItsSecondStart_isNistsCertifiedFit() {
    assertCertified(
        problem(series("nist-data.csv", "BoxBOD"), LeastSquaresTest::levellingFromNothing),
        new double[] {100, 0.75},
        1.1680088766e3,
        BOX_BOD,
        new double[] {1.2354515176e1, 1.0455993237e-1});
  }

  /** A start that is far off ends where the model is flat: why starts are chosen by the data. */
  @Test
  void boxBod_fromItsFirstStart_endsOnThePlateau() {
    LeastSquares.Result result =
        problem(series("nist-data.csv", "BoxBOD"), LeastSquaresTest::levellingFromNothing)
            .from(new double[] {1, 1})
            .orElseThrow();
    assertThat(result.parameters()[0]).isCloseTo(172.5, within(0.1));
    assertThat(result.parameters()[1]).isGreaterThan(20);
  }

  @Test
  void boxBod_fromTheStartsOfALaw_isCertifiedFromEachOfThem() {
    Series series = series("nist-data.csv", "BoxBOD");
    List<TwoTrunks> growths = fromNothing(series);
    LeastSquares problem = CurveFit.problem(Law.LEVELLING, growths);
    List<double[]> starts = CurveFit.starts(Law.LEVELLING, growths, problem);
    assertThat(starts).hasSize(3);
    for (double[] start : starts) {
      double[] logs = problem.from(start).orElseThrow().parameters();
      assertDigits(DoubleStream.of(logs).map(Math::exp).toArray(), SIX_DIGITS, BOX_BOD);
    }
  }

  /** Each value as what grew from nothing in its time. */
  static List<TwoTrunks> fromNothing(Series series) {
    return IntStream.range(0, series.x.length)
        .mapToObj(i -> new TwoTrunks(0, series.y[i], series.x[i], 1))
        .toList();
  }

  @Test
  void rat43_throughTheFlowMap_isNistsCertifiedFit() {
    Series series = series("nist-data.csv", "Rat43");
    double[] logs =
        problem(
                series,
                (b, x) ->
                    Flow.of(new Curve.ThetaLogistic(Math.exp(b[0]), Math.exp(b[1]), Math.exp(b[2])))
                        .advance(Math.exp(b[3]), x))
            .from(logs(700, 0.75, 1.3, 10))
            .orElseThrow()
            .parameters();
    // The trunk at 0 is b1 (1 + e^b2)^(−1/b4) of the certified values: 11.26172.
    assertDigits(
        DoubleStream.of(logs).map(Math::exp).toArray(),
        SIX_DIGITS,
        6.9964151270e2,
        7.5962938329e-1,
        1.2792483859,
        11.26172);
  }

  private static double[] logs(double... values) {
    return Arrays.stream(values).map(Math::log).toArray();
  }

  @Test
  void orangeTrees_logisticOfAllTogether_isAsOfNls() {
    LeastSquares.Result result =
        problem(series("orange.csv", ""), (b, x) -> b[0] / (1 + Math.exp((b[1] - x) / b[2])))
            .from(new double[] {200, 700, 400})
            .orElseThrow();
    assertDigits(result.parameters(), SIX_DIGITS, 192.68759194, 728.7563833, 353.53366555);
    assertDigits(result.errors(), SIX_DIGITS, 20.24411175, 107.29835655, 81.47183432);
    assertDigits(result.parameters(), AS_NLS, 192.687345864, 728.755156209, 353.532613089);
    assertDigits(result.errors(), FOUR_DIGITS, 20.2439721861, 107.2976579147, 81.4715187886);
    assertThat(Math.sqrt(result.squares() / 32)).isCloseTo(23.3721478936, within(1e-8));
  }

  @Test
  void loblollyPines_levellingOfAllTogether_isAsOfNls() {
    LeastSquares.Result result =
        problem(
                series("loblolly.csv", ""),
                (b, x) -> b[0] + (b[1] - b[0]) * Math.exp(-Math.exp(b[2]) * x))
            .from(new double[] {100, -8, -3})
            .orElseThrow();
    assertDigits(result.parameters(), SIX_DIGITS, 102.2621133, -8.5330571, -3.24613035);
    assertDigits(result.errors(), SIX_DIGITS, 5.42050855, 0.74412065, 0.08145673);
    assertDigits(result.parameters(), AS_NLS, 102.2620761862, -8.5330613547, -3.2461297852);
    assertDigits(result.errors(), FOUR_DIGITS, 5.4205026763, 0.7441207403, 0.0814566843);
    assertThat(Math.sqrt(result.squares() / 81)).isCloseTo(1.71179593385, within(1e-8));
  }

  @Test
  void loblollyPines_richardsFromNothing_isAsOfNls() {
    LeastSquares.Result result =
        problem(series("loblolly.csv", ""), LeastSquaresTest::richardsFromNothing)
            .from(new double[] {80, 0.08, 2})
            .orElseThrow();
    assertDigits(result.parameters(), AS_NLS, 76.9334922107, 0.0826589426, 1.8469395451);
    assertDigits(result.errors(), FOUR_DIGITS, 2.5800681208, 0.0060670482, 0.0937359317);
  }

  @Test
  void spruces_richardsFromNothing_isAsOfNls() {
    LeastSquares.Result result =
        problem(series("spruce.csv", ""), LeastSquaresTest::richardsFromNothing)
            .from(new double[] {50, 0.02, 1})
            .orElseThrow();
    assertDigits(result.parameters(), AS_NLS, 51.3634031389, 0.0134938173, 0.9076813756);
    assertDigits(result.errors(), FOUR_DIGITS, 3.3182166792, 0.002704811, 0.0844098098);
  }

  private static double richardsFromNothing(double[] b, double x) {
    return b[0] * Math.pow(-Math.expm1(-b[1] * x), b[2]);
  }

  private static LeastSquares.Result spruce(Formula formula, double... start) {
    return problem(series("spruce.csv", "1.1.1"), formula).from(start).orElseThrow();
  }

  /** Residual sums of squares of nls for tree 1.1.1: 0.780, 4.715, 11.194. */
  @Test
  void spruceTree_threeLaws_richardsBeforeGompertzBeforeLogistic() {
    LeastSquares.Result richards = spruce(LeastSquaresTest::richardsFromNothing, 30, 0.03, 1);
    LeastSquares.Result gompertz =
        spruce((b, x) -> b[0] * Math.exp(-b[1] * Math.exp(-b[2] * x)), 29, 2, 0.04);
    LeastSquares.Result logistic =
        spruce((b, x) -> b[0] / (1 + Math.exp((b[1] - x) / b[2])), 28, 30, 18);
    assertDigits(richards.parameters(), AS_NLS, 29.8797909993, 0.0268480060684, 1.20563183027);
    assertDigits(gompertz.parameters(), AS_NLS, 28.7156031765, 2.34394572306, 0.0397870904803);
    assertDigits(logistic.parameters(), AS_NLS, 28.1348945255, 30.9514852136, 18.3533687865);
    double[] squares = {richards.squares(), gompertz.squares(), logistic.squares()};
    assertDigits(squares, SIX_DIGITS, 0.779790030837, 4.71548410692, 11.1939951728);
    double[] criteria =
        DoubleStream.of(squares).map(each -> CurveFit.aicc(13, each, 0, 4)).toArray();
    assertThat(criteria).isSorted();
  }

  /** The same laws through their flow maps; gompertz and logistic with the trunk at 0 besides. */
  @Test
  void spruceTree_throughTheFlowMaps_hasTheSameResidualSums() {
    Series series = series("spruce.csv", "1.1.1");
    CurveFit richards = CurveFit.of(Law.RICHARDS, fromNothing(series)).orElseThrow();
    assertThat(richards.squares()).isCloseTo(0.779790030837, within(1e-6));
    assertThat(richards.finalMm().orElseThrow()).isCloseTo(29.8797909993, within(1e-4));
    assertThat(withTrunkAtStart(series, Law.GOMPERTZ)).isCloseTo(4.71548410692, within(1e-6));
    assertThat(withTrunkAtStart(series, Law.LOGISTIC)).isCloseTo(11.1939951728, within(1e-6));
  }

  private static double withTrunkAtStart(Series series, Law law) {
    return problem(
            series,
            (b, x) ->
                Flow.of(Starts.curve(law, new double[] {Math.exp(b[0]), Math.exp(b[1])}))
                    .advance(Math.exp(b[2]), x))
        .from(logs(29, 0.05, 3))
        .orElseThrow()
        .squares();
  }

  /** As many parameters as values leave nothing over to tell an error from, even if all fits. */
  @Test
  void errors_ofAsManyParametersAsValues_areInfinite() {
    double[] one = {1};
    LeastSquares.Result result =
        new LeastSquares(parameters -> parameters.clone(), new double[] {3}, one)
            .from(new double[] {3})
            .orElseThrow();
    assertThat(result.squares()).isZero();
    assertThat(result.errors()[0]).isInfinite();
  }
}
