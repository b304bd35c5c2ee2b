package growingon.nursery;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * What the nursery is and assumes, apart from its stock. Maps keep the order of the files.
 *
 * @param settings the settings
 * @param species by name
 * @param ladders by name
 * @param qualities what each quality fetches
 * @param routes by name
 * @param pots by name
 * @param components by name
 * @param mixes by name
 * @param materials by name
 * @param places by name; empty means that no space answer is asked for
 * @param demand in row order
 * @param care in row order
 * @param otherCash in row order
 */
public record Nursery(
    Settings settings,
    Map<String, Species> species,
    Map<String, Ladder> ladders,
    Map<Quality, QualityRule> qualities,
    Map<String, Route> routes,
    Map<String, Pot> pots,
    Map<String, Component> components,
    Map<String, Mix> mixes,
    Map<String, Material> materials,
    Map<String, Place> places,
    List<Demand> demand,
    List<Care> care,
    List<OtherCash> otherCash) {
  public Nursery {
    Objects.requireNonNull(settings);
    species = ordered(species);
    ladders = ordered(ladders);
    qualities = ordered(qualities);
    routes = ordered(routes);
    pots = ordered(pots);
    components = ordered(components);
    mixes = ordered(mixes);
    materials = ordered(materials);
    places = ordered(places);
    demand = List.copyOf(demand);
    care = List.copyOf(care);
    otherCash = List.copyOf(otherCash);
    for (Quality quality : Quality.values()) {
      Check.that(qualities.containsKey(quality), "every quality needs a rule", quality);
    }
  }

  private static <K, V> Map<K, V> ordered(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  /** The species of a lot. */
  public Species speciesOf(Lot lot) {
    return Check.known(species, lot.species(), "species");
  }

  /** The grade ladder of a lot's species. */
  public Ladder ladderOf(Lot lot) {
    return Check.known(ladders, speciesOf(lot).ladder(), "ladder");
  }

  /** The route of a lot. */
  public Route routeOf(Lot lot) {
    return Check.known(routes, lot.route(), "route");
  }

  /** The same with species and a market that are as sure as said. */
  public Nursery withSure(UnaryOperator<Species> bySpecies, MarketSure market) {
    Map<String, Species> others = new LinkedHashMap<>();
    species.forEach((name, each) -> others.put(name, bySpecies.apply(each)));
    return new Nursery(
        settings.withMarket(market),
        others,
        ladders,
        qualities,
        routes,
        pots,
        components,
        mixes,
        materials,
        places,
        demand,
        care,
        otherCash);
  }

  /** The same with other demand. */
  public Nursery withDemand(List<Demand> newDemand) {
    return with(species, newDemand);
  }

  /** The same with other assumptions of its species. */
  public Nursery withSpecies(Map<String, Species> newSpecies) {
    return with(newSpecies, demand);
  }

  private Nursery with(Map<String, Species> newSpecies, List<Demand> newDemand) {
    return new Nursery(
        settings,
        newSpecies,
        ladders,
        qualities,
        routes,
        pots,
        components,
        mixes,
        materials,
        places,
        newDemand,
        care,
        otherCash);
  }
}
