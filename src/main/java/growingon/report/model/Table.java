package growingon.report.model;

import growingon.report.text.Plants;
import growingon.report.text.Shown;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * A table of a report. A cell is null (empty), a String, a {@link java.time.YearMonth}, a {@link
 * Plants}, a {@link Shown}, a Double, an Integer or a Long, as its column's kind says.
 *
 * @param name unique, lower case, words joined by hyphens: {@code bench-space}; the CSV file's name
 * @param title as shown
 * @param notes sentences that say how the figures came about, shown above the table; below it if
 *     there are more than three
 * @param columns left to right
 * @param rows top to bottom, a cell for every column
 * @param inFull the rows that figures.json has: also those of less than a whole plant, which nobody
 *     is to read
 * @param origins where rows come from that are read out of a file of the grower's own
 */
public record Table(
    String name,
    String title,
    List<String> notes,
    List<Column> columns,
    List<List<Object>> rows,
    List<List<Object>> inFull,
    Origins origins) {
  /** A table of our own making. */
  public Table(
      String name,
      String title,
      List<String> notes,
      List<Column> columns,
      List<List<Object>> rows,
      List<List<Object>> inFull) {
    this(name, title, notes, columns, rows, inFull, Origins.NONE);
  }

  /** A table of which every row is read. */
  public Table(
      String name,
      String title,
      List<String> notes,
      List<Column> columns,
      List<List<Object>> rows) {
    this(name, title, notes, columns, rows, rows);
  }

  public Table {
    Objects.requireNonNull(name);
    Objects.requireNonNull(title);
    Objects.requireNonNull(origins);
    notes = List.copyOf(notes);
    columns = List.copyOf(columns);
    boolean isRead = inFull == rows;
    rows = fixed(name, columns.size(), rows);
    inFull = isRead ? rows : fixed(name, columns.size(), inFull);
  }

  private static List<List<Object>> fixed(String name, int columns, List<List<Object>> rows) {
    if (rows instanceof LazyRows) {
      return rows;
    }
    List<List<Object>> copy = new ArrayList<>(rows.size());
    for (List<Object> row : rows) {
      if (row.size() != columns) {
        throw new IllegalArgumentException(
            "a row of %s has %d cells for %d columns".formatted(name, row.size(), columns));
      }
      copy.add(row instanceof FixedRow ? row : new FixedRow(row.toArray()));
    }
    return Collections.unmodifiableList(copy);
  }

  /** The same, and where its rows come from. */
  public Table from(Origins its) {
    return new Table(name, title, notes, columns, rows, inFull, its);
  }

  /** Whether any column has a total. */
  public boolean hasTotals() {
    return columns.stream().anyMatch(Column::total);
  }
}
