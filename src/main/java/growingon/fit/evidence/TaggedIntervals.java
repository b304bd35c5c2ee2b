package growingon.fit.evidence;

import growingon.fit.past.Measured;
import growingon.fit.past.Past;
import growingon.fit.past.Why;
import growingon.growth.Flow;
import growingon.nursery.lot.Lot;
import growingon.nursery.record.Reading;
import growingon.nursery.species.Curve;
import growingon.nursery.species.RootWorkYear;
import growingon.nursery.species.Species;
import growingon.problem.Where;
import growingon.project.history.Grown;
import growingon.project.lot.LotHistory;
import growingon.review.book.Booked;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.Collectors;

/** Tagged plants as intervals: those of one lot or kind that were read on the same two dates. */
final class TaggedIntervals {
  private static final double SLIPS_AFTER = 6;

  /** Unknown differences between plants, as shares of growth and of trunk (own choice). */
  private static final double OF_GROWTH = 0.5;

  private static final double OF_TRUNK = 0.02;

  private final Past past;
  private final Map<String, LotHistory> histories;
  private final Map<String, Booked> books;
  private final List<Interval> intervals = new ArrayList<>();
  private final List<Evidence.TaggedPlant> plants = new ArrayList<>();
  private final Set<String> slipped = new TreeSet<>();

  /** What plants have in common that are read as one group. */
  private record Group(String name, Optional<String> lot, String species, String condition)
      implements Comparable<Group> {
    @Override
    public int compareTo(Group other) {
      return Comparator.comparing(Group::name)
          .thenComparing(Group::species)
          .thenComparing(Group::condition)
          .compare(this, other);
    }
  }

  /** A plant read on two dates. */
  private record Pair(Reading from, Reading to) {}

  /** Pairs of one group and two dates. */
  private record Dates(
      LocalDate from, LocalDate to, Optional<YearMonth> potted, Optional<YearMonth> rootWork)
      implements Comparable<Dates> {
    private static final Comparator<Optional<YearMonth>> MONTHS =
        Comparator.comparing(month -> month.map(YearMonth::toString).orElse(""));

    @Override
    public int compareTo(Dates other) {
      return Comparator.comparing(Dates::from)
          .thenComparing(Dates::to)
          .thenComparing(Dates::potted, MONTHS)
          .thenComparing(Dates::rootWork, MONTHS)
          .compare(this, other);
    }
  }

  TaggedIntervals(Past past, Map<String, LotHistory> histories, Map<String, Booked> books) {
    this.past = past;
    this.histories = histories;
    this.books = books;
    read();
  }

  List<Interval> intervals() {
    return intervals;
  }

  List<Evidence.TaggedPlant> plants() {
    return plants;
  }

  private void read() {
    Map<String, List<Reading>> byPlant = new TreeMap<>();
    for (Reading reading : past.records().readings()) {
      if (reading.plant().isEmpty()) {
        continue;
      }
      if (reading.month().isAfter(past.records().until())) {
        unused(reading, Why.afterUntil());
        continue;
      }
      byPlant.computeIfAbsent(reading.plant().get(), each -> new ArrayList<>()).add(reading);
    }
    Map<Group, Map<Dates, List<Pair>>> groups = new TreeMap<>();
    byPlant.values().forEach(readings -> pair(readings, groups));
    groups.forEach(this::addAll);
    plants.removeIf(plant -> slipped.contains(plant.name()));
  }

  private void unused(Reading reading, String why) {
    past.unused()
        .add(new Past.Unused(reading.plant().orElse(""), reading.where(), reading.month(), why));
  }

  private void pair(List<Reading> readings, Map<Group, Map<Dates, List<Pair>>> groups) {
    readings.sort(Comparator.comparing(Reading::date));
    if (readings.size() == 1) {
      unused(readings.get(0), Why.oneReading());
    }
    Group group = group(readings.get(0));
    for (int i = 1; i < readings.size(); i++) {
      Reading from = readings.get(i - 1);
      Reading to = readings.get(i);
      Dates dates = new Dates(from.date(), to.date(), from.potted(), from.rootWork());
      groups
          .computeIfAbsent(group, each -> new TreeMap<>())
          .computeIfAbsent(dates, each -> new ArrayList<>())
          .add(new Pair(from, to));
    }
    notePlant(readings, group);
  }

  private void notePlant(List<Reading> readings, Group group) {
    Reading from = readings.get(0);
    List<Evidence.PlantGrowth> steps = new ArrayList<>();
    for (int i = 1; i < readings.size(); i++) {
      growth(group, readings.get(i - 1), readings.get(i)).ifPresent(steps::add);
    }
    plants.add(
        new Evidence.TaggedPlant(
            from.plant().orElseThrow(),
            group.species(),
            readings.size(),
            growth(group, from, readings.get(readings.size() - 1)),
            steps));
  }

  private Optional<Evidence.PlantGrowth> growth(Group group, Reading from, Reading to) {
    LotIntervals.GrowthYears grown = grown(group, from, from.month(), to.month());
    return grown.byCondition().size() == 1
        ? Optional.of(
            new Evidence.PlantGrowth(
                from.trunkMm(),
                to.trunkMm(),
                grown.clock(),
                grown.byCondition().keySet().iterator().next(),
                Set.copyOf(grown.bySeason().keySet())))
        : Optional.empty();
  }

  private Group group(Reading reading) {
    Optional<String> lot = reading.lot().filter(histories::containsKey);
    String species =
        lot.map(name -> histories.get(name).lot().species())
            .or(reading::species)
            .orElseGet(() -> species(reading));
    String condition = reading.condition().orElse("");
    String name =
        lot.map(each -> each + ", tagged").orElseGet(() -> species + ", " + condition + ", tagged");
    return new Group(name, lot, species, condition);
  }

  /** A lot that no list has any more still tells by its plants what they are. */
  private String species(Reading reading) {
    return past.records().inputs().scenario().lots().stream()
        .filter(lot -> reading.lot().equals(Optional.of(lot.name())))
        .map(Lot::species)
        .findFirst()
        .orElse("");
  }

  private LotIntervals.GrowthYears grown(
      Group group, Reading from, YearMonth first, YearMonth last) {
    IntFunction<Optional<Grown>> how =
        group.lot().isPresent()
            ? month -> histories.get(group.lot().get()).grown(month).map(each -> in(group, each))
            : month -> byItself(group, from, month);
    return LotIntervals.GrowthYears.of(
        past.horizon().offset(first), past.horizon().offset(last), past.horizon(), how);
  }

  private static Grown in(Group group, Grown found) {
    return group.condition().isEmpty()
        ? found
        : new Grown(group.condition(), found.years(), found.afterRootWork(), found.potBound());
  }

  /** Growth of plants of which no lot knows how they stand. */
  private Optional<Grown> byItself(Group group, Reading from, int month) {
    Species species = past.assumed().get(group.species());
    YearMonth now = past.horizon().month(month);
    RootWorkYear year =
        from.rootWork()
            .map(cut -> RootWorkYear.after((int) ChronoUnit.MONTHS.between(cut, now)))
            .orElse(RootWorkYear.NONE);
    boolean potBound =
        from.potted()
            .filter(potted -> species.isPotBound((int) ChronoUnit.MONTHS.between(potted, now)))
            .isPresent();
    double years =
        species.growthMonths().get(now.getMonthValue() - 1)
            * species.checkIn(year)
            * (potBound ? species.potBoundFactor() : 1);
    return years > 0
        ? Optional.of(new Grown(group.condition(), years, year, potBound))
        : Optional.empty();
  }

  private void addAll(Group group, Map<Dates, List<Pair>> byDates) {
    double first = byDates.values().iterator().next().size();
    byDates.values().forEach(pairs -> add(group, pairs, first));
  }

  private void add(Group group, List<Pair> all, double plantsAtFirst) {
    Reading any = all.get(0).from();
    YearMonth from = any.month();
    YearMonth to = all.get(0).to().month();
    LotIntervals.GrowthYears grown = grown(group, any, from, to);
    List<Pair> pairs = withoutSlips(group, all, grown);
    List<Pair> told = pairs.isEmpty() ? all : pairs;
    Interval interval =
        new Interval(
            group.name(),
            group.lot(),
            group.lot().map(lot -> books.get(lot).root()).orElse(group.name()),
            group.species(),
            past.horizon().offset(from),
            past.horizon().offset(to),
            mean(group, told.stream().map(Pair::from).toList()),
            mean(group, told.stream().map(Pair::to).toList()),
            plantsAtFirst,
            grown.bySeason(),
            grown.byCondition(),
            grown.stretches(),
            grown.states(),
            Optional.empty(),
            slips(all, pairs));
    intervals.add(
        refusal(group, interval, grown, pairs).map(interval::refusedFor).orElse(interval));
  }

  private Optional<String> refusal(
      Group group, Interval interval, LotIntervals.GrowthYears grown, List<Pair> pairs) {
    boolean isBefore =
        group.lot().isPresent() && interval.from() < histories.get(group.lot().get()).start() - 1;
    if (isBefore) {
      return Optional.of(Why.beforeTheLot());
    }
    if (grown.clock() < LotIntervals.SHORTEST_CLOCK) {
      return Optional.of(Why.shortClock());
    }
    return pairs.isEmpty() ? Optional.of(Why.plantSlip("every plant")) : Optional.empty();
  }

  private String slips(List<Pair> all, List<Pair> fine) {
    all.stream()
        .filter(pair -> !fine.contains(pair))
        .forEach(pair -> slipped.add(pair.to().plant().orElseThrow()));
    List<String> slips =
        all.stream()
            .filter(pair -> !fine.contains(pair))
            .map(
                pair -> pair.to().plant().orElseThrow() + " (" + pair.to().where().column("") + ")")
            .sorted()
            .toList();
    return slips.isEmpty() || fine.isEmpty() ? "" : Why.plantSlip(String.join(", ", slips));
  }

  private List<Pair> withoutSlips(Group group, List<Pair> pairs, LotIntervals.GrowthYears grown) {
    Map<String, Curve> growth = past.assumed().get(group.species()).growth();
    List<Pair> fine = new ArrayList<>();
    for (Pair pair : pairs) {
      double trunk = pair.from().trunkMm();
      double expected = trunk;
      for (Interval.Stretch stretch : grown.stretches()) {
        Curve curve = growth.get(stretch.condition());
        expected = curve == null ? expected : Flow.of(curve).advance(expected, stretch.years());
      }
      double ofGrowth = OF_GROWTH * (expected - trunk);
      double ofTrunk = OF_TRUNK * trunk;
      double deviation =
          Math.sqrt(
              2 * Measured.READING_MM * Measured.READING_MM
                  + ofGrowth * ofGrowth
                  + ofTrunk * ofTrunk);
      if (Math.abs(pair.to().trunkMm() - expected) <= SLIPS_AFTER * deviation) {
        fine.add(pair);
      }
    }
    return fine;
  }

  private Measured mean(Group group, List<Reading> readings) {
    List<Reading> sorted =
        readings.stream().sorted(Comparator.comparing(each -> each.plant().orElseThrow())).toList();
    double mean = sorted.stream().mapToDouble(Reading::trunkMm).average().orElseThrow();
    double squares = sorted.stream().mapToDouble(each -> Math.pow(each.trunkMm() - mean, 2)).sum();
    double spread = sorted.size() > 1 ? Math.sqrt(squares / (sorted.size() - 1)) / mean : 0;
    double unit = sorted.stream().mapToDouble(past::unit).max().orElseThrow();
    List<Where> rows = sorted.stream().map(Reading::where).toList();
    Set<String> names =
        sorted.stream()
            .map(each -> each.plant().orElseThrow())
            .collect(Collectors.toCollection(TreeSet::new));
    return new Measured(
        rows,
        mean,
        spread,
        sorted.size(),
        sorted.size(),
        unit,
        0,
        names,
        group.name() + " " + sorted.get(0).date());
  }
}
