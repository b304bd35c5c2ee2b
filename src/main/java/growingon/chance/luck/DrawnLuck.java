package growingon.chance.luck;

import growingon.chance.luck.Keyed.What;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.project.Luck;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * The luck of one draw (design section 6.6). Growth and loss of a season have two parts of equal
 * weight: one shared by all species and one of the species' own, so that two species are correlated
 * by a half.
 */
public final class DrawnLuck implements Luck {
  private final Keyed keyed;
  private final Settings settings;
  private final Spreads spreads;
  private final Names names;
  private final NotKnown notKnown;
  private final Map<Species, SpeciesLuck> bySpecies = new IdentityHashMap<>();

  public DrawnLuck(Keyed keyed, Settings settings, Spreads spreads, Names names) {
    this.names = names;
    this.keyed = keyed;
    this.settings = settings;
    this.spreads = spreads;
    this.notKnown = new NotKnown(keyed, settings.market(), spreads, names);
  }

  private SpeciesLuck of(Species species) {
    SpeciesLuck known = bySpecies.get(species);
    if (known == null) {
      known = new SpeciesLuck(keyed, species, spreads, names, notKnown);
      bySpecies.put(species, known);
    }
    return known;
  }

  @Override
  public double growth(Species species, int season) {
    return of(species).growth(season);
  }

  @Override
  public double growth(Lot lot, Species species) {
    double spread = Spreads.ofLots(species, settings);
    return spread == 0
        ? 1
        : Keyed.lognormal(spread, keyed.normal(What.GROWTH_OF_LOT, names.of(lot.name()), 0));
  }

  @Override
  public double trunks(Lot lot) {
    return lot.trunks() instanceof Trunks.Usual usual ? notKnown.trunks(usual) : 1;
  }

  @Override
  public double speed(Species species, String condition) {
    return notKnown.speed(species, condition);
  }

  @Override
  public double loss(Species species, boolean firstYear, double expected, int season) {
    return of(species).loss(firstYear, expected, season);
  }

  @Override
  public double consignmentLoss(Lot lot, double expected) {
    double deviation = Spreads.consignmentDeviation(lot, expected);
    return deviation == 0
        ? expected
        : spreads.share(
            expected, deviation, keyed.normal(What.CONSIGNMENT, names.of(lot.name()), 0));
  }

  @Override
  public double deadOnArrival(Lot lot) {
    double chance = lot.purchase().map(Purchase::fails).orElse(0.0);
    boolean fails = chance > 0 && keyed.uniform(What.FAILURE, names.of(lot.name()), 0) < chance;
    return fails ? 1 : 0;
  }

  /** Dirichlet with the stated means, from as many plants as the sureness is worth. */
  @Override
  public QualityShares quality(Lot lot) {
    QualityShares stated = lot.quality();
    if (stated.sorted() || stated.sure() >= 1) {
      return stated;
    }
    double seen = Spreads.plantsSeen(stated.sure());
    long whose = names.of(lot.name());
    double firsts = keyed.gamma(seen * stated.first(), What.FIRSTS, whose);
    double seconds = keyed.gamma(seen * stated.second(), What.SECONDS, whose);
    double thirds = keyed.gamma(seen * stated.third(), What.THIRDS, whose);
    double sum = firsts + seconds + thirds;
    return new QualityShares(firsts / sum, seconds / sum, false, stated.sure());
  }

  @Override
  public double units(Demand row, int season) {
    return notKnown.demand() * market(row, row.unitsSpread(), What.UNITS, season);
  }

  @Override
  public double price(Demand row, int season) {
    return notKnown.prices() * market(row, row.priceSpread(), What.PRICE, season);
  }

  private double market(Demand row, double spread, What what, int season) {
    return spread == 0 ? 1 : Keyed.lognormal(spread, keyed.normal(what, nameOf(row), season));
  }

  private long nameOf(Demand row) {
    return names.of(row.species().orElse("*") + "\n" + row.ladder() + "\n" + row.grade());
  }

  @Override
  public double minutes(int season) {
    return settings.labourSpread() == 0
        ? 1
        : Keyed.lognormal(settings.labourSpread(), keyed.normal(What.MINUTES, 0, season));
  }

  @Override
  public double exchange(String currency, int season) {
    return settings.exchangeSpread() == 0 || currency.equals(settings.currency())
        ? 1
        : Keyed.lognormal(
            settings.exchangeSpread(), keyed.normal(What.EXCHANGE, names.of(currency), season));
  }

  /**
   * Whole plants. Sales may leave part of a plant alive; it then counts as one or none by chance.
   */
  @Override
  public Deaths deaths(Lot lot) {
    long of = keyed.of(What.DEATHS, names.of(lot.name()));
    return (month, event, living, share) -> deaths(of, month, event, living, share);
  }

  private static double deaths(long of, int month, int event, double living, double share) {
    long when = 1000L * month + 2L * event;
    int whole = (int) Math.floor(living);
    double part = living - whole;
    if (part > 1e-9) {
      whole += Keyed.uniform(of, when + 1) < part ? 1 : 0;
    }
    return Math.min(living, Keyed.binomial(whole, share, of, when));
  }
}
