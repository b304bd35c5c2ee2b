package growingon.report.build;

import growingon.report.model.Column;
import growingon.report.model.Column.Flag;
import growingon.report.model.FixedRow;
import growingon.report.model.Kind;
import growingon.report.model.LazyRows;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A table of one row for each of some things, in which every column stands beside what it shows of
 * one of them. Plants are a {@link growingon.report.text.Plants}, rounded before they come here;
 * null and NaN are empty cells. A column without a key of its own has its heading for one.
 *
 * @param <T> what a row is made from
 */
public final class TableOf<T> {
  private final String name;
  private final String title;
  private final List<String> notes = new ArrayList<>();
  private final List<ColumnOf<T>> columns = new ArrayList<>();
  private boolean leavesOutParts;

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

  /** Sentences that say how the figures came about. */
  public TableOf<T> notes(List<String> sentences) {
    notes.addAll(sentences);
    return this;
  }

  /** A column, and what it shows of one thing. */
  public TableOf<T> column(Column column, Function<? super T, ?> cell) {
    columns.add(new ColumnOf<>(column, cell));
    return this;
  }

  /** Columns that several tables have. */
  public TableOf<T> columns(List<ColumnOf<T>> more) {
    columns.addAll(more);
    return this;
  }

  public TableOf<T> text(String heading, Function<? super T, ?> cell) {
    return text(key(heading), heading, cell);
  }

  public TableOf<T> text(String key, String heading, Function<? super T, ?> cell) {
    return column(key, heading, "", Kind.TEXT, cell);
  }

  public TableOf<T> longText(String heading, Function<? super T, ?> cell) {
    return longText(key(heading), heading, cell);
  }

  public TableOf<T> longText(String key, String heading, Function<? super T, ?> cell) {
    return column(key, heading, "", Kind.LONG_TEXT, cell);
  }

  public TableOf<T> month(String heading, Function<? super T, ?> cell) {
    return month(key(heading), heading, cell);
  }

  public TableOf<T> month(String key, String heading, Function<? super T, ?> cell) {
    return column(key, heading, "", Kind.MONTH, cell);
  }

  /** Plants with a total under them. */
  public TableOf<T> plants(String heading, Function<? super T, ?> cell) {
    return plants(key(heading), heading, cell);
  }

  /** Plants with a total under them. */
  public TableOf<T> plants(String key, String heading, Function<? super T, ?> cell) {
    return summed(key, heading, "", Kind.PLANTS, cell);
  }

  /** A column without a total. */
  public TableOf<T> column(String heading, String unit, Kind kind, Function<? super T, ?> cell) {
    return column(key(heading), heading, unit, kind, cell);
  }

  /** A column without a total and with a key of its own, by which an edition picks it. */
  public TableOf<T> column(
      String key, String heading, String unit, Kind kind, Function<? super T, ?> cell) {
    return column(Column.of(key, heading, unit, kind), cell);
  }

  /** A column with a total. */
  public TableOf<T> summed(String heading, String unit, Kind kind, Function<? super T, ?> cell) {
    return summed(key(heading), heading, unit, kind, cell);
  }

  /** A column with a total and a key of its own, by which an edition picks it. */
  public TableOf<T> summed(
      String key, String heading, String unit, Kind kind, Function<? super T, ?> cell) {
    return column(Column.summed(key, heading, unit, kind), cell);
  }

  private static String key(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9%]+", "_");
  }

  /** The column added last is marked where it is too much or short: space, hours. */
  public TableOf<T> aboveNil() {
    return last(column -> column.flagged(Flag.ABOVE_ZERO));
  }

  /** The column added last is marked where it is below nil: cash, a result, room left. */
  public TableOf<T> belowNil() {
    return last(column -> column.flagged(Flag.BELOW_ZERO));
  }

  /** The column added last is printed at a stated width in characters. */
  public TableOf<T> wide(int characters) {
    return last(column -> column.wide(characters));
  }

  private TableOf<T> last(Function<Column, Column> changed) {
    ColumnOf<T> last = columns.remove(columns.size() - 1);
    return column(changed.apply(last.column()), last.cell());
  }

  /** Rows without a whole plant are for figures.json alone. */
  public TableOf<T> leavingOutParts() {
    leavesOutParts = true;
    return this;
  }

  /** The table of these, a row each. */
  public Table of(List<T> things) {
    List<List<Object>> rows = new ArrayList<>(things.size());
    things.forEach(thing -> rows.add(row(thing)));
    return table(leavesOutParts ? Rows.withPlants(rows) : rows, rows);
  }

  /** The table of these, of which each row is made whenever it is asked for. */
  public Table lazily(List<T> things) {
    return lazily(things, things);
  }

  /**
   * The table of these, of which each row is made whenever it is asked for.
   *
   * @param read those that are read
   * @param all those that figures.json has
   */
  public Table lazily(List<T> read, List<T> all) {
    List<List<Object>> rows = lazy(all);
    return table(read == all ? rows : lazy(read), rows);
  }

  private List<List<Object>> lazy(List<T> things) {
    return new LazyRows(things.size(), index -> row(things.get(index)));
  }

  private Table table(List<List<Object>> read, List<List<Object>> all) {
    return new Table(
        name, title, notes, columns.stream().map(ColumnOf::column).toList(), read, all);
  }

  private FixedRow row(T thing) {
    Object[] cells = new Object[columns.size()];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = columns.get(i).shown(thing);
    }
    return new FixedRow(cells);
  }
}
