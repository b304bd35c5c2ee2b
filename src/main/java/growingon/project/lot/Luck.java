package growingon.project.lot;

import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;

/**
 * What luck does to a projection. The plan's line has none ({@link #NONE}); a draw has its own.
 * Seasons are named by the year in which they start.
 */
public interface Luck {
  /** Everything as expected. */
  Luck NONE = new Luck() {};

  /** The luck of one lot; asked once a run. */
  default OfLot of(Lot lot, Species species) {
    return lot::quality;
  }

  /** Factor on the units of a demand row in a season. */
  default double units(Demand row, int season) {
    return 1;
  }

  /** Factor on the price of a demand row in a season. */
  default double price(Demand row, int season) {
    return 1;
  }

  /** Factor on all minutes of a season. */
  default double minutes(int season) {
    return 1;
  }

  /** Factor on what a unit of a currency costs in a season. */
  default double exchange(String currency, int season) {
    return 1;
  }

  /** What so many plants of a purchase cost landed in a season, plan currency. */
  default double landed(Purchase purchase, int quantity, int season) {
    return purchase.landed(quantity) * exchange(purchase.currency(), season);
  }

  /** What luck does to one lot in a run; all but how it sorts is as expected unless told. */
  @FunctionalInterface
  interface OfLot {
    /** Factor on the growth time of its species in a season. */
    default double growth(int season) {
      return 1;
    }

    /** Factor on its growth time, beside that of its species. */
    default double growth() {
      return 1;
    }

    /** Factor on its trunks as they are stated, where nobody measured them. */
    default double trunks() {
      return 1;
    }

    /**
     * Factor on the growth time of its species in a growing condition for the whole run: what is
     * not known of its speed, also from a count to the plan's first month.
     */
    default double speed(String condition) {
      return 1;
    }

    /**
     * Yearly loss of its species in a season.
     *
     * @param firstYear whether it is the loss of a lot's first year
     * @param expected the loss to be expected, 0 to 1
     */
    default double loss(boolean firstYear, double expected, int season) {
      return expected;
    }

    /**
     * Loss that goes with its consignment: of its steps and of its first year.
     *
     * @param expected the loss to be expected, 0 to 1
     */
    default double consignmentLoss(double expected) {
      return expected;
    }

    /** Share that is dead on arrival, beside its other losses; 1 where the whole lot failed. */
    default double deadOnArrival() {
      return 0;
    }

    /** How it turns out to sort. */
    QualityShares quality();

    /**
     * Plants that die in a month.
     *
     * @param event what kills them: 0 for the month's losses, else one more than the step's index
     * @param living plants alive
     * @param share share to be expected
     */
    default double deaths(int month, int event, double living, double share) {
      return living * share;
    }
  }
}
