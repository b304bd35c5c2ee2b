package growingon.load.source;

import growingon.load.row.Row;
import growingon.problem.Problem;
import growingon.problem.Where;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Rows of all tables.
 *
 * @param read rows that are not blank
 * @param accepted rows that became part of the inputs
 * @param reported rows with an error
 */
public record RowCount(int read, int accepted, int reported) {
  public static final RowCount NONE = new RowCount(0, 0, 0);

  /**
   * Counts the rows of the tables.
   *
   * @throws IllegalStateException if a row was neither accepted nor reported, which is our fault
   */
  public static RowCount of(List<Table> tables, List<Problem> problems) {
    Set<Where> faulty =
        problems.stream()
            .filter(Problem::isError)
            .map(problem -> problem.where().column(""))
            .collect(Collectors.toSet());
    RowCount count = NONE;
    for (Table table : tables) {
      for (Row row : table.rows()) {
        count = count.plus(row, row.isReportedElsewhere() || faulty.contains(row.where()));
      }
    }
    return count;
  }

  private RowCount plus(Row row, boolean faulty) {
    if (!faulty && !row.isAccepted()) {
      throw new IllegalStateException("a row was passed over in silence: " + row.where());
    }
    return new RowCount(read + 1, accepted + (faulty ? 0 : 1), reported + (faulty ? 1 : 0));
  }
}
