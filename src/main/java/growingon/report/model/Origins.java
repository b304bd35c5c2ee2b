package growingon.report.model;

import com.google.common.collect.Maps;
import growingon.nursery.record.InList;
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

  /**
   * Rows that come from lists of the grower's own.
   *
   * @param byRow by the row's index
   */
  public static Origins of(int column, Map<Integer, InList> byRow) {
    return new Origins(column, Maps.transformValues(byRow, Origins::origin));
  }

  private static Origin origin(InList cell) {
    return new Origin(cell.file(), cell.sheet(), cell.row(), cell.column());
  }

  /** Whether a cell leads to where its row comes from. */
  public boolean isLinked(int row, int itsColumn) {
    return itsColumn == column && byRow.containsKey(row);
  }
}
