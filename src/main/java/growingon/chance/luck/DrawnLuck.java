package growingon.chance.luck;

import growingon.chance.luck.Keyed.What;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.project.lot.Luck;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * The luck of one draw. Growth and loss of a season have two parts of equal weight: one shared by
 * all species and one of the species' own, √½ z + √½ z' with standard normal z, so that two species
 * are correlated by a half (own choice). What is drawn stands in src/doc/model.md under Chances.
 */
public final class DrawnLuck implements Luck {
  private final Keyed keyed;
  private final Settings settings;
  private final Spreads spreads;
  private final NameNumbers names;
  private final NotKnown notKnown;
  private final Map<Species, SpeciesLuck> bySpecies = new IdentityHashMap<>();

  public DrawnLuck(Keyed keyed, Settings settings, Spreads spreads, NameNumbers names) {
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
  public OfLot of(Lot lot, Species species) {
    return new LotLuck(lot, of(species), keyed, spreads, settings, names.of(lot.name()), notKnown);
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
}
