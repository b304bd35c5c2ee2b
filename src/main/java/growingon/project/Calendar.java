package growingon.project;

import growingon.nursery.Horizon;

/** The months of a horizon as plain numbers, for the loops. */
final class Calendar {
  private final int first;
  private final int[] season;
  private final boolean[] seasonEnd;

  Calendar(Horizon horizon) {
    this.first = horizon.firstMonth().getMonthValue() - 1;
    this.season = new int[horizon.months()];
    this.seasonEnd = new boolean[horizon.months()];
    for (int month = 0; month < season.length; month++) {
      season[month] = horizon.season(month);
      seasonEnd[month] = horizon.isSeasonEnd(month);
    }
  }

  /** Month of the year, 0 = January, of an offset that may lie before the plan. */
  int monthOfYear(int month) {
    return Math.floorMod(first + month, 12);
  }

  int season(int month) {
    return season[month];
  }

  boolean isSeasonEnd(int month) {
    return seasonEnd[month];
  }
}
