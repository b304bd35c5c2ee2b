package growingon.report.plan;

import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.Horizon;
import growingon.nursery.Settings;
import growingon.report.build.Columns;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.CashWords;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Cash by season and month, and the way from the lots' accounts to it. */
final class CashSheet {
  private final CashFlow cash;
  private final Horizon horizon;
  private final Settings settings;
  private final String currency;
  private final List<CashItem> items;
  private final Phrases say;

  private CashSheet(Context context) {
    this.say = context.say();
    this.cash = context.accounts().cash();
    this.horizon = context.accounts().projection().horizon();
    this.settings = context.inputs().scenario().nursery().settings();
    this.currency = settings.currency();
    this.items = Arrays.stream(CashItem.values()).filter(this::isUsed).toList();
  }

  private boolean isUsed(CashItem item) {
    for (int month = 0; month < cash.months(); month++) {
      if (cash.get(item, month) != 0) {
        return true;
      }
    }
    return false;
  }

  static Sheet of(Context context) {
    CashSheet sheet = new CashSheet(context);
    List<Table> tables = List.of(sheet.seasons(), sheet.months(), ReconciliationTable.of(context));
    return new Sheet("Cash", new CashWords(context).sheet(), tables, List.of(), false);
  }

  private Column money(String key, String heading) {
    return Column.summed(key, heading, currency, Kind.MONEY);
  }

  private List<Column> columns(Column when, Column... last) {
    List<Column> columns = new ArrayList<>(List.of(when));
    for (CashItem item : items) {
      columns.add(money(item.name().toLowerCase(Locale.ENGLISH), item.toString()));
    }
    columns.add(Columns.belowNil(money("net", "in less out")));
    columns.addAll(List.of(last));
    return columns;
  }

  private Column balance(String key, String heading) {
    return Columns.belowNil(Column.of(key, heading, currency, Kind.MONEY));
  }

  private Table seasons() {
    double[] balances = cash.balances();
    Rows rows = new Rows();
    for (int season = 0; season < horizon.seasons(); season++) {
      int first = horizon.seasonFirst(season);
      int last = horizon.seasonLast(season);
      List<Object> row = new ArrayList<>(List.of(horizon.seasonLabel(season)));
      items.forEach(item -> row.add(sum(item, first, last)));
      row.add(Arrays.stream(CashItem.values()).mapToDouble(item -> sum(item, first, last)).sum());
      row.add(balances[last]);
      row.add(Arrays.stream(balances, first, last + 1).min().getAsDouble());
      rows.add(row);
    }
    return new Table(
        "cash-by-season",
        "Cash by season",
        List.of(
            "Money is counted in the month in which it moves: plants on arrival, pots, substrate and"
                + " materials in whole packs in the month of need, hours at %s each of which %s are"
                    .formatted(say.each(settings.hourlyRate()), say.percent(settings.paidShare()))
                + " paid in cash, places whether used or not.",
            "Lines that are nil throughout are left out. Out is shown below nil."),
        columns(
            Rows.season(),
            balance("balance", "cash at its end"),
            balance("lowest", "lowest month end")),
        rows.list());
  }

  private double sum(CashItem item, int first, int last) {
    double sum = 0;
    for (int month = first; month <= last; month++) {
      sum += cash.get(item, month);
    }
    return sum;
  }

  private Table months() {
    double[] balances = cash.balances();
    Rows rows = new Rows();
    for (int month = 0; month < cash.months(); month++) {
      List<Object> row = new ArrayList<>(List.of(horizon.month(month)));
      for (CashItem item : items) {
        row.add(sum(item, month, month));
      }
      row.add(cash.net(month));
      row.add(balances[month]);
      rows.add(row);
    }
    String opening = say.money(cash.opening());
    return new Table(
        "cash",
        "Cash by month",
        List.of(
            "The plan opens with " + opening + ", as the settings say. " + Sentences.WITHOUT_VAT),
        columns(Rows.month(), balance("balance", "cash at its end")),
        rows.list());
  }
}
