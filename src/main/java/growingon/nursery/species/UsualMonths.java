package growingon.nursery.species;

import growingon.nursery.time.Hemisphere;
import growingon.nursery.time.MonthShares;

/**
 * How a year's growth and a year's loss fall over the months where a species says nothing: shares
 * of twelve months, January first. Common practice, no source: when trunks thicken and when plants
 * are lost on the northern half of the world; on the southern half six months later.
 */
public final class UsualMonths {
  private static final MonthShares DECIDUOUS_GROWTH =
      MonthShares.of(0, 0, 3, 12, 22, 22, 16, 12, 8, 4, 1, 0);
  private static final MonthShares EVERGREEN_GROWTH =
      MonthShares.of(1, 2, 6, 12, 17, 17, 14, 12, 9, 6, 3, 1);
  private static final MonthShares DECIDUOUS_LOSS =
      MonthShares.of(6, 6, 10, 12, 9, 9, 11, 10, 7, 6, 7, 7);
  private static final MonthShares EVERGREEN_LOSS =
      MonthShares.of(10, 10, 10, 8, 7, 8, 11, 11, 7, 5, 6, 7);

  private UsualMonths() {}

  /** Shares of a year's growth. */
  public static MonthShares growth(Habit habit, Hemisphere hemisphere) {
    return in(hemisphere, habit == Habit.DECIDUOUS ? DECIDUOUS_GROWTH : EVERGREEN_GROWTH);
  }

  /** Shares of a year's loss. */
  public static MonthShares loss(Habit habit, Hemisphere hemisphere) {
    return in(hemisphere, habit == Habit.DECIDUOUS ? DECIDUOUS_LOSS : EVERGREEN_LOSS);
  }

  private static MonthShares in(Hemisphere hemisphere, MonthShares northern) {
    return hemisphere == Hemisphere.NORTH ? northern : northern.mirrored();
  }
}
