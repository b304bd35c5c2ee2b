package growingon.chance;

import growingon.chance.luck.Spreads;
import growingon.nursery.Settings;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;

/** What marked trunks that are read in two Octobers say of a growth rate. */
final class Measured {
  /** Error of one reading of a trunk: that share of it, and 0.025 mm² for both. Own choice. */
  private static final double ERROR = 0.015;

  private static final double ERROR_MM2 = 0.025;

  /** A plant's worth of knowing is a variance of 2.5 of ln growth. Own choice. */
  private static final double OF_ONE_PLANT = 2.5;

  private Measured() {}

  /**
   * Variance of the logarithm of a growth rate measured on twenty trunks: that of the year, of the
   * lot, of the plants' vigour over their number, and of two readings of each mean.
   *
   * @param trunkMm mean trunk, mm
   * @param mmASeason growth, mm
   */
  static double variance(Species species, Settings settings, double trunkMm, double mmASeason) {
    double reading = 2 * Math.pow(ERROR * trunkMm, 2) + ERROR_MM2;
    return variance(species.yearSpread())
        + variance(Spreads.ofLots(species, settings))
        + variance(species.vigourSpread()) / WorthMeasuring.TRUNKS
        + reading / (mmASeason * mmASeason);
  }

  /** Variance of the logarithm of a lognormal factor with a coefficient of variation. */
  private static double variance(double spread) {
    return Math.log1p(spread * spread);
  }

  /** How many plants' worth of knowing a measurement of such a variance is. */
  static double plants(double variance) {
    return OF_ONE_PLANT / variance;
  }

  /** How sure a rate is after that. */
  static double sureAfter(double sure, double plants) {
    return sure == 1 ? 1 : Sure.ofPlants(Sure.plants(sure) + plants);
  }
}
