package growingon.start;

import growingon.load.TableFormats;
import growingon.load.TableFormats.Column;
import java.util.List;

/**
 * What is said about a heading.
 *
 * @param table table it belongs to
 * @param column as it is read
 */
record HeadingNote(String table, Column column) {
  static List<HeadingNote> all() {
    return TableFormats.all().stream()
        .flatMap(
            table -> table.columns().stream().map(each -> new HeadingNote(table.table(), each)))
        .toList();
  }

  String heading() {
    return column.heading();
  }

  String meaning() {
    return column.meaning();
  }

  /** What holds if a cell is empty; empty text if nothing does or the meaning says it. */
  String usual() {
    return column.ifEmpty();
  }

  /** The note on the heading: meaning, unit, example, what holds if it is empty. */
  String text(String example) {
    StringBuilder text = new StringBuilder(meaning()).append('.');
    add(text, "Unit", unit());
    add(text, "Example", example);
    add(text, "If empty", usual());
    if (column.needed()) {
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
    String unit = TableFormats.unit(heading());
    return switch (column.holds()) {
      case MONEY -> "money, without VAT";
      case MONTH -> "a month with its year";
      case NUMBER -> unit.isEmpty() ? "a number" : unit;
      case TEXT -> "";
    };
  }
}
