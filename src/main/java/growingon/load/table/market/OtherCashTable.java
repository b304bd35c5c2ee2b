package growingon.load.table.market;

import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.OtherCash.Every;
import growingon.nursery.time.Horizon;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.SettingsAdvice;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cash beside what routes and tables cause: of the nursery, or of one lot.
 *
 * <pre>
 * month      "every month", "every season" (in its first month), or a month with its year
 * what       a word for it
 * amount     received if positive, paid if negative
 * from, to   first and last month of what comes again and again [its lot's time, else the plan]
 * lot        the lot or offer that causes it [none]
 * hours      of work each time, at the hourly rate on top of the amount [0]
 * </pre>
 */
public final class OtherCashTable {
  private static final Heading<YearMonth> MONTH =
      Heading.text("month", As.MONTH).means("every month, every season, or a month with its year");
  private static final Heading<String> WHAT = Heading.named("what").means("A word for it");
  private static final Heading<Double> AMOUNT =
      Heading.money("amount").means("Received; negative if paid");
  private static final Heading<YearMonth> FROM =
      Heading.month("from")
          .expert()
          .means("First month of what comes again and again; empty: the arrival of its lot");
  private static final Heading<YearMonth> TO =
      Heading.month("to")
          .expert()
          .means("Last month of what comes again and again; empty: the last plant of its lot");
  private static final Heading<String> LOT =
      Heading.text("lot")
          .expert()
          .means(
              "Lot or offer that causes it, which then stands in its account; empty: the nursery");
  private static final Heading<Double> HOURS =
      Heading.number("hours", As.number(Range.FROM_ZERO))
          .expert()
          .usual(0.0)
          .means("Hours of work each time, at the hourly rate on top of the amount");
  public static final TableFormat FORMAT =
      TableFormat.of(
              "other cash",
              MONTH.needed(),
              WHAT.needed(),
              AMOUNT.needed(),
              LOT.also("offer"),
              FROM,
              TO,
              HOURS)
          .about(WHAT);

  private static final Map<String, Every> AGAIN =
      Map.of("every month", Every.MONTH, "every season", Every.SEASON);

  private final String currency;
  private final Horizon horizon;
  private final Names lots;

  private OtherCashTable(String currency, Horizon horizon, Names lots) {
    this.currency = currency;
    this.horizon = horizon;
    this.lots = lots;
  }

  /**
   * All rows.
   *
   * @param lots names of lots and offers
   */
  public static List<OtherCash> read(
      Optional<Table> table, String currency, Horizon horizon, Names lots) {
    OtherCashTable reader = new OtherCashTable(currency, horizon, lots);
    return table.map(Table::rows).orElse(List.of()).stream()
        .map(reader::cash)
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<OtherCash> cash(Row row) {
    row.needs(MONTH, WHAT, AMOUNT);
    Every every = AGAIN.getOrDefault(Texts.key(row.cell(MONTH).shown()), Every.ONCE);
    Optional<YearMonth> when = Optional.empty();
    if (every == Every.ONCE) {
      when = row.find(MONTH);
      when.filter(month -> !horizon.contains(month)).ifPresent(month -> outside(row, month));
    } else {
      row.find(MONTH.as(As.TEXT));
    }
    Optional<YearMonth> month = when;
    String what = row.get(WHAT);
    double amount = row.get(AMOUNT.reading(As.money(currency, Range.ANY)));
    double hours = row.get(HOURS);
    Optional<String> lot = row.findName(LOT, lots);
    Optional<YearMonth> from = row.find(FROM);
    Optional<YearMonth> to = row.find(TO);
    checkMonths(row, every, from, to);
    return row.accept(() -> new OtherCash(month, every, what, amount, hours, lot, from, to));
  }

  private static void checkMonths(
      Row row, Every every, Optional<YearMonth> from, Optional<YearMonth> to) {
    if (every == Every.ONCE) {
      from.ifPresent(month -> row.fail(FROM, where -> DefinitionAdvice.onceWithFrom(where, month)));
      to.ifPresent(month -> row.fail(TO, where -> DefinitionAdvice.onceWithFrom(where, month)));
    } else if (from.isPresent() && to.isPresent() && to.get().isBefore(from.get())) {
      row.fail(TO, where -> DefinitionAdvice.endsBeforeItBegins(where, to.get(), from.get()));
    }
  }

  private static void outside(Row row, YearMonth month) {
    row.remark(MONTH, where -> SettingsAdvice.cashOutsidePlan(where, row.cell(MONTH).shown()));
  }
}
