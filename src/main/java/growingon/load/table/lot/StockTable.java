package growingon.load.table.lot;

import growingon.load.cell.Range;
import growingon.load.row.As;
import growingon.load.row.Heading;
import growingon.load.row.Names;
import growingon.load.row.Quantities;
import growingon.load.row.Row;
import growingon.load.row.Spacings;
import growingon.load.source.Table;
import growingon.load.source.TableFormat;
import growingon.load.table.Defined;
import growingon.load.table.route.RoutesTable.RouteRead;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.LotBuilder;
import growingon.nursery.lot.Papers;
import growingon.nursery.lot.Potting;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Standing;
import growingon.nursery.lot.Trunks;
import growingon.nursery.place.Spacing;
import growingon.nursery.record.StockList;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.problem.Where;
import growingon.problem.advice.LotAdvice;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The stock list: a row is a lot that arrived before the plan begins. Its columns say what they
 * are. Of a trunk one way to state it is needed: "10-12" is a class, "3.5 cm" and "8-10 cm girth"
 * are converted, and of girths trunk mm = 10 x cm / pi x girth base factor.
 */
public final class StockTable {
  public static final Heading<String> LOT =
      Heading.text("lot")
          .means(
              "Your name for plants that arrived together and are treated alike; no two lots have the same");
  private static final Heading<Integer> QUANTITY =
      Heading.number("quantity", Quantities.plants()).means("Plants alive when they were counted");
  static final Heading<YearMonth> ARRIVED =
      Heading.month("arrived")
          .means("Month in which they came, before this month; what comes later is an offer");
  static final Heading<YearMonth> COUNTED =
      Heading.month("counted")
          .expert()
          .ifEmpty("this month")
          .means("Month in which they were counted and measured");
  private static final Heading<Boolean> SORTED =
      Heading.yesNo("sorted")
          .expert()
          .usual(true)
          .means("Whether firsts, seconds and thirds are known already");
  static final Heading<String> POT =
      Heading.text("pot")
          .choice("pot")
          .means("Pot they stand in now; empty if they stand in the ground");
  static final Heading<YearMonth> POTTED =
      Heading.month("potted")
          .expert()
          .means("Month in which they were potted; empty: worked out from the steps done");
  static final Heading<YearMonth> ROOT_WORK =
      Heading.month("root work")
          .expert()
          .means("Month in which roots were last cut; empty: worked out from the steps done");
  private static final Heading<String> LAST_STEP =
      Heading.named("last step")
          .choice("step")
          .expert()
          .means("Last once-only step done; empty: worked out from the dates");
  static final Heading<YearMonth> TRAINING_SINCE =
      Heading.month("training since")
          .expert()
          .means("Month in which training started; empty: not yet");
  static final Heading<Integer> KEPT =
      Heading.number("kept", Quantities.plants())
          .usual(0)
          .means("Plants of the lot that are never for sale");
  private static final Heading<Double> UNIT_COST =
      Heading.money("unit cost")
          .usual(0.0)
          .means("What one plant has cost you so far: spent, so never counted as cash to come");
  static final Heading<String> FROM_LOT =
      Heading.text("from lot")
          .expert()
          .means("Lot or lots they were split from, with semicolons between");
  public static final TableFormat FORMAT =
      TableFormat.of(
              "stock",
              LOT.needed(),
              LotCells.SPECIES.needed(),
              LotCells.FORM.needed(),
              QUANTITY.needed(),
              ARRIVED.needed(),
              LotCells.ROUTE.needed(),
              LotCells.TRUNK,
              POT,
              LotCells.PLACE,
              UNIT_COST,
              LotCells.NOTE,
              LotCells.FIRST,
              LotCells.SECOND,
              KEPT,
              Spacings.PLANTS,
              LAST_STEP,
              COUNTED,
              LotCells.TRUNK_SPREAD,
              LotCells.USUAL_TRUNK,
              LotCells.TRUNK_FROM,
              LotCells.TRUNK_TO,
              LotCells.GIRTH_FROM,
              LotCells.GIRTH_TO,
              SORTED,
              POTTED,
              ROOT_WORK,
              Spacings.GAP,
              LotCells.CROWN,
              LotCells.HEIGHT_LEFT,
              TRAINING_SINCE,
              LotCells.HOLD_GRADE,
              LotCells.HOLD_SHARE,
              LotCells.HOLD_WHICH,
              LotCells.NOT_BEFORE,
              LotCells.APART,
              LotCells.UNTOUCHED,
              LotCells.HEELED_IN,
              LotCells.SUPPLIER,
              LotCells.PASSPORT,
              LotCells.ORIGIN,
              FROM_LOT,
              TrunkCells.MEASURED)
          .understanding(TrunkCells.OTHER_HEADINGS);

  private static final Heading<?>[] NEEDED = {
    LOT, LotCells.SPECIES, LotCells.FORM, QUANTITY, ARRIVED, LotCells.ROUTE
  };

  /** A list of the past may lack a number. */
  private static final Heading<?>[] NEEDED_OF_THE_PAST = {
    LOT, LotCells.SPECIES, LotCells.FORM, ARRIVED, LotCells.ROUTE
  };

  /** Stands in where nobody measured; nothing is learnt from it. */
  private static final Trunks UNKNOWN = new Trunks.Measured(10, 0.15);

  private final Definitions known;
  private final LotChecks checks;
  private final boolean isOfThePast;
  private final TrunkCells trunkCells;
  private final Map<String, Where> rows = new HashMap<>();
  private final Map<String, Integer> measured = new HashMap<>();
  private final Set<String> uncounted = new HashSet<>();
  private final Set<String> unmeasured = new HashSet<>();

  private StockTable(Definitions known, LotChecks checks, boolean isOfThePast) {
    this.known = known;
    this.checks = checks;
    this.isOfThePast = isOfThePast;
    this.trunkCells = new TrunkCells(known.settings().girthBaseFactor());
  }

  static Defined<Lot> read(Optional<Table> table, Definitions known, LotChecks checks) {
    return readSheet(table, known, checks).lots();
  }

  /**
   * The lots of a table with the rows they come from.
   *
   * @param lots the lots
   * @param rows row of each lot by name
   * @param measured how many trunks the mean of a row is of, where it is said
   * @param uncounted lots whose plants were not counted
   * @param unmeasured lots whose trunks were not measured
   */
  public record Sheet(
      Defined<Lot> lots,
      Map<String, Where> rows,
      Map<String, Integer> measured,
      Set<String> uncounted,
      Set<String> unmeasured) {
    /** No lots. */
    public static Sheet none() {
      return new Sheet(
          Defined.none(new Names("lot", FORMAT.name())), Map.of(), Map.of(), Set.of(), Set.of());
    }

    /** As the stock list of a month. */
    public StockList list(String name, YearMonth month) {
      return new StockList(name, month, lots.values().values().stream().map(this::row).toList());
    }

    private StockList.Row row(Lot lot) {
      String name = lot.name();
      return new StockList.Row(
          lot, !uncounted.contains(name), !unmeasured.contains(name), of(lot), rows.get(name));
    }

    /** The same where more lots were not counted or not measured. */
    public Sheet besides(Set<String> notCounted, Set<String> notMeasured) {
      Set<String> counts = new HashSet<>(uncounted);
      counts.addAll(notCounted);
      Set<String> trunks = new HashSet<>(unmeasured);
      trunks.addAll(notMeasured);
      return new Sheet(lots, rows, measured, counts, trunks);
    }

    private OptionalInt of(Lot lot) {
      Integer stated = measured.get(lot.name());
      return stated == null
          ? OptionalInt.empty()
          : OptionalInt.of(Math.max(1, Math.min(stated, lot.quantity())));
    }
  }

  /** The same with the rows they come from. */
  public static Sheet readSheet(Optional<Table> table, Definitions known, LotChecks checks) {
    return new StockTable(known, checks, false).sheet(table);
  }

  /**
   * The same of a list of the past, in which lots may have come in its very month, and which may
   * lack numbers of plants or trunks.
   *
   * @param then what was known, its horizon beginning in the month of the list
   */
  public static Sheet readEarlier(Optional<Table> table, Definitions then, LotChecks checks) {
    return new StockTable(then, checks, true).sheet(table);
  }

  private Sheet sheet(Optional<Table> table) {
    Defined<Lot> lots = Defined.rows(new Names("lot", FORMAT.name()), table, LOT, this::lot);
    trunkCells.remark();
    return new Sheet(lots, rows, measured, uncounted, unmeasured);
  }

  /** The last month in which a row of a table was counted; empty where none says it. */
  public static Optional<YearMonth> lastCounted(Table table) {
    return table.rows().stream()
        .map(row -> row.peek(COUNTED))
        .flatMap(Optional::stream)
        .max(Comparator.naturalOrder());
  }

  /** Whether every row says when it was counted. */
  public static boolean isCountedThroughout(Table table) {
    return table.rows().stream().allMatch(row -> row.has(COUNTED));
  }

  private Optional<Lot> lot(String name, Row row) {
    boolean isCounted = !isOfThePast || row.has(QUANTITY);
    boolean isMeasured = !isOfThePast || trunkCells.areIn(row);
    row.needs(isCounted ? NEEDED : NEEDED_OF_THE_PAST);
    String species = row.getName(LotCells.SPECIES, known.species().names());
    LotBuilder made = Lot.named(name, species);
    Form form = row.get(LotCells.FORM);
    int quantity = isCounted ? row.get(QUANTITY) : 0;
    YearMonth arrived = row.get(ARRIVED);
    YearMonth counted = row.get(COUNTED, known.horizon().firstMonth());
    made.form(form).quantity(quantity).arrived(arrived).counted(counted);
    Optional<Trunks> trunks = isMeasured ? trunkCells.read(row) : Optional.of(UNKNOWN);
    Optional<QualityShares> quality = LotCells.quality(row, row.get(SORTED), 1);
    Potting potting = potting(row);
    made.potting(potting).standing(standing(row, known));
    String route = row.getName(LotCells.ROUTE, known.routes().names());
    made.route(route).lastStep(lastStep(row, route));
    Optional<YearMonth> training = row.find(TRAINING_SINCE);
    made.trainingSince(training)
        .hold(LotCells.hold(row, species, known.species(), known.ladders()));
    int kept = row.get(KEPT);
    made.kept(kept)
        .notBefore(LotCells.notBefore(row, form, arrived))
        .apartMonths(LotCells.apart(row, arrived, known.settings()))
        .untouched(row.get(LotCells.UNTOUCHED))
        .unitCost(row.get(UNIT_COST.reading(As.money(known.settings().currency(), Range.PRICE))))
        .papers(papers(row));
    note(name, row, isCounted, isMeasured);
    new StockChecks.Months(arrived, counted, potting, training)
        .check(row, known.horizon().firstMonth(), isOfThePast);
    StockChecks.checkKept(row, quantity, kept);
    Optional<Lot> lot =
        row.accept(() -> made.trunks(trunks.orElseThrow()).quality(quality.orElseThrow()).build());
    lot.ifPresent(whole -> checkWhole(row, whole));
    return lot;
  }

  private void note(String name, Row row, boolean isCounted, boolean isMeasured) {
    rows.put(name, row.where());
    if (!isCounted) {
      uncounted.add(name);
    }
    if (!isMeasured || row.has(LotCells.USUAL_TRUNK)) {
      unmeasured.add(name);
    }
    row.find(TrunkCells.MEASURED).ifPresent(number -> measured.put(name, number));
  }

  private Potting potting(Row row) {
    Optional<String> pot = row.findName(POT, known.pots().names());
    Optional<YearMonth> potted = row.find(POTTED);
    if (potted.isPresent() && !row.has(POT)) {
      row.fail(POTTED, where -> LotAdvice.pottedWithoutPot(where, row.cell(POTTED).shown()));
    }
    return new Potting(pot, potted, row.find(ROOT_WORK));
  }

  static Standing standing(Row row, Definitions known) {
    Optional<String> place = row.findName(LotCells.PLACE, known.places().names());
    Optional<Spacing> spacing = Spacings.find(row);
    double crown = row.get(LotCells.CROWN);
    double height = row.get(LotCells.HEIGHT_LEFT);
    Optional<Double> heeledIn = row.find(LotCells.HEELED_IN);
    return new Standing(place, spacing, crown, height, As.optional(heeledIn));
  }

  private static Papers papers(Row row) {
    return new Papers(
        LotCells.text(row, LotCells.SUPPLIER),
        LotCells.text(row, LotCells.PASSPORT),
        LotCells.text(row, LotCells.ORIGIN),
        LotCells.text(row, FROM_LOT),
        LotCells.text(row, LotCells.NOTE));
  }

  private Optional<String> lastStep(Row row, String route) {
    Optional<RouteRead> read = known.routes().find(route);
    if (read.isEmpty()) {
      return row.find(LAST_STEP);
    }
    Optional<String> step = row.findName(LAST_STEP, read.get().steps());
    step.flatMap(name -> stepOf(read.get(), name))
        .filter(found -> found.when().recurs())
        .ifPresent(
            found ->
                row.fail(LAST_STEP, where -> LotAdvice.recurringLastStep(where, found.name())));
    return step;
  }

  private static Optional<Step> stepOf(RouteRead read, String name) {
    return read.route()
        .flatMap(
            route -> route.steps().stream().filter(step -> step.name().equals(name)).findFirst());
  }

  private void checkWhole(Row row, Lot lot) {
    LotCells.checkArrival(
        row, ARRIVED.name(), lot.form(), lot.arrived(), known.settings().hemisphere());
    Optional<Route> route = known.routes().find(lot.route()).flatMap(RouteRead::route);
    route.ifPresent(found -> LotChecks.checkPot(row, lot, found));
    checks.check(row, lot);
  }
}
