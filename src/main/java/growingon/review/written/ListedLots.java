package growingon.review.written;

import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Trunks;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.nursery.record.StockList;
import growingon.problem.Problem;
import growingon.problem.Where;
import growingon.problem.advice.FitAdvice;
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
import java.util.Set;
import java.util.TreeSet;

/**
 * Stock lists of different months as lines of a daybook: the first row of a lot is what it starts
 * with, each later one a count at the end of the month before the one it was counted in, and a lot
 * that a later list lacks was gone by then.
 */
public final class ListedLots {
  private final YearMonth oldest;
  private final YearMonth until;
  private final Set<String> comeOtherwise;
  private final Map<String, List<Listed>> rows = new LinkedHashMap<>();
  private final Map<String, Listed> firstRows = new LinkedHashMap<>();
  private final List<DaybookLine> counts = new ArrayList<>();
  private final List<Unused> unused = new ArrayList<>();
  private final Set<Problem> problems = new LinkedHashSet<>();
  private final Set<List<Object>> countedOn = new HashSet<>();
  private final Map<String, LocalDate> lastLine = new HashMap<>();

  /** A row of a list of a month. */
  public record Listed(YearMonth list, StockList.Row row) {
    public Lot lot() {
      return row.lot();
    }

    private boolean saysTheSameAs(Listed other) {
      return lot().counted().equals(other.lot().counted())
          && lot().quantity() == other.lot().quantity()
          && lot().trunks().equals(other.lot().trunks());
    }

    /** Whether it says how many plants there are, if only about. */
    public boolean hasNumber() {
      return row.isCounted() || lot().quantity() > 0;
    }

    public YearMonth countMonth() {
      return lot().counted().minusMonths(1);
    }
  }

  /** Why a row is no count. */
  public enum Why {
    /** The daybook has a count of that day. */
    COUNTED_THAT_DAY,
    /** Another row has one of that month. */
    COUNTED_THE_SAME_MONTH,
    /** It is from before anything is looked at. */
    TOO_OLD,
    /** A lot cannot begin with an unknown number of plants. */
    NOT_COUNTED,
    /** The lot was of another species before. */
    OTHER_SPECIES
  }

  /**
   * A row that is no count.
   *
   * @param species of the lot on the lists before
   */
  public record Unused(String lot, Where where, YearMonth month, Why why, String species) {}

  private ListedLots(
      List<DaybookLine> daybook, YearMonth oldest, YearMonth until, Set<String> comeOtherwise) {
    this.oldest = oldest;
    this.until = until;
    this.comeOtherwise = new HashSet<>(comeOtherwise);
    for (DaybookLine line : daybook) {
      lastLine.merge(line.lot(), line.date(), (one, other) -> one.isAfter(other) ? one : other);
      if (line.what() == What.COUNTED) {
        countedOn.add(List.of(line.lot(), line.date()));
      }
    }
  }

  /**
   * Reads lists, in any order.
   *
   * @param oldest rows counted before this month are not used
   * @param until last month that is looked at
   * @param comeOtherwise lots that do not start with a row of a list: of these every row is a count
   */
  public static ListedLots of(
      List<StockList> lists,
      List<DaybookLine> daybook,
      YearMonth oldest,
      YearMonth until,
      Set<String> comeOtherwise) {
    ListedLots listed = new ListedLots(daybook, oldest, until, comeOtherwise);
    listed.read(
        lists.stream()
            .sorted(Comparator.comparing(StockList::month).thenComparing(StockList::name))
            .toList(),
        daybook);
    return listed;
  }

  private void read(List<StockList> lists, List<DaybookLine> daybook) {
    for (StockList list : lists) {
      for (StockList.Row row : list.rows()) {
        rows.computeIfAbsent(row.lot().name(), each -> new ArrayList<>())
            .add(new Listed(list.month(), row));
      }
    }
    comeOtherwise.addAll(splitOff(daybook));
    rows.values()
        .forEach(
            listed ->
                listed.sort(
                    Comparator.comparing((Listed row) -> row.lot().counted())
                        .thenComparing(Listed::list)));
    rows.forEach(this::readRows);
    noteGone(lists);
  }

  /** Lots that the daybook splits off before any list has them. */
  private Set<String> splitOff(List<DaybookLine> daybook) {
    Set<String> split = new HashSet<>();
    for (DaybookLine line : daybook) {
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

  private void readRows(String lot, List<Listed> listed) {
    Listed before = null;
    for (Listed row : listed) {
      if (row.countMonth().isAfter(until) || isUnfit(lot, row, before)) {
        continue;
      }
      if (before == null && !comeOtherwise.contains(lot)) {
        firstRows.put(lot, row);
      } else if (before != null && row.saysTheSameAs(before)) {
        continue;
      } else if (before != null && row.lot().counted().equals(before.lot().counted())) {
        leave(row, Why.COUNTED_THE_SAME_MONTH);
      } else {
        count(row);
      }
      before = row;
    }
  }

  /** Whether a row is of no use, which is noted. */
  private boolean isUnfit(String lot, Listed row, Listed before) {
    if (row.lot().counted().isBefore(oldest)) {
      problems.add(FitAdvice.tooLong(oldest));
      leave(row, Why.TOO_OLD);
    } else if (before == null && !comeOtherwise.contains(lot) && !row.hasNumber()) {
      leave(row, Why.NOT_COUNTED);
    } else if (before != null && !before.lot().species().equals(row.lot().species())) {
      String species = before.lot().species();
      problems.add(FitAdvice.otherSpecies(row.row().where(), lot, species));
      leave(row, Why.OTHER_SPECIES, species);
    } else {
      return false;
    }
    return true;
  }

  private void leave(Listed row, Why why) {
    leave(row, why, row.lot().species());
  }

  private void leave(Listed row, Why why, String species) {
    unused.add(new Unused(row.lot().name(), row.row().where(), row.countMonth(), why, species));
  }

  private void count(Listed row) {
    Lot lot = row.lot();
    LocalDate date = row.countMonth().atEndOfMonth();
    if (countedOn.contains(List.of(lot.name(), date))) {
      leave(row, Why.COUNTED_THAT_DAY);
      return;
    }
    counted(row).ifPresent(counts::add);
  }

  /**
   * A row as a count at the end of the month before the one it was counted in; empty if nothing was
   * counted or measured.
   */
  static Optional<DaybookLine> counted(Listed of) {
    StockList.Row row = of.row();
    Lot lot = of.lot();
    if (!row.isCounted() && !row.isMeasured()) {
      return Optional.empty();
    }
    return Optional.of(
        DaybookLine.of(of.countMonth().atEndOfMonth(), lot.name(), What.COUNTED, row.where())
            .quantity(row.isCounted() ? OptionalDouble.of(lot.quantity()) : OptionalDouble.empty())
            .trunkMm(
                row.isMeasured()
                    ? OptionalDouble.of(lot.trunks().meanMm())
                    : OptionalDouble.empty())
            .trunkSpread(
                row.isMeasured() && lot.trunks() instanceof Trunks.Measured known
                    ? OptionalDouble.of(known.spread())
                    : OptionalDouble.empty())
            .build());
  }

  /** Lots that a later list lacks were gone by then. */
  private void noteGone(List<StockList> lists) {
    TreeSet<YearMonth> months = new TreeSet<>();
    lists.forEach(list -> months.add(list.month()));
    rows.forEach(
        (lot, listed) -> {
          if (!firstRows.containsKey(lot) && !comeOtherwise.contains(lot)) {
            return;
          }
          YearMonth last =
              listed.stream().map(Listed::list).max(Comparator.naturalOrder()).orElseThrow();
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
    boolean wasGone = row.row().isCounted() && row.lot().quantity() == 0;
    if (goesOn || YearMonth.from(date).isAfter(until) || wasGone) {
      return;
    }
    counts.add(
        DaybookLine.of(date, lot, What.COUNTED, row.row().where())
            .quantity(OptionalDouble.of(0))
            .build());
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

  /** All rows of each lot, in the order in which they were counted. */
  public Map<String, List<Listed>> rows() {
    return rows;
  }

  /**
   * A lot as it is listed; one whose trunks nobody measured then has those of the first time that
   * somebody did.
   */
  public Lot asListed(Listed row) {
    return row.row().isMeasured()
        ? row.lot()
        : firstMeasured(row.lot().name())
            .map(measured -> row.lot().withTrunks(measured.lot().trunks()))
            .orElse(row.lot());
  }

  /** The first row of a lot whose trunks were measured. */
  Optional<Listed> firstMeasured(String lot) {
    return rows.get(lot).stream().filter(row -> row.row().isMeasured()).findFirst();
  }

  /** The row that each lot starts with; none of those that come otherwise. */
  public Map<String, Listed> firstRows() {
    return firstRows;
  }

  /** The later rows as counts, and lots that a later list lacks as counts of none. */
  public List<DaybookLine> counts() {
    return counts;
  }

  /** Rows of later lists that are no counts, with why. */
  public List<Unused> unused() {
    return unused;
  }

  /** What is to be asked. */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }
}
