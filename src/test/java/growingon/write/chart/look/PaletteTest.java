package growingon.write.chart.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.write.chart.ColourDifference;
import growingon.write.chart.Eye;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The colours of the charts, as eight kinds of eyes see them. */
class PaletteTest {
  /** What is stacked: the five steps. */
  private static final List<Integer> STEPS = List.of(10, 11, 12, 13, 14);

  /** What else meets in one chart, by the index of its colour. */
  private static final Map<String, List<Integer>> TOGETHER =
      Map.of(
          "a stack and all the rest", List.of(11, 13, 10, 12, 8),
          "no grade yet and kept", List.of(8, 7),
          "space needed, its edges, the line and what is beyond it", List.of(4, 9, 6),
          "pays and does not pay", List.of(1, 0),
          "ends of a swing and whole failure", List.of(4, 0, 7),
          "result, better and worse", List.of(0, 2, 1),
          "real, expected and planned", List.of(0, 4, 7),
          "one plan and the other", List.of(1, 0),
          "all sales and their stroke", List.of(0, 7));

  /**
   * CIEDE2000 of what meets in one chart at least: 15 is seen at a glance side by side; a few in a
   * hundred thousand see as tritanopia has it, and a black print has the rims and the labels too.
   */
  private static double least(Eye eye) {
    return switch (eye) {
      case TRITANOPIA -> 12;
      case GREY -> 10;
      default -> 15;
    };
  }

  @ParameterizedTest
  @EnumSource(Eye.class)
  void steps_toEveryEye_differAllFromEachOther(Eye eye) {
    boolean isRare = eye == Eye.TRITANOPIA || eye == Eye.GREY;
    assertThat(closest(STEPS, eye)).isGreaterThanOrEqualTo(isRare ? 12.5 : 15);
  }

  @ParameterizedTest
  @EnumSource(Eye.class)
  void coloursThatMeet_toEveryEye_differ(Eye eye) {
    TOGETHER.forEach(
        (what, colours) ->
            assertThat(closest(colours, eye)).as(what).isGreaterThanOrEqualTo(least(eye)));
  }

  private static double closest(List<Integer> colours, Eye eye) {
    double closest = Double.MAX_VALUE;
    for (int i : colours) {
      for (int j : colours) {
        if (i < j) {
          closest = Math.min(closest, eye.between(Palette.of(i), Palette.of(j)));
        }
      }
    }
    return closest;
  }

  @Test
  void steps_inABlackPrint_growLighterByATenthOrMore() {
    List<Double> lightness = new ArrayList<>();
    STEPS.forEach(each -> lightness.add(Eye.GREY.lightness(Palette.of(each))));
    for (int i = 1; i < lightness.size(); i++) {
      assertThat(lightness.get(i) - lightness.get(i - 1)).isGreaterThan(10);
    }
  }

  @Test
  void rims_onWhite_haveTheContrastOfThingsToBeSeen() {
    // WCAG 2.1, success criterion 1.4.11: 3 to 1 for what is needed to understand a drawing.
    for (int i = 0; i < Palette.SIZE; i++) {
      assertThat(contrast(Palette.rim(Palette.of(i)))).as("rim of " + i).isGreaterThan(3);
    }
    // Success criterion 1.4.3: 4.5 to 1 for letters.
    for (Color letters : List.of(Palette.INK, Palette.QUIET, Palette.OVER_INK)) {
      assertThat(contrast(letters)).isGreaterThan(4.5);
    }
  }

  /** Contrast with white, WCAG 2.1. */
  private static double contrast(Color colour) {
    return 1.05 / (Eye.GREY.sees(colour)[0] + 0.05);
  }

  @Test
  void palette_firstEight_areThoseOfOkabeAndIto() {
    // Okabe and Ito, Color Universal Design (2008), figure 16: the set of eight.
    assertThat(IntStream.range(0, 8).mapToObj(Palette::of))
        .containsExactlyInAnyOrder(
            new Color(0, 0, 0),
            new Color(230, 159, 0),
            new Color(86, 180, 233),
            new Color(0, 158, 115),
            new Color(240, 228, 66),
            new Color(0, 114, 178),
            new Color(213, 94, 0),
            new Color(204, 121, 167));
    assertThat(IntStream.range(0, Palette.SIZE).mapToObj(Palette::of)).doesNotHaveDuplicates();
    assertThat(Palette.of(Palette.SIZE)).isEqualTo(Palette.of(0));
  }

  /** A matrix that keeps white has rows that add up to one. */
  @ParameterizedTest
  @EnumSource(Eye.class)
  void eye_ofAnyKind_seesWhiteAsWhiteAndBlackAsBlack(Eye eye) {
    assertThat(eye.sees(Color.WHITE)).containsExactly(new double[] {1, 1, 1}, within(2e-6));
    assertThat(eye.sees(Color.BLACK)).containsExactly(0, 0, 0);
  }

  /** Test data of Sharma, Wu and Dalal (2005), table 1, from memory. */
  @ParameterizedTest
  @CsvSource({
    "50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425",
    "50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615",
    "50, 2.8361, -74.0200, 50, 0, -82.7485, 3.4412",
    "50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0000",
    "50, 0, 0, 50, -1, 2, 2.3669",
    "50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792",
    "50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195",
    "50, 2.5, 0, 50, 0, -2.5, 4.3065",
    "50, 2.5, 0, 73, 25, -18, 27.1492",
    "50, 2.5, 0, 61, -5, 29, 22.8977",
    "50, 2.5, 0, 56, -27, -3, 31.9030",
    "50, 2.5, 0, 58, 24, 15, 19.4535",
    "60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644",
    "6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377",
    "2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082"
  })
  void difference_ofTwoColours_isThePublishedOne(
      double l1, double a1, double b1, double l2, double a2, double b2, double difference) {
    double[] one = {l1, a1, b1};
    double[] other = {l2, a2, b2};
    assertThat(ColourDifference.ciede2000(one, other)).isCloseTo(difference, within(5e-5));
    assertThat(ColourDifference.ciede2000(other, one)).isCloseTo(difference, within(5e-5));
  }
}
