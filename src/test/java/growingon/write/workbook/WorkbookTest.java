package growingon.write.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.number.Writing;
import growingon.report.model.Book;
import growingon.report.model.Chart;
import growingon.report.model.Column;
import growingon.report.model.Column.Flag;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.write.SampleReport;
import growingon.write.chart.ChartPainter;
import growingon.write.chart.PngPicture;
import growingon.write.text.ColumnFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookTest {
  private static final Pattern SUBTOTAL =
      Pattern.compile("SUBTOTAL\\(109,([A-Z]+\\d+:[A-Z]+\\d+)\\)");

  @TempDir Path temporary;

  @Test
  void total_reopened_isLiveAndCachesTheSumOfItsColumn() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      int totals = 0;
      for (Cell cell : Reopened.cells(book)) {
        if (cell.getCellType() == CellType.FORMULA) {
          totals++;
          assertThat(cell.getNumericCellValue())
              .as(Reopened.name(cell))
              .isCloseTo(sumOf(cell), within(0.001));
        }
      }
      assertThat(totals).isEqualTo(countOfTotals(SampleReport.report()));
    }
  }

  private static double sumOf(Cell total) {
    Matcher formula = SUBTOTAL.matcher(total.getCellFormula());
    assertThat(formula.matches()).as(total.getCellFormula()).isTrue();
    CellRangeAddress range = CellRangeAddress.valueOf(formula.group(1));
    assertThat(range.getLastRow()).isEqualTo(total.getRowIndex() - 1);
    double sum = 0;
    for (int row = range.getFirstRow(); row <= range.getLastRow(); row++) {
      Cell cell = total.getSheet().getRow(row).getCell(range.getFirstColumn());
      sum += cell.getCellType() == CellType.NUMERIC ? cell.getNumericCellValue() : 0;
    }
    return sum;
  }

  private static long countOfTotals(Report report) {
    return report.sheets().stream()
        .flatMap(sheet -> sheet.tables().stream())
        .flatMap(table -> table.columns().stream())
        .filter(Column::total)
        .count();
  }

  @Test
  void sheet_withoutContent_isNotWritten() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      assertThat(book.getSheet("Nothing")).isNull();
      assertThat(book.getNumberOfSheets()).isEqualTo(SampleReport.sheets().size() - 1);
    }
  }

  @Test
  void month_written_isATrueDateShownAsMonthAndYear() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      Cell month = Reopened.find(book.getSheet("Cash"), "month");
      Cell first = book.getSheet("Cash").getRow(month.getRowIndex() + 1).getCell(0);
      assertThat(first.getLocalDateTimeCellValue()).isEqualTo(LocalDateTime.of(2026, 11, 1, 0, 0));
      assertThat(first.getCellStyle().getDataFormatString()).isEqualTo("mmm yyyy");
    }
  }

  @Test
  void plants_written_areWhole() throws IOException {
    Table table =
        table(
            List.of(Column.summed("plants", "plants", "", Kind.PLANTS)),
            List.of(SampleReport.row(new Plants(3.6, 4)), SampleReport.row(new Plants(3.6, 3))));
    try (XSSFWorkbook book = write(reportOf(table))) {
      assertThat(Reopened.totals(book)).containsValue(7.0);
    }
  }

  @Test
  void numbers_shownByTheirFormat_haveNoNeedlessDecimals() throws IOException {
    Table table =
        table(
            List.of(
                Column.of("money", "money", "EUR", Kind.MONEY),
                Column.of("each", "each", "EUR", Kind.MONEY_EACH),
                Column.of("share", "share", "", Kind.SHARE),
                Column.of("hours", "hours", "", Kind.HOURS),
                Column.of("over", "over", "m²", Kind.SQUARE_METRES).flagged(Flag.ABOVE_ZERO)),
            List.of(
                SampleReport.row(1234.56, 2.0, 0.125, 3.0, 0.0),
                SampleReport.row(-12.4, 2.5, 0.5, 3.25, 4.0)));
    try (XSSFWorkbook book = write(reportOf(table))) {
      XSSFSheet sheet = book.getSheet("Sheet");
      int heading = Reopened.find(sheet, "money").getRowIndex();
      assertThat(shown(sheet, heading + 1)).startsWith("1,235", "2.00", "13%", "3");
      assertThat(sheet.getRow(heading + 1).getCell(4).getCellStyle().getDataFormatString())
          .as("nothing over is a dash; the formatter of the test does not draw it")
          .isEqualTo("\"–\"_0;\"–\"_0");
      assertThat(shown(sheet, heading + 2)).containsExactly("-12", "2.50", "50%", "3.3", "▲ 4");
    }
  }

  @Test
  void numberThatRoundsToNil_shown_isTheSignForNil() {
    Column money = Column.of("money", "money", "EUR", Kind.MONEY);
    ColumnFormat format =
        ColumnFormat.of(
            new Table("t", "", List.of(), List.of(money), List.of(SampleReport.row(-0.2))), 0);
    assertThat(format.of(-0.2)).isEqualTo("\"–\"_0;\"–\"_0");
    assertThat(format.of(-0.5)).isEqualTo("#,##0_0");
  }

  private static List<String> shown(XSSFSheet sheet, int row) {
    DataFormatter formatter = new DataFormatter();
    List<String> shown = new ArrayList<>();
    sheet.getRow(row).forEach(cell -> shown.add(formatter.formatCellValue(cell).strip()));
    return shown;
  }

  @Test
  void table_largestOfItsSheet_hasFilterOverItsRowsOnly() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      XSSFSheet sheet = book.getSheet("Cash");
      int heading = Reopened.find(sheet, "month").getRowIndex();
      String filter = sheet.getCTWorksheet().getAutoFilter().getRef();
      CellRangeAddress range = new CellRangeAddress(heading, heading + SampleReport.MONTHS, 0, 5);
      assertThat(filter).isEqualTo(range.formatAsString());
    }
  }

  @Test
  void heading_ofALongTable_staysInSightAndIsRepeatedInPrint() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      XSSFSheet sheet = book.getSheet("Bench space");
      int heading = Reopened.find(sheet, "month").getRowIndex();
      assertThat(sheet.getPaneInformation().getHorizontalSplitPosition())
          .isEqualTo((short) (heading + 1));
      assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(heading);
    }
  }

  @Test
  void everySheet_printSetUp_isA4OnePageWideWithFooter() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      for (org.apache.poi.ss.usermodel.Sheet sheet : book) {
        PrintSetup setup = sheet.getPrintSetup();
        assertThat(setup.getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
        assertThat(sheet.getFitToPage()).isTrue();
        assertThat(setup.getFitWidth()).isEqualTo((short) 1);
        assertThat(setup.getFitHeight()).isEqualTo((short) 0);
        assertThat(sheet.getFooter().getLeft()).isEqualTo("with the ridge lot");
        assertThat(sheet.getFooter().getCenter()).isEqualTo("&A");
        assertThat(sheet.getFooter().getRight()).isEqualTo("&P of &N");
      }
      assertThat(book.getSheet("Summary").getPrintSetup().getLandscape()).isFalse();
      assertThat(book.getSheet("Lots").getPrintSetup().getLandscape()).isTrue();
    }
  }

  @Test
  void chart_namedBySheet_isAPictureWithWords() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      List<XSSFPicture> pictures = pictures(book.getSheet("Summary"));
      assertThat(pictures).hasSize(2);
      assertThat(pictures.get(0).getCTPicture().getNvPicPr().getCNvPr().getDescr())
          .isEqualTo(
              "Chart: Expected sales by season, in EUR a season, 2026/27 from Nov to 2031/32."
                  + " Without VAT, at the prices of the demand table."
                  + " Shown: patio small, patio large, specimen. The figures are in figures.json.");
      assertThat(book.getAllPictures()).as("a chart shown twice is stored once").hasSize(4);
    }
  }

  /** Whatever the number of rows, a page that begins with totals begins with two rows before. */
  @Test
  void totals_thatWouldBeginAPage_takeTwoRowsAlong() throws IOException {
    List<Integer> broken = new ArrayList<>();
    for (int rows = 20; rows < 140; rows++) {
      Column column = Column.summed("plants", "plants", "", Kind.COUNT);
      List<List<Object>> cells = Collections.nCopies(rows, List.of((Object) 1));
      Table table = new Table("t", "t", List.of(), List.of(column), cells);
      try (SteadyWorkbook book = new SteadyWorkbook("plan")) {
        Sheet sheet = new Sheet("Long", List.of(), List.of(table), List.of(), false);
        SXSSFSheet target = book.createSheet("Long");
        new SheetWriter(
                target,
                new SheetLayout(sheet),
                new CellStyles(book.getXSSFWorkbook(), Writing.USUAL),
                new ListLinks(temporary))
            .write(SampleReport.report(), Map.of());
        int total = target.getLastRowNum() - 1;
        for (int row : target.getRowBreaks()) {
          assertThat(total - row).as("rows after the break, of %d", rows).isEqualTo(3);
          broken.add(rows);
        }
      }
    }
    assertThat(broken).as("two of each page that is full").hasSizeBetween(4, 12);
  }

  /** A page break goes through all columns, those of the pictures beside the tables too. */
  @Test
  void chartBesideTables_isCutByNoPageBreak() throws IOException {
    Report sample = SampleReport.report();
    String chart = sample.charts().get(0).name();
    List<Table> tables = new ArrayList<>();
    for (int rows : new int[] {60, 20, 20, 20}) {
      Column column = Column.of("plants", "plants", "", Kind.COUNT);
      List<List<Object>> cells = Collections.nCopies(rows, List.of((Object) 1));
      tables.add(new Table("t" + tables.size(), "t", List.of(), List.of(column), cells));
    }
    try (SteadyWorkbook book = new SteadyWorkbook("plan")) {
      Sheet sheet = new Sheet("Long", List.of(), tables, List.of(chart), false);
      SXSSFSheet target = book.createSheet("Long");
      List<SheetWriter.Placement> placed =
          new SheetWriter(
                  target,
                  new SheetLayout(sheet),
                  new CellStyles(book.getXSSFWorkbook(), Writing.USUAL),
                  new ListLinks(temporary))
              .write(sample, Map.of(chart, sample.charts().get(0)));

      assertThat(target.getRowBreaks()).isNotEmpty();
      ClientAnchor anchor = placed.get(0).anchor();
      for (int row : target.getRowBreaks()) {
        assertThat(row < anchor.getRow1() || row >= anchor.getRow2()).as("break %d", row).isTrue();
      }
    }
  }

  @Test
  void charts_ofALandscapeSheet_shareAPageTwoByTwo() throws IOException {
    Report sample = SampleReport.report();
    Map<String, Chart> low =
        sample.charts().stream()
            .sorted(Comparator.comparingDouble(ChartPainter::height))
            .limit(3)
            .collect(Collectors.toMap(Chart::name, chart -> chart));
    try (SteadyWorkbook book = new SteadyWorkbook("plan")) {
      Sheet sheet = new Sheet("Two", List.of(), List.of(), List.copyOf(low.keySet()), false);
      SXSSFSheet target = book.createSheet("Two");
      List<SheetWriter.Placement> placed =
          new SheetWriter(
                  target,
                  new SheetLayout(sheet),
                  new CellStyles(book.getXSSFWorkbook(), Writing.USUAL),
                  new ListLinks(temporary))
              .write(sample, low);

      assertThat(placed).hasSize(3);
      assertThat(target.getRowBreaks())
          .as("the first stands below the title, the others share the next page")
          .hasSize(1);
      assertThat(target.getRowBreaks()[0]).isLessThan(placed.get(1).anchor().getRow1());
    }
  }

  private static List<XSSFPicture> pictures(XSSFSheet sheet) {
    List<XSSFPicture> pictures = new ArrayList<>();
    XSSFDrawing drawing = sheet.getDrawingPatriarch();
    drawing.getShapes().forEach(shape -> pictures.add((XSSFPicture) shape));
    return pictures;
  }

  @Test
  void cellToFill_written_isAnEmptyBox() throws IOException {
    try (XSSFWorkbook book = write(SampleReport.report())) {
      XSSFSheet sheet = book.getSheet("Count sheet");
      Cell heading = Reopened.find(sheet, "trunk mm");
      Cell box = sheet.getRow(heading.getRowIndex() + 1).getCell(heading.getColumnIndex());
      assertThat(box.getCellType()).isEqualTo(CellType.BLANK);
      assertThat(box.getCellStyle().getBorderLeft()).isEqualTo(BorderStyle.THIN);
      assertThat(box.getCellStyle().getBorderTop()).isEqualTo(BorderStyle.THIN);
    }
  }

  @Test
  void hostileText_written_comesBackAsTextAndNeverAsFormula() throws IOException {
    List<String> hostile =
        List.of(
            "=1+1",
            "+cmd|' /C calc'!A0",
            "-2",
            "@SUM(A1)",
            "\t=1",
            "\r=1",
            "_x0041_",
            "<b>&amp;\"'",
            "  kept blanks  ",
            "ünï漢字🌳");
    List<List<Object>> rows = new ArrayList<>();
    hostile.forEach(text -> rows.add(SampleReport.row(text)));
    Table table =
        new Table(
            "hostile",
            "=title",
            List.of("@note"),
            List.of(Column.of("t", "=t", "", Kind.TEXT)),
            rows);
    try (XSSFWorkbook book = write(reportOf(table))) {
      XSSFSheet sheet = book.getSheet("Sheet");
      int heading = Reopened.find(sheet, "=t").getRowIndex();
      for (int i = 0; i < hostile.size(); i++) {
        Cell cell = sheet.getRow(heading + 1 + i).getCell(0);
        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getStringCellValue()).isEqualTo(hostile.get(i));
        assertThat(cell.getCellStyle().getQuotePrefixed()).isEqualTo(i < 6);
      }
      assertThat(Reopened.find(sheet, "@note").getCellStyle().getQuotePrefixed()).isTrue();
      assertThat(Reopened.totals(book)).isEmpty();
    }
  }

  @Test
  void controlCharacters_written_areReplaced() throws IOException {
    Table table =
        table(
            List.of(Column.of("t", "t", "", Kind.TEXT)),
            List.of(SampleReport.row("a\u0000b\u0007c\uFFFFd\uD800e")));
    try (XSSFWorkbook book = write(reportOf(table))) {
      Cell heading = Reopened.find(book.getSheet("Sheet"), "t");
      assertThat(book.getSheet("Sheet").getRow(heading.getRowIndex() + 1).getCell(0))
          .hasToString("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe");
    }
  }

  @Test
  void text_longerThanACellHolds_isCutWithAMarkAndANote() throws IOException {
    Table table =
        table(
            List.of(Column.of("t", "t", "", Kind.LONG_TEXT)),
            List.of(SampleReport.row("x".repeat(40_000))));
    try (XSSFWorkbook book = write(reportOf(table))) {
      XSSFSheet sheet = book.getSheet("Sheet");
      int heading = Reopened.find(sheet, "t").getRowIndex();
      String cut = sheet.getRow(heading + 1).getCell(0).getStringCellValue();
      assertThat(cut).hasSize(32_767).endsWith("x … (cut)");
      assertThat(
              Reopened.find(
                  sheet,
                  "A text longer than a cell holds was cut; it stands whole in tables/table.csv."))
          .isNotNull();
    }
  }

  @Test
  void sheetNames_illegalOrTheSame_areMadeGood() throws IOException {
    Table table =
        table(List.of(Column.of("t", "t", "", Kind.TEXT)), List.of(SampleReport.row("x")));
    List<Sheet> sheets =
        List.of(
            Sheet.of("Stock: [a]/b?", table),
            Sheet.of("A name that is longer than thirty-one characters", table),
            Sheet.of("A name that is longer than thirty-one", table),
            Sheet.of("LOTS", table),
            Sheet.of("Lots", table));
    try (XSSFWorkbook book = write(reportOf(sheets, List.of()))) {
      List<String> names = new ArrayList<>();
      book.forEach(sheet -> names.add(sheet.getSheetName()));
      assertThat(names)
          .containsExactly(
              "Stock   a  b ",
              "A name that is longer than thir",
              "A name that is longer than  (2)",
              "LOTS",
              "Lots (2)");
    }
  }

  @Test
  void valueThatIsNoNumber_written_leavesTheCellEmpty() throws IOException {
    Table table =
        table(
            List.of(Column.summed("n", "n", "", Kind.NUMBER)),
            List.of(
                SampleReport.row(Double.NaN),
                SampleReport.row(Double.POSITIVE_INFINITY),
                SampleReport.row(2.5),
                SampleReport.row((Object) null)));
    try (XSSFWorkbook book = write(reportOf(table))) {
      assertThat(Reopened.totals(book)).containsOnlyKeys("Sheet!A10").containsValue(2.5);
    }
  }

  @Test
  void report_withoutAnySheet_isStillAWorkbook() throws IOException {
    try (XSSFWorkbook book = write(reportOf(List.of(), List.of()))) {
      assertThat(book.getNumberOfSheets()).isEqualTo(1);
    }
  }

  private XSSFWorkbook write(Report report) throws IOException {
    Path file = temporary.resolve("plan.xlsx");
    WorkbookWriter.DrawnCharts drawn =
        name -> PngPicture.encode(ChartPainter.paint(find(report, name)));
    Files.write(file, WorkbookWriter.write(report, Book.PLAN, drawn, temporary));
    return Reopened.open(file);
  }

  private static Chart find(Report report, String name) {
    return report.charts().stream().filter(chart -> chart.name().equals(name)).findFirst().get();
  }

  private static Table table(List<Column> columns, List<List<Object>> rows) {
    return new Table("table", "Table", List.of(), columns, rows);
  }

  private static Report reportOf(Table table) {
    return reportOf(List.of(Sheet.of("Sheet", table)), List.of());
  }

  private static Report reportOf(List<Sheet> sheets, List<Chart> charts) {
    return Report.of("plan", "nursery", new Phrases("EUR", Writing.USUAL), "2026-11")
        .sheets(sheets)
        .charts(charts)
        .build();
  }
}
