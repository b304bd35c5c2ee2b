package growingon.report;

import growingon.money.StockValue;
import growingon.nursery.Horizon;
import growingon.nursery.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** What the stock is worth at the end of each business year. */
final class StockValueSheet {
  private final List<StockValue> values;
  private final Horizon horizon;
  private final Settings settings;

  private StockValueSheet(Context context) {
    this.values = StockValue.of(context.accounts());
    this.horizon = context.accounts().projection().horizon();
    this.settings = context.accounts().projection().scenario().nursery().settings();
  }

  static Sheet of(Context context) {
    StockValueSheet sheet = new StockValueSheet(context);
    return FilledSheet.of("Stock value", sentences(), sheet.byYear(1), sheet.byLot());
  }

  /**
   * Totals only.
   *
   * @param leastLots a figure with fewer lots behind it is not told
   */
  static Sheet totals(Context context, int leastLots) {
    return FilledSheet.of(
        "Stock value", sentences(), new StockValueSheet(context).byYear(leastLots));
  }

  private static List<String> sentences() {
    return List.of(
        "A value on paper for the accounts, worked out from the plan: count the plants and ask your"
            + " accountant before you use it. "
            + Sentences.WITHOUT_VAT,
        Sentences.EXPECTED);
  }

  private Table byYear(int leastLots) {
    Map<Integer, List<StockValue>> years = new LinkedHashMap<>();
    values.forEach(each -> years.computeIfAbsent(each.month(), any -> new ArrayList<>()).add(each));
    TableBuilder table = columns(noted(), leastLots);
    years.forEach((month, lots) -> addYear(table, month, lots, leastLots));
    return table.build();
  }

  private TableBuilder noted() {
    String selling = Phrases.percent(settings.sellingCostShare());
    return TableBuilder.table("stock-value", "Stock value by year end")
        .note(
            "Cost to date: what the lots' accounts were charged, carried by the plants alive; losses"
                + " stay with them, plants sold take their share away. Kept plants are left out.")
        .note(
            "List less selling cost: by grade and quality, less %s (setting selling cost %%). The"
                    .formatted(selling)
                + " lower of the two is taken lot by lot.")
        .note(
            "Plants without a list price have no grade yet, or a grade or quality without a price;"
                + " they stand at their cost.");
  }

  private TableBuilder columns(TableBuilder table, int leastLots) {
    if (leastLots > 1) {
      table.note("A figure with a single lot behind it is not told by itself.");
    }
    return money(table.month("year end"));
  }

  private TableBuilder money(TableBuilder table) {
    String currency = settings.currency();
    return table
        .column("plants", "", Kind.PLANTS)
        .column("of these with a list price", "", Kind.PLANTS)
        .column("their cost to date", currency, Kind.MONEY)
        .column("list less selling cost", currency, Kind.MONEY)
        .column("lower of the two", currency, Kind.MONEY)
        .column("others, cost to date", currency, Kind.MONEY)
        .column("value in all", currency, Kind.MONEY);
  }

  private void addYear(TableBuilder table, int month, List<StockValue> lots, int leastLots) {
    if (lots.size() < leastLots) {
      return;
    }
    long priced = lots.stream().filter(each -> each.priced() > 1e-9).count();
    long others = lots.stream().filter(each -> each.unpriced() > 1e-9).count();
    boolean apart = isTold(priced, leastLots) && isTold(others, leastLots);
    table.row(
        horizon.month(month),
        WholePlants.nearest(sum(lots, each -> each.priced() + each.unpriced())),
        apart ? WholePlants.nearest(sum(lots, StockValue::priced)) : null,
        apart ? sum(lots, StockValue::pricedCost) : null,
        apart ? sum(lots, StockValue::list) : null,
        apart ? sum(lots, StockValue::lower) : null,
        apart ? sum(lots, StockValue::unpricedCost) : null,
        sum(lots, StockValue::value));
  }

  private static boolean isTold(long lots, int leastLots) {
    return lots == 0 || lots >= leastLots;
  }

  private static double sum(List<StockValue> lots, ToDoubleFunction<StockValue> what) {
    return lots.stream().mapToDouble(what).sum();
  }

  private Table byLot() {
    TableBuilder table =
        money(
            TableBuilder.table("stock-value-by-lot", "Stock value by year end and lot")
                .month("year end")
                .text("lot")
                .text("species"));
    for (StockValue each : values) {
      table.row(
          horizon.month(each.month()),
          each.lot().name(),
          each.lot().species(),
          WholePlants.nearest(each.priced() + each.unpriced()),
          WholePlants.nearest(each.priced()),
          each.pricedCost(),
          each.list(),
          each.lower(),
          each.unpricedCost(),
          each.value());
    }
    return table.build();
  }
}
