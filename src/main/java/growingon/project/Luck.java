package growingon.project;

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

  /** Factor on the growth time of a species in a season. */
  default double growth(Species species, int season) {
    return 1;
  }

  /** Factor on the growth time of a lot, beside that of its species. */
  default double growth(Lot lot, Species species) {
    return 1;
  }

  /** Factor on the trunks of a lot as they are stated, where nobody measured them. */
  default double trunks(Lot lot) {
    return 1;
  }

  /**
   * Factor on the growth time of a species in a growing condition for the whole run: what is not
   * known of its speed, also from a count to the plan's first month.
   */
  default double speed(Species species, String condition) {
    return 1;
  }

  /**
   * Yearly loss of a species in a season.
   *
   * @param firstYear whether it is the loss of a lot's first year
   * @param expected the loss to be expected, 0 to 1
   */
  default double loss(Species species, boolean firstYear, double expected, int season) {
    return expected;
  }

  /**
   * Loss of a lot that goes with its consignment: of its steps and of its first year.
   *
   * @param expected the loss to be expected, 0 to 1
   */
  default double consignmentLoss(Lot lot, double expected) {
    return expected;
  }

  /**
   * Share of a lot that is dead on arrival, beside its other losses; 1 where the whole lot failed.
   */
  default double deadOnArrival(Lot lot) {
    return 0;
  }

  /** How the lot turns out to sort. */
  default QualityShares quality(Lot lot) {
    return lot.quality();
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

  /** How plants of a lot die; asked once a run. */
  default Deaths deaths(Lot lot) {
    return (month, event, living, share) -> living * share;
  }

  /** How plants of one lot die. */
  @FunctionalInterface
  interface Deaths {
    /**
     * Plants that die in a month.
     *
     * @param event what kills them: 0 for the month's losses, else one more than the step's index
     * @param living plants alive
     * @param share share to be expected
     */
    double in(int month, int event, double living, double share);
  }
}
