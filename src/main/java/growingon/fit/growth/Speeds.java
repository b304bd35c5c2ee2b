package growingon.fit.growth;

import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;

/**
 * How fast plants grow against what was assumed first.
 *
 * @param logs logarithm of the factor for each kind; 0 for those left out
 */
public record Speeds(Map<Kind, Double> logs) {
  /** As assumed first. */
  public static final Speeds AS_ASSUMED = new Speeds(Map.of());

  public Speeds {
    logs = Map.copyOf(logs);
  }

  double factor(Kind kind) {
    return Math.exp(logs.getOrDefault(kind, 0.0));
  }

  /** The same where the logarithms of some kinds are more by an amount. */
  Speeds moved(Predicate<Kind> which, Iterable<Kind> kinds, double by) {
    Map<Kind, Double> moved = new HashMap<>(logs);
    for (Kind kind : kinds) {
      if (which.test(kind)) {
        moved.merge(kind, by, Double::sum);
      }
    }
    return new Speeds(moved);
  }

  /** Species that grow so. */
  Map<String, Species> of(Map<String, Species> assumed) {
    Map<String, Species> faster = new LinkedHashMap<>();
    assumed.forEach((name, species) -> faster.put(name, species.withGrowth(growth(species))));
    return faster;
  }

  private Map<String, Curve> growth(Species species) {
    Map<String, Curve> growth = new LinkedHashMap<>();
    species
        .growth()
        .forEach(
            (condition, curve) -> {
              Kind kind = new Kind(species.name(), condition);
              growth.put(condition, logs.containsKey(kind) ? curve.faster(factor(kind)) : curve);
            });
    return growth;
  }
}
