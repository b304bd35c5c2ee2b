package growingon.money;

import growingon.money.CostKind.Paid;
import growingon.nursery.Settings;
import java.util.List;

/**
 * From the lots' results to the nursery's cash, so that nothing is lost between them.
 *
 * @param lots sum of all lots' results
 * @param spaceNotUsed place cost that no lot carries; positive where plants stand over capacity
 * @param packsAndStock use at unit price less whole packs bought: stock drawn down or built up
 * @param hoursNotPaid hours charged to lots that are not paid in cash
 * @param otherCash cash that no lot causes, with its hours
 * @param cash change of cash over the plan
 */
public record Reconciliation(
    double lots,
    double spaceNotUsed,
    double packsAndStock,
    double hoursNotPaid,
    double otherCash,
    double cash) {
  /** Works the lines out one by one from the cash flow and the accounts. */
  static Reconciliation of(CashFlow cash, List<LotAccount> accounts, Settings settings) {
    double results = 0;
    double placeCharges = 0;
    double used = 0;
    double labour = 0;
    double others = 0;
    for (LotAccount account : accounts) {
      results += account.result();
      placeCharges += account.ledger().cost(kind -> kind.isPaid(Paid.USED_OR_NOT));
      used += account.ledger().cost(CostKind::isInPacks);
      labour += account.ledger().cost(kind -> kind.isPaid(Paid.A_SHARE));
      others += account.ledger().cost(Reconciliation::isOtherCash);
    }
    double bought = 0;
    for (CostKind kind : CostKind.values()) {
      bought -= kind.isInPacks() ? cash.total(kind.item()) : 0;
    }
    double hoursOfNoLot = cash.total(CashItem.HOURS) + labour * settings.paidShare();
    double change = 0;
    for (double flow : cash.flows()) {
      change += flow;
    }
    return new Reconciliation(
        results,
        placeCharges + cash.total(CashItem.PLACES),
        used - bought,
        labour * (1 - settings.paidShare()),
        cash.total(CashItem.OTHER) + others + hoursOfNoLot,
        change);
  }

  private static boolean isOtherCash(CostKind kind) {
    return kind.isCash() && kind.item() == CashItem.OTHER;
  }

  /** What is left unexplained; nil but for rounding. */
  public double difference() {
    return lots + spaceNotUsed + packsAndStock + hoursNotPaid + otherCash - cash;
  }
}
