package growingon.review.kept;

import growingon.nursery.Scenario;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import java.util.Map;
import java.util.TreeMap;

/**
 * What lies in the quantiles of a kept plan.
 *
 * @param of luck, or luck and not knowing
 * @param growthSpread standard deviation of the logarithm of what is not known of growth, for each
 *     species and growing condition
 */
public record KeptBands(String of, Map<String, Double> growthSpread) {
  static final String LUCK = "luck";
  static final String LUCK_AND_NOT_KNOWING = "luck and not knowing";

  public KeptBands {
    growthSpread = new TreeMap<>(growthSpread);
  }

  /** What the bands of a plan hold, and how wide growth of its species is taken to be. */
  public static KeptBands of(Scenario scenario) {
    Map<String, Double> spreads = new TreeMap<>();
    scenario.lots().stream()
        .map(scenario.nursery()::speciesOf)
        .distinct()
        .forEach(species -> put(spreads, species));
    return new KeptBands(scenario.isKnown() ? LUCK : LUCK_AND_NOT_KNOWING, spreads);
  }

  private static void put(Map<String, Double> spreads, Species species) {
    species
        .sure()
        .growth()
        .forEach(
            (condition, sure) -> spreads.put(species.name() + ", " + condition, Sure.spread(sure)));
  }
}
