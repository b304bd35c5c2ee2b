package growingon.load.source;

import growingon.load.cell.Texts;
import growingon.load.own.question.Fill;
import growingon.problem.Where;

/**
 * A row of the sheet to fill, as it stands there.
 *
 * @param table that it belongs to
 * @param row a lot, a class of lots or the name of a row
 * @param column of the table
 * @param answered whether it is filled in
 * @param where it stands
 */
public record FillRow(String table, String row, String column, boolean answered, Where where) {
  /** Whether it is that of a question. */
  public boolean asks(Fill asked) {
    return isOf(asked.table(), asked.row(), asked.column());
  }

  boolean isOf(String itsTable, String itsRow, String itsColumn) {
    return isAlike(table, itsTable) && isAlike(row, itsRow) && isAlike(column, itsColumn);
  }

  private static boolean isAlike(String one, String other) {
    return Texts.key(one).equals(Texts.key(other));
  }
}
