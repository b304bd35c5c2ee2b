package growingon.write.workbook;

import growingon.report.model.InputBook.Holds;
import growingon.report.model.InputBook.InputColumn;
import growingon.report.model.InputBook.InputSheet;
import growingon.write.text.SafeText;
import growingon.write.text.TextSize;
import java.time.YearMonth;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;

/** Writes one table to type into: headings with notes, example rows, lists to choose from. */
final class InputSheetWriter {
  /** Rows down to which lists are offered and gathered. */
  static final int LAST_ROW = 300;

  /** Letters that a list within a validation may have (ECMA-376, part 1, 18.3.1.43). */
  private static final int LONGEST_LIST = 255;

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");
  private static final Pattern MONTH = Pattern.compile("[0-9]{4}-[0-9]{2}");
  private static final double NARROWEST = 9;
  private static final double TO_FILL = 22;
  private static final double WIDEST = 34;
  private static final double LONG_TEXT = 70;
  private static final int NOTE_COLUMNS = 4;
  private static final int NOTE_WIDTH = 36;

  private final SXSSFSheet target;
  private final double[] widths;
  private final XSSFSheet described;
  private final InputSheet sheet;
  private final InputStyles styles;
  private final ListLinks links;

  InputSheetWriter(SXSSFSheet target, InputSheet sheet, InputStyles styles, ListLinks links) {
    this.links = links;
    this.widths = new double[sheet.columns().size()];
    this.target = target;
    this.described = target.getWorkbook().getXSSFWorkbook().getSheet(target.getSheetName());
    this.sheet = sheet;
    this.styles = styles;
  }

  void write() {
    for (int i = 0; i < widths.length; i++) {
      widths[i] = widthOf(i);
    }
    columns();
    headings();
    for (int i = 0; i < sheet.rows().size(); i++) {
      row(i);
      close(i);
    }
    closeRows();
    target.createFreezePane(1, 1);
    target.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    lists();
  }

  private void columns() {
    for (int i = 0; i < sheet.columns().size(); i++) {
      target.setColumnWidth(i, (int) Math.round(width(i) * 256));
      target.setDefaultColumnStyle(i, styles.cell(sheet.columns().get(i).holds()));
    }
    closeExpertColumns();
  }

  /** Column by column: the library's own grouping leaves columns that overlap. */
  private void closeExpertColumns() {
    int last = -1;
    for (int i = 0; i < sheet.columns().size(); i++) {
      if (sheet.columns().get(i).expert()) {
        CTCol column = described.getColumnHelper().getColumn(i, false);
        column.setOutlineLevel((short) 1);
        column.setHidden(true);
        last = i;
      }
    }
    if (last >= 0) {
      target.setColumnWidth(last + 1, (int) NARROWEST * 256);
      described.getColumnHelper().getColumn(last + 1L, false).setCollapsed(true);
      described.getCTWorksheet().getSheetFormatPr().setOutlineLevelCol((short) 1);
    }
  }

  private double width(int column) {
    return widths[column];
  }

  private double widthOf(int column) {
    InputColumn described = sheet.columns().get(column);
    double widest = TextSize.longestWord(described.heading());
    widest = Math.max(widest, TextSize.width(described.heading()) / 2 + 1);
    for (List<String> row : sheet.rows()) {
      widest = Math.max(widest, TextSize.width(row.get(column)));
    }
    double most = widest > 2 * WIDEST ? LONG_TEXT : WIDEST;
    double least = column == sheet.fill() ? TO_FILL : NARROWEST;
    return Math.max(least, Math.min(most, widest) + 3.5);
  }

  private void headings() {
    Row row = target.createRow(0);
    row.setHeightInPoints(32);
    Drawing<?> drawing = target.createDrawingPatriarch();
    for (int i = 0; i < sheet.columns().size(); i++) {
      InputColumn column = sheet.columns().get(i);
      Cell cell = row.createCell(i);
      cell.setCellValue(column.heading());
      cell.setCellStyle(styles.heading(column.needed(), column.expert()));
      note(drawing, cell, column.note());
    }
  }

  private void note(Drawing<?> drawing, Cell cell, String text) {
    ClientAnchor anchor = target.getWorkbook().getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setCol2(cell.getColumnIndex() + 1 + NOTE_COLUMNS);
    anchor.setRow1(1);
    int lines = text.lines().mapToInt(line -> TextSize.lines(line, NOTE_WIDTH)).sum();
    anchor.setRow2(3 + lines);
    Comment comment = drawing.createCellComment(anchor);
    comment.setString(target.getWorkbook().getCreationHelper().createRichTextString(text));
    comment.setAddress(cell.getRowIndex(), cell.getColumnIndex());
  }

  private void row(int index) {
    Row row = target.createRow(index + 1);
    List<String> values = sheet.rows().get(index);
    int lines = 1;
    for (int i = 0; i < values.size(); i++) {
      Holds holds = sheet.columns().get(i).holds();
      boolean fills = i == sheet.fill();
      if (!values.get(i).isEmpty() || fills) {
        Cell cell = row.createCell(i);
        set(cell, values.get(i));
        cell.setCellStyle(fills ? styles.toFill() : style(values.get(i), holds));
        link(cell, index);
        lines = Math.max(lines, TextSize.lines(values.get(i), width(i) - 2.5));
      }
    }
    float air = sheet.fill() >= 0 ? 7 : 3.5f;
    row.setHeightInPoints(lines * 13.5f + air);
  }

  private void link(Cell cell, int index) {
    if (sheet.origins().isLinked(index, cell.getColumnIndex())) {
      links.link(cell, sheet.origins().byRow().get(index));
      cell.setCellStyle(styles.linked());
    }
  }

  private CellStyle style(String value, Holds holds) {
    Holds really = MONTH.matcher(value).matches() ? Holds.MONTH : holds;
    return TextSize.width(value) > WIDEST ? styles.wrapped(really) : styles.cell(really);
  }

  private static void set(Cell cell, String value) {
    if (value.isEmpty()) {
      return;
    }
    if (MONTH.matcher(value).matches()) {
      cell.setCellValue(YearMonth.parse(value).atDay(1));
    } else if (NUMBER.matcher(value).matches()) {
      cell.setCellValue(Double.parseDouble(value));
    } else {
      cell.setCellValue(SafeText.forCell(value));
    }
  }

  /** A sheet so long that its first rows are written before its last is closed row by row. */
  private boolean isLong() {
    return sheet.rows().size() >= SteadyWorkbook.ROWS_HELD;
  }

  private void close(int index) {
    if (isLong() && index >= sheet.closedFrom()) {
      target.setRowOutlineLevel(index + 1, 1);
      target.getRow(index + 1).setZeroHeight(true);
    }
  }

  private void closeRows() {
    if (isLong()) {
      target.setRowSumsBelow(false);
    } else if (sheet.closedFrom() < sheet.rows().size()) {
      target.setRowSumsBelow(false);
      target.groupRow(sheet.closedFrom() + 1, sheet.rows().size());
      target.setRowGroupCollapsed(sheet.closedFrom() + 1, true);
    }
  }

  private void lists() {
    DataValidationHelper helper = target.getDataValidationHelper();
    for (int i = 0; i < sheet.columns().size(); i++) {
      InputColumn column = sheet.columns().get(i);
      if (!column.choice().isEmpty()) {
        offer(
            column,
            helper.createFormulaListConstraint(ChoiceLists.nameOf(column.choice())),
            rowsWithoutOwnChoices(i));
      }
    }
    sheet.choices().forEach(this::offer);
  }

  /** What a cell of one row alone chooses from. */
  private void offer(int row, List<String> words) {
    List<String> offered = words.stream().filter(word -> !word.contains(",")).toList();
    if (String.join(",", offered).length() <= LONGEST_LIST && !offered.isEmpty()) {
      offer(
          sheet.columns().get(sheet.fill()),
          target
              .getDataValidationHelper()
              .createExplicitListConstraint(offered.toArray(String[]::new)),
          new CellRangeAddressList(row + 1, row + 1, sheet.fill(), sheet.fill()));
    }
  }

  /** A column's list holds where a row has no choices of its own: one cell, one list. */
  private CellRangeAddressList rowsWithoutOwnChoices(int column) {
    CellRangeAddressList rows = new CellRangeAddressList();
    int from = 1;
    for (int row = 1; row < LAST_ROW; row++) {
      if (column == sheet.fill() && sheet.choices().containsKey(row - 1)) {
        if (row > from) {
          rows.addCellRangeAddress(from, column, row - 1, column);
        }
        from = row + 1;
      }
    }
    rows.addCellRangeAddress(from, column, LAST_ROW - 1, column);
    return rows;
  }

  private void offer(InputColumn column, DataValidationConstraint list, CellRangeAddressList rows) {
    DataValidation validation = target.getDataValidationHelper().createValidation(list, rows);
    // Other words are asked about, not refused: the name may be on its way.
    validation.setErrorStyle(DataValidation.ErrorStyle.WARNING);
    validation.createErrorBox(
        column.heading(), "This is not in the list yet. Use it all the same?");
    validation.setShowErrorBox(true);
    validation.setEmptyCellAllowed(true);
    target.addValidationData(validation);
  }
}
