package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.Gamble.Swing;
import growingon.chance.luck.Assumption;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Figures of draws, by hand. */
class QuantilesTest {
  private static final Offset<Double> EXACTLY = within(1e-9);

  /**
   * Of 1 to 5 the quantile at p lies at 1 + 4 p. Its error is half of what lies between p ± √(p (1
   * − p)/5): √(0.25/5) = 0.2236 either way of the middle is 4 · 0.2236; of the tenths √(0.09/5) =
   * 0.1342 is more than the tenth that is left, so from the end 4 · (0.1 + 0.1342)/2. The deviation
   * is √2.5, the error of the mean √(2.5/5).
   */
  @Test
  void ofFiveNumbers_inAnyOrder_areThoseByHand() {
    Quantiles five = Quantiles.of(new double[] {4, 1, 5, 3, 2});

    assertThat(five.p10()).isCloseTo(1.4, EXACTLY);
    assertThat(five.p50()).isCloseTo(3, EXACTLY);
    assertThat(five.p90()).isCloseTo(4.6, EXACTLY);
    assertThat(five.mean()).isCloseTo(3, EXACTLY);
    assertThat(five.p50Error()).isCloseTo(4 * Math.sqrt(0.05), EXACTLY);
    assertThat(five.p10Error()).isCloseTo(2 * (0.1 + Math.sqrt(0.018)), EXACTLY);
    assertThat(five.p90Error()).isCloseTo(2 * (0.1 + Math.sqrt(0.018)), EXACTLY);
    assertThat(five.meanError()).isCloseTo(Math.sqrt(0.5), EXACTLY);
  }

  @Test
  void ofOneNumber_areThatNumber_withoutAnError() {
    assertThat(Quantiles.of(new double[] {7})).isEqualTo(new Quantiles(7, 7, 7, 7, 0, 0, 0, 0));
  }

  /** Luck alone makes 6 of a width of 10: 36 of 100 of the variance, so 64 are not knowing. */
  @Test
  void shareNotKnown_isWhatLuckAloneLeavesOfTheVariance() {
    assertThat(LuckAlone.shareNotKnown(tenths(20, 30), tenths(23, 29))).isCloseTo(0.64, EXACTLY);
    assertThat(LuckAlone.shareNotKnown(tenths(20, 30), tenths(20, 30))).isZero();
    assertThat(LuckAlone.shareNotKnown(tenths(20, 30), tenths(19, 31))).isZero();
    assertThat(LuckAlone.shareNotKnown(tenths(20, 20), tenths(20, 20))).isZero();
  }

  private static Quantiles tenths(double p10, double p90) {
    return new Quantiles(p10, 25, p90, 25, 0, 0, 0, 0);
  }

  /**
   * As planned the lot gains 20, at either end 5 and 10: as planned is the most, so the width is
   * 15. Measured it gains 12 and 15: a width of 8.
   */
  @Test
  void width_ofASwingThatTurnsRound_isFromTheLeastToTheMost() {
    Swing swing = swing(5, 20, 10, Optional.of(new Swing.Measured(12, 15)));

    assertThat(swing.width()).isEqualTo(15);
    assertThat(swing.narrower()).isCloseTo(1 - 8 / 15.0, EXACTLY);
    assertThat(swing(10, 5, 30, Optional.empty()).width()).isEqualTo(25);
  }

  @Test
  void swing_thatMovesNothingOrIsNotMeasured_isNotNarrower() {
    assertThat(swing(5, 5, 5, Optional.of(new Swing.Measured(5, 5))).narrower()).isZero();
    assertThat(swing(5, 20, 10, Optional.empty()).narrower()).isZero();
  }

  private static Swing swing(
      double low, double line, double high, Optional<Swing.Measured> measured) {
    return new Swing(Assumption.GROWTH, "ash", "low", "high", low, line, high, measured);
  }
}
