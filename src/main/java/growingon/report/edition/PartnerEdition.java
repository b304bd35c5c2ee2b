package growingon.report.edition;

import growingon.money.Accounts;
import growingon.money.LotAccount;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Inputs;
import growingon.nursery.Lot;
import growingon.nursery.Offer;
import growingon.project.LotHistory;
import growingon.project.Stood;
import growingon.report.build.FilledSheet;
import growingon.report.build.Picked;
import growingon.report.build.TableBuilder;
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
import growingon.report.plan.BenchSpaceSheet;
import growingon.report.plan.CashDigest;
import growingon.report.plan.HoursSheet;
import growingon.report.plan.LotAccountsSheet;
import growingon.report.plan.LotsBoughtSheet;
import growingon.report.plan.LotsSheet;
import growingon.report.plan.NotesSheet;
import growingon.report.plan.PlanReport;
import growingon.report.plan.SaleableSheet;
import growingon.report.plan.SalesSheet;
import growingon.report.plan.StockSheet;
import growingon.report.plan.StockValueSheet;
import growingon.report.plan.SummarySheet;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.words.CashWords;
import growingon.whole.WholeLot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a partner sees: the whole nursery, with lots under an alias. */
final class PartnerEdition {
  private final Context context;
  private final SeasonFigures figures;
  private final boolean costs;
  private final String currency;

  private PartnerEdition(Context context, boolean costs) {
    this.context = context;
    this.figures = context.seasons();
    this.costs = costs;
    this.currency = context.inputs().scenario().nursery().settings().currency();
  }

  static Report of(Inputs seen, Accounts accounts, ValueJoin join, boolean costs) {
    Context context = new Context(seen, accounts, join, Optional.empty(), List.of());
    return new PartnerEdition(context, costs).report();
  }

  private List<String> leftOut() {
    List<String> out = new ArrayList<>();
    out.add("names of lots: an alias stands for each, the same from run to run");
    out.add("notes, reasons, customer codes, plant passports and origins");
    if (!costs) {
      out.add("suppliers, what plants cost, foreign currencies, and offers not taken");
    }
    out.add("the hourly rate");
    out.add("jobs, orders, weights, count sheets and values as typed");
    out.add("problems found, and names of files and folders");
    return out;
  }

  private Report report() {
    List<Chart> charts =
        Picked.charts(
            Charts.of(context),
            Charts.SALES,
            Charts.SPACE,
            Charts.HOURS,
            Charts.CASH,
            Charts.STOCK);
    List<Sheet> sheets = PlanReport.withCharts(sheets(), charts);
    List<Answer> answers = answers(sheets);
    return EditionReport.of(context, sheets, charts, answers, leftOut(), currency);
  }

  private List<Sheet> sheets() {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(
        EditionReport.summary(
            leftOut(), Picked.tables(SummarySheet.of(context), SummarySheet.SEASONS)));
    sheets.add(BenchSpaceSheet.of(context));
    sheets.add(cash());
    sheets.add(lots());
    sheets.add(StockSheet.of(context));
    sheets.add(SaleableSheet.of(context));
    sheets.add(SalesSheet.of(context));
    sheets.add(HoursSheet.of(context));
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
        new CashDigest(context.accounts(), true, costs).tables(),
        List.of(),
        false);
  }

  private Sheet lots() {
    List<Table> tables = new ArrayList<>();
    Sheet bought = LotsBoughtSheet.of(context);
    tables.addAll(
        costs
            ? Picked.tables(bought, LotsBoughtSheet.GAINS, LotsBoughtSheet.LIMITS)
            : gains(bought));
    tables.add(accounts());
    if (costs) {
      tables.add(suppliers());
      tables.addAll(costTable());
    }
    tables.addAll(Picked.tables(LotsSheet.of(context), LotsSheet.GRADES));
    return FilledSheet.of("Lots", List.of(), tables.toArray(Table[]::new));
  }

  private static List<Table> gains(Sheet bought) {
    List<String> notes =
        List.of(
            "Gain: present value of the whole nursery's cash with the lot less that without it."
                + " More space and hours: what is missing because of it. "
                + Sentences.WITHOUT_VAT);
    return Picked.tables(bought, LotsBoughtSheet.GAINS).stream()
        .map(
            table ->
                Picked.columns(
                    table,
                    notes,
                    "lot",
                    "plants",
                    "gain",
                    "return_rate",
                    "money_back",
                    "overflow",
                    "hours_short",
                    "verdict"))
        .toList();
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

  private Table accounts() {
    TableBuilder table =
        TableBuilder.table("lot-accounts", "Plants and result of each lot")
            .note(
                "Pot: the one it stands in when the plan or the lot begins. Result = sales − costs"
                    + " within the plan: plants, pots, substrate, materials, work, care and place."
                    + " Plants standing at the end have no value here. "
                    + Sentences.WITHOUT_VAT)
            .text("lot")
            .text("species")
            .text("form")
            .text("pot")
            .summed("started", "", Kind.COUNT)
            .plants("lost")
            .plants("sold")
            .plants("standing")
            .plants("of these kept")
            .summed("costs", currency, Kind.MONEY)
            .summed("sales", currency, Kind.MONEY)
            .summed("result", currency, Kind.MONEY);
    List<LotAccount> lots = context.accounts().lots();
    for (int i = 0; i < lots.size(); i++) {
      addLot(table, lots.get(i), context.whole().lots().get(i));
    }
    return table.build();
  }

  private void addLot(TableBuilder table, LotAccount account, WholeLot whole) {
    Lot lot = account.lot();
    table.row(
        lot.name(),
        lot.species(),
        lot.form().toString(),
        pot(whole.history()),
        lot.quantity(),
        Plants.of(account.lost(), whole.lost()),
        Plants.of(account.sold(), whole.sold()),
        Plants.of(account.standing(), whole.standing()),
        Plants.of(account.kept(), whole.kept()),
        account.costs(),
        account.sales(),
        account.result());
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
    TableBuilder table =
        TableBuilder.table("lot-suppliers", "Where lots come from, and what a plant cost")
            .note(
                "Cost to date: of a plant in the stock list, spent before the plan. Price: of a plant"
                    + " bought within it. "
                    + Sentences.WITHOUT_VAT)
            .text("lot")
            .text("supplier")
            .column("cost to date each", currency, Kind.MONEY_EACH)
            .column("price each", currency, Kind.MONEY_EACH);
    for (LotAccount account : context.accounts().lots()) {
      Lot lot = account.lot();
      boolean bought = lot.purchase().isPresent();
      table.row(
          lot.name(),
          Rows.text(lot.papers().supplier()),
          bought ? null : lot.unitCost(),
          bought ? lot.purchase().get().unitPrice() : null);
    }
    return table.build();
  }

  private Table offers() {
    TableBuilder table =
        TableBuilder.table("offers", "Offers, taken or not")
            .text("offer")
            .text("supplier")
            .text("species")
            .text("form")
            .month("arrives in")
            .column("least", "", Kind.COUNT)
            .column("price each", "", Kind.MONEY_EACH)
            .column("carriage", "", Kind.MONEY_EACH)
            .column("import charges", "", Kind.MONEY_EACH)
            .text("currency");
    for (Offer offer : context.inputs().offers()) {
      for (Offer.PriceBreak step : offer.breaks()) {
        table.row(
            offer.name(),
            Rows.text(offer.lot().papers().supplier()),
            offer.lot().species(),
            offer.lot().form().toString(),
            offer.arrival(),
            step.least(),
            step.unitPrice(),
            offer.carriage(),
            offer.importCharges(),
            offer.currency());
      }
    }
    return table.build();
  }

  private List<Answer> answers(List<Sheet> sheets) {
    Answers answers = new Answers(context, sheets);
    List<Answer> list = new ArrayList<>();
    list.add(answers.saleable());
    list.add(answers.space());
    list.add(answers.hours());
    list.add(answers.earnings());
    if (!context.bought().isEmpty()) {
      list.add(costs ? answers.bought() : answers.boughtWithoutCosts());
    }
    return list;
  }
}
