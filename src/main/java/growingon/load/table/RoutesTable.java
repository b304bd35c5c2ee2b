package growingon.load.table;

import growingon.load.cell.As;
import growingon.load.cell.Groups;
import growingon.load.cell.Names;
import growingon.load.cell.Range;
import growingon.load.cell.Row;
import growingon.load.cell.Spacings;
import growingon.load.cell.Texts;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.nursery.Hemisphere;
import growingon.nursery.Material;
import growingon.nursery.Mix;
import growingon.nursery.Place;
import growingon.nursery.Pot;
import growingon.nursery.Route;
import growingon.nursery.Step;
import growingon.nursery.When;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.RouteAdvice;
import growingon.problem.advice.ValueAdvice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Growing-on routes, one step a row, in order. All figures are for one plant.
 *
 * <pre>
 * route                 name of the route
 * step                  name of the step, unique in its route
 * when                  arrival | March year 0 | 3 months after STEP (an earlier once-only step) |
 *                       every 3 years in March | March once trunk 40
 * to month              last month of a window over which hours and materials are spread [none]
 * minutes               of work [0]
 * pot                   it is potted into, or "none" where it is planted out of its pot [as before]
 * mix                   it is potted with; needs a pot [none]
 * ball kept %           of the old ball [50]
 * lifted ball litres    ball lifted from the ground [0]
 * place                 it moves to [none]
 * gap mm, plants per m2 how it stands from now on [as before]
 * loss %                dies of the step [0]
 * cull %                of the living, worst quality first [0]
 * sort, root work, training starts   yes or no; the first step that sorts counts [no]
 * growth after 1 %, growth after 2 % growth in the year after its root work, and in the next [the
 *                       species' root-work check]
 * materials             "2.4 m wire; 5 ml dressing" [none]
 * </pre>
 */
public final class RoutesTable {
  public static final String ROUTE = "route";
  private static final String STEP = "step";
  static final String WHEN = "when";
  private static final String TO_MONTH = "to month";
  private static final String MINUTES = "minutes";
  static final String POT = "pot";
  private static final String MIX = "mix";
  private static final String BALL_KEPT = "ball kept %";
  static final String LIFTED_BALL = "lifted ball litres";
  private static final String PLACE = "place";
  private static final String LOSS = "loss %";
  private static final String CULL = "cull %";
  static final String SORT = "sort";
  private static final String ROOT_WORK = "root work";
  private static final String GROWTH_AFTER_1 = "growth after 1 %";
  private static final String GROWTH_AFTER_2 = "growth after 2 %";
  private static final String NO_POT = "none";
  private static final String TRAINING = "training starts";
  private static final String MATERIALS = "materials";
  public static final TableFormat FORMAT =
      TableFormat.of("routes", ROUTE, STEP, WHEN)
          .with(
              TO_MONTH,
              MINUTES,
              POT,
              MIX,
              BALL_KEPT,
              LIFTED_BALL,
              PLACE,
              Spacings.GAP,
              Spacings.PLANTS,
              LOSS,
              CULL,
              SORT,
              ROOT_WORK,
              GROWTH_AFTER_1,
              GROWTH_AFTER_2,
              TRAINING,
              MATERIALS)
          .about(ROUTE, STEP);

  /** What steps may name, and where the nursery lies. */
  public record Known(
      Defined<Pot> pots,
      Defined<Mix> mixes,
      Defined<Place> places,
      Defined<Material> materials,
      Hemisphere hemisphere) {}

  /**
   * A route as read.
   *
   * @param steps names of its steps, also of faulty rows
   * @param route the route, if all its rows are fine
   */
  public record RouteRead(Names steps, Optional<Route> route) {}

  private final Known known;

  private RoutesTable(Known known) {
    this.known = known;
  }

  public static Defined<RouteRead> read(Optional<Table> table, Known known) {
    RoutesTable reader = new RoutesTable(known);
    Defined<RouteRead> routes = Defined.of(new Names("route", FORMAT.name()), table);
    table.ifPresent(
        found -> {
          found.rows().forEach(row -> row.needs(ROUTE, STEP, WHEN));
          Groups.by(ROUTE, found.rows()).forEach((name, rows) -> reader.add(routes, name, rows));
        });
    return routes;
  }

  private void add(Defined<RouteRead> routes, String name, List<Row> rows) {
    routes.names().add(name);
    Names steps = new Names("step of the route " + name, FORMAT.name());
    Names earlier = new Names("once-only step above this one", FORMAT.name());
    List<RouteChecks.StepRow> read = new ArrayList<>();
    for (Row row : rows) {
      String step = row.get(STEP, As.NAME);
      if (!step.isEmpty() && !steps.add(step)) {
        row.fail(STEP, where -> ValueAdvice.defined(where, step, steps.find(step).orElse(step)));
      }
      step(step, row, earlier).ifPresent(made -> read.add(new RouteChecks.StepRow(made, row)));
    }
    boolean whole = read.size() == rows.size();
    if (whole) {
      RouteChecks.check(read, known.places(), known.hemisphere());
    }
    boolean fine = whole && rows.stream().allMatch(Row::isAccepted);
    List<Step> made = read.stream().map(RouteChecks.StepRow::step).toList();
    routes
        .values()
        .put(
            name,
            new RouteRead(steps, fine ? Optional.of(new Route(name, made)) : Optional.empty()));
  }

  private Optional<Step> step(String name, Row row, Names earlier) {
    When when = row.get(WHEN, WhenText.cell(earlier));
    if (!name.isEmpty() && !when.recurs()) {
      earlier.add(name);
    }
    Step.Builder made = Step.named(name, when);
    made.toMonth(row.find(TO_MONTH, As.CALENDAR_MONTH))
        .minutes(row.get(MINUTES, As.number(Range.FROM_ZERO), 0.0));
    boolean potEnds = Texts.key(row.cell(POT).shown()).equals(NO_POT);
    made.potEnds(potEnds)
        .pot(potEnds ? noPot(row) : row.findName(POT, known.pots().names()))
        .mix(row.findName(MIX, known.mixes().names()))
        .ballKeptShare(row.get(BALL_KEPT, As.share(), Step.USUAL_BALL_KEPT))
        .liftedBallLitres(row.get(LIFTED_BALL, As.number(Range.FROM_ZERO), 0.0))
        .place(row.findName(PLACE, known.places().names()))
        .spacing(Spacings.find(row))
        .lossShare(row.get(LOSS, As.share(), 0.0))
        .cullShare(row.get(CULL, As.share(), 0.0))
        .sort(row.get(SORT, As.YES_NO, false));
    boolean rootWork = row.get(ROOT_WORK, As.YES_NO, false);
    made.rootWork(rootWork)
        .growthAfter(growthAfter(row, rootWork))
        .trainingStarts(row.get(TRAINING, As.YES_NO, false))
        .materials(row.find(MATERIALS, new Materials(known.materials()).cell()).orElse(Map.of()));
    if (row.has(MIX) && (potEnds || !row.has(POT))) {
      row.fail(MIX, where -> RouteAdvice.mixWithoutPot(where, row.cell(MIX).shown()));
    }
    return row.accept(made::build);
  }

  /** The cell is read, so that it counts as known, and names no pot. */
  private static Optional<String> noPot(Row row) {
    return row.find(POT, As.TEXT).filter(none -> false);
  }

  private static Step.GrowthAfter growthAfter(Row row, boolean rootWork) {
    As<Double> factor = As.percent(Range.of(0, 200));
    Step.GrowthAfter after =
        new Step.GrowthAfter(
            As.optional(row.find(GROWTH_AFTER_1, factor)),
            As.optional(row.find(GROWTH_AFTER_2, factor)));
    if (!rootWork && !after.equals(Step.GrowthAfter.OF_SPECIES)) {
      String heading = after.first().isPresent() ? GROWTH_AFTER_1 : GROWTH_AFTER_2;
      row.remark(
          heading,
          where -> DefinitionAdvice.growthAfterWithoutRootWork(where, row.cell(heading).shown()));
    }
    return after;
  }

  /** The routes that are fine. */
  public static Map<String, Route> fine(Defined<RouteRead> read) {
    Map<String, Route> routes = new LinkedHashMap<>();
    read.values().forEach((name, each) -> each.route().ifPresent(r -> routes.put(name, r)));
    return routes;
  }
}
