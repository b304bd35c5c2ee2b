package growingon.project;

import growingon.nursery.Demand;
import growingon.nursery.MonthShares;
import growingon.nursery.Quality;
import growingon.nursery.QualityRule;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sells what is ready to what is wanted, month by month (design section 6.5): rows of a species
 * before rows of any species, dearer first, then row order; within a row firsts before seconds,
 * oldest arrival first; of lots that arrived together the same share of every lot, slice and
 * stream, so that it does not matter how a batch is split into lots.
 */
final class Market {
  private static final double NEGLIGIBLE = 1e-9;

  private final Engine engine;
  private final List<Row> rows = new ArrayList<>();
  private final Map<Quality, QualityRule> qualities;
  private final List<Missed> missed = new ArrayList<>();
  private final int[] gradedIn;

  /** A demand row with what it can be met from. */
  private record Row(
      int index, Demand demand, List<List<Integer>> batches, int grade, double[] unitsByMonth) {}

  private final List<LotState> lots;

  Market(Engine engine, List<LotState> lots) {
    this.engine = engine;
    this.lots = lots;
    this.qualities = engine.nursery().qualities();
    this.gradedIn = new int[lots.size()];
    Arrays.fill(gradedIn, -1);
    List<Demand> demand = engine.nursery().demand();
    for (int index = 0; index < demand.size(); index++) {
      rows.add(row(index, demand.get(index)));
    }
    rows.sort(
        Comparator.comparing((Row row) -> row.demand().species().isEmpty())
            .thenComparing(row -> -row.demand().price())
            .thenComparing(Row::index));
  }

  private Row row(int index, Demand demand) {
    Map<YearMonth, List<Integer>> batches = new TreeMap<>();
    for (int i = 0; i < lots.size(); i++) {
      LotPlan plan = lots.get(i).plan;
      boolean species = demand.species().map(plan.lot.species()::equals).orElse(true);
      if (species && plan.ladder.name().equals(demand.ladder())) {
        batches.computeIfAbsent(plan.lot.arrived(), month -> new ArrayList<>()).add(i);
      }
    }
    int grade = engine.nursery().ladders().get(demand.ladder()).indexOf(demand.grade());
    return new Row(index, demand, List.copyOf(batches.values()), grade, unitsByMonth(demand));
  }

  /** Units of each month of the year, January first; infinite where all that is ready sells. */
  private double[] unitsByMonth(Demand demand) {
    MonthShares pattern = engine.nursery().settings().salesPattern();
    double sum = 0;
    for (int month = 0; month < 12; month++) {
      sum += demand.months().contains(month + 1) ? pattern.get(month) : 0;
    }
    double[] units = new double[12];
    for (int month = 0; month < 12; month++) {
      if (demand.months().contains(month + 1) && pattern.get(month) > 0) {
        units[month] =
            demand.units().isPresent()
                ? demand.units().getAsDouble() * pattern.get(month) / sum
                : Double.POSITIVE_INFINITY;
      }
    }
    return units;
  }

  void sell(int month) {
    int monthOfYear = engine.calendar().monthOfYear(month);
    String season = engine.horizon().seasonName(engine.calendar().season(month));
    for (Row row : rows) {
      double wanted = row.unitsByMonth()[monthOfYear];
      if (wanted > 0 && row.demand().season().map(season::equals).orElse(true)) {
        double left = meet(row, month, wanted);
        if (left > NEGLIGIBLE && Double.isFinite(left)) {
          missed.add(new Missed(month, row.index(), left));
        }
      }
    }
  }

  private double meet(Row row, int month, double wanted) {
    double left = wanted;
    for (Quality quality : Quality.values()) {
      for (List<Integer> batch : row.batches()) {
        if (left > 0) {
          left -= sellFrom(batch, row, quality, month, left);
        }
      }
    }
    return left;
  }

  /** Sells the same share of every lot of a batch; gives how many plants. */
  private double sellFrom(List<Integer> batch, Row row, Quality quality, int month, double wanted) {
    double ready = 0;
    for (int lot : batch) {
      if (lots.get(lot).maySell(month)) {
        gradeOnce(lot, month);
        ready += lots.get(lot).plants.ready(quality, row.grade());
      }
    }
    if (ready <= 0) {
      return 0;
    }
    double share = Math.min(1, wanted / ready);
    for (int lot : batch) {
      if (lots.get(lot).maySell(month)) {
        sell(lots.get(lot), row, quality, month, share);
      }
    }
    return share * ready;
  }

  private void gradeOnce(int lot, int month) {
    if (gradedIn[lot] != month) {
      lots.get(lot).gradeForSale(month);
      gradedIn[lot] = month;
    }
  }

  private void sell(LotState lot, Row row, Quality quality, int month, double share) {
    double units = share * lot.plants.ready(quality, row.grade());
    if (units <= 0) {
      return;
    }
    double money = units * row.demand().price() * qualities.get(quality).priceShare();
    if (row.demand().morePerMm() > 0) {
      double mm = lot.plants.mmAboveLeast(quality, row.grade());
      money += share * mm * row.demand().morePerMm();
    }
    lot.plants.sell(quality, row.grade(), share);
    lot.history.sold(new Sale(month, row.index(), row.grade(), quality, units, money));
  }

  List<Missed> missed() {
    return missed;
  }
}
