package growingon.review.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures counted draw by draw. */
class AcrossDrawsTest {
  /** Of twenty draws the first two and the last two lie outside. */
  private static final String OUTSIDE_IN_FOUR = "3fffc";

  @Test
  void figures_outsideInTheSameDraws_areAllInOrAllOut() {
    assertThat(AcrossDraws.count(Collections.nCopies(10, OUTSIDE_IN_FOUR), 20))
        .contains(new AcrossDraws.Inside(0, 10, 10));
  }

  @Test
  void figures_outsideInDrawsOfTheirOwn_differLittleInNumber() {
    // Each draw lies outside in one of five figures.
    List<String> figures = List.of("0ffff", "f0fff", "ff0ff", "fff0f", "ffff0");
    assertThat(AcrossDraws.count(figures, 20)).contains(new AcrossDraws.Inside(4, 4, 5));
  }

  @Test
  void rareDraws_oneInTwenty_areLeftOutOnEitherSide() {
    // Of 41 draws the first two lie outside of both, which is rare; so does the third, which is
    // not.
    String two = "3ffffffffff";
    String three = "1ffffffffff";
    assertThat(AcrossDraws.count(List.of(two, two), 41)).contains(new AcrossDraws.Inside(2, 2, 2));
    assertThat(AcrossDraws.count(List.of(three, three), 41))
        .contains(new AcrossDraws.Inside(0, 2, 2));
  }

  @Test
  void digits_notOfSoManyDraws_sayNothing() {
    assertThat(AcrossDraws.count(List.of("ff"), 20)).isEmpty();
    assertThat(AcrossDraws.count(List.of(), 0)).isEmpty();
  }
}
