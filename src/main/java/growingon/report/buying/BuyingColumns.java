package growingon.report.buying;

import growingon.buying.question.Spread;
import growingon.report.build.Picked;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Odds;
import java.util.Set;

/** The columns that tables of an answer are made of. */
final class BuyingColumns {
  /** Columns that say how sure something is. */
  private static final Set<String> OF_DRAWS = Set.of("p10", "p50", "p90", "better", "pays", "sure");

  private final String currency;
  private final int draws;

  BuyingColumns(BuyingFigures figures) {
    this.currency = figures.currency;
    this.draws = figures.answer.draws();
  }

  /** Without the columns that only draws can fill, where there are none. */
  Table asDrawn(Table table) {
    return draws == 0 ? Picked.without(table, OF_DRAWS) : table;
  }

  /** In how many draws of a hundred there is a gain. */
  long ofHundred(Spread spread) {
    return Odds.whole(spread.shareAbove());
  }

  Column text(String key, String heading) {
    return Column.of(key, heading, "", Kind.TEXT);
  }

  Column plants(String key, String heading) {
    return Column.of(key, heading, "plants", Kind.COUNT);
  }

  Column money(String key, String heading) {
    return Column.of(key, heading, currency, Kind.MONEY);
  }

  Column moneyEach(String key, String heading) {
    return Column.of(key, heading, currency, Kind.MONEY_EACH);
  }
}
