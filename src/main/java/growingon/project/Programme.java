package growingon.project;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.number.Writing;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.time.Horizon;
import growingon.project.history.Missed;
import growingon.project.history.Recorder;
import growingon.project.lot.Alike;
import growingon.project.lot.CareRates;
import growingon.project.lot.Facts;
import growingon.project.lot.LotPlan;
import growingon.project.lot.Luck;
import growingon.project.lot.Surroundings;
import growingon.project.time.Calendar;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * A scenario made ready to run as often as wanted, by several threads at once: everything that no
 * luck changes.
 */
public final class Programme {
  private final Scenario scenario;
  private final Surroundings surroundings;
  private final CareRates care;
  private final List<LotPlan> lots;
  private final DemandRow[] rows;
  private final boolean[] asks;

  private Programme(Scenario scenario, List<LotPlan> lots) {
    this.scenario = scenario;
    Nursery nursery = scenario.nursery();
    Horizon horizon = scenario.horizon();
    Calendar calendar =
        new Calendar(horizon, nursery.settings().winter(), nursery.settings().yearEnd());
    Optional<Place> apartPlace =
        nursery.places().values().stream()
            .filter(place -> place.kind() == PlaceKind.QUARANTINE)
            .findFirst();
    this.surroundings = new Surroundings(nursery, horizon, calendar, apartPlace);
    this.care = new CareRates(nursery.care());
    this.lots = lots;
    this.rows = DemandRow.inOrder(nursery, calendar, lots).toArray(new DemandRow[0]);
    this.asks = new boolean[horizon.months()];
    for (DemandRow row : rows) {
      for (int month = 0; month < asks.length; month++) {
        asks[month] |= row.units()[month] > 0;
      }
    }
  }

  /** What its lots stand in. */
  Surroundings surroundings() {
    return surroundings;
  }

  /** How what it remarks is written. */
  Writing writing() {
    return scenario.nursery().settings().writing();
  }

  private Programme(Programme like, Scenario scenario, List<LotPlan> lots) {
    this.scenario = scenario;
    this.surroundings = like.surroundings;
    this.care = like.care;
    this.lots = lots;
    this.rows = new DemandRow[like.rows.length];
    for (int i = 0; i < rows.length; i++) {
      int same = firstMetAlike(like.rows, i);
      rows[i] = same < i ? like.rows[i].metAs(rows[same]) : like.rows[i].metFrom(lots);
    }
    this.asks = like.asks;
  }

  /** The first row that is met from the same lots as one. */
  private static int firstMetAlike(DemandRow[] rows, int of) {
    int row = 0;
    while (!rows[row].isMetAs(rows[of])) {
      row++;
    }
    return row;
  }

  /** Makes a checked scenario ready. */
  public static Programme of(Scenario scenario) {
    Alike alike = new Alike(scenario.nursery(), scenario.horizon(), scenario.plan().slices());
    return new Programme(
        scenario, scenario.lots().stream().map(lot -> new LotPlan(lot, alike)).toList());
  }

  /** The same without a lot; what was made ready for the others serves both. */
  public Programme without(String name) {
    return new Programme(
        this,
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
    return run(luck, Facts.NONE, recorders);
  }

  /**
   * Runs of it again and again, by one thread at a time.
   *
   * @param recorders gives the recorder of each lot, which is told of run after run
   */
  public Reruns reruns(IntFunction<Recorder> recorders) {
    return new Reruns(this, recorders);
  }

  /** The same from what is there: what is known to have happened takes the place of luck. */
  public List<Missed> run(Luck luck, Facts known, IntFunction<Recorder> recorders) {
    return new Run(this, luck, known).withRecorders(recorders);
  }

  /**
   * Runs the months of this programme and of others that differ from it in some lots once, on the
   * same luck: as {@link #run} does one after the other, to the last digit, but a lot that several
   * of them have is run once for as long as it sells the same in them.
   *
   * @param others programmes that were made ready with this one: of the same nursery and plan
   * @param luck the luck of this run
   * @param recorders gives the recorder of each lot of each programme, this one first
   * @return what each of them was told, this one first
   */
  public List<SideBySide.Told> runBeside(
      List<Programme> others, Luck luck, SideBySide.Recorders recorders) {
    return new SideBySide(this, others, luck, recorders).run();
  }

  /** The scenario. */
  public Scenario scenario() {
    return scenario;
  }

  /** The months of the plan. */
  public Horizon horizon() {
    return surroundings.horizon();
  }

  Nursery nursery() {
    return scenario.nursery();
  }

  Calendar calendar() {
    return surroundings.calendar();
  }

  CareRates care() {
    return care;
  }

  Optional<Place> apartPlace() {
    return surroundings.apartPlace();
  }

  /** What does not change about each lot; the stock, then what is bought. */
  public List<LotPlan> lots() {
    return lots;
  }

  /** Demand rows in the order in which they are met. */
  DemandRow[] rows() {
    return rows;
  }

  /** Whether anything may be sold in each month. */
  boolean[] asks() {
    return asks;
  }
}
