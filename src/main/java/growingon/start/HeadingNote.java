package growingon.start;

import growingon.load.TableFormats;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/**
 * What is said about a heading, a row of headings.csv.
 *
 * @param table table it belongs to
 * @param heading as it is read
 * @param expert whether its column is grouped and closed
 * @param kind text, number, money or month
 * @param choice list that the column chooses from; empty for none
 * @param usual what holds if a cell is empty; empty text if nothing does or the meaning says it
 * @param meaning what it is
 */
record HeadingNote(
    String table,
    String heading,
    boolean expert,
    String kind,
    String choice,
    String usual,
    String meaning) {
  static List<HeadingNote> all() {
    return Resource.rows("headings.csv").stream().map(HeadingNote::of).toList();
  }

  private static HeadingNote of(CSVRecord row) {
    return new HeadingNote(
        row.get("table"),
        row.get("heading"),
        row.get("level").equals("expert"),
        row.get("kind"),
        row.get("choice"),
        row.get("usual"),
        row.get("meaning"));
  }

  /** The note on the heading: meaning, unit, example, what holds if it is empty. */
  String text(boolean needed, String example) {
    StringBuilder text = new StringBuilder(meaning).append('.');
    add(text, "Unit", unit());
    add(text, "Example", example);
    add(text, "If empty", usual);
    if (needed) {
      text.append("\nNeeded.");
    }
    return text.toString();
  }

  private static void add(StringBuilder text, String what, String value) {
    if (!value.isEmpty()) {
      text.append('\n').append(what).append(": ").append(value);
    }
  }

  private String unit() {
    if (kind.equals("money")) {
      return "money, without VAT";
    }
    if (kind.equals("month")) {
      return "a month with its year";
    }
    String unit = TableFormats.unit(heading);
    return kind.equals("number") && unit.isEmpty() ? "a number" : kind.equals("text") ? "" : unit;
  }
}
