package growingon.chance.luck;

import growingon.chance.luck.Keyed.What;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.project.lot.Luck;

/**
 * The luck of one lot in one draw; its name is looked up once. Its own growth is lognormal, its
 * qualities are a Dirichlet of as many plants as it is sure of, deaths are binomial.
 */
final class LotLuck implements Luck.OfLot {
  private static final double NOT_YET = Double.NaN;

  private final Lot lot;
  private final SpeciesLuck ofSpecies;
  private final Keyed keyed;
  private final Spreads spreads;
  private final Settings settings;
  private final long whose;
  private final NotKnown notKnown;
  private final long ofDeaths;
  private double consignmentScore = NOT_YET;

  LotLuck(
      Lot lot,
      SpeciesLuck ofSpecies,
      Keyed keyed,
      Spreads spreads,
      Settings settings,
      long whose,
      NotKnown notKnown) {
    this.lot = lot;
    this.ofSpecies = ofSpecies;
    this.keyed = keyed;
    this.spreads = spreads;
    this.settings = settings;
    this.whose = whose;
    this.notKnown = notKnown;
    this.ofDeaths = keyed.of(What.DEATHS, whose);
  }

  @Override
  public double growth(int season) {
    return ofSpecies.growth(season);
  }

  @Override
  public double growth() {
    double spread = Spreads.ofLots(ofSpecies.species(), settings);
    return spread == 0 ? 1 : Keyed.lognormal(spread, keyed.normal(What.GROWTH_OF_LOT, whose, 0));
  }

  @Override
  public double trunks() {
    return lot.trunks() instanceof Trunks.Usual usual ? notKnown.trunks(usual) : 1;
  }

  @Override
  public double speed(String condition) {
    return ofSpecies.speed(condition);
  }

  @Override
  public double loss(boolean firstYear, double expected, int season) {
    return ofSpecies.loss(firstYear, expected, season);
  }

  @Override
  public double consignmentLoss(double expected) {
    double deviation = Spreads.consignmentDeviation(lot, expected);
    return deviation == 0 ? expected : spreads.share(expected, deviation, consignmentScore());
  }

  private double consignmentScore() {
    if (Double.isNaN(consignmentScore)) {
      consignmentScore = keyed.normal(What.CONSIGNMENT, whose, 0);
    }
    return consignmentScore;
  }

  @Override
  public double deadOnArrival() {
    double chance = lot.purchase().map(Purchase::fails).orElse(0.0);
    boolean fails = chance > 0 && keyed.uniform(What.FAILURE, whose, 0) < chance;
    return fails ? 1 : 0;
  }

  /** Dirichlet with the stated means, from as many plants as the sureness is worth. */
  @Override
  public QualityShares quality() {
    QualityShares stated = lot.quality();
    if (stated.sorted() || stated.sure() >= 1) {
      return stated;
    }
    double seen = Spreads.plantsSeen(stated.sure());
    double firsts = keyed.gamma(seen * stated.first(), What.FIRSTS, whose);
    double seconds = keyed.gamma(seen * stated.second(), What.SECONDS, whose);
    double thirds = keyed.gamma(seen * stated.third(), What.THIRDS, whose);
    double sum = firsts + seconds + thirds;
    return new QualityShares(firsts / sum, seconds / sum, false, stated.sure());
  }

  /**
   * Whole plants. Sales may leave part of a plant alive; it then counts as one or none by chance.
   */
  @Override
  public double deaths(int month, int event, double living, double share) {
    long when = 1000L * month + 2L * event;
    int whole = (int) Math.floor(living);
    double part = living - whole;
    if (part > 1e-9) {
      whole += Keyed.uniform(ofDeaths, when + 1) < part ? 1 : 0;
    }
    return Math.min(living, Keyed.binomial(whole, share, ofDeaths, when));
  }
}
