package growingon.report.edition;

import growingon.money.LotAccount;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.plan.Planned;
import growingon.project.Projection;
import growingon.report.build.FilledSheet;
import growingon.report.build.Picked;
import growingon.report.build.TableOf;
import growingon.report.chart.Charts;
import growingon.report.chart.FewSeries;
import growingon.report.figures.Context;
import growingon.report.model.Answer;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Series;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.NotesSheet;
import growingon.report.plan.PlanReport;
import growingon.report.plan.cash.CashDigest;
import growingon.report.plan.sale.LadderTotals;
import growingon.report.plan.stock.StockValueSheet;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.report.words.CashWords;
import growingon.report.words.LibraryWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** What a bank sees: totals by grade ladder, cash, and what the stock is worth. */
final class BankEdition {
  private static final int LEAST_LOTS = 2;
  private static final List<String> LEFT_OUT =
      List.of(
          "lots, species, forms, pots, places and grades by name: totals by grade ladder stand here,"
              + " and what tells of a single lot is merged into other",
          "list prices, suppliers, what plants and hours cost, foreign currencies and offers",
          "accounts of lots",
          "notes, reasons, customer codes, plant passports and origins",
          "space, hours, jobs and orders, and values as typed",
          "problems found, and names of files and folders");

  private final Context context;
  private final Projection projection;
  private final Horizon horizon;
  private final String currency;
  private final LadderTotals money;
  private final Risk risk;
  private final Phrases say;

  private BankEdition(Context context, Optional<Context> whole) {
    this.say = context.say();
    this.risk = new Risk(whole, lot -> "bought lot " + number(whole.orElseThrow(), lot));
    this.context = context;
    this.projection = context.accounts().projection();
    this.horizon = projection.horizon();
    this.currency = projection.scenario().nursery().settings().currency();
    this.money = LadderTotals.receipts(context);
  }

  /** Bought lots are numbered in the order in which they are told. */
  private static int number(Context whole, Lot lot) {
    List<Lot> bought =
        whole.inputs().scenario().lots().stream()
            .filter(each -> each.purchase().isPresent())
            .toList();
    return bought.indexOf(lot) + 1;
  }

  static Report of(Planned seen, Optional<Context> whole) {
    Context context = new Context(seen, List.of());
    return new BankEdition(context, whole).report();
  }

  private Report report() {
    List<Chart> charts = new ArrayList<>();
    sales().ifPresent(charts::add);
    charts.addAll(Picked.charts(Charts.of(context), Charts.CASH));
    return EditionReport.of(
        context, PlanReport.withCharts(sheets(), charts), charts, answers(), LEFT_OUT, currency);
  }

  private boolean hasTotals() {
    return projection.lots().size() >= LEAST_LOTS;
  }

  private List<Sheet> sheets() {
    CashDigest cash = new CashDigest(context.accounts(), false, false);
    List<Sheet> sheets = new ArrayList<>();
    List<Table> first = new ArrayList<>(hasTotals() ? List.of(totals()) : List.of());
    if (risk.isKnown()) {
      first.add(risk.seasons());
    }
    sheets.add(EditionReport.summary(LEFT_OUT, first));
    sheets.add(FilledSheet.of("Sales", List.of(Sentences.WITHOUT_VAT), salesTable(), sold()));
    sheets.add(FilledSheet.of("Saleable", List.of(Sentences.EXPECTED), saleable()));
    sheets.add(new Sheet("Cash", cashWords(), cash.tables(), List.of(), false));
    sheets.add(StockValueSheet.totals(context, LEAST_LOTS));
    sheets.add(Picked.sheet(NotesSheet.of(context), NotesSheet.CAUTIONS));
    return sheets;
  }

  private Table salesTable() {
    return money.table(
        "sales-by-ladder", "Expected sales by grade ladder", "", currency, Kind.MONEY);
  }

  private Table sold() {
    return LadderTotals.sold(context)
        .table("sold-by-ladder", "Plants sold by grade ladder", "", "", Kind.PLANTS);
  }

  private Table saleable() {
    return LadderTotals.saleable(context)
        .table(
            "saleable-by-ladder",
            "Plants ready by season and grade ladder",
            "Sold in the season, or ready and unsold at its end; a plant left unsold is counted"
                + " again in the next.",
            "",
            Kind.PLANTS);
  }

  private double sum(ToDoubleFunction<LotAccount> what) {
    return context.accounts().lots().stream().mapToDouble(what).sum();
  }

  /** A sum over the whole plan. */
  private record Total(String what, double amount) {}

  private Table totals() {
    return TableOf.<Total>table("nursery-totals", "The nursery over the whole plan")
        .note(
            "Costs: plants, pots, substrate, materials, all hours, care and places as the lots use"
                + " them. Result: sales less these; what no lot causes, other cash and space not used,"
                + " is not in it, but in cash and its present value. "
                + Sentences.WITHOUT_VAT)
        .text("what", Total::what)
        .column("amount", currency, Kind.MONEY, Total::amount)
        .of(
            List.of(
                new Total("sales", sum(LotAccount::sales)),
                new Total("costs of all lots", sum(LotAccount::costs)),
                new Total("result of all lots", sum(LotAccount::result)),
                new Total("plants unsold at the end, at list", context.accounts().unsoldAtList()),
                new Total("net present value of cash", context.accounts().presentValue())));
  }

  private List<String> cashWords() {
    return new CashWords(context).cashAndValue();
  }

  private Optional<Chart> sales() {
    Map<String, double[]> byLadder = new LinkedHashMap<>();
    for (LadderTotals.Row row : money.rows()) {
      byLadder.put(
          row.name(), IntStream.range(0, horizon.seasons()).mapToDouble(row::value).toArray());
    }
    List<Series> series = FewSeries.of(byLadder, "other ladders");
    List<String> seasons =
        IntStream.range(0, horizon.seasons()).mapToObj(horizon::seasonLabel).toList();
    return series.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Chart(
                Charts.SALES,
                "Expected sales by season",
                "By grade ladder; without VAT.",
                ChartKind.STACKED_BARS,
                currency + " a season",
                seasons,
                series));
  }

  private List<Answer> answers() {
    List<Answer> answers = new ArrayList<>();
    List<String> sells = new ArrayList<>(List.of(salesSentence()));
    new LibraryWords(projection.scenario()).summary().ifPresent(sells::add);
    answers.add(new Answer("What it sells", sells, salesTable().notes(), List.of()));
    answers.add(
        new Answer("Cash and value", cashWords(), List.of(Sentences.WITHOUT_VAT), List.of()));
    if (risk.isKnown()) {
      answers.add(new Answer("How sure it is", risk.sentences(), List.of(), List.of()));
    }
    return answers;
  }

  private String salesSentence() {
    List<String> told =
        IntStream.range(0, horizon.seasons())
            .filter(season -> money.total(season) > 0)
            .mapToObj(season -> horizon.seasonLabel(season) + " " + say.money(money.total(season)))
            .toList();
    return told.isEmpty()
        ? "No sales are told: none are expected, or a single lot makes them."
        : "Sales expected: " + Phrases.list(told) + ", without VAT.";
  }
}
