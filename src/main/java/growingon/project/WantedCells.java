package growingon.project;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * In which grades plants of a lot may find a buyer in each month. A lot that has nothing ready that
 * anybody asks for has no business in the market. It may be used by several threads at once.
 */
final class WantedCells {
  private final DemandRow[] rows;
  private final int months;
  private final Map<Kind, long[]> ofKind = new ConcurrentHashMap<>();

  /** What decides to whom a lot may be sold. */
  private record Kind(String species, String ladder) {}

  WantedCells(DemandRow[] rows, int months) {
    this.rows = rows;
    this.months = months;
  }

  /** For each month the bits of {@link Grading#cells} of all grades that are asked for of a lot. */
  long[] of(LotPlan plan) {
    return ofKind.computeIfAbsent(new Kind(plan.lot.species(), plan.ladder.name()), this::cells);
  }

  private long[] cells(Kind kind) {
    long[] cells = new long[months];
    for (DemandRow row : rows) {
      Optional<String> species = row.demand().species();
      boolean asksForIt =
          row.demand().ladder().equals(kind.ladder())
              && (species.isEmpty() || species.get().equals(kind.species()));
      for (int month = 0; month < months && asksForIt; month++) {
        cells[month] |= row.units()[month] > 0 ? Grading.cells(row.grade()) : 0;
      }
    }
    return cells;
  }
}
