package growingon.money;

import growingon.nursery.lot.Lot;
import growingon.nursery.number.Negligible;
import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * What one lot takes and brings over the plan, plan currency, all amounts positive.
 *
 * @param lot the lot
 * @param spentBefore cost to date of its plants, spent before the plan; never in cash
 * @param ledger what it takes and brings within the plan
 * @param started plants at the start
 * @param lost plants that died or were culled
 * @param sold plants sold
 * @param standing plants standing at the end, kept ones among them
 * @param kept kept plants standing at the end
 * @param unsoldAtList list price of the plants unsold at the end that have a grade, kept ones apart
 */
@RecordBuilder
public record LotAccount(
    Lot lot,
    double spentBefore,
    Ledger ledger,
    double started,
    double lost,
    double sold,
    double standing,
    double kept,
    double unsoldAtList) {
  /** Costs of a kind within the plan. */
  public double cost(CostKind kind) {
    return ledger.cost(kind);
  }

  /** Hours of work, care and selling among them. */
  public double hours() {
    return ledger.hours();
  }

  /** Square metre months in places. */
  public double m2Months() {
    return ledger.m2Months();
  }

  /** Receipts. */
  public double sales() {
    return ledger.sales();
  }

  /** Costs within the plan. */
  public double costs() {
    return ledger.costs();
  }

  /** Sales less the costs within the plan. */
  public double result() {
    return sales() - costs();
  }

  /** Sales less all costs, those before the plan too. */
  public double resultWithSpentBefore() {
    return result() - spentBefore;
  }

  /** All costs, before and within the plan, for each of so many plants; NaN for none. */
  public double costPer(double plants) {
    return Negligible.is(plants) ? Double.NaN : (costs() + spentBefore) / plants;
  }

  /** An account of a lot with no plants yet. */
  public static LotAccountBuilder of(Lot lot, Ledger ledger) {
    return LotAccountBuilder.builder().lot(lot).ledger(ledger);
  }
}
