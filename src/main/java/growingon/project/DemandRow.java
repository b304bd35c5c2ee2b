package growingon.project;

import growingon.nursery.Nursery;
import growingon.nursery.market.Demand;
import growingon.nursery.time.MonthShares;
import growingon.project.lot.LotPlan;
import growingon.project.time.Calendar;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A demand row with what it can be met from.
 *
 * @param index its row in the nursery's demand
 * @param demand the row
 * @param batches indexes of the lots that can meet it, those that arrived together in one batch,
 *     oldest batch first; in a batch by name, so that the order of rows does not change a digit
 * @param grade index of its grade
 * @param units units of each month of the plan; infinite where all that is ready sells, 0 outside
 *     the months and the season of the row
 */
record DemandRow(int index, Demand demand, int[][] batches, int grade, double[] units) {
  private static final int[][] NOT_MET = {};

  /** Rows in the order in which they are met. */
  static List<DemandRow> inOrder(Nursery nursery, Calendar calendar, List<LotPlan> lots) {
    List<DemandRow> rows = new ArrayList<>();
    for (int index = 0; index < nursery.demand().size(); index++) {
      Demand demand = nursery.demand().get(index);
      int grade = nursery.ladders().get(demand.ladder()).indexOf(demand.grade());
      double[] units = units(demand, nursery.settings().salesPattern(), calendar);
      DemandRow row = new DemandRow(index, demand, NOT_MET, grade, units);
      rows.add(
          rows.stream()
              .filter(row::isMetAs)
              .findFirst()
              .map(row::metAs)
              .orElseGet(() -> row.metFrom(lots)));
    }
    rows.sort(
        Comparator.comparing((DemandRow row) -> row.demand().species().isEmpty())
            .thenComparing(row -> -row.demand().price())
            .thenComparing(DemandRow::index));
    return List.copyOf(rows);
  }

  /** The same row, met from other lots. */
  DemandRow metFrom(List<LotPlan> lots) {
    return new DemandRow(index, demand, batches(demand, lots), grade, units);
  }

  /** The same row, met from what another is met from. */
  DemandRow metAs(DemandRow other) {
    return new DemandRow(index, demand, other.batches, grade, units);
  }

  /** Whether it is met from the same lots as another. */
  boolean isMetAs(DemandRow other) {
    return demand.ladder().equals(other.demand.ladder())
        && demand.species().equals(other.demand.species());
  }

  private static int[][] batches(Demand demand, List<LotPlan> lots) {
    Map<YearMonth, List<Integer>> batches = new TreeMap<>();
    for (int i = 0; i < lots.size(); i++) {
      LotPlan plan = lots.get(i);
      boolean species = demand.species().map(plan.lot.species()::equals).orElse(true);
      if (species && plan.ladder.name().equals(demand.ladder())) {
        batches.computeIfAbsent(plan.lot.arrived(), month -> new ArrayList<>()).add(i);
      }
    }
    return batches.values().stream()
        .map(
            batch ->
                batch.stream()
                    .sorted(Comparator.comparing(i -> lots.get(i).lot.name()))
                    .mapToInt(Integer::intValue)
                    .toArray())
        .toArray(int[][]::new);
  }

  private static double[] units(Demand demand, MonthShares pattern, Calendar calendar) {
    double[] ofYear = unitsByMonth(demand, pattern);
    double[] units = new double[calendar.months()];
    for (int month = 0; month < units.length; month++) {
      boolean inSeason = demand.season().map(calendar.seasonName(month)::equals).orElse(true);
      units[month] = inSeason ? ofYear[calendar.monthOfYear(month)] : 0;
    }
    return units;
  }

  private static double[] unitsByMonth(Demand demand, MonthShares pattern) {
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
}
