package growingon.report.quick;

import growingon.money.Accounts;
import growingon.nursery.Quick;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
import growingon.report.figures.SeasonEnd;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The tables of the answer to a quick question. */
final class QuickTables {
  private QuickTables() {}

  /**
   * A season of the lot.
   *
   * @param share of the plants bought that are ready so far
   */
  private record Season(int season, Plants ready, double share, double sales, double cash) {}

  private static List<Season> all(Accounts accounts, WholeLot lot) {
    Horizon horizon = accounts.projection().horizon();
    Plants[] ready = ready(lot, horizon);
    double[] money = money(lot, horizon);
    double[] balances = accounts.cash().balances();
    List<Season> seasons = new ArrayList<>();
    long sum = 0;
    for (int season = 0; season <= last(ready, money); season++) {
      sum += ready[season].whole();
      seasons.add(
          new Season(
              season,
              ready[season],
              (double) sum / lot.start(),
              money[season],
              balances[horizon.seasonLast(season)]));
    }
    return seasons;
  }

  /** What becomes ready in each season, until nothing more does. */
  static Table seasons(Accounts accounts, WholeLot lot) {
    Horizon horizon = accounts.projection().horizon();
    String currency = accounts.projection().scenario().nursery().settings().currency();
    return TableOf.<Season>table("ready-by-season", "Ready and sold by season")
        .note(
            "Ready: plants of the size that may be sold, counted when they come to it; share: of"
                + " the plants bought. Cash: since the start, this lot alone. "
                + Sentences.WITHOUT_VAT)
        .text("season", each -> horizon.seasonLabel(each.season))
        .plants("ready", Season::ready)
        .column("share ready so far", "", Kind.SHARE, Season::share)
        .summed("sales", currency, Kind.MONEY, Season::sales)
        .column("cash so far", currency, Kind.MONEY, Season::cash)
        .of(all(accounts, lot));
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
    return TableOf.<Quick.Usual>table("usual-values", "Usual values: nobody typed these")
        .note(
            "Common practice, no source. Type your own into the quick sheet, those first that you"
                + " know better, and plan again.")
        .text("what", Quick.Usual::what)
        .text("value", Quick.Usual::value)
        .text("unit", each -> Rows.text(each.unit()))
        .text("moves", Quick.Usual::moves)
        .of(quick.usual());
  }
}
