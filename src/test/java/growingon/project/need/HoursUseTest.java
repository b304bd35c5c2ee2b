package growingon.project.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.OtherCash;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hours against those that are there, by hand. */
class HoursUseTest {
  private static Nurseries nursery() {
    return Nurseries.bare()
        .seasons(1)
        .otherCash(everyMonth("sweeping", 8))
        .otherCash(everyMonth("rent", 0))
        .route("r", Steps.in("pot", Month.MARCH, 0).minutes(3).build())
        .lot(Lots.lot("a").route("r").build());
  }

  private static OtherCash everyMonth(String what, double hours) {
    return new OtherCash(
        Optional.empty(),
        OtherCash.Every.MONTH,
        what,
        -1,
        hours,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * There are as many hours as the month's number. Sweeping takes 8 in each month, potting 100
   * plants 5 more in March; the plan starts in November.
   */
  @Test
  void hoursShort_areThoseNeededOverThoseOfTheMonthOfTheYear() {
    HoursUse hours =
        HoursUse.of(
            nursery()
                .hoursAvailable(List.of(1d, 2d, 3d, 4d, 5d, 6d, 7d, 8d, 9d, 10d, 11d, 12d))
                .project());
    double[] needed = {8, 8, 8, 8, 13, 8, 8, 8, 8, 8, 8, 8};
    double[] there = {11, 12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    double[] lacking = {0, 0, 7, 6, 10, 4, 3, 2, 1, 0, 0, 0};
    for (int month = 0; month < 12; month++) {
      assertThat(hours.needed(month)).isCloseTo(needed[month], within(1e-9));
      assertThat(hours.available(month)).contains(there[month]);
      assertThat(hours.shortBy(month)).isCloseTo(lacking[month], within(1e-9));
    }
  }

  @Test
  void jobs_areThoseThatTakeHours() {
    assertThat(HoursUse.of(nursery().project()).byJob()).containsOnlyKeys("pot", "sweeping");
  }

  @Test
  void hours_ofWhichNoneAreStated_areNeverShort() {
    HoursUse hours = HoursUse.of(nursery().project());

    assertThat(hours.available(4)).isEmpty();
    assertThat(hours.shortBy(4)).isZero();
  }
}
