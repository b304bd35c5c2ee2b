package growingon.report.build;

import growingon.report.model.Column;
import growingon.report.model.FixedRow;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Puts a table together. Plants are a {@link Plants}, rounded before they come here. NaN becomes an
 * empty cell.
 */
public final class TableBuilder {
  private final String name;
  private final String title;
  private final List<String> notes = new ArrayList<>();
  private final List<Column> columns = new ArrayList<>();
  private final List<List<Object>> rows = new ArrayList<>();
  private boolean leavesOutParts;

  private TableBuilder(String name, String title) {
    this.name = name;
    this.title = title;
  }

  public static TableBuilder table(String name, String title) {
    return new TableBuilder(name, title);
  }

  /** A sentence that says how the figures came about. */
  public TableBuilder note(String sentence) {
    notes.add(sentence);
    return this;
  }

  public TableBuilder text(String heading) {
    return column(heading, "", Kind.TEXT);
  }

  public TableBuilder longText(String heading) {
    return column(heading, "", Kind.LONG_TEXT);
  }

  public TableBuilder month(String heading) {
    return column(heading, "", Kind.MONTH);
  }

  /** Plants with a total under them. */
  public TableBuilder plants(String heading) {
    return summed(heading, "", Kind.PLANTS);
  }

  /** A column without a total. */
  public TableBuilder column(String heading, String unit, Kind kind) {
    columns.add(Column.of(key(heading), heading, unit, kind));
    return this;
  }

  /** A column without a total and with a key of its own, by which an edition picks it. */
  public TableBuilder column(String key, String heading, String unit, Kind kind) {
    columns.add(Column.of(key, heading, unit, kind));
    return this;
  }

  /** A column with a total. */
  public TableBuilder summed(String heading, String unit, Kind kind) {
    columns.add(Column.summed(key(heading), heading, unit, kind));
    return this;
  }

  /** A column with a total and a key of its own, by which an edition picks it. */
  public TableBuilder summed(String key, String heading, String unit, Kind kind) {
    columns.add(Column.summed(key, heading, unit, kind));
    return this;
  }

  /** The column added last is printed at a stated width in characters. */
  public TableBuilder wide(int characters) {
    columns.add(columns.remove(columns.size() - 1).wide(characters));
    return this;
  }

  /** Some values of the column added last are marked. */
  public TableBuilder flagged(Column.Flag flag) {
    columns.add(columns.remove(columns.size() - 1).flagged(flag));
    return this;
  }

  private static String key(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9%]+", "_");
  }

  public TableBuilder row(Object... cells) {
    Object[] row = new Object[cells.length];
    for (int i = 0; i < cells.length; i++) {
      row[i] = cells[i] instanceof Double number && number.isNaN() ? null : cells[i];
    }
    rows.add(new FixedRow(row));
    return this;
  }

  /** Rows without a whole plant are for figures.json alone. */
  public TableBuilder leavingOutParts() {
    leavesOutParts = true;
    return this;
  }

  public Table build() {
    return leavesOutParts
        ? new Table(name, title, notes, columns, Rows.withPlants(rows), rows)
        : new Table(name, title, notes, columns, rows);
  }
}
