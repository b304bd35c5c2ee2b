package growingon.load.table.route;

import growingon.load.cell.Range;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Groups;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Row;
import growingon.load.row.Spacings;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.load.table.supply.Materials;
import growingon.nursery.place.Place;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.route.StepBuilder;
import growingon.nursery.route.When;
import growingon.nursery.supply.Material;
import growingon.nursery.supply.Mix;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Hemisphere;
import growingon.problem.advice.DefinitionAdvice;
import growingon.problem.advice.RouteAdvice;
import growingon.problem.advice.ValueAdvice;
import java.time.Month;
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
  public static final Heading<String> ROUTE =
      Heading.text("route").means("Name of the route; its steps follow each other row by row");
  private static final Heading<String> STEP =
      Heading.named("step").means("Name of the step, no two alike in one route");
  static final Heading<String> WHEN =
      Heading.text("when")
          .means(
              "arrival | March year 0 | 3 months after STEP | every 2 years in June | March once trunk 40. Year 0: the first March on or after arrival");
  private static final Heading<Month> TO_MONTH =
      Heading.text("to month", As.CALENDAR_MONTH)
          .choice("month")
          .expert()
          .means("Last month of the window over which the work is spread");
  private static final Heading<Double> MINUTES =
      Heading.number("minutes", As.number(Range.FROM_ZERO)).usual(0.0).means("Work on one plant");
  static final Heading<String> POT =
      Heading.text("pot").choice("pot").means("Pot it is potted into");
  private static final Heading<String> MIX =
      Heading.text("mix").choice("mix").means("Mix it is potted with");
  private static final Heading<Double> BALL_KEPT =
      Heading.number("ball kept %", As.share())
          .expert()
          .usual(Step.USUAL_BALL_KEPT)
          .means("Part of the old ball that stays on when potting on");
  static final Heading<Double> LIFTED_BALL =
      Heading.number("lifted ball litres", As.number(Range.FROM_ZERO))
          .usual(0.0)
          .means("Ball that comes out of the ground with the plant");
  private static final Heading<String> PLACE =
      Heading.text("place").choice("place").means("Where it goes; empty: stays");
  private static final Heading<Double> LOSS =
      Heading.number("loss %", As.share()).usual(0.0).means("How many in 100 die of the step");
  private static final Heading<Double> CULL =
      Heading.number("cull %", As.share())
          .expert()
          .usual(0.0)
          .means("How many in 100 are thrown out, worst first");
  static final Heading<Boolean> SORT =
      Heading.yesNo("sort")
          .usual(false)
          .means("Whether the lot is sorted; the first sort counts, later ones grade again");
  private static final Heading<Boolean> ROOT_WORK =
      Heading.yesNo("root work")
          .usual(false)
          .means("Whether roots are cut: growth is checked for two years");
  private static final Heading<Double> GROWTH_AFTER_1 =
      Heading.number("growth after 1 %", As.percent(Range.of(0, 200)))
          .expert()
          .means("Growth in the year after its root work; empty: the species' root-work check 1");
  private static final Heading<Double> GROWTH_AFTER_2 =
      Heading.number("growth after 2 %", As.percent(Range.of(0, 200)))
          .expert()
          .means("Growth in the year after that; empty: the species' root-work check 2");
  private static final String NO_POT = "none";
  private static final Heading<Boolean> TRAINING =
      Heading.yesNo("training starts")
          .usual(false)
          .means("Whether training starts here, which grades ask for");
  private static final Heading<String> MATERIALS =
      Heading.text("materials").means("What one plant takes, as: 2.4 m wire; 5 ml dressing");
  public static final TableFormat FORMAT =
      TableFormat.of(
              "routes",
              ROUTE.needed(),
              STEP.needed(),
              WHEN.needed(),
              MINUTES,
              POT,
              MIX,
              PLACE,
              Spacings.GAP
                  .plain()
                  .means("Free space between pots or crowns from now on; empty: as before"),
              MATERIALS,
              LOSS,
              SORT,
              ROOT_WORK,
              GROWTH_AFTER_1,
              GROWTH_AFTER_2,
              TRAINING,
              LIFTED_BALL,
              Spacings.PLANTS.means("How many stand on a square metre; needed in the ground"),
              CULL,
              TO_MONTH,
              BALL_KEPT)
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
      String step = row.get(STEP);
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
    When when = row.get(WHEN.as(WhenText.cell(earlier)));
    if (!name.isEmpty() && !when.recurs()) {
      earlier.add(name);
    }
    StepBuilder made = Step.named(name, when);
    made.toMonth(row.find(TO_MONTH)).minutes(row.get(MINUTES));
    boolean potEnds = Texts.key(row.cell(POT).shown()).equals(NO_POT);
    made.potEnds(potEnds)
        .pot(potEnds ? noPot(row) : row.findName(POT, known.pots().names()))
        .mix(row.findName(MIX, known.mixes().names()))
        .ballKeptShare(row.get(BALL_KEPT))
        .liftedBallLitres(row.get(LIFTED_BALL))
        .place(row.findName(PLACE, known.places().names()))
        .spacing(Spacings.find(row))
        .lossShare(row.get(LOSS))
        .cullShare(row.get(CULL))
        .sort(row.get(SORT));
    boolean rootWork = row.get(ROOT_WORK);
    made.rootWork(rootWork)
        .growthAfter(growthAfter(row, rootWork))
        .trainingStarts(row.get(TRAINING))
        .materials(
            row.find(MATERIALS.as(new Materials(known.materials()).cell())).orElse(Map.of()));
    if (row.has(MIX) && (potEnds || !row.has(POT))) {
      row.fail(MIX, where -> RouteAdvice.mixWithoutPot(where, row.cell(MIX).shown()));
    }
    return row.accept(made::build);
  }

  /** The cell is read, so that it counts as known, and names no pot. */
  private static Optional<String> noPot(Row row) {
    return row.find(POT).filter(none -> false);
  }

  private static Step.GrowthAfter growthAfter(Row row, boolean rootWork) {
    As<Double> factor = As.percent(Range.of(0, 200));
    Step.GrowthAfter after =
        new Step.GrowthAfter(
            As.optional(row.find(GROWTH_AFTER_1)), As.optional(row.find(GROWTH_AFTER_2)));
    if (!rootWork && !after.equals(Step.GrowthAfter.OF_SPECIES)) {
      String heading = after.first().isPresent() ? GROWTH_AFTER_1.name() : GROWTH_AFTER_2.name();
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
