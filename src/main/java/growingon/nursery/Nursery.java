package growingon.nursery;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Ladder;
import growingon.nursery.market.MarketSure;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.nursery.number.Check;
import growingon.nursery.place.Care;
import growingon.nursery.place.Place;
import growingon.nursery.route.Route;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import io.soabase.recordbuilder.core.RecordBuilder;
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
@RecordBuilder
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
    List<OtherCash> otherCash)
    implements NurseryBuilder.With {
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
    return with().settings(settings.withMarket(market)).species(others).build();
  }
}
