package growingon.report;

import growingon.money.LotAccount;
import growingon.whole.WholeLot;
import java.util.List;

/** What each lot takes and brings, and how the lots' results lead to the nursery's cash. */
final class LotAccountsSheet {
  private final List<LotAccount> accounts;
  private final List<WholeLot> whole;
  private final String currency;

  private LotAccountsSheet(Context context) {
    this.accounts = context.accounts().lots();
    this.whole = context.whole().lots();
    this.currency = context.inputs().scenario().nursery().settings().currency();
  }

  static Sheet of(Context context) {
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
  static double costPer(LotAccount account, int plants) {
    return plants > 0 ? (account.costs() + account.spentBefore()) / plants : Double.NaN;
  }

  private Table costs() {
    TableBuilder table =
        TableBuilder.table("lot-costs", "Costs of each lot within the plan")
            .note(
                "Place: the square metre months it stood × the place's yearly cost / 12 / usable"
                    + " share. Selling: the share of receipts that selling costs; its hours are among"
                    + " the hours. Other: other cash of the lot, less what that brings. Costs per"
                    + " plant include the cost to date; a plant alive is one"
                    + " neither dead nor culled, sold or standing.")
            .text("lot")
            .text("species")
            .summed("plants bought", currency, Kind.MONEY)
            .summed("carriage, charges", currency, Kind.MONEY)
            .summed("pots", currency, Kind.MONEY)
            .summed("substrate", currency, Kind.MONEY)
            .summed("materials", currency, Kind.MONEY)
            .summed("hours", "", Kind.HOURS)
            .summed("labour", currency, Kind.MONEY)
            .summed("care", currency, Kind.MONEY)
            .summed("space", "m² months", Kind.SQUARE_METRES)
            .summed("place", currency, Kind.MONEY)
            .summed("selling", currency, Kind.MONEY)
            .summed("other", currency, Kind.MONEY)
            .summed("costs", currency, Kind.MONEY)
            .column("cost per plant started", currency, Kind.MONEY_EACH)
            .column("per plant alive", currency, Kind.MONEY_EACH)
            .column("per plant sold", currency, Kind.MONEY_EACH);
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
