package growingon.nursery.record;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A cell of a list of the grower's own.
 *
 * @param file the list
 * @param sheet it stands on, empty for a CSV file
 * @param row as the spreadsheet counts, from 1
 * @param column from 0
 */
public record InList(Path file, String sheet, int row, int column) {
  public InList {
    Objects.requireNonNull(file);
    Objects.requireNonNull(sheet);
    if (row < 1 || column < 0) {
      throw new IllegalArgumentException("no cell: row %d, column %d".formatted(row, column));
    }
  }

  /** As it is said: Sheet1, row 14. */
  @Override
  public String toString() {
    return (sheet.isEmpty() ? "" : sheet + ", ") + "row " + row;
  }
}
