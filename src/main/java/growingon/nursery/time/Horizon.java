package growingon.nursery.time;

import growingon.nursery.number.Check;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Objects;

/**
 * The months of a plan and the seasons they fall into. It runs from the first month to the last
 * month of the n-th season; a part season counts as the first.
 *
 * @param firstMonth first month of the plan
 * @param seasons number of seasons, 1 to 50: as long as a plan may be, and ten more to see when its
 *     lots pay
 * @param seasonStart first month of a season
 */
public record Horizon(YearMonth firstMonth, int seasons, Month seasonStart) {
  /** The most seasons that are run. */
  public static final int MOST_SEASONS = 50;

  public Horizon {
    Objects.requireNonNull(firstMonth);
    Objects.requireNonNull(seasonStart);
    Check.that(seasons >= 1 && seasons <= MOST_SEASONS, "a plan has 1 to 50 seasons", seasons);
  }

  /** Months of the first season that went by before the plan, 0 to 11. */
  private int monthsMissed() {
    return Math.floorMod(firstMonth.getMonthValue() - seasonStart.getValue(), 12);
  }

  /** Number of months. */
  public int months() {
    return seasons * 12 - monthsMissed();
  }

  /** The month at an offset, 0 = first; offsets before and after the plan are fine. */
  public YearMonth month(int offset) {
    return firstMonth.plusMonths(offset);
  }

  /** Offset of a month, negative before the plan. */
  public int offset(YearMonth month) {
    return (int) ChronoUnit.MONTHS.between(firstMonth, month);
  }

  /** Whether the month lies within the plan. */
  public boolean contains(YearMonth month) {
    int offset = offset(month);
    return offset >= 0 && offset < months();
  }

  /** Season of an offset, 0 = first. */
  public int season(int offset) {
    return Math.floorDiv(offset + monthsMissed(), 12);
  }

  /** Year in which the season of an offset starts; the offset may lie before or after the plan. */
  public int seasonYear(int offset) {
    return firstMonth.minusMonths(monthsMissed()).getYear() + season(offset);
  }

  /** Whether it is the last month of its season. */
  public boolean isSeasonEnd(int offset) {
    return Math.floorMod(offset + monthsMissed(), 12) == 11;
  }

  /** Offset of the first month of a season, within the plan. */
  public int seasonFirst(int season) {
    return Math.max(0, season * 12 - monthsMissed());
  }

  /** Offset of the last month of a season. */
  public int seasonLast(int season) {
    return season * 12 - monthsMissed() + 11;
  }

  /** Name of a season: 2026/27, or 2026 where the season starts in January. */
  public String seasonName(int season) {
    return seasonName(month(season * 12 - monthsMissed()), seasonStart);
  }

  /** Name with what is missing of it: "2026/27 from Nov" for a part season. */
  public String seasonLabel(int season) {
    return season == 0 && monthsMissed() > 0
        ? seasonName(0) + " from " + firstMonth.format(SHORT_MONTH)
        : seasonName(season);
  }

  private static final DateTimeFormatter SHORT_MONTH =
      DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

  /** Name of the season that starts in the month given. */
  private static String seasonName(YearMonth first, Month seasonStart) {
    return seasonStart == Month.JANUARY
        ? Integer.toString(first.getYear())
        : "%d/%02d".formatted(first.getYear(), (first.getYear() + 1) % 100);
  }
}
