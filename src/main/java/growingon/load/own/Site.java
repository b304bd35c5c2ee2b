package growingon.load.own;

import growingon.nursery.Settings;

/**
 * Where a nursery is and how it measures, as far as reading a list depends on it.
 *
 * @param girthBaseFactor trunk at the base over trunk where girth is measured
 * @param south whether it lies south of the equator
 */
public record Site(double girthBaseFactor, boolean south) {
  private static final double MM_IN_CM = 10;

  /** Where nothing is said of it: the factor is the usual one of the settings. */
  public static final Site USUAL = new Site(Settings.USUAL_GIRTH_BASE_FACTOR, false);

  /** Trunk at the base of a girth in cm, mm. */
  Span trunkMm(Span girthCm) {
    return girthCm.times(MM_IN_CM / Math.PI * girthBaseFactor);
  }
}
