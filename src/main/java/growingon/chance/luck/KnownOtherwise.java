package growingon.chance.luck;

import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.project.lot.Luck;
import java.util.Map;

/**
 * No luck, but something that is not known is other than the plan has it, from the first month to
 * the last.
 *
 * @param species the species of which growth and losses are other
 * @param speeds factor on its growth time by growing condition; none elsewhere
 * @param firstYearLoss factor on its first-year loss
 * @param laterLoss factor on its later loss
 * @param prices factor on all prices
 * @param demand factor on all units
 */
public record KnownOtherwise(
    String species,
    Map<String, Double> speeds,
    double firstYearLoss,
    double laterLoss,
    double prices,
    double demand)
    implements Luck {
  /** A species grows at other speeds. */
  public static KnownOtherwise speeds(String species, Map<String, Double> speeds) {
    return new KnownOtherwise(species, speeds, 1, 1, 1, 1);
  }

  /** A species loses so many times as many, in its first year or later. */
  public static KnownOtherwise loss(String species, boolean firstYear, double factor) {
    return new KnownOtherwise(
        species, Map.of(), firstYear ? factor : 1, firstYear ? 1 : factor, 1, 1);
  }

  /** All prices and all units are so many times as much. */
  public static KnownOtherwise market(double prices, double demand) {
    return new KnownOtherwise("", Map.of(), 1, 1, prices, demand);
  }

  @Override
  public OfLot of(Lot lot, Species ofLot) {
    return ofLot.name().equals(species) ? new Otherwise(lot) : Luck.NONE.of(lot, ofLot);
  }

  private final class Otherwise implements OfLot {
    private final Lot lot;

    Otherwise(Lot lot) {
      this.lot = lot;
    }

    @Override
    public double speed(String condition) {
      return speeds.getOrDefault(condition, 1.0);
    }

    @Override
    public double loss(boolean firstYear, double expected, int season) {
      double factor = firstYear ? firstYearLoss : laterLoss;
      return factor == 1 ? expected : Math.min(NotKnown.MOST_LOSS, factor * expected);
    }

    @Override
    public QualityShares quality() {
      return lot.quality();
    }
  }

  @Override
  public double units(Demand row, int season) {
    return demand;
  }

  @Override
  public double price(Demand row, int season) {
    return prices;
  }
}
