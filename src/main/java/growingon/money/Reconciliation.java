package growingon.money;

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
      placeCharges += account.placeCharge();
      used += account.pots() + account.substrate() + account.materials();
      labour += account.labour();
      others += account.other();
    }
    double bought =
        -cash.total(CashItem.POTS)
            - cash.total(CashItem.SUBSTRATE)
            - cash.total(CashItem.MATERIALS);
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

  /** What is left unexplained; nil but for rounding. */
  public double difference() {
    return lots + spaceNotUsed + packsAndStock + hoursNotPaid + otherCash - cash;
  }
}
