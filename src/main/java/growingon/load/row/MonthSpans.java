package growingon.load.row;

import growingon.nursery.time.MonthSpan;
import growingon.problem.advice.ValueAdvice;
import java.time.Month;
import java.util.Optional;

/** The columns "from month" and "to month", calendar months; both empty is the whole year. */
public final class MonthSpans {
  public static final Heading<Month> FROM =
      Heading.text("from month", As.CALENDAR_MONTH)
          .choice("month")
          .ifEmpty("January")
          .means("First month in which it sells");
  public static final Heading<Month> TO =
      Heading.text("to month", As.CALENDAR_MONTH)
          .choice("month")
          .ifEmpty("December")
          .means("Last month in which it sells");

  private MonthSpans() {}

  public static MonthSpan get(Row row) {
    if (row.has(FROM) != row.has(TO)) {
      row.fail(row.has(FROM) ? TO : FROM, ValueAdvice::halfSpan);
    }
    Optional<Month> from = row.find(FROM);
    Optional<Month> to = row.find(TO);
    if (from.isEmpty() || to.isEmpty()) {
      assumeAllYear(row);
      return MonthSpan.ALL_YEAR;
    }
    return new MonthSpan(from.get().getValue(), to.get().getValue());
  }

  private static void assumeAllYear(Row row) {
    if (!row.has(FROM) && !row.has(TO)) {
      row.assume(FROM, Month.JANUARY);
      row.assume(TO, Month.DECEMBER);
    }
  }
}
