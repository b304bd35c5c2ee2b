package growingon.nursery.market;

import growingon.nursery.number.Check;

/** What plants unsold at the end of a plan are worth in it. */
public sealed interface HorizonValue {
  /** Nothing. */
  HorizonValue NOTHING = new OfListPrice(0);

  /** A share of their list price, less what selling costs. */
  record OfListPrice(double share) implements HorizonValue {
    public OfListPrice {
      Check.notNegative(share, "horizon value");
    }
  }

  /**
   * As the stock is valued at a year's end: the lower of cost to date and list price less selling
   * cost, plants without a list price at their cost, kept plants left out.
   */
  record StockValue() implements HorizonValue {}

  /** The share of list price that counts; nil where the stock is valued instead. */
  default double shareOfList() {
    return this instanceof OfListPrice of ? of.share() : 0;
  }

  /** Whether the plants are valued as stock at a year's end. */
  default boolean isStockValue() {
    return this instanceof StockValue;
  }
}
