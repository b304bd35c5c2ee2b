package growingon.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.species.Curve;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CurveFitTest {
  private static final List<Curve> CURVES =
      List.of(
          new Curve.Levelling(90, 0.15),
          new Curve.Logistic(60, 0.5),
          new Curve.Gompertz(70, 0.3),
          new Curve.Richards(60, 0.25, 2.5),
          new Curve.ThetaLogistic(55, 0.6, 3));

  static List<Curve> curves() {
    return CURVES;
  }

  @Test
  void curves_areOfEveryLawThatLevelsOff() {
    assertThat(CURVES.stream().map(Curve::law))
        .containsExactlyInAnyOrderElementsOf(EnumSet.complementOf(EnumSet.of(Curve.Law.STEADY)));
  }

  /** Trunks of 5 to 45 mm that grew one to three years by a curve, off by a seeded error. */
  private static List<TwoTrunks> grown(Curve curve, double errorMm) {
    Random random = new Random(7);
    List<TwoTrunks> growths = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      double from = 5 + 40 * random.nextDouble();
      double years = 1 + i % 3;
      double to = Flow.of(curve).advance(from, years) + errorMm * random.nextGaussian();
      growths.add(new TwoTrunks(from, to, years, Math.max(errorMm, 0.01)));
    }
    return growths;
  }

  @ParameterizedTest
  @MethodSource("curves")
  void exactGrowths_ofACurve_giveItBack(Curve curve) {
    CurveFit fit = CurveFit.of(curve.law(), grown(curve, 0)).orElseThrow();
    assertThat(fit.isOfTheLawOf(curve)).isTrue();
    for (int age = 1; age < 10; age++) {
      double expected = Flow.of(curve).advance(6, age);
      assertThat(Flow.of(fit.curve()).advance(6, age)).isCloseTo(expected, within(1e-4));
    }
  }

  @ParameterizedTest
  @MethodSource("curves")
  void growthsWithErrors_byEveryLaw_areDescribedBestByTheirOwnOrAsWell(Curve curve) {
    List<CurveFit> fits = CurveFit.ofEveryLaw(grown(curve, 0.2));
    CurveFit own = fits.stream().filter(each -> each.isOfTheLawOf(curve)).findFirst().orElseThrow();
    assertThat(own.aicc()).isLessThan(fits.get(0).aicc() + 6);
    CurveFit steady =
        fits.stream()
            .filter(each -> each.isOfTheLawOf(new Curve.Steady(1, 1)))
            .findFirst()
            .orElseThrow();
    assertThat(steady.finalMm()).isEmpty();
    assertThat(steady.aicc()).isGreaterThan(own.aicc() + 6);
  }

  @Test
  void steadyGrowth_itsOwnLaw_isFoundAndHasTheFewestParameters() {
    List<CurveFit> fits = CurveFit.ofEveryLaw(grown(new Curve.Steady(3, 1e9), 0.3));
    assertThat(fits.get(0).curve()).isInstanceOf(Curve.Steady.class);
    assertThat(((Curve.Steady) fits.get(0).curve()).gMmAYear()).isCloseTo(3, within(0.03));
  }

  /** By hand: 10 ln(20/10) + 2 · 3 + 10 + 2 · 2 + 2 · 2 · 3/7 = 28.6458. */
  @Test
  void criterion_ofTenValuesAndTwoParameters_isTheOneByHand() {
    assertThat(CurveFit.aicc(10, 20, 3, 2)).isCloseTo(28.6458, within(1e-4));
    assertThat(CurveFit.aicc(3, 20, 3, 2)).isInfinite();
  }

  /**
   * Twice 2 mm a year with a deviation of 1 mm and 6 with 2. By hand the rate is (2/1 + 6/4)/(1/1 +
   * 1/4) = 2.8; the squares are 2 · (0.8² + (3.2/2)²) = 6.4; the criterion is 4 ln(6.4/4) + 2 · 2
   * ln 2 + 4 + 2 · 2 + 2 · 2 · 3/1 = 24.6526.
   */
  @Test
  void growths_ofUnequalDeviations_countByTheirInverseSquares() {
    TwoTrunks sure = new TwoTrunks(10, 12, 1, 1);
    TwoTrunks unsure = new TwoTrunks(10, 16, 1, 2);
    CurveFit fit = CurveFit.of(Curve.Law.STEADY, List.of(sure, unsure, sure, unsure)).orElseThrow();
    assertThat(((Curve.Steady) fit.curve()).gMmAYear()).isCloseTo(2.8, within(1e-6));
    assertThat(fit.squares()).isCloseTo(6.4, within(1e-6));
    assertThat(fit.aicc()).isCloseTo(24.6526, within(1e-4));
  }
}
