package growingon.review.book;

import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.time.Horizon;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import growingon.project.known.LotFacts;
import growingon.project.lot.Facts;
import growingon.review.kept.Expected;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The daybook as books of lots. Lines are taken day by day; on one day in an order of their own
 * (plants come, are split, go, are sold, are counted), so that their order in the file does not
 * matter.
 *
 * <p>A lot that the daybook splits off is a lot of its own from the start, with its share of the
 * plants and of all that happened to them: plants of a lot are treated alike until they are split.
 */
public final class Bookkeeping {
  private final Horizon horizon;
  private final Map<String, Book> books = new LinkedHashMap<>();
  private final Map<String, Integer> firstArrival = new HashMap<>();
  private final Set<String> toldOf = new HashSet<>();
  private final List<DaybookLine> lines;
  private final List<Graded> graded = new ArrayList<>();
  private final List<DaybookLine> ofNoLot = new ArrayList<>();
  private final List<Problem> faults = new ArrayList<>();
  private final Entries entries = new Entries(books, firstArrival, faults);
  private final List<Gone> gone = new ArrayList<>();
  private final Set<Where> listed;
  private final int through;
  private final Optional<LocalDate> lastDate;
  private Map<String, List<Book>> childrenOf;

  /**
   * A line that says a grade.
   *
   * @param line the line
   * @param month offset of its month
   */
  public record Graded(DaybookLine line, int month) {}

  private Bookkeeping(Inputs inputs, YearMonth today, Set<Where> listed) {
    this.listed = listed;
    Scenario scenario = inputs.scenario();
    this.horizon = scenario.horizon();
    this.lines =
        inputs.daybook().stream()
            .filter(line -> !YearMonth.from(line.date()).isAfter(today))
            .sorted(DayOrder.IN_ORDER)
            .toList();
    this.lastDate =
        lines.isEmpty() ? Optional.empty() : Optional.of(lines.get(lines.size() - 1).date());
    this.through = lines.stream().mapToInt(this::month).filter(this::isPlanned).max().orElse(-1);
    open(scenario, inputs.offers());
  }

  /** Reads the daybook of some inputs; lines of months after this one are left out. */
  public static Bookkeeping of(Inputs inputs, YearMonth today) {
    return of(inputs, today, Set.of());
  }

  /**
   * The same where some counts are rows of a stock list. Who counts into the daybook says by it
   * what was lost; a list says nothing of what it lacks, which is then asked for.
   *
   * @param listed rows of stock lists
   */
  public static Bookkeeping of(Inputs inputs, YearMonth today, Set<Where> listed) {
    Bookkeeping daybook = new Bookkeeping(inputs, today, listed);
    daybook.read();
    return daybook;
  }

  private int month(DaybookLine line) {
    return horizon.offset(YearMonth.from(line.date()));
  }

  private boolean isPlanned(int month) {
    return month >= 0 && month < horizon.months();
  }

  private void open(Scenario scenario, List<Offer> offers) {
    Map<String, Double> came = arrivals();
    for (Lot lot : scenario.lots()) {
      open(lot.purchase().isPresent() ? asItCame(lot, came) : lot);
    }
    for (Offer offer : offers) {
      if (!books.containsKey(offer.name()) && came.containsKey(offer.name())) {
        int quantity = (int) Math.round(came.get(offer.name()));
        open(asItCame(offer.taken(quantity), came));
      }
    }
  }

  private void open(Lot lot) {
    books.put(lot.name(), new Book(lot, Optional.empty(), lot.name()));
  }

  /** Plants that came of each lot in the month in which the first of them did. */
  private Map<String, Double> arrivals() {
    Map<String, Double> came = new HashMap<>();
    for (DaybookLine line : lines) {
      if (line.what() == What.ARRIVED) {
        firstArrival.putIfAbsent(line.lot(), month(line));
        if (firstArrival.get(line.lot()) == month(line)) {
          came.merge(line.lot(), line.quantity().orElseThrow(), Double::sum);
        }
      }
    }
    return came;
  }

  private Lot asItCame(Lot lot, Map<String, Double> came) {
    if (!came.containsKey(lot.name())) {
      return lot;
    }
    int quantity = (int) Math.round(came.get(lot.name()));
    int month = Math.min(Math.max(0, firstArrival.get(lot.name())), horizon.months() - 1);
    return lot.withQuantity(lot.name(), quantity, Math.min(lot.kept(), quantity))
        .arrivedIn(horizon.month(month));
  }

  private void read() {
    List<DaybookLine> day = new ArrayList<>();
    for (DaybookLine line : lines) {
      if (!day.isEmpty() && !day.get(0).date().equals(line.date())) {
        readDay(day);
        day.clear();
      }
      day.add(line);
    }
    readDay(day);
    entries.checkInvoices();
  }

  private void readDay(List<DaybookLine> day) {
    Map<String, List<DaybookLine>> counts = new TreeMap<>();
    List<DaybookLine> splits = new ArrayList<>();
    for (DaybookLine line : day) {
      if (line.toLot().isPresent()) {
        splits.add(line);
        continue;
      }
      if (DayOrder.isAfterSplits(line)) {
        readSplits(splits);
      }
      if (line.what() == What.COUNTED) {
        counts.computeIfAbsent(line.lot(), lot -> new ArrayList<>()).add(line);
      } else {
        read(line);
      }
    }
    readSplits(splits);
    counts.values().forEach(this::readCount);
  }

  /** Splits of a day: a lot that is split off on it may itself be split. */
  private void readSplits(List<DaybookLine> splits) {
    int left = Integer.MAX_VALUE;
    while (splits.size() < left) {
      left = splits.size();
      for (DaybookLine line : List.copyOf(splits)) {
        if (books.containsKey(line.lot())) {
          read(line);
          splits.remove(line);
        }
      }
    }
    splits.forEach(this::read);
    splits.clear();
  }

  /** The book of a line's lot, if the line is of the time that the books speak of. */
  private Optional<Book> book(DaybookLine line) {
    Book book = books.get(line.lot());
    if (book == null) {
      if (month(line) >= 0 && toldOf.add(line.lot())) {
        faults.add(DaybookAdvice.notInThePlan(line.where(), line.lot()));
      }
      return Optional.empty();
    }
    boolean counts = month(line) >= horizon.offset(book.lot.counted());
    return counts && month(line) < horizon.months() ? Optional.of(book) : Optional.empty();
  }

  private void read(DaybookLine line) {
    if (line.isOfNoLot()) {
      if (isPlanned(month(line))) {
        ofNoLot.add(line);
      }
      return;
    }
    Optional<Book> found = book(line);
    if (found.isEmpty()) {
      if (line.toLot().isPresent()) {
        toldOfSplitBefore(line);
      }
      return;
    }
    Book book = found.get();
    int month = month(line);
    if (month >= 0) {
      Entries.bookMoney(book, line, month);
      if (line.grade().isPresent()) {
        graded.add(new Graded(line, month));
      }
    }
    if (line.toLot().isPresent()) {
      entries.toOtherLot(book, line, month);
    } else {
      entries.happen(book, line, month);
    }
  }

  private void toldOfSplitBefore(DaybookLine line) {
    String to = line.toLot().get();
    boolean isKnown = books.containsKey(to) || !books.containsKey(line.lot());
    if (!isKnown && month(line) < horizon.months() && toldOf.add(to)) {
      faults.add(DaybookAdvice.splitBeforeTheCount(line.where(), to));
    }
  }

  private void readCount(List<DaybookLine> day) {
    DaybookLine first = day.get(0);
    Optional<Book> book = book(first);
    if (book.isEmpty()) {
      return;
    }
    Counted counted = Counted.of(day);
    int month = month(first);
    for (DaybookLine line : day) {
      if (month >= 0) {
        Entries.bookMoney(book.get(), line, month);
        line.grade().ifPresent(grade -> graded.add(new Graded(line, month)));
      }
    }
    double alive = book.get().alive;
    if (counted.plants().isPresent() && counted.plants().getAsDouble() > alive + Entries.DUST) {
      double plants = counted.plants().getAsDouble();
      faults.add(DaybookAdvice.countRises(first.where(), plants, first.lot(), alive));
    }
    boolean isListed = counted.rows().stream().anyMatch(listed::contains);
    if (isListed && month >= 0 && counted.plants().orElse(alive) < alive - Entries.DUST) {
      noteGone(book.get(), counted, first, month);
    }
    book.get().count(counted, month);
  }

  /** Plants that no line explains: told, and asked for. */
  private void noteGone(Book book, Counted counted, DaybookLine first, int month) {
    Gone found =
        new Gone(
            first.lot(),
            book.lastCount,
            counted.date(),
            month,
            book.alive,
            counted.plants().getAsDouble(),
            first.where());
    gone.add(found);
    faults.add(
        DaybookAdvice.goneWithoutALine(
            first.where(),
            first.lot(),
            found.plants(),
            found.before(),
            found.found(),
            counted.date()));
  }

  /** Lots to be projected: those of the plan as they came, each followed by its split-offs. */
  public List<Lot> lots() {
    return inOrder().stream().map(book -> book.lot).toList();
  }

  /** Books in the order of {@link #lots}. */
  List<Book> inOrder() {
    List<Book> ordered = new ArrayList<>();
    for (Book book : books.values()) {
      if (book.splitFrom.isEmpty()) {
        addFamily(book, ordered);
      }
    }
    return ordered;
  }

  private void addFamily(Book book, List<Book> ordered) {
    ordered.add(book);
    for (Book child : children().getOrDefault(book.lot.name(), List.of())) {
      addFamily(child, ordered);
    }
  }

  private Map<String, List<Book>> children() {
    if (childrenOf == null) {
      childrenOf = new HashMap<>();
      for (Book book : books.values()) {
        book.splitFrom.ifPresent(
            parent -> childrenOf.computeIfAbsent(parent, each -> new ArrayList<>()).add(book));
      }
    }
    return childrenOf;
  }

  /** What is known, for the projection that starts from it. */
  public Facts facts() {
    Map<String, LotFacts> facts = new HashMap<>();
    books.forEach((name, book) -> facts.put(name, book.facts(through)));
    return new Facts(facts);
  }

  /**
   * What is known, for the projection that starts from it; lots of which nothing is known sell as
   * planned.
   */
  public Facts facts(Expected expected) {
    int last = horizon.months() - 1;
    Map<String, LotFacts> facts = new HashMap<>();
    books.forEach(
        (name, book) -> {
          LotFacts known = book.facts(through);
          facts.put(
              name,
              book.isRecorded ? known : PlannedSales.assumed(expected, book, last).orElse(known));
        });
    return new Facts(facts);
  }

  /** Whether a line is the arrival of plants that its lot begins with. */
  public boolean isBase(DaybookLine line) {
    Book book = books.get(line.lot());
    return line.what() == What.ARRIVED && book != null && entries.isBase(book, month(line));
  }

  /** Lines up to today, in order. */
  public List<DaybookLine> lines() {
    return lines;
  }

  /** The lot of the plan that a lot was split off from, or the lot itself. */
  public Optional<String> root(String lot) {
    return Optional.ofNullable(books.get(lot)).map(book -> book.root);
  }

  /** What can be learnt from the book of each lot, in the order of {@link #lots}. */
  public List<Booked> booked() {
    return inOrder().stream().map(Book::booked).toList();
  }

  /** What was spent within the plan on no lot, but on the whole nursery. */
  public List<DaybookLine> ofNoLot() {
    return ofNoLot;
  }

  /** Lines that say a grade. */
  public List<Graded> graded() {
    return graded;
  }

  /** What is wrong in the records. */
  public List<Problem> faults() {
    return faults;
  }

  /** Plants that stock lists lack and of which no line says what became of them. */
  List<Gone> gone() {
    return gone;
  }

  /** Offset of the last month within the plan that the daybook speaks of; −1 for none. */
  public int through() {
    return through;
  }

  /** The last day that the daybook speaks of. */
  public Optional<LocalDate> lastDate() {
    return lastDate;
  }
}
