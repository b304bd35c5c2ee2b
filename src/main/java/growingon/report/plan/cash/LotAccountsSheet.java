package growingon.report.plan.cash;

import growingon.money.CostKind;
import growingon.money.LotAccount;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import java.util.List;
import java.util.stream.IntStream;

/** What each lot takes and brings, and how the lots' results lead to the nursery's cash. */
public final class LotAccountsSheet {
  /** Name of the table of costs. */
  public static final String COSTS = "lot-costs";

  /** Keys of the columns of costs that an edition picks. */
  public static final class Costs {
    public static final String LOT = "lot";
    public static final String SPECIES = "species";
    public static final String PLANTS = "plants_bought";
    public static final String CHARGES = "carriage_charges";
    public static final String POTS = "pots";
    public static final String SUBSTRATE = "substrate";
    public static final String MATERIALS = "materials";
    public static final String PLACE = "place";
    public static final String TOTAL = "costs";
    public static final String EACH_STARTED = "cost_per_plant_started";
    public static final String EACH_ALIVE = "per_plant_alive";
    public static final String EACH_SOLD = "per_plant_sold";

    private Costs() {}
  }

  private final List<LotAccount> accounts;
  private final List<WholeLot> whole;
  private final String currency;

  private LotAccountsSheet(Context context) {
    this.accounts = context.accounts().lots();
    this.whole = context.whole().lots();
    this.currency = context.inputs().scenario().nursery().settings().currency();
  }

  public static Sheet of(Context context) {
    LotAccountsSheet sheet = new LotAccountsSheet(context);
    if (sheet.accounts.isEmpty()) {
      return FilledSheet.of("Lot accounts", List.of());
    }
    return FilledSheet.of(
        "Lot accounts",
        List.of(
            Sentences.WITHOUT_VAT,
            "A lot is charged with what it uses at the price of one unit, all its hours at the hourly"
                + " rate, and the square metres it needs, month by month. What that leaves over"
                + " against the nursery's cash stands at the end.",
            Sentences.EXPECTED),
        sheet.results(),
        sheet.costs(),
        ReconciliationTable.of(context));
  }

  /** A lot's account beside its whole plants. */
  private record Booked(LotAccount account, WholeLot lot) {}

  private List<Booked> booked() {
    return IntStream.range(0, accounts.size())
        .mapToObj(i -> new Booked(accounts.get(i), whole.get(i)))
        .toList();
  }

  private Table results() {
    return named(TableOf.<Booked>table("lot-accounts", "Plants and result of each lot"))
        .note(
            "Result = sales − costs within the plan. Cost to date: spent before the plan (unit"
                + " cost of the stock list × quantity); it is in no cash figure. Standing has"
                + " the kept plants among it. Unsold at list: plants with a grade left at the"
                + " plan's end, at list price, kept ones apart; a value on paper, in no result.")
        .column(
            Column.summed("started", "started", "", Kind.COUNT),
            each -> each.account.lot().quantity())
        .column(plants("lost", "lost"), each -> Plants.of(each.account.lost(), each.lot.lost()))
        .column(plants("sold", "sold"), each -> Plants.of(each.account.sold(), each.lot.sold()))
        .column(
            plants("standing", "standing"),
            each -> Plants.of(each.account.standing(), each.lot.standing()))
        .column(
            plants("of_these_kept", "of these kept"),
            each -> Plants.of(each.account.kept(), each.lot.kept()))
        .column(money("costs", "costs"), each -> each.account.costs())
        .column(money("sales", "sales"), each -> each.account.sales())
        .column(money("result", "result"), each -> each.account.result())
        .belowNil()
        .column(money("cost_to_date", "cost to date"), each -> each.account.spentBefore())
        .column(
            money("result_with_cost_to_date", "result with cost to date"),
            each -> each.account.resultWithSpentBefore())
        .belowNil()
        .column(money("unsold_at_list", "unsold at list"), each -> each.account.unsoldAtList())
        .of(booked());
  }

  private static TableOf<Booked> named(TableOf<Booked> table) {
    return table
        .column(Column.of(Costs.LOT, "lot", "", Kind.TEXT), each -> each.account.lot().name())
        .column(
            Column.of(Costs.SPECIES, "species", "", Kind.TEXT),
            each -> each.account.lot().species());
  }

  private static Column plants(String key, String heading) {
    return Column.summed(key, heading, "", Kind.PLANTS);
  }

  private Column money(String key, String heading) {
    return Column.summed(key, heading, currency, Kind.MONEY);
  }

  private Column moneyEach(String key, String heading) {
    return Column.of(key, heading, currency, Kind.MONEY_EACH);
  }

  private Table costs() {
    TableOf<Booked> table =
        named(TableOf.<Booked>table(COSTS, "Costs of each lot within the plan"))
            .note(
                "Place: the square metre months it stood × the place's yearly cost / 12 / usable"
                    + " share. Selling: the share of receipts that selling costs; its hours are among"
                    + " the hours. Other: other cash of the lot, less what that brings. Costs per"
                    + " plant include the cost to date; a plant alive is one"
                    + " neither dead nor culled, sold or standing.");
    for (CostKind kind : CostKind.values()) {
      amount(table, kind);
      table.summed(heading(kind), currency, Kind.MONEY, each -> each.account.cost(kind));
    }
    return table
        .column(money(Costs.TOTAL, "costs"), each -> each.account.costs())
        .column(
            moneyEach(Costs.EACH_STARTED, "cost per plant started"),
            each -> each.account.costPer(each.lot.start()))
        .column(
            moneyEach(Costs.EACH_ALIVE, "per plant alive"),
            each -> each.account.costPer(each.lot.start() - each.lot.lost()))
        .column(
            moneyEach(Costs.EACH_SOLD, "per plant sold"),
            each -> each.account.costPer(each.lot.sold()))
        .of(booked());
  }

  private static String heading(CostKind kind) {
    return switch (kind) {
      case PLANTS -> "plants bought";
      case CARRIAGE -> "carriage, charges";
      case LABOUR -> "labour";
      default -> kind.toString();
    };
  }

  /** What a cost is charged by, before it. */
  private static void amount(TableOf<Booked> table, CostKind kind) {
    if (kind == CostKind.LABOUR) {
      table.summed("hours", "", Kind.HOURS, each -> each.account.hours());
    } else if (kind == CostKind.PLACE) {
      table.summed("space", "m² months", Kind.SQUARE_METRES, each -> each.account.m2Months());
    }
  }
}
