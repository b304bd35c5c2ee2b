package growingon.chance.luck;

import growingon.chance.luck.Keyed.What;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.MarketSure;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;

/**
 * What is not known of a nursery in one draw, the same from its first month to its last: how fast
 * each species grows in each growing condition, how much of it dies, how thick trunks are that
 * nobody measured, and how prices and demand are on average.
 *
 * <p>Of the variance of a growth factor's logarithm half is the nursery's (site, water, feed, habit
 * of measuring), a quarter the species' and a quarter that of the species in the condition; of a
 * loss half is the nursery's and half its own. Own choice: were all of it the nursery's, cash would
 * be covered too seldom, were none, too often.
 */
public final class NotKnown {
  /** No season takes more than this of a lot by its yearly loss. */
  static final double MOST_LOSS = 0.99;

  private static final double HALF = Math.sqrt(0.5);

  private final Keyed keyed;
  private final MarketSure market;
  private final Spreads spreads;
  private final NameNumbers names;

  public NotKnown(Keyed keyed, MarketSure market, Spreads spreads, NameNumbers names) {
    this.keyed = keyed;
    this.market = market;
    this.spreads = spreads;
    this.names = names;
  }

  /** Factor on the growth time of a species in a condition: e^(s x), x a standard normal score. */
  double speed(Species species, String condition) {
    double sure = species.sure().growthIn(condition);
    return sure == 1
        ? 1
        : Math.exp(Sure.spread(sure) * score(keyed, names, species.name(), condition));
  }

  /** The score x: half of its variance shared by all, a quarter by all conditions of a species. */
  public static double score(Keyed keyed, NameNumbers names, String species, String condition) {
    return HALF * keyed.normal(What.SPEED_OF_ALL, 0, 0)
        + keyed.normal(What.SPEED_OF_SPECIES, names.of(species), 0) / 2
        + keyed.normal(What.SPEED_IN_CONDITION, names.of(species + "\n" + condition), 0) / 2;
  }

  /** Factor on the first-year or the later loss of a species. */
  public double loss(Species species, boolean firstYear) {
    double sure = firstYear ? species.sure().firstYearLoss() : species.sure().laterLoss();
    double mean = firstYear ? species.firstYearLoss() : species.laterLoss();
    return sure == 1 || mean == 0
        ? 1
        : lossAt(mean, sure, lossScore(species.name(), firstYear)) / mean;
  }

  private double lossScore(String species, boolean firstYear) {
    What own = firstYear ? What.FIRST_YEAR_LOSS_OF_SPECIES : What.LATER_LOSS_OF_SPECIES;
    return HALF
        * (keyed.normal(What.LOSSES_OF_ALL, 0, 0) + keyed.normal(own, names.of(species), 0));
  }

  private double lossAt(double mean, double sure, double score) {
    return lossAt(spreads, mean, sure, score);
  }

  /** A mean loss that is so sure, at a standard normal score. */
  public static double lossAt(Spreads spreads, double mean, double sure, double score) {
    double deviation = Math.sqrt(mean * (1 - mean) / (Sure.plants(sure) + 1));
    return spreads.share(mean, deviation, score);
  }

  /**
   * Factor on trunks that nobody measured: half of its variance shared by all, half by those of its
   * class.
   */
  double trunks(Trunks.Usual usual) {
    double score =
        HALF
            * (keyed.normal(What.TRUNKS_OF_ALL, 0, 0)
                + keyed.normal(What.TRUNKS_OF_CLASS, names.of(usual.of()), 0));
    return trunksAt(score);
  }

  /** Factor on trunks that nobody measured, at a standard normal score. */
  public static double trunksAt(double score) {
    return Math.exp(Sure.spread(Sure.USUAL) * score);
  }

  /** Factor on all prices. */
  double prices() {
    return level(market.prices(), What.PRICES);
  }

  /** Factor on all units that are wanted. */
  double demand() {
    return level(market.demand(), What.DEMAND);
  }

  private double level(double sure, What of) {
    return sure == 1 ? 1 : Math.exp(Sure.spread(sure) * keyed.normal(of, 0, 0));
  }
}
