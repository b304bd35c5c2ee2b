package growingon.fit.evidence;

import growingon.fit.past.Measured;
import growingon.fit.past.Past;
import growingon.fit.past.Why;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Trunks;
import growingon.problem.Where;
import growingon.project.history.Grown;
import growingon.project.lot.LotHistory;
import growingon.review.book.Booked;
import growingon.review.written.ListedLots;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Intervals between successive measurements of the trunks of one lot. */
record LotIntervals(Past past, LotHistory history, Booked book, List<LossSpan> spans) {
  /** With fewer plants left a mean says little (own choice). */
  private static final double FEWEST_PLANTS = 5;

  /** With fewer growth years between the two measurements differ by errors only (own choice). */
  static final double SHORTEST_CLOCK = 0.05;

  /** A measurement of the lot, or of the lot it was split off from. */
  private record Point(int month, boolean own, Optional<Measured> measured, double plants) {}

  List<Interval> all() {
    List<Interval> intervals = new ArrayList<>();
    List<Point> points = points();
    double first =
        points.stream()
            .flatMap(each -> each.measured().stream())
            .mapToDouble(Measured::plants)
            .findFirst()
            .orElse(1);
    Point before = null;
    for (Point point : points) {
      if (point.measured().isEmpty()) {
        continue;
      }
      if (before != null && point.own()) {
        intervals.add(interval(before, point, first));
      }
      before = point;
    }
    return intervals;
  }

  private List<Point> points() {
    Lot lot = book.lot();
    TreeMap<Integer, Point> points = new TreeMap<>();
    int start = past.horizon().offset(lot.counted()) - 1;
    points.put(start, new Point(start, false, atStart(start), lot.quantity()));
    for (Booked.Count count : book.counts()) {
      boolean own = count.lot().equals(lot.name());
      Optional<Measured> measured = measured(count);
      Point there = points.get(count.month());
      Optional<Measured> holds =
          measured.or(() -> there == null ? Optional.empty() : there.measured());
      points.put(count.month(), new Point(count.month(), own, holds, count.alive()));
    }
    return List.copyOf(points.values());
  }

  private Optional<Measured> atStart(int month) {
    Lot lot = book.lot();
    Optional<ListedLots.Listed> row = past.firstRow(book.root());
    boolean isMeasured = row.map(each -> each.row().isMeasured()).orElse(true);
    if (!isMeasured || lot.quantity() == 0) {
      return Optional.empty();
    }
    List<Where> rows = row.map(each -> List.of(each.row().where())).orElse(List.of());
    double plants = lot.quantity();
    return Optional.of(
        new Measured(
            rows,
            lot.trunks().meanMm(),
            lot.trunks().spread(),
            plants,
            past.measured(rows, plants),
            past.unit(rows),
            lot.trunks() instanceof Trunks.SizeClass size ? size.toMm() - size.fromMm() : 0,
            Set.of(),
            book.root() + " " + month));
  }

  private Optional<Measured> measured(Booked.Count count) {
    if (count.counted().trunkMm().isEmpty() || count.alive() < FEW_ENOUGH_FOR_NONE) {
      return Optional.empty();
    }
    List<Where> rows = count.counted().rows();
    double spread = count.counted().trunkSpread().orElseGet(() -> spreadThen(count.month()));
    return Optional.of(
        new Measured(
            rows,
            count.counted().trunkMm().getAsDouble(),
            spread,
            Math.max(1, count.alive()),
            past.measured(rows, count.alive()),
            past.unit(rows),
            past.classWidth(rows),
            Set.of(),
            count.lot() + " " + count.month()));
  }

  private static final double FEW_ENOUGH_FOR_NONE = 0.5;

  /** Where a count does not say how trunks spread, they do as the engine has it. */
  private double spreadThen(int month) {
    return history.beforeCount(month).map(each -> each.trunkSpread()).orElse(0.15);
  }

  private Interval interval(Point from, Point to, double first) {
    GrowthYears grown = GrowthYears.of(from.month(), to.month(), past.horizon(), history::grown);
    Measured before = from.measured().orElseThrow();
    Measured after = to.measured().orElseThrow();
    Interval interval =
        new Interval(
            book.lot().name(),
            Optional.of(book.lot().name()),
            book.root(),
            book.lot().species(),
            from.month(),
            to.month(),
            before,
            after,
            first,
            grown.bySeason(),
            grown.byCondition(),
            List.of(),
            grown.states(),
            Optional.empty(),
            tells(from, to));
    return refusal(interval, to.plants()).map(interval::refusedFor).orElse(interval);
  }

  private String tells(Point from, Point to) {
    List<String> told = new ArrayList<>();
    within(from.month(), to.month())
        .filter(span -> span.gone() < -0.5)
        .forEach(span -> told.add(Why.plantsAppeared(Math.round(-span.gone()), past.writing())));
    return String.join("; ", told);
  }

  private java.util.stream.Stream<LossSpan> within(int from, int to) {
    return spans.stream().filter(span -> span.to() > from && span.from() < to);
  }

  private Optional<String> refusal(Interval interval, double left) {
    Optional<String> unexplained =
        within(interval.from(), interval.to()).flatMap(span -> span.refused().stream()).findFirst();
    if (unexplained.isPresent()) {
      return unexplained;
    }
    double joined =
        book.joined().entrySet().stream()
            .filter(each -> each.getKey() > interval.from() && each.getKey() <= interval.to())
            .mapToDouble(Map.Entry::getValue)
            .sum();
    if (joined > 0) {
      return Optional.of(Why.joined(Math.round(joined), past.writing()));
    }
    if (left < FEWEST_PLANTS) {
      return Optional.of(Why.fewPlants(Math.round(left)));
    }
    return interval.clock() < SHORTEST_CLOCK ? Optional.of(Why.shortClock()) : Optional.empty();
  }

  /** Growth years between two months, by season, condition and state. */
  record GrowthYears(
      Map<Integer, Double> bySeason,
      Map<String, Double> byCondition,
      Set<Interval.State> states,
      List<Interval.Stretch> stretches) {

    /** How plants grew in each month after the first up to the last. */
    static GrowthYears of(
        int from,
        int to,
        growingon.nursery.time.Horizon horizon,
        java.util.function.IntFunction<Optional<Grown>> grown) {
      Map<Integer, Double> bySeason = new TreeMap<>();
      Map<String, Double> byCondition = new TreeMap<>();
      Map<Interval.State, Double> byState = new HashMap<>();
      List<Interval.Stretch> stretches = new ArrayList<>();
      for (int month = Math.max(0, from + 1); month <= to; month++) {
        Optional<Grown> found = grown.apply(month);
        if (found.isEmpty()) {
          continue;
        }
        Grown how = found.get();
        bySeason.merge(horizon.seasonYear(month), how.years(), Double::sum);
        byCondition.merge(how.condition(), how.years(), Double::sum);
        byState.merge(state(how), how.years(), Double::sum);
        addTo(stretches, how);
      }
      Set<Interval.State> most =
          byState.entrySet().stream()
              .max(
                  Map.Entry.<Interval.State, Double>comparingByValue()
                      .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
              .map(each -> Set.of(each.getKey()))
              .orElse(Set.of());
      return new GrowthYears(bySeason, byCondition, most, stretches);
    }

    private static void addTo(List<Interval.Stretch> stretches, Grown how) {
      int last = stretches.size() - 1;
      if (last >= 0 && stretches.get(last).condition().equals(how.condition())) {
        double years = stretches.remove(last).years() + how.years();
        stretches.add(new Interval.Stretch(how.condition(), years));
      } else {
        stretches.add(new Interval.Stretch(how.condition(), how.years()));
      }
    }

    private static Interval.State state(Grown how) {
      if (how.potBound()) {
        return Interval.State.POT_BOUND;
      }
      return switch (how.afterRootWork()) {
        case FIRST -> Interval.State.FIRST_YEAR;
        case SECOND -> Interval.State.SECOND_YEAR;
        case NONE -> Interval.State.NEITHER;
      };
    }

    double clock() {
      return byCondition.values().stream().mapToDouble(Double::doubleValue).sum();
    }
  }
}
