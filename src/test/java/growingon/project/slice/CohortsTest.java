package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.species.Curve;
import growingon.project.Nurseries;
import growingon.project.slice.Cohorts.Stretch;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plants that are followed by themselves, by hand. */
class CohortsTest {
  private static final Stretch TWO_YEARS_OF_6 =
      new Stretch(new Curve.Steady(6, Double.POSITIVE_INFINITY), 2);
  private static final Stretch HALF_A_YEAR_OF_3 =
      new Stretch(new Curve.Steady(3, Double.POSITIVE_INFINITY), 0.5);

  /** 10 + 2 · 6 + 0.5 · 3 = 23.5 mm, however the trunks spread. */
  @Test
  void plantsOfOneVigour_growBySoMuchEach_oneLawAfterAnother() {
    Cohorts cohorts = new Cohorts(64);
    List<Stretch> growth = List.of(TWO_YEARS_OF_6, HALF_A_YEAR_OF_3);

    assertThat(cohorts.meanAfter(10, 0, Nurseries.bareSpecies("ash", "one"), growth))
        .isCloseTo(23.5, within(1e-9));
    assertThat(cohorts.meanAfter(10, 0.2, Nurseries.bareSpecies("ash", "one"), growth))
        .isCloseTo(23.5, within(0.02));
    assertThat(cohorts.meanAfter(10, 0, Nurseries.bareSpecies("ash", "one"), List.of()))
        .isEqualTo(10);
  }

  /**
   * Vigour has the mean 1. Beyond 20 mm none grows: 9 mm times the vigour v, 10 at most, are 9 E
   * min(v, 10/9) = 9 (Φ(0.0808) + 10/9 (1 − Φ(0.466))) = 8.00 for σ² = ln(1 + 0.4²).
   */
  @Test
  void plantsOfUnlikeVigour_growAsMuchInTheMean_unlessALimitTakesOffTheStrongest() {
    Cohorts cohorts = new Cohorts(64);
    Stretch limited = new Stretch(new Curve.Steady(6, 20), 1.5);

    assertThat(
            cohorts.meanAfter(
                10,
                0,
                Nurseries.bareSpecies("ash", "one").with().vigourSpread(0.4).build(),
                List.of(TWO_YEARS_OF_6)))
        .isCloseTo(22, within(0.1));
    assertThat(
            cohorts.meanAfter(
                10,
                0,
                Nurseries.bareSpecies("ash", "one").with().vigourSpread(0.4).build(),
                List.of(limited)))
        .isCloseTo(18.0, within(0.1));
  }
}
