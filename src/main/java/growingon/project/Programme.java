package growingon.project;

import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Place;
import growingon.nursery.PlaceKind;
import growingon.nursery.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * A scenario made ready to run as often as wanted, by several threads at once: everything that no
 * luck changes.
 */
public final class Programme {
  private final Scenario scenario;
  private final Horizon horizon;
  private final Calendar calendar;
  private final CareRates care;
  private final Optional<Place> apartPlace;
  private final List<LotPlan> lots;
  private final List<DemandRow> rows;

  private Programme(Scenario scenario, List<LotPlan> lots) {
    this.scenario = scenario;
    this.horizon = scenario.horizon();
    this.calendar =
        new Calendar(
            horizon,
            scenario.nursery().settings().winter(),
            scenario.nursery().settings().yearEnd());
    this.care = new CareRates(scenario.nursery().care());
    this.apartPlace =
        scenario.nursery().places().values().stream()
            .filter(place -> place.kind() == PlaceKind.QUARANTINE)
            .findFirst();
    this.lots = lots;
    this.rows = DemandRow.inOrder(scenario.nursery(), calendar, lots);
  }

  private Programme(Programme like, Scenario scenario, List<LotPlan> lots) {
    this.scenario = scenario;
    this.horizon = like.horizon;
    this.calendar = like.calendar;
    this.care = like.care;
    this.apartPlace = like.apartPlace;
    this.lots = lots;
    this.rows = like.rows.stream().map(row -> row.metFrom(lots)).toList();
  }

  /** Makes a checked scenario ready. */
  public static Programme of(Scenario scenario) {
    Lattice lattice = Lattice.of(scenario.plan().slices());
    Horizon horizon = scenario.horizon();
    return new Programme(
        scenario,
        scenario.lots().stream()
            .map(lot -> new LotPlan(lot, scenario.nursery(), horizon, lattice))
            .toList());
  }

  /** The same without a lot; what was made ready for the others serves both. */
  public Programme without(String name) {
    return new Programme(
        scenario.without(name),
        lots.stream().filter(plan -> !plan.lot.name().equals(name)).toList());
  }

  /** A programme of other lots of the same nursery and plan. */
  Programme with(List<Lot> others, List<LotPlan> plans) {
    return new Programme(this, scenario.withLots(others), plans);
  }

  /** The plan's line: expected numbers, with all particulars. */
  Projection expected() {
    return new Run(this, Luck.NONE).withHistories(false);
  }

  /**
   * Runs the months once.
   *
   * @param luck the luck of this run
   * @param recorders gives the recorder of each lot by its index in the scenario
   * @return demand that could not be met
   */
  public List<Missed> run(Luck luck, IntFunction<Recorder> recorders) {
    return new Run(this, luck).withRecorders(recorders);
  }

  /** The scenario. */
  public Scenario scenario() {
    return scenario;
  }

  /** The months of the plan. */
  public Horizon horizon() {
    return horizon;
  }

  Nursery nursery() {
    return scenario.nursery();
  }

  Calendar calendar() {
    return calendar;
  }

  CareRates care() {
    return care;
  }

  Optional<Place> apartPlace() {
    return apartPlace;
  }

  List<LotPlan> lots() {
    return lots;
  }

  List<DemandRow> rows() {
    return rows;
  }
}
