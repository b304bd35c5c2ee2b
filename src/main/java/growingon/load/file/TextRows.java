package growingon.load.file;

import growingon.load.cell.Cell;
import growingon.load.cell.NumberStyle;
import growingon.load.source.Grid;
import growingon.load.source.Grid.GridRow;
import growingon.load.source.TableFormat;
import growingon.problem.Where;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Rows of texts by heading as a sheet, in the order in which headings first come. */
public final class TextRows {
  private TextRows() {}

  /** Numbered from the heading row on. */
  public static Grid grid(Where where, List<Map<String, String>> rows) {
    List<Integer> numbers = new ArrayList<>();
    rows.forEach(row -> numbers.add(numbers.size() + 2));
    return grid(where, rows, numbers);
  }

  /**
   * The same with other numbers.
   *
   * @param numbers of the rows, the heading row being the first
   */
  public static Grid grid(Where where, List<Map<String, String>> rows, List<Integer> numbers) {
    Set<String> headings = new LinkedHashSet<>();
    rows.forEach(row -> headings.addAll(row.keySet()));
    List<String> columns = List.copyOf(headings);
    List<GridRow> all = new ArrayList<>();
    all.add(row(1, columns));
    for (int i = 0; i < rows.size(); i++) {
      Map<String, String> row = rows.get(i);
      all.add(
          row(
              numbers.get(i),
              columns.stream().map(heading -> row.getOrDefault(heading, "")).toList()));
    }
    return new Grid(where, NumberStyle.POINT, all, List.of());
  }

  private static GridRow row(int number, List<String> texts) {
    TreeMap<Integer, Cell> cells = new TreeMap<>();
    for (int i = 0; i < texts.size(); i++) {
      Cell cell = Cell.ofText(texts.get(i));
      if (!cell.isEmpty()) {
        cells.put(i, cell);
      }
    }
    return new GridRow(number, cells);
  }

  /** A row as it is laid out in the sheet of its table, its cells parted by tabs. */
  public static String pasted(TableFormat format, Map<String, String> row) {
    return format.columns().stream()
        .map(column -> row.getOrDefault(column.name(), ""))
        .collect(Collectors.joining("\t"))
        .stripTrailing();
  }
}
