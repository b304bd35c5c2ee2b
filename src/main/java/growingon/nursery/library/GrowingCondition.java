package growingon.nursery.library;

import growingon.nursery.number.Check;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A growing condition of the library: how growth and losses differ from those in the field.
 *
 * @param name as it is called in the library
 * @param where such as in the field
 * @param pots its pots in the plural; empty in the ground
 * @param litres of such a pot, about; empty in the ground
 * @param factor growth over that in the field
 * @param siteSpread standard deviation of the logarithm of growth between nurseries
 * @param ownSpread the same between what is called by this name
 * @param mostMm trunk that a plant does not outgrow in it; empty for none
 * @param firstYearLossFactor loss of the first year over that in the field
 * @param laterLossMore share lost a year after that on top of that in the field
 * @param sources ids of the sources of its growth
 */
public record GrowingCondition(
    String name,
    String where,
    String pots,
    OptionalDouble litres,
    double factor,
    double siteSpread,
    double ownSpread,
    OptionalDouble mostMm,
    double firstYearLossFactor,
    double laterLossMore,
    List<String> sources) {
  /** Variance of a measured species' speed against the library: our choice, no source. */
  private static final double MEASURED_VARIANCE = 0.16;

  public GrowingCondition {
    Check.named(name, "a growing condition");
    Check.positive(factor, "growth in " + name);
    Check.notNegative(siteSpread, "spread between nurseries in " + name);
    Check.notNegative(ownSpread, "spread in " + name);
    Check.positive(firstYearLossFactor, "first-year loss in " + name);
    Check.share(laterLossMore, "later loss in " + name);
    sources = List.copyOf(sources);
  }

  /** Whether plants grow in pots in it. */
  public boolean isOfPots() {
    return !pots.isEmpty();
  }

  /**
   * Variance of the logarithm of growth between nurseries, less where the speed of this one rests
   * on species that were measured in it: site² · 0.16/(m site² + 0.16).
   *
   * @param measured how many species it rests on
   */
  double siteVariance(int measured) {
    double variance = siteSpread * siteSpread;
    return variance * MEASURED_VARIANCE / (measured * variance + MEASURED_VARIANCE);
  }
}
