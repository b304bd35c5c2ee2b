package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.cell.NumberStyle;
import growingon.problem.Where;
import java.util.List;
import java.util.SortedMap;

/**
 * The filled cells of a sheet or CSV file.
 *
 * @param where file and sheet
 * @param style how numbers are written as text
 * @param rows rows with at least one filled cell, from the top
 * @param merges merged areas
 */
public record Grid(Where where, NumberStyle style, List<GridRow> rows, List<Merge> merges) {
  public Grid {
    rows = List.copyOf(rows);
    merges = List.copyOf(merges);
  }

  /**
   * A row.
   *
   * @param number counted as a spreadsheet does, from 1
   * @param cells filled cells by column, 0 = A
   */
  public record GridRow(int number, SortedMap<Integer, Cell> cells) {
    public Cell cell(int column) {
      return cells.getOrDefault(column, Cell.EMPTY);
    }
  }

  /** A merged area; rows from 1, columns from 0, ends included. */
  record Merge(int firstRow, int lastRow, int firstColumn, int lastColumn) {
    boolean covers(int row, int column) {
      return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
    }

    boolean beginsAt(int row, int column) {
      return row == firstRow && column == firstColumn;
    }
  }

  /** Letters of a column as a spreadsheet shows them. */
  static String letters(int column) {
    String rest = column >= 26 ? letters(column / 26 - 1) : "";
    return rest + (char) ('A' + column % 26);
  }
}
