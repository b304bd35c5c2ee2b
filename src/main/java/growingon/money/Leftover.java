package growingon.money;

import growingon.nursery.market.HorizonValue;

/** What is left of a bought lot at the end of a run: its worth, also had it cost more or less. */
public final class Leftover {
  private final EndStock stock;
  private final HorizonValue value;

  Leftover(EndStock stock, HorizonValue value) {
    this.stock = stock;
    this.value = value;
  }

  /** How much more it is worth had the lot cost so much more; less is negative. */
  public double changeOfWorth(double morePaid) {
    return value.isStockValue() ? stock.worth(value, morePaid) - stock.worth(value) : 0;
  }
}
