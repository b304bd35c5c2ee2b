package growingon.fit;

import growingon.nursery.DaybookLine;
import growingon.nursery.DaybookLine.What;
import growingon.nursery.Horizon;
import growingon.nursery.Inputs;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Offer;
import growingon.nursery.Plan;
import growingon.nursery.Reading;
import growingon.nursery.Scenario;
import growingon.nursery.Species;
import growingon.nursery.StockList;
import growingon.nursery.Trunks;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.FitAdvice;
import growingon.project.Facts;
import growingon.review.book.Booked;
import growingon.review.book.Bookkeeping;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A nursery's past as one plan that begins with its earliest list: each lot as it was first listed
 * or came, and everything since as lines of a daybook. A later row of a list is a count at the end
 * of the month before the one it was counted in.
 */
final class Past {
  /** Seasons after the last record that saleable plants are told for. */
  static final int SEASONS_AFTER = 2;

  private static final int MOST_SEASONS = 40;
  private static final double USUAL_SAMPLE_SPREAD = 0.15;

  private final FitRecords records;
  private final Map<String, Species> assumed = new LinkedHashMap<>();
  private final Map<String, List<Listed>> rows = new LinkedHashMap<>();
  private final Map<String, Listed> firstRows = new LinkedHashMap<>();
  private final Map<Where, OptionalInt> measured = new HashMap<>();
  private final Map<Where, Trunks> classes = new HashMap<>();
  private final Map<String, Double> units = new HashMap<>();
  private final List<DaybookLine> lines = new ArrayList<>();
  private final List<Unused> unused = new ArrayList<>();
  private final Set<Problem> problems = new LinkedHashSet<>();
  private final Set<List<Object>> countedOn = new HashSet<>();
  private final Map<String, LocalDate> lastLine = new HashMap<>();
  private Scenario scenario;
  private Bookkeeping daybook;
  private Facts facts;

  /** A row of a list of a month. */
  record Listed(YearMonth list, StockList.Row row) {
    Lot lot() {
      return row.lot();
    }

    boolean saysTheSameAs(Listed other) {
      return lot().counted().equals(other.lot().counted())
          && lot().quantity() == other.lot().quantity()
          && lot().trunks().equals(other.lot().trunks());
    }

    YearMonth countMonth() {
      return lot().counted().minusMonths(1);
    }
  }

  /** A row that nothing is learnt from. */
  record Unused(String subject, Where where, YearMonth month, String why) {}

  private Past(FitRecords records) {
    this.records = records;
    records
        .inputs()
        .scenario()
        .nursery()
        .species()
        .keySet()
        .forEach(name -> assumed.put(name, records.prior(name).species()));
    for (DaybookLine line : records.inputs().daybook()) {
      lastLine.merge(line.lot(), line.date(), (one, other) -> one.isAfter(other) ? one : other);
      if (line.what() == What.COUNTED) {
        countedOn.add(List.of(line.lot(), line.date()));
      }
    }
  }

  /** Puts the records of a nursery together. */
  static Past of(FitRecords records) {
    Past past = new Past(records);
    past.readLists();
    past.readUnits();
    past.start();
    past.readBook();
    return past;
  }

  private void readLists() {
    List<StockList> lists = new ArrayList<>(records.lists());
    lists.sort(Comparator.comparing(StockList::month).thenComparing(StockList::name));
    for (StockList list : lists) {
      for (StockList.Row row : list.rows()) {
        rows.computeIfAbsent(row.lot().name(), each -> new ArrayList<>())
            .add(new Listed(list.month(), row));
      }
    }
    Set<String> split = splitOff();
    for (Map.Entry<String, List<Listed>> each : rows.entrySet()) {
      each.getValue()
          .sort(
              Comparator.comparing((Listed row) -> row.lot().counted())
                  .thenComparing(Listed::list));
      readRows(each.getKey(), each.getValue(), split.contains(each.getKey()));
    }
    noteGone(lists);
  }

  /** Lots that the daybook splits off before any list has them. */
  private Set<String> splitOff() {
    Set<String> split = new HashSet<>();
    for (DaybookLine line : records.inputs().daybook()) {
      if (line.what() == What.SPLIT) {
        String to = line.toLot().orElseThrow();
        boolean isNew =
            rows.getOrDefault(to, List.of()).stream()
                .noneMatch(row -> !row.lot().counted().isAfter(YearMonth.from(line.date())));
        if (isNew) {
          split.add(to);
        }
      }
    }
    return split;
  }

  private void readRows(String lot, List<Listed> listed, boolean isSplitOff) {
    Listed before = null;
    for (Listed row : listed) {
      measured.put(row.row().where(), row.row().measured());
      if (row.row().isMeasured() && row.lot().trunks() instanceof Trunks.SizeClass) {
        classes.put(row.row().where(), row.lot().trunks());
      }
      if (row.countMonth().isAfter(records.until()) || isUnfit(lot, row, before, isSplitOff)) {
        continue;
      }
      if (before == null && !isSplitOff) {
        firstRows.put(lot, row);
      } else if (before != null && row.saysTheSameAs(before)) {
        continue;
      } else if (before != null && row.lot().counted().equals(before.lot().counted())) {
        unused.add(new Unused(lot, row.row().where(), row.countMonth(), Why.countedTheSameMonth()));
      } else {
        count(row);
      }
      before = row;
    }
  }

  /** Whether nothing can be learnt from a row, which is noted. */
  private boolean isUnfit(String lot, Listed row, Listed before, boolean isSplitOff) {
    Optional<String> why = Optional.empty();
    if (row.lot().counted().isBefore(oldest())) {
      why = Optional.of(Why.tooOld());
      problems.add(FitAdvice.tooLong(oldest()));
    } else if (before == null
        && !isSplitOff
        && !row.row().isCounted()
        && row.lot().quantity() == 0) {
      why = Optional.of(Why.notCounted());
    } else if (before != null && !before.lot().species().equals(row.lot().species())) {
      String species = before.lot().species();
      why = Optional.of(Why.otherSpecies(species));
      problems.add(FitAdvice.otherSpecies(row.row().where(), lot, species));
    }
    why.ifPresent(told -> unused.add(new Unused(lot, row.row().where(), row.countMonth(), told)));
    return why.isPresent();
  }

  /** The first month that the engine reaches back to. */
  private YearMonth oldest() {
    return records.until().minusMonths(12L * (MOST_SEASONS - SEASONS_AFTER - 1));
  }

  private void count(Listed row) {
    Lot lot = row.lot();
    LocalDate date = row.countMonth().atEndOfMonth();
    if (countedOn.contains(List.of(lot.name(), date))) {
      unused.add(new Unused(lot.name(), row.row().where(), row.countMonth(), Why.countedThatDay()));
      return;
    }
    OptionalDouble quantity =
        row.row().isCounted() ? OptionalDouble.of(lot.quantity()) : OptionalDouble.empty();
    boolean isMeasured = row.row().isMeasured();
    OptionalDouble trunk =
        isMeasured ? OptionalDouble.of(lot.trunks().meanMm()) : OptionalDouble.empty();
    OptionalDouble spread =
        isMeasured && lot.trunks() instanceof Trunks.Measured known
            ? OptionalDouble.of(known.spread())
            : OptionalDouble.empty();
    if (quantity.isPresent() || trunk.isPresent()) {
      lines.add(counted(date, lot.name(), quantity, trunk, spread, row.row().where()));
    }
  }

  private static DaybookLine counted(
      LocalDate date,
      String lot,
      OptionalDouble quantity,
      OptionalDouble trunk,
      OptionalDouble spread,
      Where where) {
    return new DaybookLine(
        date,
        lot,
        What.COUNTED,
        quantity,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        trunk,
        spread,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "",
        "",
        "",
        where);
  }

  /** Lots that a later list lacks were gone by then. */
  private void noteGone(List<StockList> lists) {
    TreeSet<YearMonth> months = new TreeSet<>();
    lists.forEach(list -> months.add(list.month()));
    firstRows.forEach(
        (lot, first) -> {
          YearMonth last =
              rows.get(lot).stream().map(Listed::list).max(Comparator.naturalOrder()).orElseThrow();
          YearMonth without = months.higher(last);
          if (without != null) {
            goneBy(lot, last, without);
          }
        });
  }

  private void goneBy(String lot, YearMonth last, YearMonth without) {
    LocalDate date = without.minusMonths(1).atEndOfMonth();
    boolean goesOn = lastLine.getOrDefault(lot, LocalDate.MIN).isAfter(date);
    Listed row = rows.get(lot).get(rows.get(lot).size() - 1);
    if (goesOn || YearMonth.from(date).isAfter(records.until()) || row.lot().quantity() == 0) {
      return;
    }
    lines.add(
        counted(
            date,
            lot,
            OptionalDouble.of(0),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            row.row().where()));
    List<String> news =
        firstRows.entrySet().stream()
            .filter(each -> rows.get(each.getKey()).get(0).list().isAfter(last))
            .filter(each -> isLike(each.getValue().lot(), row.lot()))
            .map(Map.Entry::getKey)
            .toList();
    if (news.size() == 1) {
      problems.add(FitAdvice.renamed(row.row().where(), lot, news.get(0)));
    }
  }

  private static boolean isLike(Lot one, Lot other) {
    return one.species().equals(other.species()) && one.arrived().equals(other.arrived());
  }

  /** The unit in which trunks are given in each file, mm. */
  private void readUnits() {
    Map<String, List<Double>> trunks = new TreeMap<>();
    for (List<Listed> listed : rows.values()) {
      for (Listed each : listed) {
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
    firstRows.values().forEach(row -> lots.add(asListed(row)));
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
        new Plan(
            plan.name(),
            first,
            seasons,
            plan.take(),
            plan.slices(),
            0,
            plan.seed(),
            plan.horizonValue());
    Nursery nursery = inputs.scenario().nursery().withSpecies(assumed);
    scenario = new Scenario(nursery, past, lots);
  }

  /** A lot whose trunks nobody measured at first has those of the first time that somebody did. */
  private Lot asListed(Listed first) {
    return first.row().isMeasured()
        ? first.lot()
        : rows.get(first.lot().name()).stream()
            .filter(row -> row.row().isMeasured())
            .findFirst()
            .map(row -> first.lot().withTrunks(row.lot().trunks()))
            .orElse(first.lot());
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
        new Inputs(
            scenario,
            offers,
            now.assumptions(),
            now.stockRows(),
            now.reportFolder(),
            lines,
            Optional.empty());
    daybook = Bookkeeping.of(past, records.until());
    problems.addAll(daybook.faults());
    scenario = scenario.withLots(daybook.lots());
    facts =
        daybook
            .facts()
            .soldOnlyAsKnown(
                scenario.lots().stream().map(Lot::name).toList(), Math.max(0, daybook.through()));
  }

  private void sample(Reading reading) {
    measured.put(reading.where(), reading.measured());
    units.put(file(reading.where()), units.get(readingsUnit(reading.mmPerTyped())));
    lines.add(
        counted(
            reading.month().atEndOfMonth(),
            reading.lot().orElseThrow(),
            OptionalDouble.empty(),
            OptionalDouble.of(reading.trunkMm()),
            OptionalDouble.of(reading.spread() > 0 ? reading.spread() : USUAL_SAMPLE_SPREAD),
            reading.where()));
  }

  /** The same up to the season of the last record. */
  Scenario scenarioToLast() {
    Plan all = scenario.plan();
    Plan last =
        new Plan(
            all.name(),
            all.firstMonth(),
            Math.max(1, all.seasons() - SEASONS_AFTER),
            all.take(),
            all.slices(),
            all.draws(),
            all.seed(),
            all.horizonValue());
    return new Scenario(scenario.nursery(), last, scenario.lots());
  }

  /** What is known, as a plan from the earliest list on. */
  Scenario scenario() {
    return scenario;
  }

  Horizon horizon() {
    return scenario.horizon();
  }

  /** Everything known, for the projection. */
  Facts facts() {
    return facts;
  }

  /** Offset of the last month that a record speaks of; −1 for none. */
  int through() {
    return daybook.through();
  }

  List<Booked> booked() {
    return daybook.booked();
  }

  /** Species as they were assumed first. */
  Map<String, Species> assumed() {
    return assumed;
  }

  FitRecords records() {
    return records;
  }

  List<Unused> unused() {
    return unused;
  }

  List<Problem> problems() {
    return List.copyOf(problems);
  }

  /** The row that a lot starts with; empty for one that came by an offer. */
  Optional<Listed> firstRow(String lot) {
    return Optional.ofNullable(firstRows.get(lot));
  }

  /** Number of lists that there are. */
  int lists() {
    return (int) records.lists().stream().map(StockList::month).distinct().count();
  }

  /** How many trunks the mean of some rows is of. */
  double measured(List<Where> of, double plants) {
    int stated = 0;
    for (Where row : of) {
      OptionalInt said = measured.getOrDefault(row, OptionalInt.empty());
      Integer inDaybook = records.measured().get(row);
      stated +=
          inDaybook != null ? Math.min(inDaybook, 1_000_000) : Math.min(said.orElse(0), 1_000_000);
    }
    return stated > 0 ? Math.max(1, Math.min(stated, plants)) : Measured.usuallyMeasured(plants);
  }

  /** Unit of the trunks of a file, mm. */
  double unit(Where of) {
    return units.getOrDefault(file(of), MeasuringUnit.FINEST);
  }

  double unit(Reading of) {
    return units.get(readingsUnit(of.mmPerTyped()));
  }

  /** Width of the size class that some row gives in place of a mean, mm; 0 for none. */
  double classWidth(List<Where> of) {
    return of.stream()
        .map(classes::get)
        .filter(each -> each instanceof Trunks.SizeClass)
        .map(each -> (Trunks.SizeClass) each)
        .mapToDouble(each -> each.toMm() - each.fromMm())
        .max()
        .orElse(0);
  }
}
