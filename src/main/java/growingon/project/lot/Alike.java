package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.place.Place;
import growingon.nursery.place.Spacing;
import growingon.nursery.route.Route;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.project.pot.Footprint;
import growingon.project.slice.Lattice;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What lots of one nursery and plan have alike, each made once for all of them: so a month of many
 * lots reads little memory. Several threads may use it at once.
 */
public final class Alike {
  final Nursery nursery;
  final Horizon horizon;
  final Lattice lattice;
  private final Map<Route, StepKind[]> steps = new ConcurrentHashMap<>();
  private final Map<Standing, Spot> spots = new ConcurrentHashMap<>();
  private final Map<String, Optional<String>> placeNames = new ConcurrentHashMap<>();

  /**
   * What it follows from how a lot stands.
   *
   * @param species name of its species
   * @param m2Each square metres of one plant, by its crown
   */
  private record Standing(
      String species, double m2Each, Optional<Pot> pot, Optional<Place> place, Spacing spacing) {}

  /** Nothing is made yet. */
  public Alike(Nursery nursery, Horizon horizon, int slices) {
    this.nursery = nursery;
    this.horizon = horizon;
    this.lattice = Lattice.of(slices);
  }

  /** What the steps of a route do. */
  StepKind[] steps(Route route) {
    return steps.computeIfAbsent(
        route,
        each ->
            each.steps().stream().map(step -> StepKind.of(step, nursery)).toArray(StepKind[]::new));
  }

  /** How a lot stands in a pot, place and spacing. */
  Spot spot(LotPlan plan, Optional<Pot> pot, Optional<Place> place, Spacing spacing) {
    double m2Each = Footprint.m2(pot, plan.lot.standing().crownMm(), spacing, place);
    return spots.computeIfAbsent(
        new Standing(plan.species.name(), m2Each, pot, place, spacing),
        each -> Spot.of(plan, pot, place, spacing, name(place), m2Each));
  }

  private Optional<String> name(Optional<Place> place) {
    return place.isEmpty()
        ? Optional.empty()
        : placeNames.computeIfAbsent(place.get().name(), Optional::of);
  }
}
