package growingon.nursery.market;

import growingon.nursery.species.Sure;

/**
 * How sure prices and the units that are wanted are on average over the seasons, as shares of 0.01
 * to 1; 1 takes them as right.
 *
 * @param prices of all prices together
 * @param demand of all units together
 */
public record MarketSure(double prices, double demand) {
  /** Both are taken as right on average. */
  public static final MarketSure KNOWN = new MarketSure(1, 1);

  public MarketSure {
    Sure.check(prices, "how sure prices are");
    Sure.check(demand, "how sure demand is");
  }
}
