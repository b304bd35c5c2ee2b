package growingon.report.edition;

import growingon.money.LotAccount;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Purchase;
import growingon.plan.Planned;
import growingon.project.history.Stood;
import growingon.project.lot.LotHistory;
import growingon.report.build.FilledSheet;
import growingon.report.build.Picked;
import growingon.report.build.TableOf;
import growingon.report.chart.Charts;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Answer;
import growingon.report.model.Chart;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.Answers;
import growingon.report.plan.NotesSheet;
import growingon.report.plan.PlanReport;
import growingon.report.plan.SummarySheet;
import growingon.report.plan.cash.CashDigest;
import growingon.report.plan.cash.LotAccountsSheet;
import growingon.report.plan.sale.SaleableSheet;
import growingon.report.plan.sale.SalesSheet;
import growingon.report.plan.space.BenchSpaceSheet;
import growingon.report.plan.stock.LotsSheet;
import growingon.report.plan.stock.StockSheet;
import growingon.report.plan.stock.StockValueSheet;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.words.CashWords;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** What a partner sees: the whole nursery, with lots under an alias. */
final class PartnerEdition {
  private final Context context;
  private final SeasonFigures figures;
  private final boolean costs;
  private final String currency;
  private final HoursShare hours;
  private final Risk risk;

  private PartnerEdition(Context context, Optional<Context> whole, boolean costs) {
    this.hours = new HoursShare(context);
    this.risk = new Risk(whole, lot -> alias(whole.orElseThrow(), lot));
    this.context = context;
    this.figures = context.seasons();
    this.costs = costs;
    this.currency = context.inputs().scenario().nursery().settings().currency();
  }

  /** Lots stand in the same order as in the whole plan. */
  private String alias(Context whole, Lot lot) {
    int index = whole.inputs().scenario().lots().indexOf(lot);
    return context.inputs().scenario().lots().get(index).name();
  }

  static Report of(Planned seen, Optional<Context> whole, boolean costs) {
    Context context = new Context(seen, List.of());
    return new PartnerEdition(context, whole, costs).report();
  }

  private List<String> leftOut() {
    List<String> out = new ArrayList<>();
    out.add("names of lots: an alias stands for each, the same from run to run");
    out.add("notes, reasons, customer codes, plant passports and origins");
    if (!costs) {
      out.add("suppliers, what plants and lots cost, foreign currencies, and offers not taken");
    }
    out.add("the hourly rate: work by month stands as a share, and cash by season");
    out.add("what a bought lot gains in money");
    out.add("jobs, orders, weights, count sheets and values as typed");
    out.add("problems found, and names of files and folders");
    return out;
  }

  private Report report() {
    List<Chart> charts =
        new ArrayList<>(
            Picked.charts(Charts.of(context), Charts.SALES, Charts.SPACE, Charts.STOCK));
    hours.chart().ifPresent(charts::add);
    List<Sheet> sheets = PlanReport.withCharts(sheets(), charts);
    List<Answer> answers = answers(sheets);
    return EditionReport.of(context, sheets, charts, answers, leftOut(), currency);
  }

  private List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(EditionReport.summary(leftOut(), firstTables()));
    sheets.add(BenchSpaceSheet.of(context));
    sheets.add(cash());
    sheets.add(lots());
    sheets.add(StockSheet.of(context));
    sheets.add(SaleableSheet.of(context));
    sheets.add(SalesSheet.of(context));
    sheets.add(hours.sheet());
    sheets.add(costs ? StockValueSheet.of(context) : StockValueSheet.totals(context, 2));
    if (costs) {
      sheets.add(FilledSheet.of("Offers", List.of(Sentences.WITHOUT_VAT), offers()));
    }
    sheets.add(Picked.sheet(NotesSheet.of(context), NotesSheet.HOW_TO_READ, NotesSheet.CAUTIONS));
    return sheets;
  }

  private Sheet cash() {
    return new Sheet(
        "Cash",
        new CashWords(context).sheet(),
        new CashDigest(context.accounts(), true, costs).bySeason(),
        List.of(),
        false);
  }

  private Sheet lots() {
    List<Table> tables = new ArrayList<>();
    if (risk.isKnown()) {
      tables.add(risk.bought());
    }
    tables.add(accounts());
    if (costs) {
      tables.add(suppliers());
      tables.addAll(costTable());
    }
    tables.addAll(Picked.tables(LotsSheet.of(context), LotsSheet.GRADES));
    return FilledSheet.of("Lots", List.of(), tables.toArray(Table[]::new));
  }

  /** Seasons without hours: beside their cash these would tell what an hour costs. */
  private List<Table> firstTables() {
    List<Table> tables = new ArrayList<>();
    Picked.tables(SummarySheet.of(context), SummarySheet.SEASONS)
        .forEach(table -> tables.add(Picked.without(table, Set.of("hours_short"))));
    if (risk.isKnown()) {
      tables.add(risk.seasons());
    }
    return tables;
  }

  /** Costs without hours, so that an hour cannot be priced. */
  private List<Table> costTable() {
    List<String> notes =
        List.of("The rest of the costs is work and care. " + Sentences.WITHOUT_VAT);
    return Picked.tables(LotAccountsSheet.of(context), LotAccountsSheet.COSTS).stream()
        .map(
            table ->
                Picked.columns(
                    table,
                    notes,
                    LotAccountsSheet.Costs.LOT,
                    LotAccountsSheet.Costs.SPECIES,
                    LotAccountsSheet.Costs.PLANTS,
                    LotAccountsSheet.Costs.CHARGES,
                    LotAccountsSheet.Costs.POTS,
                    LotAccountsSheet.Costs.SUBSTRATE,
                    LotAccountsSheet.Costs.MATERIALS,
                    LotAccountsSheet.Costs.PLACE,
                    LotAccountsSheet.Costs.TOTAL,
                    LotAccountsSheet.Costs.EACH_STARTED,
                    LotAccountsSheet.Costs.EACH_ALIVE,
                    LotAccountsSheet.Costs.EACH_SOLD))
        .toList();
  }

  /** A lot's account beside its whole plants. */
  private record Booked(LotAccount account, WholeLot whole) {
    Lot lot() {
      return account.lot();
    }
  }

  private List<Booked> booked() {
    List<LotAccount> lots = context.accounts().lots();
    return IntStream.range(0, lots.size())
        .mapToObj(i -> new Booked(lots.get(i), context.whole().lots().get(i)))
        .toList();
  }

  private Table accounts() {
    TableOf<Booked> table =
        TableOf.<Booked>table(
                "lot-accounts",
                costs ? "Plants and result of each lot" : "Plants and sales of each lot")
            .note(
                "Pot: the one it stands in when the plan or the lot begins. "
                    + (costs
                        ? "Result = sales − costs within the plan: plants, pots, substrate,"
                            + " materials, work, care and place. Plants standing at the end have no"
                            + " value here. "
                        : "")
                    + Sentences.WITHOUT_VAT)
            .text("lot", each -> each.lot().name())
            .text("species", each -> each.lot().species())
            .text("form", each -> each.lot().form().toString())
            .text("pot", each -> pot(each.whole.history()))
            .summed("started", "", Kind.COUNT, each -> each.lot().quantity())
            .plants("lost", each -> Plants.of(each.account.lost(), each.whole.lost()))
            .plants("sold", each -> Plants.of(each.account.sold(), each.whole.sold()))
            .plants("standing", each -> Plants.of(each.account.standing(), each.whole.standing()))
            .plants("of these kept", each -> Plants.of(each.account.kept(), each.whole.kept()))
            .summed("sales", currency, Kind.MONEY, each -> each.account.sales());
    if (costs) {
      table
          .summed("costs", currency, Kind.MONEY, each -> each.account.costs())
          .summed("result", currency, Kind.MONEY, each -> each.account.result());
    }
    return table.of(booked());
  }

  private static String pot(LotHistory lot) {
    for (int month = lot.start(); month < lot.months(); month++) {
      Stood stood = lot.stood(month);
      if (stood != null) {
        return Rows.text(stood.pot());
      }
    }
    return null;
  }

  private Table suppliers() {
    return TableOf.<Lot>table("lot-suppliers", "Where lots come from, and what a plant cost")
        .note(
            "Cost to date: of a plant in the stock list, spent before the plan. Price: of a plant"
                + " bought within it. "
                + Sentences.WITHOUT_VAT)
        .text("lot", Lot::name)
        .text("supplier", lot -> Rows.text(lot.papers().supplier()))
        .column(
            "cost to date each",
            currency,
            Kind.MONEY_EACH,
            lot -> lot.purchase().isPresent() ? null : lot.unitCost())
        .column(
            "price each",
            currency,
            Kind.MONEY_EACH,
            lot -> lot.purchase().map(Purchase::unitPrice).orElse(null))
        .of(context.accounts().lots().stream().map(LotAccount::lot).toList());
  }

  /** An offer from a number on. */
  private record Offered(Offer offer, Offer.PriceBreak step) {}

  private List<Offered> offered() {
    return context.inputs().offers().stream()
        .flatMap(offer -> offer.breaks().stream().map(step -> new Offered(offer, step)))
        .toList();
  }

  private Table offers() {
    return TableOf.<Offered>table("offers", "Offers, taken or not")
        .text("offer", each -> each.offer.name())
        .text("supplier", each -> Rows.text(each.offer.lot().papers().supplier()))
        .text("species", each -> each.offer.lot().species())
        .text("form", each -> each.offer.lot().form().toString())
        .month("arrives in", each -> each.offer.arrival())
        .column("least", "", Kind.COUNT, each -> each.step.least())
        .column("price each", "", Kind.MONEY_EACH, each -> each.step.unitPrice())
        .column("carriage", "", Kind.MONEY_EACH, each -> each.offer.carriage())
        .column("import charges", "", Kind.MONEY_EACH, each -> each.offer.importCharges())
        .text("currency", each -> each.offer.currency())
        .of(offered());
  }

  private List<Answer> answers(List<Sheet> sheets) {
    Answers answers = new Answers(context, sheets);
    List<Answer> list = new ArrayList<>();
    list.add(answers.saleable());
    list.add(answers.space());
    list.add(new Answer("Are there hours enough", List.of(hours.sentence()), List.of(), List.of()));
    list.add(answers.earnings());
    if (risk.isKnown()) {
      list.add(new Answer("How sure it is", risk.sentences(), List.of(), List.of()));
    }
    return list;
  }
}
