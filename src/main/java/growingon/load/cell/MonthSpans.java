package growingon.load.cell;

import growingon.nursery.MonthSpan;
import growingon.problem.advice.ValueAdvice;
import java.time.Month;
import java.util.Optional;

/** The columns "from month" and "to month", calendar months; both empty is the whole year. */
public final class MonthSpans {
  public static final String FROM = "from month";
  public static final String TO = "to month";

  private MonthSpans() {}

  public static MonthSpan get(Row row) {
    if (row.has(FROM) != row.has(TO)) {
      row.fail(row.has(FROM) ? TO : FROM, ValueAdvice::halfSpan);
    }
    Optional<Month> from = row.find(FROM, As.CALENDAR_MONTH);
    Optional<Month> to = row.find(TO, As.CALENDAR_MONTH);
    if (from.isEmpty() || to.isEmpty()) {
      assumeAllYear(row);
      return MonthSpan.ALL_YEAR;
    }
    return new MonthSpan(from.get().getValue(), to.get().getValue());
  }

  private static void assumeAllYear(Row row) {
    if (!row.has(FROM) && !row.has(TO)) {
      row.assume(FROM, As.CALENDAR_MONTH, Month.JANUARY);
      row.assume(TO, As.CALENDAR_MONTH, Month.DECEMBER);
    }
  }
}
