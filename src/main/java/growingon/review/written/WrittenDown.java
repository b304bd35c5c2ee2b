package growingon.review.written;

import growingon.nursery.Inputs;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Offer;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.PastRecords;
import growingon.nursery.record.StockList;
import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.DaybookAdvice;
import growingon.review.book.Bookkeeping;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that is written down of what happened, as lines of one daybook: the daybook itself, each
 * stock list after the one that the plan begins with as counts, and receipts as sales.
 */
public final class WrittenDown {
  private final Inputs given;
  private final YearMonth today;
  private final List<StockList> lists;
  private final Set<String> spokenOf = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();
  private Inputs inputs;
  private List<SharedReceipt> receipts = List.of();
  private Set<Where> listedRows = Set.of();
  private final List<String> withoutAPrice = new ArrayList<>();

  private WrittenDown(Inputs given, PastRecords past, YearMonth today) {
    this.given = given;
    this.today = today;
    this.lists = fromStart(past.lists(), given.scenario().plan().firstMonth(), today);
    this.inputs = given;
    given.daybook().forEach(line -> spokenOf.add(line.lot()));
  }

  /** Puts together what is written down up to a month. */
  public static WrittenDown of(Inputs given, PastRecords past, YearMonth today) {
    WrittenDown all = new WrittenDown(given, past, today);
    if (all.lists.size() > 1) {
      all.readLists();
    }
    if (!past.receipts().isEmpty()) {
      all.shareOut(past);
    }
    return all;
  }

  /** The list that the plan begins with, and all later ones. */
  private static List<StockList> fromStart(
      List<StockList> all, YearMonth firstMonth, YearMonth today) {
    List<StockList> sorted =
        all.stream()
            .filter(list -> !list.month().isAfter(today.plusMonths(1)))
            .sorted(Comparator.comparing(StockList::month))
            .toList();
    int start = 0;
    for (int i = 0; i < sorted.size(); i++) {
      start = sorted.get(i).month().isAfter(firstMonth) ? start : i;
    }
    return sorted.subList(Math.min(start, sorted.size()), sorted.size());
  }

  private void readLists() {
    Set<String> bought = new HashSet<>();
    given.offers().forEach(offer -> bought.add(offer.name()));
    given.scenario().lots().stream()
        .filter(lot -> lot.purchase().isPresent())
        .forEach(lot -> bought.add(lot.name()));
    ListedLots listed = ListedLots.of(lists, given.daybook(), oldest(), today, bought);
    problems.addAll(listed.problems());
    listed.unused().forEach(row -> unused(row).ifPresent(problems::add));
    List<Lot> lots = new ArrayList<>(come(listed));
    Set<String> known = new HashSet<>();
    lots.forEach(lot -> known.add(lot.name()));
    List<DaybookLine> lines = new ArrayList<>(given.daybook());
    listed.firstRows().values().stream()
        .filter(row -> !known.contains(row.lot().name()))
        .forEach(row -> addNew(row, listed, lots, lines));
    listed.rows().forEach((name, rows) -> arrival(name, rows, known).ifPresent(lines::add));
    lines.addAll(listed.counts());
    listedRows = listed.counts().stream().map(DaybookLine::where).collect(Collectors.toSet());
    inputs = given.withRecords(given.scenario().withLots(lots), lines);
  }

  /**
   * No row is too old for a review, as it is for a fit that reaches back 37 seasons at most: the
   * lists begin with the one that the plan begins with.
   */
  private YearMonth oldest() {
    return lists.stream()
        .flatMap(list -> list.rows().stream())
        .map(row -> row.lot().counted())
        .min(Comparator.naturalOrder())
        .orElse(today);
  }

  private static Optional<Problem> unused(ListedLots.Unused row) {
    return switch (row.why()) {
      case COUNTED_THAT_DAY -> Optional.of(DaybookAdvice.countedInDaybook(row.where(), row.lot()));
      case COUNTED_THE_SAME_MONTH ->
          Optional.of(DaybookAdvice.countedTwice(row.where(), row.lot()));
      case NOT_COUNTED -> Optional.of(DaybookAdvice.newWithoutNumber(row.where(), row.lot()));
      // The lists have told of these as problems of their own.
      case TOO_OLD, OTHER_SPECIES -> Optional.empty();
    };
  }

  /** Lots of the plan, but for those that were to come before a list that lacks them. */
  private List<Lot> come(ListedLots listed) {
    List<Lot> lots = new ArrayList<>();
    for (Lot lot : given.scenario().lots()) {
      Optional<StockList> without =
          lists.stream().filter(list -> list.month().isAfter(lot.arrived())).findFirst();
      boolean isMissing =
          lot.purchase().isPresent()
              && without.isPresent()
              && !listed.rows().containsKey(lot.name())
              && !spokenOf.contains(lot.name());
      if (isMissing) {
        problems.add(
            DaybookAdvice.neverListed(
                Where.file(without.get().name()), lot.name(), MarkedText.month(lot.arrived())));
      } else {
        lots.add(lot);
      }
    }
    return lots;
  }

  /** A lot that stands at the end of the month before it was counted, as its row says. */
  private void addNew(
      ListedLots.Listed row, ListedLots listed, List<Lot> lots, List<DaybookLine> lines) {
    Lot lot = listed.asListed(row);
    problems.add(DaybookAdvice.newOnAList(row.row().where(), lot.name()));
    withoutAPrice.add(lot.name());
    if (listed.firstMeasured(lot.name()).isEmpty()) {
      problems.add(
          DaybookAdvice.newWithoutTrunks(row.row().where(), lot.name(), lot.trunks().meanMm()));
    }
    YearMonth month = row.countMonth();
    boolean wasThere =
        Stream.of(
                Optional.of(lot.arrived()),
                lot.potting().potted(),
                lot.potting().rootWork(),
                lot.trainingSince())
            .flatMap(Optional::stream)
            .noneMatch(each -> each.isAfter(month));
    if (wasThere) {
      lots.add(lot.with().counted(month).build());
      ListedLots.counted(row).ifPresent(lines::add);
    } else {
      lots.add(lot);
    }
  }

  /** An offer that the plan does not take, and that is listed, came as it is listed. */
  private Optional<DaybookLine> arrival(
      String name, List<ListedLots.Listed> rows, Set<String> known) {
    boolean isOffer = given.offers().stream().map(Offer::name).anyMatch(name::equals);
    if (!isOffer || known.contains(name) || spokenOf.contains(name)) {
      return Optional.empty();
    }
    return rows.stream()
        .filter(ListedLots.Listed::hasNumber)
        .findFirst()
        .map(row -> arrival(name, row));
  }

  private DaybookLine arrival(String name, ListedLots.Listed row) {
    problems.add(DaybookAdvice.cameAsListed(row.row().where(), name));
    return DaybookLine.of(row.lot().arrived().atDay(1), name, What.ARRIVED, row.row().where())
        .quantity(OptionalDouble.of(row.lot().quantity()))
        .build();
  }

  private void shareOut(PastRecords past) {
    SharingOut sharing = SharingOut.of(past.receipts(), inputs, today);
    receipts = sharing.shared();
    problems.addAll(sharing.problems());
    inputs = inputs.withRecords(inputs.scenario(), sharing.lines());
  }

  /** The plan with all that is written down in its daybook, and with lots that lists have more. */
  public Inputs inputs() {
    return inputs;
  }

  /** The books of all lots. */
  public Bookkeeping bookkeeping() {
    return Bookkeeping.of(inputs, today, listedRows);
  }

  /** What each receipt was taken for. */
  public List<SharedReceipt> receipts() {
    return receipts;
  }

  /** Money of receipts that fit no lot, plan currency. */
  public static double ofNoLot(List<SharedReceipt> receipts) {
    return receipts.stream()
        .filter(each -> each.how() == SharedReceipt.How.NONE)
        .mapToDouble(SharedReceipt::amount)
        .sum();
  }

  /** Months of the lists: the first is what the plan begins with. */
  public List<YearMonth> listMonths() {
    return lists.stream().map(StockList::month).distinct().toList();
  }

  /** Lines of the daybook itself. */
  public List<DaybookLine> ownLines() {
    return given.daybook().stream()
        .filter(line -> !YearMonth.from(line.date()).isAfter(today))
        .toList();
  }

  /** Lots that are new on a list, of which no offer says what was paid. */
  public List<String> withoutAPrice() {
    return withoutAPrice;
  }

  /** What is to be asked. */
  public List<Problem> problems() {
    return problems;
  }
}
