package growingon.write.page;

import growingon.nursery.number.Writing;
import growingon.report.model.Column;
import growingon.report.model.Table;
import growingon.report.model.Units;
import growingon.write.page.ReportPage.Cell;
import growingon.write.page.ReportPage.Grid;
import growingon.write.page.ReportPage.Head;
import growingon.write.text.CellText;
import growingon.write.text.ColumnFormat;
import growingon.write.text.Numbers;
import growingon.write.text.SafeText;
import growingon.write.text.TextSize;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Tables as report.html shows them: every value as text, formatted as in the workbook. */
final class PageTables {
  /** A longer table is for a spreadsheet: the page says where it stands. */
  static final int MOST_ROWS = 300;

  /** Characters across a landscape page at 8 and at 7 points. */
  private static final double WIDE = 150;

  private static final double WIDEST = 190;
  private static final double MOST_OF_A_TEXT = 24;

  /** A longer one is broken, so that it makes no table wider than the paper. */
  private static final double LONGEST_WORD = 30;

  private PageTables() {}

  static Grid grid(Table table, Writing writing) {
    String id = "t-" + table.name();
    if (table.rows().size() > MOST_ROWS) {
      String where =
          "%s rows, too many for a page: they stand in the workbook and in tables/%s.csv."
              .formatted(writing.whole(table.rows().size()), table.name());
      List<String> notes = new ArrayList<>(table.notes());
      notes.add(where);
      return new Grid(id, table.title(), "", notes, List.of(), List.of(), List.of());
    }
    Units units = Units.of(table);
    List<ColumnFormat> formats = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      formats.add(ColumnFormat.of(table, i));
    }
    List<List<Cell>> rows =
        table.rows().stream().map(row -> cells(table, row, formats, writing)).toList();
    return new Grid(
        id,
        table.title(),
        widthClass(table, units, rows),
        Stream.concat(units.line().stream(), table.notes().stream()).toList(),
        table.columns().stream().map(each -> new Head(units.heading(each), css(each))).toList(),
        rows,
        totals(table, formats, writing));
  }

  private static List<Cell> cells(
      Table table, List<Object> row, List<ColumnFormat> formats, Writing writing) {
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      cells.add(cell(table.columns().get(i), row.get(i), formats.get(i), i == 0, writing));
    }
    return cells;
  }

  private static Cell cell(
      Column column, Object value, ColumnFormat format, boolean first, Writing writing) {
    String css = css(column);
    if (Numbers.isShown(value)) {
      double shown = Numbers.shown(value);
      return new Cell(format.text(shown, writing), css, null, column.flags(shown), false);
    }
    if (value instanceof YearMonth month) {
      return new Cell(writing.month(month), css, month.toString(), false, first);
    }
    String text = SafeText.forXml(CellText.of(value, column.kind(), writing));
    boolean breaks = TextSize.longestWord(text) > LONGEST_WORD;
    return new Cell(text, breaks ? css + " x" : css, null, false, first && !text.isEmpty());
  }

  private static List<Cell> totals(Table table, List<ColumnFormat> formats, Writing writing) {
    if (!table.hasTotals()) {
      return List.of();
    }
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      cells.add(total(table, formats.get(i), i, writing));
    }
    return cells;
  }

  private static Cell total(Table table, ColumnFormat format, int index, Writing writing) {
    Column column = table.columns().get(index);
    OptionalDouble sum = Numbers.total(table, index);
    if (sum.isEmpty()) {
      return new Cell(index == 0 ? "Total" : "", css(column), null, false, index == 0);
    }
    return new Cell(format.text(sum.getAsDouble(), writing), css(column), null, false, false);
  }

  /** n number, m month, t text, l long text, f to fill. */
  private static String css(Column column) {
    return switch (column.kind()) {
      case TEXT, VALUE -> "t";
      case LONG_TEXT -> "l";
      case MONTH -> "m";
      case TO_FILL -> "f";
      default -> "n";
    };
  }

  private static String widthClass(Table table, Units units, List<List<Cell>> rows) {
    double width = 0;
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      boolean wraps = column.kind().isText();
      double widest = TextSize.longestWord(units.heading(column));
      for (List<Cell> row : rows) {
        double content = TextSize.width(row.get(i).text());
        widest = Math.max(widest, wraps ? Math.min(content, MOST_OF_A_TEXT) : content);
      }
      width += widest + 2;
    }
    return width > WIDEST ? "w3" : width > WIDE ? "w2" : "w1";
  }
}
