package growingon.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.species.Curve;
import growingon.nursery.species.Curve.Parameter;
import java.util.EnumMap;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FlowTest {
  @Provide
  Arbitrary<Curve> curves() {
    Arbitrary<Double> size = Arbitraries.doubles().between(20, 300);
    Arbitrary<Double> rate = Arbitraries.doubles().between(0.02, 1.5);
    Arbitrary<Double> shape = Arbitraries.doubles().between(0.3, 4);
    return Arbitraries.of(Curve.Law.values())
        .flatMap(
            law -> Combinators.combine(size, rate, shape).as((d, k, p) -> curve(law, d, k, p)));
  }

  /** A curve of any law; of a steady one the rate is ten times as many mm a year. */
  private static Curve curve(Curve.Law law, double size, double rate, double shape) {
    Map<Parameter, Double> values = new EnumMap<>(Parameter.class);
    for (Parameter each : law.allParameters()) {
      double usual = each.isRate() ? rate : each.isShape() ? shape : size;
      values.put(each, each == Parameter.STEADY_MM ? 10 * rate : usual);
    }
    return law.of(values);
  }

  @Property
  void everyCurve_twoSteps_equalOneStep(
      @ForAll("curves") Curve curve,
      @ForAll @DoubleRange(min = 0.5, max = 400) double mm,
      @ForAll @DoubleRange(min = 0, max = 8) double s,
      @ForAll @DoubleRange(min = 0, max = 8) double t) {
    Flow flow = Flow.of(curve);
    double once = flow.advance(mm, s + t);
    assertThat(flow.advance(flow.advance(mm, s), t)).isCloseTo(once, within(1e-9 * once));
  }

  @Property
  void everyCurve_fasterByAFactor_isTheSameInLongerTime(
      @ForAll("curves") Curve curve,
      @ForAll @DoubleRange(min = 0.5, max = 400) double mm,
      @ForAll @DoubleRange(min = 0.2, max = 5) double factor,
      @ForAll @DoubleRange(min = 0, max = 8) double t) {
    double longer = Flow.of(curve).advance(mm, factor * t);
    assertThat(Flow.of(curve.faster(factor)).advance(mm, t))
        .isCloseTo(longer, within(1e-9 * longer));
  }

  @Property
  void everyCurve_noTime_changesNothing(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 0.5, max = 400) double mm) {
    assertThat(Flow.of(curve).advance(mm, 0)).isEqualTo(mm);
  }

  @Property
  void everyCurve_yearsTo_isTheInverseOfAdvance(
      @ForAll("curves") Curve curve,
      @ForAll @DoubleRange(min = 1, max = 19) double mm,
      @ForAll @DoubleRange(min = 0, max = 1) double way) {
    double target = mm + way * (19.5 - mm);
    Flow flow = Flow.of(curve);
    assertThat(flow.advance(mm, flow.yearsTo(mm, target))).isCloseTo(target, within(1e-7));
  }

  @Property
  void everyCurve_slope_isItsLaw(
      @ForAll("curves") Curve curve, @ForAll @DoubleRange(min = 2, max = 18) double mm) {
    double h = 1e-5 / Math.max(1, law(curve, mm) / mm);
    double later = Flow.of(curve).advance(mm, h);
    double slope = (later - mm) / h;
    double law = (law(curve, mm) + law(curve, later)) / 2;
    assertThat(slope).isCloseTo(law, within(1e-3 * law + 1e-5));
  }

  /** The equations that {@link Curve.Law#equation} states, as slopes, written down by hand. */
  private static double law(Curve curve, double d) {
    if (curve instanceof Curve.Steady c) {
      return c.gMmAYear();
    }
    if (curve instanceof Curve.Levelling c) {
      return c.k() * (c.finalMm() - d);
    }
    if (curve instanceof Curve.Logistic c) {
      return c.r() * d * (1 - d / c.finalMm());
    }
    if (curve instanceof Curve.Gompertz c) {
      return c.r() * d * Math.log(c.finalMm() / d);
    }
    if (curve instanceof Curve.Richards c) {
      // d = D (1 − e^(−ka))^p, so d' = D p k e^(−ka) (1 − e^(−ka))^(p−1)
      double base = Math.pow(d / c.finalMm(), 1 / c.p());
      return c.finalMm() * c.p() * c.k() * (1 - base) * Math.pow(base, c.p() - 1);
    }
    Curve.ThetaLogistic c = (Curve.ThetaLogistic) curve;
    return c.r() / c.q() * d * (1 - Math.pow(d / c.finalMm(), c.q()));
  }

  @Test
  void trunkAboveFinalSize_anyTime_staysAsItIs() {
    for (Curve.Law law : Curve.Law.values()) {
      Curve curve = curve(law, 60, 0.3, 2);
      assertThat(Flow.of(curve).advance(70, 5)).isEqualTo(70);
      assertThat(Flow.of(curve).yearsTo(70, 80)).isInfinite();
      assertThat(Flow.of(curve).yearsTo(50, 61)).isInfinite();
    }
  }

  /**
   * NIST StRD Rat42 (pasture yield): y = b1/(1+exp(b2−b3 x)) with the certified parameters; a
   * logistic with D = b1, r = b3 started at x = 9 must run through the certified curve, and its
   * residual sum of squares must be the certified one, 8.0565229338.
   */
  @Test
  void logistic_nistRat42_givesTheCertifiedResidualSum() {
    double b1 = 7.2462237576e1;
    double b2 = 2.6180768402;
    double b3 = 6.7359200066e-2;
    double[] x = {9, 14, 21, 28, 42, 57, 63, 70, 79};
    double[] y = {8.930, 10.800, 18.590, 22.330, 39.350, 56.110, 61.730, 64.620, 67.080};
    Flow flow = Flow.of(new Curve.Logistic(b1, b3));
    double start = b1 / (1 + Math.exp(b2 - b3 * 9));
    double squares = 0;
    for (int i = 0; i < x.length; i++) {
      squares += Math.pow(y[i] - flow.advance(start, x[i] - 9), 2);
    }
    assertThat(squares).isCloseTo(8.0565229338, within(1e-8));
  }

  /**
   * NIST StRD Rat43 (onion dry weight): y = b1/(1+exp(b2−b3 x))^(1/b4) is a theta-logistic with D =
   * b1, q = b4, r = b3; certified residual sum of squares 8786.4049080.
   */
  @Test
  void thetaLogistic_nistRat43_givesTheCertifiedResidualSum() {
    double b1 = 6.9964151270e2;
    double b2 = 5.2771253025;
    double b3 = 7.5962938329e-1;
    double b4 = 1.2792483859;
    double[] y = {
      16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56,
      689.96, 637.56, 717.41
    };
    Flow flow = Flow.of(new Curve.ThetaLogistic(b1, b3, b4));
    double start = b1 / Math.pow(1 + Math.exp(b2 - b3), 1 / b4);
    double squares = 0;
    for (int i = 0; i < y.length; i++) {
      squares += Math.pow(y[i] - flow.advance(start, i), 2);
    }
    assertThat(squares).isCloseTo(8.7864049080e3, within(1e-4));
  }

  /**
   * Loblolly pine heights, all seed lots pooled (Kung 1986; R datasets Loblolly): A + (R0 − A)
   * exp(−exp(lrc) x) with R0 −8.53306, A 102.26212, lrc −3.24613, residual sd 1.7118 on 81 df; the
   * levelling law started from the fitted height at age 3.
   */
  @Test
  void levelling_loblolly_givesThePublishedResidualSpread() {
    double a = 102.26212;
    double k = Math.exp(-3.24613);
    double start = a + (-8.53306 - a) * Math.exp(-k * 3);
    double[] ages = {3, 5, 10, 15, 20, 25};
    double[][] heights = {
      {4.51, 10.89, 28.72, 41.74, 52.70, 60.92},
      {4.55, 10.92, 29.07, 42.83, 53.88, 63.39},
      {4.79, 11.37, 30.21, 44.40, 55.82, 64.10},
      {3.91, 9.48, 25.66, 39.07, 50.78, 59.07},
      {4.81, 11.20, 28.66, 41.66, 53.31, 63.05},
      {3.88, 9.40, 25.99, 39.55, 51.46, 59.64},
      {4.32, 10.43, 27.16, 40.85, 51.33, 60.07},
      {4.57, 10.57, 27.90, 41.13, 52.43, 60.69},
      {3.77, 9.03, 25.45, 38.98, 49.76, 60.28},
      {4.33, 10.79, 28.97, 42.44, 53.17, 61.62},
      {4.38, 10.48, 27.93, 40.20, 50.06, 58.49},
      {4.12, 9.92, 26.54, 37.82, 48.43, 56.81},
      {3.93, 9.34, 26.08, 37.79, 48.31, 56.43},
      {3.46, 9.05, 25.85, 39.15, 49.12, 59.49}
    };
    Flow flow = Flow.of(new Curve.Levelling(a, k));
    double squares = 0;
    for (double[] tree : heights) {
      for (int i = 0; i < ages.length; i++) {
        squares += Math.pow(tree[i] - flow.advance(start, ages[i] - 3), 2);
      }
    }
    assertThat(Math.sqrt(squares / 81)).isCloseTo(1.7118, within(5e-4));
  }

  /**
   * Orange tree trunk circumference (Draper and Smith 1981; R datasets Orange), pooled logistic
   * Asym 192.68738, xmid 728.75530, scal 353.53274, residual sd 23.37215 on 32 df.
   */
  @Test
  void logistic_orangeTrees_givesThePublishedResidualSpread() {
    double[] days = {118, 484, 664, 1004, 1231, 1372, 1582};
    double[][] girths = {
      {30, 58, 87, 115, 120, 142, 145},
      {33, 69, 111, 156, 172, 203, 203},
      {30, 51, 75, 108, 115, 139, 140},
      {32, 62, 112, 167, 179, 209, 214},
      {30, 49, 81, 125, 142, 174, 177}
    };
    Flow flow = Flow.of(new Curve.Logistic(192.68738, 1 / 353.53274));
    double start = 192.68738 / (1 + Math.exp((728.75530 - 118) / 353.53274));
    double squares = 0;
    for (double[] tree : girths) {
      for (int i = 0; i < days.length; i++) {
        squares += Math.pow(tree[i] - flow.advance(start, days[i] - 118), 2);
      }
    }
    assertThat(Math.sqrt(squares / 32)).isCloseTo(23.37215, within(1e-4));
  }

  /** What is reached already takes no time, even where nothing grows; nothing else is reached. */
  @Test
  void yearsTo_aTrunkThatIsThere_isNil_withoutGrowthToo() {
    for (Curve.Law law : Curve.Law.values()) {
      Flow still = Flow.of(curve(law, 60, 0, 2));
      assertThat(still.yearsTo(25, 25)).as(law.name()).isZero();
      assertThat(still.yearsTo(25, 25.1)).as(law.name()).isInfinite();
    }
  }

  /** A steady law reaches its last trunk: 60 mm from 25 at 5 mm a year in 7 years. */
  @Test
  void yearsTo_theLastTrunkOfASteadyLaw_isTheWayOverTheRate() {
    Flow steady = Flow.of(new Curve.Steady(5, 60));
    assertThat(steady.yearsTo(25, 60)).isEqualTo(7);
    assertThat(steady.yearsTo(25, 60.1)).isInfinite();
  }
}
