package growingon.nursery.supply;

import growingon.nursery.number.Check;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A substrate mix by parts of its components.
 *
 * @param name as routes name it
 * @param parts parts by volume of each component, in the order typed
 * @param shrinkage share of the volume lost when unlike particle sizes are mixed
 * @param firming share more that goes in when the mix is firmed
 */
public record Mix(String name, Map<String, Double> parts, double shrinkage, double firming) {
  /** Usual share more when a mix is firmed; common practice, no source. */
  public static final double USUAL_FIRMING = 0.1;

  private static final double SHRINKAGE_OF_UNLIKE_PARTS = 0.1;

  public Mix {
    Check.named(name, "a mix");
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    Check.that(!parts.isEmpty(), "a mix needs parts", name);
    parts.values().forEach(part -> Check.positive(part, "a part of " + name));
    Check.that(shrinkage >= 0 && shrinkage < 1, "shrinkage lies from 0 to below 1", shrinkage);
    Check.notNegative(firming, "firming of " + name);
  }

  /**
   * Usual shrinkage of a mix of so many components: about a tenth (common practice, no source), as
   * unlike particle sizes fill each other's gaps; none of one component.
   */
  public static double usualShrinkage(int components) {
    return components > 1 ? SHRINKAGE_OF_UNLIKE_PARTS : 0;
  }

  /** Loose litres of all components for one litre in the pot: (1+firming)/(1−shrinkage). */
  public double looseLitresPerPottedLitre() {
    return (1 + firming) / (1 - shrinkage);
  }

  /** Share of a component in the loose volume, 0 to 1. */
  public double share(String component) {
    double sum = 0;
    for (double part : parts.values()) {
      sum += part;
    }
    return parts.getOrDefault(component, 0.0) / sum;
  }
}
