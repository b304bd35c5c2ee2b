package growingon.load;

import growingon.nursery.Horizon;
import growingon.nursery.OtherCash;
import growingon.nursery.OtherCash.Every;
import growingon.problem.Advice;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Cash that no lot causes.
 *
 * <pre>
 * month    "every month", "every season" (in its first month), or a month with its year
 * what     a word for it
 * amount   received if positive, paid if negative
 * </pre>
 */
final class OtherCashTable {
  private static final String MONTH = "month";
  private static final String WHAT = "what";
  private static final String AMOUNT = "amount";
  static final TableFormat FORMAT = TableFormat.of("other cash", MONTH, WHAT, AMOUNT).about(WHAT);

  private static final Map<String, Every> AGAIN =
      Map.of("every month", Every.MONTH, "every season", Every.SEASON);

  private OtherCashTable() {}

  static List<OtherCash> read(Optional<Table> table, String currency, Horizon horizon) {
    return table.map(Table::rows).orElse(List.of()).stream()
        .map(row -> cash(row, currency, horizon))
        .flatMap(Optional::stream)
        .toList();
  }

  private static Optional<OtherCash> cash(Row row, String currency, Horizon horizon) {
    row.needs(MONTH, WHAT, AMOUNT);
    Every every = AGAIN.getOrDefault(Texts.key(row.cell(MONTH).shown()), Every.ONCE);
    Optional<YearMonth> when = Optional.empty();
    if (every == Every.ONCE) {
      when = row.find(MONTH, As.MONTH);
      when.filter(month -> !horizon.contains(month)).ifPresent(month -> outside(row, month));
    } else {
      row.find(MONTH, As.TEXT);
    }
    Optional<YearMonth> month = when;
    String what = row.get(WHAT, As.NAME);
    double amount = row.get(AMOUNT, As.money(currency, Range.ANY));
    return row.accept(() -> new OtherCash(month, every, what, amount));
  }

  private static void outside(Row row, YearMonth month) {
    row.remark(MONTH, where -> Advice.cashOutsidePlan(where, row.cell(MONTH).shown()));
  }
}
