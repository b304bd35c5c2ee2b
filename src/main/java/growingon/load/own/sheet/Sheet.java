package growingon.load.own.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A sheet of a workbook, or a CSV file.
 *
 * @param file name of the file
 * @param name name of the sheet, that of the file for CSV
 * @param csv whether it is CSV
 * @param rows from the top
 * @param merges merged areas
 * @param hiddenColumns columns that are hidden
 * @param coloured whether a cell below is filled with a colour or bears a comment
 */
public record Sheet(
    String file,
    String name,
    boolean csv,
    List<SheetRow> rows,
    List<Merged> merges,
    Set<Integer> hiddenColumns,
    boolean coloured) {
  public Sheet {
    Objects.requireNonNull(file);
    Objects.requireNonNull(name);
    rows = List.copyOf(rows);
    merges = List.copyOf(merges);
    hiddenColumns = Set.copyOf(hiddenColumns);
  }

  /** A place on it; of CSV, whose file is named anyway, that alone. */
  String at(String place) {
    return csv ? place : name + ", " + place;
  }

  /** Something said of it as a whole. */
  public String said(String what) {
    return csv ? what : name + ": " + what;
  }

  /** A merged area; rows from 1, columns from 0, ends included. */
  public record Merged(int firstRow, int lastRow, int firstColumn, int lastColumn) {
    public boolean covers(int row, int column) {
      return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
    }

    public boolean isDown() {
      return lastRow > firstRow;
    }
  }

  /** Whether a cell is merged with one above it. */
  public boolean isMergedDown(int row, int column) {
    return merges().stream()
        .anyMatch(
            merge ->
                merge.isDown()
                    && merge.firstColumn() <= column
                    && merge.lastColumn() >= column
                    && merge.firstRow() < row
                    && merge.lastRow() >= row);
  }
}
