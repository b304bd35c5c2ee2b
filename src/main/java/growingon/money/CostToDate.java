package growingon.money;

import growingon.nursery.lot.Lot;

/**
 * What the living plants of a lot have cost so far, kept up month by month in a run without a
 * history: losses stay with the living, a plant sold takes its share away.
 */
final class CostToDate {
  private final double[] spent;
  private double pool;
  private double paidShare = 1;
  private double soldInMonth;
  private double costEach;
  private double paidEach;

  CostToDate(Lot lot, int months) {
    this.spent = new double[months];
    this.pool = lot.unitCost() * lot.quantity();
  }

  /** The same so far, for a lot that goes on apart. */
  CostToDate(CostToDate same) {
    this.spent = same.spent.clone();
    this.pool = same.pool;
    this.paidShare = same.paidShare;
    this.soldInMonth = same.soldInMonth;
    this.costEach = same.costEach;
    this.paidEach = same.paidEach;
  }

  void cost(CostKind kind, int month, double amount) {
    spent[month] += kind == CostKind.SELLING ? 0 : amount;
  }

  void sellingLabour(int month, double amount) {
    spent[month] -= amount;
  }

  void sold(double plants) {
    soldInMonth += plants;
  }

  void monthOver(int month, double living) {
    double share = StockValue.keptShare(living, living + soldInMonth);
    pool = (pool + spent[month]) * share;
    paidShare *= share;
    soldInMonth = 0;
    costEach = living > 0 ? pool / living : 0;
    paidEach = living > 0 ? paidShare / living : 0;
  }

  /** Cost to date of a plant at the end of the last month that is over. */
  double costEach() {
    return costEach;
  }

  /** Share of the price paid for the whole lot that a plant carries then. */
  double paidEach() {
    return paidEach;
  }
}
