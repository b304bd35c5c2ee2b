package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Grade;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** When a lot reaches a grade. */
class GradeReachedTest {
  private static OptionalInt reaches(double leastTrunkMm) {
    return Nurseries.bare()
        .ladder("one", new Grade("any", 1, 1, 0, 12), new Grade("thick", 2, leastTrunkMm, 0, 12))
        .seasons(3)
        .lot(Lots.lot("a").build())
        .project()
        .lot("a")
        .reached()
        .get(1)
        .middle();
  }

  /** 10 mm and 6 mm a year: 24 twelfths of a year add up to two years less rounding. */
  @Test
  void gradeThatTwoYearsGrowthJustReaches_isReachedInTheir24thMonth() {
    assertThat(reaches(22)).hasValue(23);
  }

  @Test
  void gradeAHairThicker_isReachedAMonthLater() {
    assertThat(reaches(22.0001)).hasValue(24);
  }
}
