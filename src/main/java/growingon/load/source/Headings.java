package growingon.load.source;

import growingon.load.source.Grid.GridRow;
import growingon.load.source.Grid.Merge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where the headings of a table stand in a grid. The heading row is the one in which most cells are
 * known headings; it may be two rows, the upper one merged over several columns ("trunk" over "mm"
 * and "spread %").
 *
 * @param lastRow number of the (lower) heading row
 * @param columns columns of each known heading; several under a merged one
 * @param unknown text of every heading cell that is no known heading, by column
 * @param twice known headings that come more than once
 */
record Headings(
    int lastRow,
    Map<String, List<Integer>> columns,
    Map<Integer, String> unknown,
    List<String> twice) {
  /** Titles and remarks above a heading row do not run on for ever. */
  static final int ROWS_SEARCHED = 60;

  /** The headings of a table in a grid, if any row looks like a heading row. */
  static Optional<Headings> find(Grid grid, TableFormat format) {
    Headings best = null;
    for (int i = 0; i < Math.min(ROWS_SEARCHED, grid.rows().size()); i++) {
      best = better(best, of(grid, format, texts(grid, i)));
      if (i > 0) {
        best = better(best, of(grid, format, twoRows(grid, i)));
      }
    }
    return Optional.ofNullable(best).filter(found -> found.isHeading(format));
  }

  private static Headings better(Headings best, Headings next) {
    return best == null || next.columns.size() > best.columns.size() ? next : best;
  }

  /** One known heading may stand in a title by chance, two do not. */
  private boolean isHeading(TableFormat format) {
    return columns.size() >= Math.min(2, format.known().size());
  }

  /** How many headings were found. */
  int score() {
    return columns.size();
  }

  private record Line(int number, TreeMap<Integer, String> texts) {}

  private static Line texts(Grid grid, int index) {
    GridRow row = grid.rows().get(index);
    TreeMap<Integer, String> texts = new TreeMap<>();
    row.cells().forEach((column, cell) -> texts.put(column, cell.shown()));
    return new Line(row.number(), texts);
  }

  private static Line twoRows(Grid grid, int index) {
    Line upper = texts(grid, index - 1);
    Line lower = texts(grid, index);
    TreeSet<Integer> columns = new TreeSet<>(upper.texts.keySet());
    columns.addAll(lower.texts.keySet());
    TreeMap<Integer, String> joined = new TreeMap<>();
    for (int column : columns) {
      joined.put(
          column,
          (above(grid, upper, column) + " " + lower.texts.getOrDefault(column, "")).strip());
    }
    return new Line(lower.number, joined);
  }

  /** The text above a column, also where it is merged over that column. */
  private static String above(Grid grid, Line upper, int column) {
    for (Merge merge : grid.merges()) {
      if (merge.covers(upper.number, column)) {
        return upper.texts.getOrDefault(merge.firstColumn(), "");
      }
    }
    return upper.texts.getOrDefault(column, "");
  }

  private static Headings of(Grid grid, TableFormat format, Line line) {
    Map<String, List<Integer>> columns = new LinkedHashMap<>();
    Map<Integer, String> unknown = new TreeMap<>();
    List<String> twice = new ArrayList<>();
    line.texts.forEach(
        (column, text) -> {
          Optional<String> heading = format.heading(text);
          if (heading.isEmpty()) {
            unknown.put(column, text);
          } else if (columns.putIfAbsent(heading.get(), span(grid, line.number, column)) != null) {
            twice.add(heading.get());
          }
        });
    return new Headings(line.number, columns, unknown, twice);
  }

  /** A heading merged over several columns stands for all of them. */
  private static List<Integer> span(Grid grid, int row, int column) {
    List<Integer> span = new ArrayList<>();
    int last = column;
    for (Merge merge : grid.merges()) {
      last = merge.beginsAt(row, column) ? merge.lastColumn() : last;
    }
    for (int each = column; each <= last; each++) {
      span.add(each);
    }
    return span;
  }
}
