package growingon.review.book;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.problem.Where;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.known.MonthFacts.Change;
import growingon.project.known.MonthFacts.Leaving;
import growingon.project.known.MonthFacts.Way;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What the daybook says of one lot, and how many of its plants are alive by it. Months are offsets
 * from the plan's first month.
 */
public final class Book {
  private static final int NEVER = Integer.MIN_VALUE;

  /** So many rows are remembered one by one, to be named if they do not add up. */
  private static final int ROWS = 12;

  public final Lot lot;
  public final Optional<String> splitFrom;
  public final String root;
  public double part = 1;
  double alive;
  public boolean isRecorded;
  public Optional<LocalDate> lastCount = Optional.empty();
  public double splitIn;
  public double splitOut;
  public double returned;
  public double used;
  public double stolen;
  public double arrivedLater;
  public boolean saysQualities;
  public boolean saysTrunk;
  public boolean saysSpread;
  public Map<String, Double> countedGrades = Map.of();
  public int gradesCountedIn = NEVER;
  public final Spending spending = new Spending();
  private final Tally shared = new Tally();
  private final Tally booked = new Tally();
  final Map<Join, Double> joinsOut = new LinkedHashMap<>();
  final Map<Join, Double> joinsIn = new LinkedHashMap<>();
  private final ArrayDeque<Where> lastRows = new ArrayDeque<>();
  private int rows;
  private final TreeMap<Integer, Month> months = new TreeMap<>();
  private final List<Booked.Count> counts = new ArrayList<>();
  private final TreeMap<Integer, Double> dead = new TreeMap<>();
  private final TreeMap<Integer, Double> joined = new TreeMap<>();
  private int goneThrough = NEVER;
  private OptionalDouble atStart = OptionalDouble.empty();

  /**
   * Plants of one lot that went to another that was there already, with their cost to date.
   *
   * @param number running number, so that no two are equal
   * @param month offset of the month
   * @param share share of the plants alive that went
   */
  record Join(int number, int month, double share) {}

  /** What happened in a month. */
  private static final class Month {
    final List<Change> changes = new ArrayList<>();
    final Map<List<Object>, Leaving> leaving = new LinkedHashMap<>();
    boolean counted;
    Map<Quality, Double> qualities = Map.of();
    OptionalDouble trunkMm = OptionalDouble.empty();
    OptionalDouble trunkSpread = OptionalDouble.empty();
    double aliveAtEnd;

    Month times(double share) {
      Month part = new Month();
      changes.forEach(
          each -> part.changes.add(new Change(each.way(), each.quality(), each.plants() * share)));
      leaving.forEach((key, each) -> part.leaving.put(key, each.times(share)));
      part.counted = counted;
      part.qualities = Book.times(qualities, share);
      part.trunkMm = trunkMm;
      part.trunkSpread = trunkSpread;
      part.aliveAtEnd = aliveAtEnd * share;
      return part;
    }

    MonthFacts facts() {
      boolean measured = trunkMm.isPresent() || trunkSpread.isPresent();
      Optional<MonthFacts.Count> count =
          counted || measured
              ? Optional.of(
                  new MonthFacts.Count(
                      counted ? OptionalDouble.of(aliveAtEnd) : OptionalDouble.empty(),
                      qualities,
                      trunkMm,
                      trunkSpread))
              : Optional.empty();
      return new MonthFacts(changes, List.copyOf(leaving.values()), count);
    }
  }

  Book(Lot lot, Optional<String> splitFrom, String root) {
    this.lot = lot;
    this.splitFrom = splitFrom;
    this.root = root;
    this.alive = lot.quantity();
    if (splitFrom.isEmpty()) {
      note(Tally.Of.ARRIVED, lot.quantity());
    }
  }

  /** A line says something of this lot. */
  void note(Tally.Of of, double more) {
    shared.add(of, more);
    booked.add(of, more);
  }

  /** The projection does not know of it: it has a lot that was split off from the start. */
  void noteBooked(Tally.Of of, double more) {
    booked.add(of, more);
  }

  /** What a figure by shares lacks to be what was booked on this lot; nil unless it was split. */
  public double asBooked(Tally.Of of) {
    return booked.get(of) - shared.get(of);
  }

  /** Whether it was split off, or another was from it. */
  public boolean wasSplit() {
    return part != 1;
  }

  /** A share of it becomes a lot of its own, with its share of all that happened so far. */
  Book splitOff(Lot as, double share) {
    Book child = new Book(as, Optional.of(lot.name()), root);
    child.copy(this, share);
    copy(this, 1 - share);
    return child;
  }

  private void copy(Book from, double share) {
    part = from.part * share;
    alive = from.alive * share;
    isRecorded = from.isRecorded;
    lastCount = from.lastCount;
    splitIn = from.splitIn * share;
    splitOut = from.splitOut * share;
    returned = from.returned * share;
    used = from.used * share;
    stolen = from.stolen * share;
    arrivedLater = from.arrivedLater * share;
    saysQualities = from.saysQualities;
    saysTrunk = from.saysTrunk;
    saysSpread = from.saysSpread;
    countedGrades = from.countedGrades;
    gradesCountedIn = from.gradesCountedIn;
    goneThrough = from.goneThrough;
    atStart = times(from.atStart, share);
    Map<Integer, Month> scaled = new HashMap<>();
    from.months.forEach((month, facts) -> scaled.put(month, facts.times(share)));
    months.putAll(scaled);
    scale(from.dead, share, dead);
    scale(from.joined, share, joined);
    spending.copy(from.spending, share);
    shared.copy(from.shared, share);
    from.joinsIn.forEach((join, weight) -> joinsIn.put(join, weight * share));
    if (from != this) {
      counts.addAll(from.counts);
      joinsOut.putAll(from.joinsOut);
      lastRows.addAll(from.lastRows);
      rows = from.rows;
    }
  }

  private static void scale(
      Map<Integer, Double> plants, double share, Map<Integer, Double> scaled) {
    plants.forEach((month, number) -> scaled.put(month, number * share));
  }

  private static OptionalDouble times(OptionalDouble value, double share) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * share) : value;
  }

  private static Map<Quality, Double> times(Map<Quality, Double> plants, double share) {
    Map<Quality, Double> scaled = new EnumMap<>(Quality.class);
    plants.forEach((quality, number) -> scaled.put(quality, number * share));
    return scaled;
  }

  private Month month(int month) {
    return months.computeIfAbsent(month, each -> new Month());
  }

  /** Plants come. */
  void come(DaybookLine line, int month, double plants) {
    change(month, Way.CAME, Optional.empty(), plants, plants);
    gone(line, month);
  }

  /** Plants die, are culled or go, as far as there are any. */
  void go(DaybookLine line, int month, Way way, double plants) {
    double gone = Math.min(plants, alive);
    Optional<Quality> quality = way == Way.CULLED ? line.quality() : Optional.empty();
    change(month, way, quality, gone, -gone);
    gone(line, month);
  }

  /** Plants leave the nursery; what was sold was there, whatever the numbers say. */
  void leave(DaybookLine line, int month, boolean sold, OptionalDouble money) {
    double plants = line.quantity().orElseThrow();
    if (month >= 0) {
      Leaving leaving = new Leaving(sold, line.grade(), line.quality(), plants, money);
      List<Object> key = List.of(sold, line.grade(), line.quality(), money.isPresent());
      month(month).leaving.merge(key, leaving, Leaving::and);
    }
    moveAlive(month, line.quality(), -Math.min(plants, alive));
    remember(line.where());
    isRecorded = true;
    if (!sold) {
      used += month >= 0 ? plants : 0;
      goneThrough = Math.max(goneThrough, month);
    }
  }

  private void change(int month, Way way, Optional<Quality> quality, double plants, double more) {
    if (month >= 0) {
      List<Change> changes = month(month).changes;
      int last = changes.size() - 1;
      boolean goesOn =
          last >= 0
              && changes.get(last).way() == way
              && changes.get(last).quality().equals(quality);
      double before = goesOn ? changes.remove(last).plants() : 0;
      changes.add(new Change(way, quality, before + plants));
    }
    moveAlive(month, quality, more);
  }

  private void moveAlive(int month, Optional<Quality> quality, double more) {
    double before = alive;
    alive += more;
    if (month < 0) {
      atStart = OptionalDouble.of(alive);
      return;
    }
    Month facts = month(month);
    facts.aliveAtEnd = alive;
    if (facts.qualities.isEmpty()) {
      return;
    }
    if (quality.isPresent()) {
      double there = facts.qualities.getOrDefault(quality.get(), 0.0);
      facts.qualities.put(quality.get(), Math.max(0, there + more));
    } else if (before > 0) {
      facts.qualities = times(facts.qualities, alive / before);
    }
  }

  /** A line that says how many plants are there: the model's losses do not hold up to it. */
  private void gone(DaybookLine line, int month) {
    remember(line.where());
    isRecorded = true;
    goneThrough = Math.max(goneThrough, month);
  }

  /** Plants were split off, and become a lot of their own. */
  void noteSplit(DaybookLine line, int month) {
    gone(line, month);
    moveAlive(month, Optional.empty(), 0);
  }

  /** Plants were counted, trunks measured, or both. */
  void count(Counted counted, int month) {
    isRecorded = true;
    double before = alive;
    if (counted.plants().isPresent()) {
      lastCount = Optional.of(counted.date());
      lastRows.clear();
      rows = 0;
      counted.rows().forEach(this::remember);
      goneThrough = Math.max(goneThrough, month);
      double more = counted.plants().getAsDouble() - alive;
      note(more > 0 ? Tally.Of.FOUND : Tally.Of.LOST, Math.abs(more));
      moveAlive(month, Optional.empty(), more);
    }
    counts.add(new Booked.Count(lot.name(), month, counted, before, alive));
    if (month >= 0) {
      note(counted, month(month));
      gradesCountedIn = counted.plants().isPresent() ? month : gradesCountedIn;
    }
  }

  private void note(Counted counted, Month month) {
    if (counted.plants().isPresent()) {
      month.counted = true;
      countedGrades = counted.grades();
    }
    saysQualities |= !counted.qualities().isEmpty();
    saysTrunk |= counted.trunkMm().isPresent();
    saysSpread |= counted.trunkSpread().isPresent();
    if (!counted.qualities().isEmpty()) {
      month.qualities = new EnumMap<>(counted.qualities());
    }
    if (counted.trunkMm().isPresent()) {
      month.trunkMm = counted.trunkMm();
      month.trunkSpread = counted.trunkSpread();
    } else if (counted.trunkSpread().isPresent()) {
      month.trunkSpread = counted.trunkSpread();
    }
  }

  /** A line that does not change the number of plants. */
  void note() {
    isRecorded = true;
  }

  /** Whether the daybook says of a month of the plan how many plants died by it. */
  public boolean saysDeaths() {
    return goneThrough >= 0;
  }

  /** Trunks as measured, by month. */
  public Map<Integer, MonthFacts.Count> trunks() {
    Map<Integer, MonthFacts.Count> trunks = new HashMap<>();
    months.forEach(
        (month, each) -> {
          if (each.trunkMm.isPresent() || each.trunkSpread.isPresent()) {
            trunks.put(
                month,
                new MonthFacts.Count(
                    OptionalDouble.empty(), Map.of(), each.trunkMm, each.trunkSpread));
          }
        });
    return trunks;
  }

  private void remember(Where row) {
    rows++;
    lastRows.add(row);
    if (lastRows.size() > ROWS) {
      lastRows.remove();
    }
  }

  /** Number of rows that the number alive comes from: those of the last count and since. */
  int rows() {
    return rows;
  }

  /** The last of these rows. */
  List<Where> lastRows() {
    return List.copyOf(lastRows);
  }

  /** Plants died, or were lost otherwise than by theft. */
  void noteDead(int month, double plants) {
    dead.merge(month, plants, Double::sum);
  }

  /** Plants whose trunks nobody measured joined it. */
  void noteJoined(int month, double plants) {
    joined.merge(month, plants, Double::sum);
  }

  /** What can be learnt from it. */
  Booked booked() {
    return new Booked(lot, splitFrom, root, part, alive, counts, dead, joined);
  }

  /**
   * What a projection is to start from.
   *
   * @param through last month of the daybook
   */
  LotFacts facts(int through) {
    Map<Integer, MonthFacts> facts = new HashMap<>();
    months.forEach((month, each) -> facts.put(month, each.facts()));
    return new LotFacts(part, isRecorded ? through : NEVER, goneThrough, atStart, facts);
  }
}
