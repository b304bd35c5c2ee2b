package growingon.project;

import growingon.nursery.market.Demand;
import growingon.nursery.market.Quality;
import growingon.project.known.MonthFacts.Leaving;
import growingon.project.lot.LotPlan;
import growingon.project.slice.Taken;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Sells and uses what is known to have been sold and used. What was sold met demand: that of the
 * rows that it fits, in the order in which the market meets them.
 */
final class KnownSales {
  private final Programme programme;
  private final LotState[] lots;
  private final double[] nothingMet;
  private final Map<LotPlan, Ways> ways = new IdentityHashMap<>();

  /**
   * How plants of a lot may be sold.
   *
   * @param rows for each grade, the rows that it can meet, in the order in which they are met
   * @param dearestFirst indexes of all grades
   */
  private record Ways(List<List<DemandRow>> rows, List<Integer> dearestFirst) {}

  KnownSales(Programme programme, LotState[] lots) {
    this.programme = programme;
    this.nothingMet = new double[programme.nursery().demand().size()];
    this.lots = Arrays.stream(lots).filter(LotState::hasFacts).toArray(LotState[]::new);
  }

  /** No row is met yet. */
  double[] nothing() {
    return nothingMet;
  }

  /**
   * Sells what is known of a month.
   *
   * @return units of each demand row, by its index, that are met by it
   */
  double[] sell(int month) {
    if (lots.length == 0) {
      return nothingMet;
    }
    double[] met = new double[nothingMet.length];
    for (LotState lot : lots) {
      for (Leaving leaving : lot.past.leaving(month)) {
        leave(lot, month, leaving, met);
      }
    }
    return met;
  }

  private void leave(LotState lot, int month, Leaving leaving, double[] met) {
    // A grade of a kept plan may be renamed since: then none is said.
    Optional<Integer> grade = leaving.grade().map(lot.plan.ladder::indexOf).filter(i -> i >= 0);
    lot.past.makeSure(month, leaving.plants());
    lot.gradeForSale(month);
    if (leaving.sold() && grade.isPresent()) {
      lot.noteUnready(leaving.plants() - ready(lot, grade.get()));
    }
    Ways ofLot = ways.computeIfAbsent(lot.plan, this::ways);
    boolean isPriced = leaving.sold() && leaving.money().isEmpty();
    List<Taken> taken =
        Taken.of(
            lot.plants, grade, leaving.quality(), leaving.plants(), ofLot.dearestFirst(), isPriced);
    double all = taken.stream().mapToDouble(Taken::plants).sum();
    for (Taken each : taken) {
      if (!leaving.sold()) {
        lot.went(month, each.plants());
        continue;
      }
      int asGrade = grade.orElse(each.grade());
      Quality asQuality = leaving.quality().orElse(each.quality());
      List<DemandRow> rows = asGrade < 0 ? List.of() : ofLot.rows().get(asGrade);
      OptionalDouble share = share(leaving.money(), each.plants() / all);
      double money = share.orElseGet(() -> listPrice(rows, month, asQuality, each));
      lot.sold(month, index(rows, month), asGrade, asQuality, each.plants(), money);
      meet(rows, month, each.plants(), met);
    }
  }

  /** Plants of a lot, of whatever quality, that are ready as a grade. */
  private static double ready(LotState lot, int grade) {
    return Arrays.stream(Quality.values()).mapToDouble(q -> lot.plants.ready(q, grade)).sum();
  }

  private static OptionalDouble share(OptionalDouble money, double share) {
    return money.isPresent() ? OptionalDouble.of(money.getAsDouble() * share) : money;
  }

  private Ways ways(LotPlan plan) {
    List<List<DemandRow>> rows =
        IntStream.range(0, plan.grades().size()).mapToObj(grade -> rows(plan, grade)).toList();
    return new Ways(rows, dearestFirst(rows));
  }

  private List<DemandRow> rows(LotPlan plan, int grade) {
    return Arrays.stream(programme.rows())
        .filter(row -> row.grade() == grade && row.demand().ladder().equals(plan.ladder.name()))
        .filter(row -> row.demand().species().map(plan.lot.species()::equals).orElse(true))
        .toList();
  }

  private static boolean isOpen(DemandRow row, int month) {
    return row.units()[month] > 0;
  }

  /** The row by which plants were sold: the first that is open, else the first; −1 for none. */
  private static int index(List<DemandRow> rows, int month) {
    return priced(rows, month).map(DemandRow::index).orElse(-1);
  }

  private static Optional<DemandRow> priced(List<DemandRow> rows, int month) {
    return rows.stream()
        .filter(row -> isOpen(row, month))
        .findFirst()
        .or(() -> rows.stream().findFirst());
  }

  private double listPrice(List<DemandRow> rows, int month, Quality quality, Taken taken) {
    double share = programme.nursery().qualities().get(quality).priceShare();
    return priced(rows, month)
        .map(DemandRow::demand)
        .map(row -> (row.price() + row.morePerMm() * taken.mmAboveLeast()) * share)
        .map(price -> price * taken.plants())
        .orElse(0.0);
  }

  private static void meet(List<DemandRow> rows, int month, double units, double[] met) {
    double left = units;
    for (DemandRow row : rows) {
      if (isOpen(row, month)) {
        double part = Math.min(left, Math.max(0, row.units()[month] - met[row.index()]));
        met[row.index()] += part;
        left -= part;
      }
    }
  }

  private static List<Integer> dearestFirst(List<List<DemandRow>> rows) {
    return IntStream.range(0, rows.size())
        .boxed()
        .sorted(
            Comparator.comparingDouble((Integer grade) -> -dearest(rows.get(grade)))
                .thenComparing(Comparator.reverseOrder()))
        .toList();
  }

  private static double dearest(List<DemandRow> rows) {
    return rows.stream().map(DemandRow::demand).mapToDouble(Demand::price).max().orElse(0);
  }
}
