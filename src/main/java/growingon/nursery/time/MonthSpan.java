package growingon.nursery.time;

import growingon.nursery.number.Check;

/**
 * A span of calendar months that may run over the turn of the year.
 *
 * @param from first month, 1 = January
 * @param to last month, 1 = January; less than {@code from} when it runs over the turn of the year
 */
public record MonthSpan(int from, int to) {
  /** January to December. */
  public static final MonthSpan ALL_YEAR = new MonthSpan(1, 12);

  public MonthSpan {
    Check.that(from >= 1 && from <= 12, "a month lies between 1 and 12", from);
    Check.that(to >= 1 && to <= 12, "a month lies between 1 and 12", to);
  }

  /** How many months the span has, 1 to 12. */
  public int months() {
    return Math.floorMod(to - from, 12) + 1;
  }

  /** Whether the month (1 = January) lies in the span. */
  public boolean contains(int month) {
    return Math.floorMod(month - from, 12) < months();
  }
}
