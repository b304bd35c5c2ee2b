package growingon.report.model;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A cell of a file of the grower's own from which a row of ours comes.
 *
 * @param sheet it stands on, empty for a file without sheets
 * @param row as a spreadsheet counts, from 1
 * @param column from 0
 */
public record Origin(Path file, String sheet, int row, int column) {
  public Origin {
    Objects.requireNonNull(file);
    Objects.requireNonNull(sheet);
  }
}
