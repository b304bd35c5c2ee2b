package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.place.Place;
import growingon.nursery.place.Spacing;
import growingon.nursery.route.Route;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
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

  /**
   * What follows how a lot stands.
   *
   * @param species name of its species
   * @param crownMm how wide its crowns are
   */
  private record Standing(
      String species, double crownMm, Optional<Pot> pot, Optional<Place> place, Spacing spacing) {}

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
    double crownMm = plan.lot.standing().crownMm();
    return spots.computeIfAbsent(
        new Standing(plan.species.name(), crownMm, pot, place, spacing),
        each -> Spot.of(plan, pot, place, spacing));
  }
}
