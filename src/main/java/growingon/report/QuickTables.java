package growingon.report;

import growingon.money.Accounts;
import growingon.money.BoughtLot;
import growingon.nursery.Horizon;
import growingon.nursery.Quick;
import growingon.project.LotHistory;
import growingon.project.Sale;
import growingon.project.SeasonStock;
import java.util.Arrays;

/** The tables of the answer to a quick question. */
final class QuickTables {
  private QuickTables() {}

  /** What becomes ready in each season, until nothing more does. */
  static Table seasons(Accounts accounts, BoughtLot bought) {
    LotHistory lot = accounts.projection().lot(bought.lot().name());
    Horizon horizon = accounts.projection().horizon();
    String currency = accounts.projection().scenario().nursery().settings().currency();
    double[] ready = ready(lot, horizon);
    double[] money = money(lot, horizon);
    double[] balances = accounts.cash().balances();
    int last = last(ready, money);
    TableBuilder table =
        TableBuilder.table("ready-by-season", "Ready and sold by season")
            .note(
                "Ready: plants of the size that may be sold, counted when they come to it; share: of"
                    + " the plants bought. Cash: since the start, this lot alone. "
                    + Sentences.WITHOUT_VAT)
            .text("season")
            .plants("ready")
            .column("share ready so far", "", Kind.SHARE)
            .summed("sales", currency, Kind.MONEY)
            .column("cash so far", currency, Kind.MONEY);
    double sum = 0;
    for (int season = 0; season <= last; season++) {
      sum += ready[season];
      table.row(
          horizon.seasonLabel(season),
          ready[season],
          sum / bought.lot().quantity(),
          money[season],
          balances[horizon.seasonLast(season)]);
    }
    return table.build();
  }

  private static int last(double[] ready, double[] money) {
    int last = 0;
    for (int season = 0; season < ready.length; season++) {
      last = ready[season] >= Phrases.NEGLIGIBLE || money[season] > 0 ? season : last;
    }
    return last;
  }

  /** Plants that become ready in each season: sold, and standing ready more than a season ago. */
  static double[] ready(LotHistory lot, Horizon horizon) {
    double[] ready = new double[horizon.seasons()];
    for (Sale sale : lot.sales()) {
      ready[horizon.season(sale.month())] += sale.units();
    }
    double before = 0;
    for (SeasonStock stock : lot.seasons()) {
      double now = Arrays.stream(stock.ready()).flatMapToDouble(Arrays::stream).sum();
      ready[stock.season()] += now - before;
      before = now;
    }
    return ready;
  }

  private static double[] money(LotHistory lot, Horizon horizon) {
    double[] money = new double[horizon.seasons()];
    lot.sales().forEach(sale -> money[horizon.season(sale.month())] += sale.money());
    return money;
  }

  /** Every value that nobody typed. */
  static Table usual(Quick quick) {
    TableBuilder table =
        TableBuilder.table("usual-values", "Usual values: nobody typed these")
            .note(
                "Common practice, no source. Type your own into the quick sheet, those first that you"
                    + " know better, and plan again.")
            .text("what")
            .text("value")
            .text("unit")
            .text("moves");
    quick
        .usual()
        .forEach(
            each -> table.row(each.what(), each.value(), Rows.text(each.unit()), each.moves()));
    return table.build();
  }
}
