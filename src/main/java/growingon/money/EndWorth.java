package growingon.money;

import growingon.nursery.market.HorizonValue;

/** The worth of what is left of a bought lot at a run's end, also had the lot cost otherwise. */
public final class EndWorth {
  private final EndStock stock;
  private final HorizonValue value;

  EndWorth(EndStock stock, HorizonValue value) {
    this.stock = stock;
    this.value = value;
  }

  /** How much more it is worth had the lot cost so much more; less is negative. */
  public double changeOfWorth(double morePaid) {
    return value.isStockValue() ? stock.worth(value, morePaid) - stock.worth(value) : 0;
  }
}
