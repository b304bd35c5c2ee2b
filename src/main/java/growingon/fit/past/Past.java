package growingon.fit.past;

import growingon.nursery.Inputs;
import growingon.nursery.Nursery;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Trunks;
import growingon.nursery.number.Writing;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.Reading;
import growingon.nursery.record.StockList;
import growingon.nursery.species.Species;
import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.project.lot.Facts;
import growingon.review.book.Booked;
import growingon.review.book.Bookkeeping;
import growingon.review.written.ListedLots;
import growingon.review.written.ListedLots.Listed;
import growingon.review.written.SharedReceipt;
import growingon.review.written.SharingOut;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * A nursery's past as one plan that begins with its earliest list: each lot as it was first listed
 * or came, and everything since as lines of a daybook. A later row of a list is a count at the end
 * of the month before the one it was counted in.
 */
public final class Past {
  /** Seasons after the last record that saleable plants are told for. */
  public static final int SEASONS_AFTER = 2;

  private static final int MOST_SEASONS = 40;
  private static final double USUAL_SAMPLE_SPREAD = 0.15;

  private final FitRecords records;
  private final Map<String, Species> assumed = new LinkedHashMap<>();
  private final ListedLots listed;
  private final Map<String, List<Listed>> rows;
  private final Map<String, Listed> firstRows;
  private final Map<Where, OptionalInt> measured = new HashMap<>();
  private final Map<Where, Trunks> classes = new HashMap<>();
  private final Map<String, Double> units = new HashMap<>();
  private final List<DaybookLine> lines = new ArrayList<>();
  private final List<Unused> unused = new ArrayList<>();
  private final Set<Problem> problems = new LinkedHashSet<>();
  private Scenario scenario;
  private Bookkeeping daybook;
  private Facts facts;
  private final KnownRuns runs = new KnownRuns(this);
  private int receipts;

  /** A row that nothing is learnt from. */
  public record Unused(String subject, Where where, YearMonth month, String why) {}

  private Past(FitRecords records) {
    this.records = records;
    records
        .inputs()
        .scenario()
        .nursery()
        .species()
        .keySet()
        .forEach(name -> assumed.put(name, records.prior(name).species()));
    this.listed =
        ListedLots.of(
            records.lists(), records.inputs().daybook(), oldest(), records.until(), Set.of());
    this.rows = listed.rows();
    this.firstRows = listed.firstRows();
  }

  /** Puts the records of a nursery together. */
  public static Past of(FitRecords records) {
    Past past = new Past(records);
    past.readLists();
    past.readUnits();
    past.start();
    past.readBook();
    return past;
  }

  private void readLists() {
    listed.unused().forEach(this::note);
    problems.addAll(listed.problems());
    lines.addAll(listed.counts());
    for (List<Listed> of : rows.values()) {
      of.forEach(row -> note(row.row()));
    }
  }

  private void note(ListedLots.Unused row) {
    String why =
        switch (row.why()) {
          case COUNTED_THAT_DAY -> Why.countedThatDay();
          case COUNTED_THE_SAME_MONTH -> Why.countedTheSameMonth();
          case TOO_OLD -> Why.tooOld();
          case NOT_COUNTED -> Why.notCounted();
          case OTHER_SPECIES -> Why.otherSpecies(row.species());
        };
    unused.add(new Unused(row.lot(), row.where(), row.month(), why));
  }

  /** The first month that the engine reaches back to. */
  private YearMonth oldest() {
    return records.until().minusMonths(12L * (MOST_SEASONS - SEASONS_AFTER - 1));
  }

  private void note(StockList.Row row) {
    measured.put(row.where(), row.measured());
    if (row.isMeasured() && row.lot().trunks() instanceof Trunks.SizeClass) {
      classes.put(row.where(), row.lot().trunks());
    }
  }

  /** The unit in which trunks are given in each file, mm. */
  private void readUnits() {
    Map<String, List<Double>> trunks = new TreeMap<>();
    for (List<Listed> ofLot : rows.values()) {
      for (Listed each : ofLot) {
        if (each.row().isMeasured() && each.lot().trunks() instanceof Trunks.Measured known) {
          note(trunks, each.row().where(), known.meanMm());
        }
      }
    }
    for (DaybookLine line : records.inputs().daybook()) {
      line.trunkMm().ifPresent(mm -> note(trunks, line.where(), mm));
    }
    trunks.forEach((file, mm) -> units.put(file, MeasuringUnit.of(mm)));
    Map<Double, List<Double>> typed = new TreeMap<>();
    for (Reading reading : records.readings()) {
      typed
          .computeIfAbsent(reading.mmPerTyped(), each -> new ArrayList<>())
          .add(reading.trunkMm() / reading.mmPerTyped());
    }
    typed.forEach(
        (mmPerTyped, values) ->
            units.put(readingsUnit(mmPerTyped), mmPerTyped * MeasuringUnit.of(values)));
  }

  private static void note(Map<String, List<Double>> trunks, Where where, double mm) {
    trunks.computeIfAbsent(file(where), each -> new ArrayList<>()).add(mm);
  }

  private static String file(Where where) {
    return where.file() + "\n" + where.sheet();
  }

  private static String readingsUnit(double mmPerTyped) {
    return "\n\n" + mmPerTyped;
  }

  private void start() {
    Inputs inputs = records.inputs();
    List<Lot> lots = new ArrayList<>();
    firstRows.values().forEach(row -> lots.add(listed.asListed(row)));
    for (Lot lot : inputs.scenario().lots()) {
      if (lot.purchase().isPresent() && !rows.containsKey(lot.name())) {
        lots.add(lot);
      }
    }
    lots.sort(Comparator.comparing(Lot::name));
    Plan plan = inputs.scenario().plan();
    YearMonth first = firstMonth(lots);
    int seasons = seasons(first);
    Plan past =
        plan.with()
            .firstMonth(first)
            .seasons(seasons)
            .draws(0)
            .holds(Map.of())
            .ordered(Set.of())
            .build();
    Nursery nursery = inputs.scenario().nursery().withSpecies(assumed);
    scenario = new Scenario(nursery, past, lots);
  }

  private YearMonth firstMonth(List<Lot> lots) {
    YearMonth first = records.until();
    for (Lot lot : lots) {
      first = earlier(first, lot.counted());
    }
    for (DaybookLine line : records.inputs().daybook()) {
      first = line.what() == What.ARRIVED ? earlier(first, YearMonth.from(line.date())) : first;
    }
    for (Reading reading : records.readings()) {
      first = reading.lot().isEmpty() ? earlier(first, reading.month().plusMonths(1)) : first;
    }
    return first.isBefore(oldest()) ? oldest() : first;
  }

  private static YearMonth earlier(YearMonth one, YearMonth other) {
    return other.isBefore(one) ? other : one;
  }

  private int seasons(YearMonth first) {
    Horizon any = new Horizon(first, 1, seasonStart());
    return any.season(any.offset(records.until())) + 1 + SEASONS_AFTER;
  }

  private java.time.Month seasonStart() {
    return records.inputs().scenario().nursery().settings().seasonStart();
  }

  private void readBook() {
    lines.addAll(records.inputs().daybook());
    records.readings().stream()
        .filter(reading -> reading.plant().isEmpty())
        .filter(reading -> !reading.month().isAfter(records.until()))
        .forEach(this::sample);
    Inputs now = records.inputs();
    Set<String> known = new LinkedHashSet<>(rows.keySet());
    List<Offer> offers =
        now.offers().stream().filter(offer -> !known.contains(offer.name())).toList();
    Inputs past =
        now.with()
            .scenario(scenario)
            .offers(offers)
            .daybook(lines)
            .quick(Optional.empty())
            .own(Optional.empty())
            .build();
    daybook = Bookkeeping.of(withReceipts(past), records.until());
    problems.addAll(daybook.faults());
    scenario = scenario.withLots(daybook.lots());
    facts =
        daybook
            .facts()
            .soldOnlyAsKnown(
                scenario.lots().stream().map(Lot::name).toList(), Math.max(0, daybook.through()));
  }

  /** With receipts as sales, shared out where they name no lot. */
  private Inputs withReceipts(Inputs past) {
    if (records.receipts().isEmpty()) {
      return past;
    }
    SharingOut sharing = SharingOut.of(records.receipts(), past, records.until());
    receipts = (int) sharing.shared().stream().map(SharedReceipt::receipt).distinct().count();
    return past.withRecords(past.scenario(), sharing.lines());
  }

  private void sample(Reading reading) {
    measured.put(reading.where(), reading.measured());
    units.put(file(reading.where()), units.get(readingsUnit(reading.mmPerTyped())));
    lines.add(
        DaybookLine.of(
                reading.month().atEndOfMonth(),
                reading.lot().orElseThrow(),
                What.COUNTED,
                reading.where())
            .trunkMm(OptionalDouble.of(reading.trunkMm()))
            .trunkSpread(
                OptionalDouble.of(reading.spread() > 0 ? reading.spread() : USUAL_SAMPLE_SPREAD))
            .build());
  }

  /** The same up to the season of the last record. */
  Scenario scenarioToLast() {
    int seasons = Math.max(1, scenario.plan().seasons() - SEASONS_AFTER);
    return scenario.withPlan(scenario.plan().withSeasons(seasons));
  }

  /** The month in which a year's growth is measured, as one says it. */
  public String endOfGrowth() {
    return scenario().nursery().settings().hemisphere().endOfGrowth();
  }

  /** What is known, as a plan from the earliest list on. */
  public Scenario scenario() {
    return scenario;
  }

  /** How the nursery writes numbers and months. */
  public Writing writing() {
    return scenario.nursery().settings().writing();
  }

  /** Months of the past, as one long plan. */
  public Horizon horizon() {
    return scenario.horizon();
  }

  /** Everything known, for the projection. */
  public Facts facts() {
    return facts;
  }

  /** Runs of the engine over it. */
  public KnownRuns runs() {
    return runs;
  }

  /** Offset of the last month that a record speaks of; −1 for none. */
  public int through() {
    return daybook.through();
  }

  /** Offset of the last month of which there is a record, readings of plants among them. */
  public int lastRecord() {
    return records.readings().stream()
        .map(Reading::month)
        .filter(month -> !month.isAfter(records.until()))
        .mapToInt(horizon()::offset)
        .reduce(Math.max(0, through()), Math::max);
  }

  /** Sales by the daybook and by receipts. */
  public List<DaybookLine> sales() {
    return daybook.lines().stream().filter(line -> line.what() == What.SOLD).toList();
  }

  /** Whether a death is written down. */
  public boolean saysDeaths() {
    return daybook.lines().stream().anyMatch(line -> line.what() == What.DIED);
  }

  /** Receipts that count as sales, and those that fit no lot. */
  public int receipts() {
    return receipts;
  }

  /** What can be learnt from the daybook, lot by lot. */
  public List<Booked> booked() {
    return daybook.booked();
  }

  /** Species as they were assumed first. */
  public Map<String, Species> assumed() {
    return assumed;
  }

  /** Readings of single plants. */
  public FitRecords records() {
    return records;
  }

  /** Rows of lists that are not used, with why. */
  public List<Unused> unused() {
    return unused;
  }

  /** What is wrong with the lists, beside what reading them told. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** The row that a lot starts with; empty for one that came by an offer. */
  public Optional<Listed> firstRow(String lot) {
    return Optional.ofNullable(firstRows.get(lot));
  }

  /** Number of lists that there are. */
  public int lists() {
    return (int) records.lists().stream().map(StockList::month).distinct().count();
  }

  /** How many trunks the mean of some rows is of. */
  public double measured(List<Where> of, double plants) {
    int stated = 0;
    for (Where row : of) {
      OptionalInt said = measured.getOrDefault(row, OptionalInt.empty());
      Integer inDaybook = records.measured().get(row);
      stated +=
          inDaybook != null ? Math.min(inDaybook, 1_000_000) : Math.min(said.orElse(0), 1_000_000);
    }
    return stated > 0 ? Math.max(1, Math.min(stated, plants)) : Measured.usuallyMeasured(plants);
  }

  /** Unit of the trunks of the file that some rows stand in, mm; the finest if there are none. */
  public double unit(List<Where> of) {
    return of.stream()
        .findFirst()
        .map(row -> units.getOrDefault(file(row), MeasuringUnit.FINEST))
        .orElse(MeasuringUnit.FINEST);
  }

  public double unit(Reading of) {
    return units.get(readingsUnit(of.mmPerTyped()));
  }

  /** Width of the size class that some row gives in place of a mean, mm; 0 for none. */
  public double classWidth(List<Where> of) {
    return of.stream()
        .map(classes::get)
        .filter(each -> each instanceof Trunks.SizeClass)
        .map(each -> (Trunks.SizeClass) each)
        .mapToDouble(each -> each.toMm() - each.fromMm())
        .max()
        .orElse(0);
  }
}
