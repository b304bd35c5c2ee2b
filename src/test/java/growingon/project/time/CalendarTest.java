package growingon.project.time;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.time.Horizon;
import growingon.nursery.time.MonthSpan;
import java.time.Month;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;

/**
 * Months of a plan from November 2026 to February 2028 by offset: its seasons start in March, its
 * winter lasts from November to March, its business year ends in December.
 */
class CalendarTest {
  private static final Calendar CALENDAR =
      new Calendar(
          new Horizon(YearMonth.of(2026, 11), 2, Month.MARCH),
          new MonthSpan(11, 3),
          Month.DECEMBER);

  @Test
  void monthOfYear_isThatOfTheCalendar_beforeAndAfterThePlanToo() {
    assertThat(CALENDAR.months()).isEqualTo(16);
    assertThat(CALENDAR.monthOfYear(0)).isEqualTo(10);
    assertThat(CALENDAR.monthOfYear(2)).isZero();
    assertThat(CALENDAR.monthOfYear(15)).isEqualTo(1);
    assertThat(CALENDAR.monthOfYear(-1)).isEqualTo(9);
    assertThat(CALENDAR.monthOfYear(16)).isEqualTo(2);
  }

  @Test
  void season_isNamedByTheYearItStartsIn_andEndsInFebruary() {
    assertThat(CALENDAR.seasonYear(0)).isEqualTo(2026);
    assertThat(CALENDAR.seasonYear(3)).isEqualTo(2026);
    assertThat(CALENDAR.seasonYear(4)).isEqualTo(2027);
    assertThat(CALENDAR.seasonYear(16)).isEqualTo(2028);
    assertThat(CALENDAR.seasonYear(-8)).isEqualTo(2026);
    assertThat(CALENDAR.seasonYear(-9)).isEqualTo(2025);
    assertThat(CALENDAR.nextSeason(0)).isEqualTo(4);
    assertThat(CALENDAR.nextSeason(3)).isEqualTo(4);
    assertThat(CALENDAR.nextSeason(4)).isEqualTo(16);
    assertThat(CALENDAR.nextSeason(-9)).isEqualTo(-8);
    assertThat(CALENDAR.season(3)).isZero();
    assertThat(CALENDAR.season(4)).isEqualTo(1);
    assertThat(CALENDAR.isSeasonEnd(3)).isTrue();
    assertThat(CALENDAR.isSeasonEnd(4)).isFalse();
    assertThat(CALENDAR.isSeasonEnd(15)).isTrue();
  }

  @Test
  void winterAndYearEnd_areMonthsOfTheYear() {
    for (int month = 0; month < 16; month++) {
      int ofYear = (month + 10) % 12 + 1;
      assertThat(CALENDAR.isWinter(month)).isEqualTo(ofYear >= 11 || ofYear <= 3);
      assertThat(CALENDAR.isYearEnd(month)).isEqualTo(ofYear == 12);
    }
  }
}
