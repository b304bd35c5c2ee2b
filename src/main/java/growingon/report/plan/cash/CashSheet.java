package growingon.report.plan.cash;

import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.Settings;
import growingon.nursery.time.Horizon;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.CashWords;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Cash by season and month, and the way from the lots' accounts to it. */
public final class CashSheet {
  private final CashFlow cash;
  private final Horizon horizon;
  private final Settings settings;
  private final String currency;
  private final CashEnds ends;
  private final List<CashItem> items;
  private final Phrases say;

  private CashSheet(Context context) {
    this.say = context.say();
    this.cash = context.accounts().cash();
    this.horizon = context.accounts().projection().horizon();
    this.settings = context.inputs().scenario().nursery().settings();
    this.currency = settings.currency();
    this.ends = new CashEnds(cash, currency);
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

  public static Sheet of(Context context) {
    CashSheet sheet = new CashSheet(context);
    List<Table> tables = List.of(sheet.seasons(), sheet.months(), ReconciliationTable.of(context));
    return new Sheet("Cash", new CashWords(context).sheet(), tables, List.of(), false);
  }

  private Column money(String key, String heading) {
    return Column.summed(key, heading, currency, Kind.MONEY);
  }

  /** Months that stand in a row, and what moves in them. */
  private record Months(Object label, int first, int last, double net) {}

  private Months season(int season) {
    int first = horizon.seasonFirst(season);
    int last = horizon.seasonLast(season);
    double net = Arrays.stream(CashItem.values()).mapToDouble(item -> sum(item, first, last)).sum();
    return new Months(horizon.seasonLabel(season), first, last, net);
  }

  private Table seasons() {
    return columns(
            TableOf.<Months>table("cash-by-season", "Cash by season")
                .note(
                    "Money is counted in the month in which it moves: plants on arrival, pots, substrate and"
                        + " materials in whole packs in the month of need, hours at %s each of which %s are"
                            .formatted(
                                say.each(settings.hourlyRate()), say.percent(settings.paidShare()))
                        + " paid in cash, places whether used or not.")
                .note("Lines that are nil throughout are left out. Out is shown below nil.")
                .column(Rows.season(), Months::label))
        .columns(List.of(ends.lowest(Months::first, Months::last)))
        .of(IntStream.range(0, horizon.seasons()).mapToObj(this::season).toList());
  }

  /** What moves in some months, and what there is at their end. */
  private TableOf<Months> columns(TableOf<Months> table) {
    for (CashItem item : items) {
      table.column(
          money(item.name().toLowerCase(Locale.ENGLISH), item.toString()),
          each -> sum(item, each.first, each.last));
    }
    return table
        .column(money("net", "in less out"), Months::net)
        .belowNil()
        .columns(List.of(ends.atEnd(Months::last)));
  }

  private double sum(CashItem item, int first, int last) {
    double sum = 0;
    for (int month = first; month <= last; month++) {
      sum += cash.get(item, month);
    }
    return sum;
  }

  private Table months() {
    return columns(
            TableOf.<Months>table("cash", "Cash by month")
                .note(
                    "The plan opens with %s, as the settings say. "
                            .formatted(say.money(cash.opening()))
                        + Sentences.WITHOUT_VAT)
                .column(Rows.month(), Months::label))
        .of(
            IntStream.range(0, cash.months())
                .mapToObj(month -> new Months(horizon.month(month), month, month, cash.net(month)))
                .toList());
  }
}
