package growingon.write.workbook;

import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.model.Units;
import growingon.write.text.CellText;
import growingon.write.text.ColumnFormat;
import growingon.write.text.Numbers;
import growingon.write.text.SafeText;
import growingon.write.workbook.CellStyles.Content;
import growingon.write.workbook.CellStyles.Look;
import growingon.write.workbook.CellStyles.Part;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleFunction;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;

/** Writes one table: heading, rows, and live totals. */
final class TableWriter {
  private static final int ROWS_WITH_TOTAL = 2;

  private final Table table;
  private final SheetLayout layout;
  private final CellStyles styles;
  private final DoubleFunction<Row> newRow;
  private final List<ColumnFormat> formats = new ArrayList<>();
  private final boolean large;
  private final Units units;
  private final DoubleConsumer together;
  private final ListLinks links;
  private boolean cut;

  /**
   * A writer.
   *
   * @param newRow gives the next row of the sheet, of a height in points
   * @param together is told that rows of so many points should stand on one page
   * @param links to where rows come from
   */
  TableWriter(
      Table table,
      SheetLayout layout,
      CellStyles styles,
      DoubleFunction<Row> newRow,
      DoubleConsumer together,
      ListLinks links) {
    this.together = together;
    this.links = links;
    this.table = table;
    this.layout = layout;
    this.styles = styles;
    this.newRow = newRow;
    this.units = Units.of(table);
    this.large = SheetLayout.isForTheShed(table);
    for (int i = 0; i < table.columns().size(); i++) {
      formats.add(layout.format(table, i));
    }
  }

  void heading() {
    Row row = newRow.apply(layout.headingPoints(table));
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      Content content = SheetLayout.hasNumbers(column.kind()) ? Content.NUMBER : Content.TEXT;
      put(row, i, Part.HEADING, content, units.heading(column));
    }
  }

  void body() {
    List<Boolean> starts = RowGroups.starts(table);
    for (int i = 0; i < table.rows().size(); i++) {
      List<Object> cells = table.rows().get(i);
      if (i == firstWithTotal()) {
        together.accept(layout.pointsFrom(table, i));
      }
      Part part = starts.get(i) ? Part.FIRST_OF_GROUP : Part.BODY;
      Row row = newRow.apply(layout.points(table, cells));
      for (int c = 0; c < cells.size(); c++) {
        boolean linked = table.origins().isLinked(i, c);
        put(row, c, linked ? Part.LINKED : part, cells.get(c));
        if (linked) {
          links.link(row.getCell(c), table.origins().byRow().get(i));
        }
      }
    }
  }

  /** The first of the rows that stand on one page with the totals; none of a short table. */
  private int firstWithTotal() {
    int first = table.rows().size() - ROWS_WITH_TOTAL;
    return table.hasTotals() && first >= ROWS_WITH_TOTAL ? first : -1;
  }

  /**
   * Totals that follow the filter, with the value they have without one.
   *
   * @param first first row of the body, counted from 0
   * @param last last row of the body
   */
  void totals(int first, int last) {
    if (!table.hasTotals()) {
      return;
    }
    Row row = newRow.apply(SheetLayout.totalPoints(table));
    for (int i = 0; i < table.columns().size(); i++) {
      OptionalDouble sum = Numbers.total(table, i);
      if (sum.isPresent()) {
        total(row, i, first, last, sum.getAsDouble());
      } else {
        put(row, i, Part.TOTAL, Content.TEXT, i == 0 ? "Total" : "");
      }
    }
  }

  private void total(Row row, int column, int first, int last, double sum) {
    String letter = CellReference.convertNumToColString(column);
    Cell cell = row.createCell(column);
    cell.setCellFormula("SUBTOTAL(109,%s%d:%s%d)".formatted(letter, first + 1, letter, last + 1));
    cell.setCellValue(sum);
    cell.setCellStyle(
        styles.of(
            new Look(
                Part.TOTAL,
                Content.NUMBER,
                formats.get(column).of(sum),
                false,
                false,
                large,
                false)));
  }

  private void put(Row row, int column, Part part, Object value) {
    Kind kind = table.columns().get(column).kind();
    if (Numbers.isShown(value)) {
      number(row, column, part, Numbers.shown(value));
    } else if (value instanceof YearMonth month) {
      month(row, column, part, month);
    } else {
      String text = CellText.of(value, kind, styles.writing());
      put(row, column, part, content(kind, column, text), text);
    }
  }

  private Content content(Kind kind, int column, String text) {
    if (kind == Kind.TO_FILL) {
      return Content.BOX;
    }
    return layout.wraps(table, column, text) ? Content.WRAPPED : Content.TEXT;
  }

  private void number(Row row, int column, Part part, double value) {
    boolean marked = table.columns().get(column).flags(value);
    Cell cell = row.createCell(column);
    cell.setCellValue(value);
    cell.setCellStyle(
        styles.of(
            new Look(
                part, Content.NUMBER, formats.get(column).of(value), marked, false, large, false)));
  }

  private void month(Row row, int column, Part part, YearMonth month) {
    Cell cell = row.createCell(column);
    cell.setCellValue(month.atDay(1));
    cell.setCellStyle(
        styles.of(
            new Look(
                part, Content.TEXT, ColumnFormat.MONTH, false, false, large, indented(column))));
  }

  private void put(Row row, int column, Part part, Content content, String text) {
    Cell cell = row.createCell(column);
    boolean quoted = SafeText.looksLikeFormula(text);
    cell.setCellStyle(
        styles.of(new Look(part, content, "", false, quoted, large, indented(column))));
    if (!text.isEmpty()) {
      String safe = SafeText.forCell(text);
      cut |= SafeText.isCut(text, safe);
      cell.setCellValue(safe);
    }
  }

  private boolean indented(int column) {
    return SheetLayout.isIndented(table, column);
  }

  /** Whether a text was cut because a cell cannot hold it. */
  boolean hasCut() {
    return cut;
  }
}
