package growingon.report.plan;

import growingon.money.LotAccount;
import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.figures.Context;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.whole.WholeLot;
import java.util.List;

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

  private Table results() {
    TableBuilder table =
        TableBuilder.table("lot-accounts", "Plants and result of each lot")
            .note(
                "Result = sales − costs within the plan. Cost to date: spent before the plan (unit"
                    + " cost of the stock list × quantity); it is in no cash figure. Standing has"
                    + " the kept plants among it. Unsold at list: plants with a grade left at the"
                    + " plan's end, at list price, kept ones apart; a value on paper, in no result.")
            .text("lot")
            .text("species")
            .summed("started", "", Kind.COUNT)
            .plants("lost")
            .plants("sold")
            .plants("standing")
            .plants("of these kept")
            .summed("costs", currency, Kind.MONEY)
            .summed("sales", currency, Kind.MONEY)
            .summed("result", currency, Kind.MONEY)
            .flagged(Column.Flag.BELOW_ZERO)
            .summed("cost to date", currency, Kind.MONEY)
            .summed("result with cost to date", currency, Kind.MONEY)
            .flagged(Column.Flag.BELOW_ZERO)
            .summed("unsold at list", currency, Kind.MONEY);
    for (int i = 0; i < accounts.size(); i++) {
      LotAccount account = accounts.get(i);
      WholeLot lot = whole.get(i);
      table.row(
          account.lot().name(),
          account.lot().species(),
          account.lot().quantity(),
          Plants.of(account.lost(), lot.lost()),
          Plants.of(account.sold(), lot.sold()),
          Plants.of(account.standing(), lot.standing()),
          Plants.of(account.kept(), lot.kept()),
          account.costs(),
          account.sales(),
          account.result(),
          account.spentBefore(),
          account.resultWithSpentBefore(),
          account.unsoldAtList());
    }
    return table.build();
  }

  /** All costs, before and within the plan, for each of so many plants; NaN for none. */
  public static double costPer(LotAccount account, int plants) {
    return plants > 0 ? (account.costs() + account.spentBefore()) / plants : Double.NaN;
  }

  private Table costs() {
    TableBuilder table =
        TableBuilder.table(COSTS, "Costs of each lot within the plan")
            .note(
                "Place: the square metre months it stood × the place's yearly cost / 12 / usable"
                    + " share. Selling: the share of receipts that selling costs; its hours are among"
                    + " the hours. Other: other cash of the lot, less what that brings. Costs per"
                    + " plant include the cost to date; a plant alive is one"
                    + " neither dead nor culled, sold or standing.")
            .column(Costs.LOT, "lot", "", Kind.TEXT)
            .column(Costs.SPECIES, "species", "", Kind.TEXT)
            .summed(Costs.PLANTS, "plants bought", currency, Kind.MONEY)
            .summed(Costs.CHARGES, "carriage, charges", currency, Kind.MONEY)
            .summed(Costs.POTS, "pots", currency, Kind.MONEY)
            .summed(Costs.SUBSTRATE, "substrate", currency, Kind.MONEY)
            .summed(Costs.MATERIALS, "materials", currency, Kind.MONEY)
            .summed("hours", "", Kind.HOURS)
            .summed("labour", currency, Kind.MONEY)
            .summed("care", currency, Kind.MONEY)
            .summed("space", "m² months", Kind.SQUARE_METRES)
            .summed(Costs.PLACE, "place", currency, Kind.MONEY)
            .summed("selling", currency, Kind.MONEY)
            .summed("other", currency, Kind.MONEY)
            .summed(Costs.TOTAL, "costs", currency, Kind.MONEY)
            .column(Costs.EACH_STARTED, "cost per plant started", currency, Kind.MONEY_EACH)
            .column(Costs.EACH_ALIVE, "per plant alive", currency, Kind.MONEY_EACH)
            .column(Costs.EACH_SOLD, "per plant sold", currency, Kind.MONEY_EACH);
    for (int i = 0; i < accounts.size(); i++) {
      LotAccount account = accounts.get(i);
      WholeLot lot = whole.get(i);
      table.row(
          account.lot().name(),
          account.lot().species(),
          account.plants(),
          account.carriage(),
          account.pots(),
          account.substrate(),
          account.materials(),
          account.hours(),
          account.labour(),
          account.care(),
          account.m2Months(),
          account.placeCharge(),
          account.selling(),
          account.other(),
          account.costs(),
          costPer(account, lot.start()),
          costPer(account, lot.start() - lot.lost()),
          costPer(account, lot.sold()));
    }
    return table.build();
  }
}
