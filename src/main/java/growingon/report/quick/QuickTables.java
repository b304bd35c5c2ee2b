package growingon.report.quick;

import growingon.money.Accounts;
import growingon.nursery.Horizon;
import growingon.nursery.Quick;
import growingon.report.build.TableBuilder;
import growingon.report.figures.SeasonEnd;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.Arrays;

/** The tables of the answer to a quick question. */
final class QuickTables {
  private QuickTables() {}

  /** What becomes ready in each season, until nothing more does. */
  static Table seasons(Accounts accounts, WholeLot lot) {
    Horizon horizon = accounts.projection().horizon();
    String currency = accounts.projection().scenario().nursery().settings().currency();
    Plants[] ready = ready(lot, horizon);
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
    long sum = 0;
    for (int season = 0; season <= last; season++) {
      sum += ready[season].whole();
      table.row(
          horizon.seasonLabel(season),
          ready[season],
          (double) sum / lot.start(),
          money[season],
          balances[horizon.seasonLast(season)]);
    }
    return table.build();
  }

  private static int last(Plants[] ready, double[] money) {
    int last = 0;
    for (int season = 0; season < ready.length; season++) {
      last = ready[season].whole() > 0 || money[season] > 0 ? season : last;
    }
    return last;
  }

  /**
   * Plants that become ready in each season: sold, and standing ready at its end that did not
   * before. Ready plants that die are not taken off again.
   */
  static Plants[] ready(WholeLot lot, Horizon horizon) {
    Plants[] upTo = sold(lot, horizon);
    for (int i = 0; i < lot.seasons().size(); i++) {
      SeasonEnd end = new SeasonEnd(lot, i);
      upTo[end.season()] = upTo[end.season()].plus(end.ready());
    }
    Plants[] ready = new Plants[upTo.length];
    Plants before = Plants.NONE;
    for (int season = 0; season < upTo.length; season++) {
      Plants now =
          Plants.of(
              Math.max(before.exact(), upTo[season].exact()),
              Math.max(before.whole(), upTo[season].whole()));
      ready[season] = now.minus(before);
      before = now;
    }
    return ready;
  }

  /** Plants sold up to the end of each season. */
  private static Plants[] sold(WholeLot lot, Horizon horizon) {
    Plants[] sold = new Plants[horizon.seasons()];
    Arrays.fill(sold, Plants.NONE);
    for (WholeSale sale : lot.sales()) {
      for (int season = horizon.season(sale.month()); season < sold.length; season++) {
        sold[season] = sold[season].plus(sale.units(), sale.whole());
      }
    }
    return sold;
  }

  private static double[] money(WholeLot lot, Horizon horizon) {
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
