package growingon.problem;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * Where in the input a problem stands. Empty text means "not applicable"; row 0 means "no row".
 *
 * @param file file name as the user knows it, e.g. {@code stock.xlsx}
 * @param sheet sheet name, empty for a CSV or JSON file
 * @param row row number counted as a spreadsheet does, or line of a JSON file, from 1; 0 if none
 * @param column heading of the column, or key of a JSON file, empty if none
 */
public record Where(String file, String sheet, int row, String column) {
  /** No particular place. */
  public static final Where NOWHERE = new Where("", "", 0, "");

  private static final Pattern PARTING = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}]+");
  private static final Pattern HIDDEN = Pattern.compile("\\p{Cf}");

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

  /**
   * Names of files and sheets may hold anything, and are shown without what parts or turns lines.
   */
  private static String onOneLine(String name) {
    return HIDDEN.matcher(PARTING.matcher(name).replaceAll(" ")).replaceAll("");
  }

  /**
   * As printed: {@code stock.xlsx, sheet stock, row 7, column quantity} or {@code plan.json, line
   * 3, key seasons}; empty for nowhere.
   */
  @Override
  public String toString() {
    boolean json = file.endsWith(".json");
    StringBuilder text = new StringBuilder(onOneLine(file));
    if (!sheet.isEmpty()) {
      text.append(text.length() > 0 ? ", " : "").append("sheet ").append(onOneLine(sheet));
    }
    if (row > 0) {
      text.append(text.length() > 0 ? ", " : "").append(json ? "line " : "row ").append(row);
    }
    if (!column.isEmpty()) {
      text.append(text.length() > 0 ? ", " : "").append(json ? "key " : "column ").append(column);
    }
    return text.toString();
  }
}
