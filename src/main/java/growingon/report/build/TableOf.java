package growingon.report.build;

import growingon.report.model.Column;
import growingon.report.model.FixedRow;
import growingon.report.model.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A table of one row for each of some things, in which every column stands beside what it shows of
 * one of them. NaN becomes an empty cell.
 *
 * @param <T> what a row is made from
 */
public final class TableOf<T> {
  private final String name;
  private final String title;
  private final List<String> notes = new ArrayList<>();
  private final List<Column> columns = new ArrayList<>();
  private final List<Function<T, Object>> cells = new ArrayList<>();

  private TableOf(String name, String title) {
    this.name = name;
    this.title = title;
  }

  /** A table without columns. */
  public static <T> TableOf<T> table(String name, String title) {
    return new TableOf<>(name, title);
  }

  /** A sentence that says how the figures came about. */
  public TableOf<T> note(String sentence) {
    notes.add(sentence);
    return this;
  }

  /** A column, and what it shows of one thing; null for an empty cell. */
  public TableOf<T> column(Column column, Function<T, Object> cell) {
    columns.add(column);
    cells.add(cell);
    return this;
  }

  /** The table of these, a row each. */
  public Table of(List<T> things) {
    List<List<Object>> rows = things.stream().map(this::row).toList();
    return new Table(name, title, notes, columns, rows);
  }

  private List<Object> row(T thing) {
    return new FixedRow(
        cells.stream().map(cell -> cell.apply(thing)).map(TableOf::unlessNoNumber).toArray());
  }

  private static Object unlessNoNumber(Object cell) {
    return cell instanceof Double number && number.isNaN() ? null : cell;
  }
}
