package growingon.load.own.lot;

import growingon.load.own.size.Span;
import growingon.nursery.Settings;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Where a nursery is and how it measures, as far as reading a list depends on it.
 *
 * @param girthBaseFactor trunk at the base over trunk where girth is measured
 * @param south whether it lies south of the equator
 * @param buysFrom first month in which plants that are offered can come; none but in offers
 */
public record Site(double girthBaseFactor, boolean south, Optional<YearMonth> buysFrom) {
  private static final double MM_IN_CM = 10;

  /** Where nothing is said of it: the factor is the usual one of the settings. */
  public static final Site USUAL = new Site(Settings.USUAL_GIRTH_BASE_FACTOR, false);

  /** A site that buys nothing. */
  public Site(double girthBaseFactor, boolean south) {
    this(girthBaseFactor, south, Optional.empty());
  }

  /** The same, which reads offers of plants. */
  public Site buyingFrom(YearMonth month) {
    return new Site(girthBaseFactor, south, Optional.of(month));
  }

  /** Trunk at the base of a girth in cm, mm. */
  public Span trunkMm(Span girthCm) {
    return girthCm.times(MM_IN_CM / Math.PI * girthBaseFactor);
  }
}
