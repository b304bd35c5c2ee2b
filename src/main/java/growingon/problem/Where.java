package growingon.problem;

import java.util.Objects;

/**
 * Where in the input a problem stands. Empty text means "not applicable"; row 0 means "no row".
 *
 * @param file file name as the user knows it, e.g. {@code stock.xlsx}
 * @param sheet sheet name, empty for a CSV or JSON file
 * @param row row number counted as a spreadsheet does, from 1; 0 if none
 * @param column heading of the column, or JSON path, empty if none
 */
public record Where(String file, String sheet, int row, String column) {
  /** No particular place. */
  public static final Where NOWHERE = new Where("", "", 0, "");

  public Where {
    Objects.requireNonNull(file);
    Objects.requireNonNull(sheet);
    Objects.requireNonNull(column);
  }

  /** A whole file. */
  public static Where file(String file) {
    return new Where(file, "", 0, "");
  }

  /** The same row, another column. */
  public Where column(String heading) {
    return new Where(file, sheet, row, heading);
  }

  /** As printed: {@code stock.xlsx, sheet stock, row 7, column quantity}; empty for nowhere. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (!sheet.isEmpty()) {
      text.append(text.length() > 0 ? ", " : "").append("sheet ").append(sheet);
    }
    if (row > 0) {
      text.append(text.length() > 0 ? ", " : "").append("row ").append(row);
    }
    if (!column.isEmpty()) {
      text.append(text.length() > 0 ? ", " : "").append("column ").append(column);
    }
    return text.toString();
  }
}
