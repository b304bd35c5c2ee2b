package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Which draws are within the others. */
class AmongOthersTest {
  @Test
  void draws_heldAgainstAllOthers_areAsTheQuantilesOfTheOthersSay() {
    Random random = new Random(20261128);
    float[] draws = new float[101];
    for (int i = 0; i < draws.length; i++) {
      // Whole numbers, so that many are alike.
      draws[i] = Math.round(8 * random.nextGaussian());
    }
    String digits = AmongOthers.of(draws);
    assertThat(digits).hasSize(26);
    int inside = 0;
    for (int i = 0; i < draws.length; i++) {
      boolean isInside = isInside(draws, i);
      inside += isInside ? 1 : 0;
      assertThat(bit(digits, i)).as("draw %s", i).isEqualTo(isInside);
    }
    assertThat(inside).isBetween(70, 95);
  }

  private static boolean isInside(float[] draws, int own) {
    double[] others = new double[draws.length - 1];
    for (int i = 0; i < others.length; i++) {
      others[i] = draws[i < own ? i : i + 1];
    }
    Quantiles quantiles = Quantiles.of(others);
    return draws[own] >= quantiles.p10() - 1e-4 && draws[own] <= quantiles.p90() + 1e-4;
  }

  private static boolean bit(String digits, int draw) {
    return (Character.digit(digits.charAt(draw / 4), 16) >> 3 - draw % 4 & 1) == 1;
  }

  @Test
  void draw_withoutTheFigure_isLeftOutOfTheOthersAndCountsAsWithin() {
    float[] draws = {Float.NaN, 1, 1, 1, 1, 1, 1, 9};
    assertThat(AmongOthers.of(draws)).isEqualTo("fe");
  }

  @Test
  void draws_tooFewToHaveOthers_areAllWithin() {
    assertThat(AmongOthers.of(new float[] {1, 9})).isEqualTo("c");
  }
}
