package growingon.nursery.place;

import growingon.nursery.number.Check;
import java.util.OptionalDouble;

/**
 * How far apart plants stand: a gap between them, or plants per square metre, which overrides.
 *
 * @param gapMm gap between pots or crowns
 * @param plantsPerM2 if stated, overrides measures and gap
 */
public record Spacing(double gapMm, OptionalDouble plantsPerM2) {
  /** Pot thick. */
  public static final Spacing NO_GAP = new Spacing(0, OptionalDouble.empty());

  public Spacing {
    Check.notNegative(gapMm, "gap");
    Check.positive(plantsPerM2.orElse(1), "plants per m2");
  }
}
