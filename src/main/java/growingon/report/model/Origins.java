package growingon.report.model;

import java.util.Map;

/**
 * Where the rows of a table come from; one column of it leads there.
 *
 * @param column index of that column
 * @param byRow by the row's index; not every row need have one
 */
public record Origins(int column, Map<Integer, Origin> byRow) {
  /** Rows of our own making. */
  public static final Origins NONE = new Origins(0, Map.of());

  public Origins {
    byRow = Map.copyOf(byRow);
  }

  /** Whether a cell leads to where its row comes from. */
  public boolean isLinked(int row, int itsColumn) {
    return itsColumn == column && byRow.containsKey(row);
  }
}
