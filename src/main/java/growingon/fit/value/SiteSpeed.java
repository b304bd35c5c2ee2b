package growingon.fit.value;

import growingon.fit.value.Value.What;
import growingon.nursery.library.Figures;
import growingon.nursery.library.Library;
import growingon.nursery.species.Curve;
import growingon.nursery.species.FromLibrary;
import growingon.nursery.species.LibrarySite;
import growingon.nursery.species.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How fast this nursery grows against the library of species.
 *
 * @param speed factor on all growth of the library
 * @param species how many species it rests on
 */
public record SiteSpeed(double speed, int species) {
  private static final int FEWEST = 3;
  private static final double HALF = 0.5;

  /** Variance of the logarithm between sites, and between species of one site (own choice). */
  private static final double BETWEEN = 0.16;

  /** The factor that the logarithm of some ratios own to library give, drawn towards 1. */
  static SiteSpeed of(List<Double> logs) {
    double mean = logs.stream().mapToDouble(each -> each).average().orElse(0);
    double part = BETWEEN * logs.size() / (BETWEEN * logs.size() + BETWEEN);
    return new SiteSpeed(Math.exp(part * mean), logs.size());
  }

  /** The speed that at least three library species tell whose growth rests on records by half. */
  public static Optional<SiteSpeed> of(
      List<Value> values, Map<String, Species> assumed, LibrarySite site) {
    Map<String, List<Double>> bySpecies = new TreeMap<>();
    for (Value value : values) {
      Species species = assumed.get(value.species());
      if (value.what() == What.GROWTH && value.isLearnt() && value.weight() >= HALF) {
        library(species, value.condition(), site)
            .ifPresent(
                mm -> {
                  double own = species.growth().get(value.condition()).rate() * value.value();
                  bySpecies
                      .computeIfAbsent(species.name(), each -> new ArrayList<>())
                      .add(Math.log(own / mm));
                });
      }
    }
    List<Double> logs =
        bySpecies.values().stream()
            .map(each -> each.stream().mapToDouble(log -> log).average().orElse(0))
            .toList();
    return logs.size() < FEWEST ? Optional.empty() : Optional.of(of(logs));
  }

  /** What the library says of a species here at a site speed of 1, mm a year. */
  private static OptionalDouble library(Species species, String condition, LibrarySite site) {
    Optional<FromLibrary> from = species.fromLibrary();
    if (from.isEmpty() || !(species.growth().get(condition) instanceof Curve.Steady steady)) {
      return OptionalDouble.empty();
    }
    Library library = Library.shipped();
    Optional<Figures> figures =
        library
            .condition(site.conditionOf(condition).orElse(condition))
            .flatMap(
                known ->
                    library.taxa().stream()
                        .filter(taxon -> taxon.shown().equals(from.get().row()))
                        .findFirst()
                        .map(taxon -> taxon.in(known, LibrarySite.USUAL)));
    if (figures.isPresent()) {
      return OptionalDouble.of(figures.get().mmAYear());
    }
    return from.get().conditions().contains(condition)
        ? OptionalDouble.of(steady.gMmAYear() / site.speed())
        : OptionalDouble.empty();
  }

  /** Whether the settings say so already. */
  public boolean isThere(LibrarySite site) {
    return species == site.speedFrom() && Math.abs(rounded() - site.speed()) < 1e-9;
  }

  /** As it is proposed: to a hundredth. */
  public double rounded() {
    return Math.round(100 * speed) / 100.0;
  }
}
