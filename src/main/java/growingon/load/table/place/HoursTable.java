package growingon.load.table.place;

import growingon.load.cell.Findings;
import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.NurseryShape;
import growingon.problem.Where;
import growingon.problem.advice.SettingsAdvice;
import growingon.problem.advice.ValueAdvice;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Hours available, all twelve months.
 *
 * <pre>
 * month             a word or 1 to 12
 * hours available   in that month
 * </pre>
 *
 * One figure a week in the settings does instead.
 */
public final class HoursTable {
  private static final Heading<Month> MONTH =
      Heading.text("month", As.CALENDAR_MONTH)
          .choice("month")
          .means("Month of the year; all twelve are needed");
  private static final Heading<Double> HOURS =
      Heading.number("hours available", As.number(Range.FROM_ZERO))
          .means("Hours that you and your people have for the plants in that month");
  public static final TableFormat FORMAT = TableFormat.of("hours", MONTH.needed(), HOURS.needed());

  /** Mean days of February over four years. */
  private static final double FEBRUARY_DAYS = 28.25;

  private HoursTable() {}

  /** Hours of each month, January first. */
  public static Optional<List<Double>> read(
      Optional<Table> table, Row settings, Findings findings) {
    Optional<Double> week = settings.find(NurseryShape.HOURS_A_WEEK, As.number(Range.FROM_ZERO));
    if (table.isPresent() && week.isPresent()) {
      settings.fail(
          NurseryShape.HOURS_A_WEEK,
          where -> SettingsAdvice.hoursTwice(where, table.get().where()));
    }
    return table.isPresent()
        ? months(table.get(), findings)
        : week.map(hours -> Stream.of(Month.values()).map(m -> inMonth(hours, m)).toList());
  }

  private static double inMonth(double hoursAWeek, Month month) {
    return hoursAWeek * (month == Month.FEBRUARY ? FEBRUARY_DAYS : month.maxLength()) / 7;
  }

  private static Optional<List<Double>> months(Table table, Findings findings) {
    Map<Month, Double> hours = new EnumMap<>(Month.class);
    table.rows().forEach(row -> add(row, hours));
    List<String> missing =
        Stream.of(Month.values()).filter(m -> !hours.containsKey(m)).map(As::nameOf).toList();
    boolean fine = table.isReadable() && table.rows().stream().allMatch(Row::isAccepted);
    if (fine && !missing.isEmpty()) {
      Where where = table.where();
      findings.add(SettingsAdvice.monthsMissing(where, missing));
    }
    return missing.isEmpty() ? Optional.of(List.copyOf(hours.values())) : Optional.empty();
  }

  private static void add(Row row, Map<Month, Double> hours) {
    row.needs(MONTH, HOURS);
    Month month = row.get(MONTH);
    double available = row.get(HOURS);
    if (!row.isFailed() && hours.containsKey(month)) {
      row.fail(MONTH, where -> ValueAdvice.defined(where, As.nameOf(month), As.nameOf(month)));
    }
    row.accept(() -> available).ifPresent(value -> hours.put(month, value));
  }
}
