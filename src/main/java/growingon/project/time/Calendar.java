package growingon.project.time;

import growingon.nursery.time.Horizon;
import growingon.nursery.time.MonthSpan;
import java.time.Month;

/** The months of a horizon as plain numbers, for the loops. */
public final class Calendar {
  private final int first;
  private final int[] monthOfYear;
  private final int monthsMissed;
  private final int firstSeasonYear;
  private final boolean[] winter = new boolean[12];
  private final String[] seasonName;
  private final int[] season;
  private final boolean[] seasonEnd;
  private final int yearEnd;

  /**
   * The months of a horizon.
   *
   * @param winter months spent in winter places
   * @param yearEnd last month of the business year
   */
  public Calendar(Horizon horizon, MonthSpan winter, Month yearEnd) {
    this.yearEnd = yearEnd.getValue() - 1;
    this.first = horizon.firstMonth().getMonthValue() - 1;
    this.monthsMissed =
        Math.floorMod(horizon.firstMonth().getMonthValue() - horizon.seasonStart().getValue(), 12);
    this.firstSeasonYear = horizon.firstMonth().minusMonths(monthsMissed).getYear();
    for (int month = 0; month < 12; month++) {
      this.winter[month] = winter.contains(month + 1);
    }
    this.seasonName = new String[horizon.months()];
    this.monthOfYear = new int[horizon.months()];
    this.season = new int[horizon.months()];
    this.seasonEnd = new boolean[horizon.months()];
    for (int month = 0; month < season.length; month++) {
      monthOfYear[month] = Math.floorMod(first + month, 12);
      season[month] = horizon.season(month);
      seasonName[month] = horizon.seasonName(season[month]);
      seasonEnd[month] = horizon.isSeasonEnd(month);
    }
  }

  /** Month of the year, 0 = January, of an offset that may lie before the plan. */
  public int monthOfYear(int month) {
    return month >= 0 && month < monthOfYear.length
        ? monthOfYear[month]
        : Math.floorMod(first + month, 12);
  }

  /** Year in which the season of an offset starts; the offset may lie before or after the plan. */
  public int seasonYear(int month) {
    return firstSeasonYear + Math.floorDiv(month + monthsMissed, 12);
  }

  /** First offset of the season after that of an offset, which may lie before or after the plan. */
  public int nextSeason(int month) {
    return month + 12 - Math.floorMod(month + monthsMissed, 12);
  }

  /** Number of months of the plan. */
  public int months() {
    return season.length;
  }

  /** Whether a month, counted from 0, is spent in winter places. */
  public boolean isWinter(int month) {
    return winter[monthOfYear(month)];
  }

  /** Name of the season of a month: 2027/28. */
  public String seasonName(int month) {
    return seasonName[month];
  }

  /** Season of a month, counted from 0. */
  public int season(int month) {
    return season[month];
  }

  /** Whether it is the last of the business year. */
  public boolean isYearEnd(int month) {
    return monthOfYear(month) == yearEnd;
  }

  /** Whether it is the last of a season. */
  public boolean isSeasonEnd(int month) {
    return seasonEnd[month];
  }
}
