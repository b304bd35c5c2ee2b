package growingon.write.workbook;

import growingon.report.model.Chart;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.write.chart.ChartPainter;
import growingon.write.chart.ChartWords;
import growingon.write.text.SafeText;
import growingon.write.text.TextSize;
import growingon.write.workbook.CellStyles.Content;
import growingon.write.workbook.CellStyles.Look;
import growingon.write.workbook.CellStyles.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Drawing;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.streaming.SXSSFPicture;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes one sheet from top to bottom: title, sentences, tables, charts. */
final class SheetWriter {
  private static final double ROW = 14;
  private static final double AROUND_CHART = 2 * ROW;

  /** A chart that would be smaller than this part of its usual size stands on the next page. */
  private static final double LEAST_OF_ITS_SIZE = 0.6;

  /** Two charts share a page if that leaves them this part of their usual size. */
  private static final double LEAST_OF_TWO = 0.5;

  /** A page with this part of it left is hardly filled. */
  private static final double HARDLY_FILLED = 0.6;

  private static final double CHART_CENTIMETRES = 24;

  /** Two of this size and a few sentences fit on an upright page. */
  private static final double UPRIGHT_CHART_CENTIMETRES = 17;

  private static final double PIXELS_PER_CENTIMETRE = 96 / 2.54;
  private static final double TALLEST_FROZEN = 260;

  /** Where a chart goes; it is put there when all sheets are written and the chart is drawn. */
  record Placement(SXSSFSheet target, ClientAnchor anchor, Chart chart) {
    void place(Drawing<?> drawing, int picture) {
      SXSSFPicture placed = (SXSSFPicture) drawing.createPicture(anchor, picture);
      placed
          .getCTPicture()
          .getNvPicPr()
          .getCNvPr()
          .setDescr(SafeText.forXml(ChartWords.alternative(chart)));
    }
  }

  private final SXSSFSheet target;
  private final Sheet sheet;
  private final CellStyles styles;
  private final ListLinks links;
  private final SheetLayout layout;
  private final Page page;
  private final List<Placement> placements = new ArrayList<>();
  private final List<CellRangeAddress> areas = new ArrayList<>();
  private final List<Double> heights = new ArrayList<>();

  /** Rows after which a new page begins, in all columns; a picture over one would be cut. */
  private final List<Integer> breaks = new ArrayList<>();

  private int next;
  private int besideRow;
  private double highest;

  SheetWriter(SXSSFSheet target, SheetLayout layout, CellStyles styles, ListLinks links) {
    this.target = target;
    this.sheet = layout.sheet();
    this.styles = styles;
    this.links = links;
    this.layout = layout;
    this.page = layout.page();
    this.highest = page.height() - AROUND_CHART;
  }

  /**
   * Writes the sheet.
   *
   * @param charts every chart by name
   * @return where its charts go
   */
  List<Placement> write(Report report, Map<String, Chart> charts) {
    setUp(report.plan());
    head(report);
    List<Chart> shown = sheet.charts().stream().map(charts::get).toList();
    if (layout.chartsAbove()) {
      for (Chart chart : shown) {
        chartInRows(chart, shown.size() == 1);
      }
      tables();
    } else {
      if (!shown.isEmpty()) {
        link();
      }
      tables();
      shown.forEach(this::chartBeside);
      printOneByOne();
    }
    return placements;
  }

  private void setUp(String plan) {
    Page.setUp(target, sheet.portrait(), sheet.paper(), plan);
    target.setDisplayGridlines(false);
    target.setDefaultRowHeightInPoints((float) ROW);
    for (int i = 0; i < layout.columns(); i++) {
      target.setColumnWidth(i, Math.min(255 * 256, (int) Math.round(layout.width(i) * 256 + 182)));
    }
  }

  private void head(Report report) {
    text(Part.TITLE, sheet.name(), 24);
    List<String> about = new ArrayList<>(List.of(report.nursery(), "plan: " + report.plan()));
    if (!report.currency().isEmpty()) {
      about.add("amounts in " + report.currency());
    }
    report.issue().filter(day -> isFirst()).ifPresent(about::add);
    text(Part.SUBTITLE, String.join(" · ", about), ROW);
    space(6);
    sheet.sentences().forEach(each -> wrapped(Part.SENTENCE, each, 14.5, 4));
    if (!sheet.sentences().isEmpty()) {
      space(6);
    }
  }

  /** Whether the workbook opens with this sheet; it alone says when the report was made. */
  private boolean isFirst() {
    return target.getWorkbook().getSheetIndex(target) == 0;
  }

  /** Leads to the charts beside a table, which may lie outside the screen. */
  private void link() {
    Cell cell = text(Part.LINK, "Chart to the right of the table", ROW);
    Hyperlink link =
        target.getWorkbook().getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
    String name = target.getSheetName().replace("'", "''");
    link.setAddress("'" + name + "'!" + new CellReference(next, beside()).formatAsString());
    cell.setHyperlink(link);
    space(4);
  }

  /** First column right of everything else, one left free. */
  private int beside() {
    return Math.max(layout.columns(), layout.lastColumnOfText() + 1) + 1;
  }

  private void tables() {
    for (Table table : layout.tables()) {
      if (next > 0 && !page.isFresh() && !page.hasRoom(keptTogether(table)) && !goesOn(table)) {
        breakPage();
      }
      table(table);
      space(12);
    }
  }

  /**
   * Whether a table begins on a page that is hardly filled though it does not end there: better
   * than a page with a few sentences and nothing else. Its headings must be those that are
   * repeated.
   */
  private boolean goesOn(Table table) {
    return page.left() >= HARDLY_FILLED * page.height() && table == layout.repeated();
  }

  /** Points of a table that stands on one page; of a longer one its head and first rows do. */
  private double keptTogether(Table table) {
    return layout.isLong(table)
        ? 24 + ROW * (table.notes().size() + layout.headingLines(table) + 5)
        : layout.points(table);
  }

  private void table(Table table) {
    text(Part.TABLE_TITLE, table.title(), 20);
    layout.units(table).line().ifPresent(line -> notes(List.of(line)));
    boolean notesAbove = SheetLayout.notesAbove(table);
    if (notesAbove) {
      notes(table.notes());
    }
    TableWriter writer =
        new TableWriter(table, layout, styles, this::newRow, this::together, links);
    int heading = next;
    double above = heights.stream().mapToDouble(Double::doubleValue).sum();
    writer.heading();
    if (table == layout.headed() && above <= TALLEST_FROZEN) {
      int columns = table.columns().size() > 12 && layout.width(0) < 30 ? 1 : 0;
      target.createFreezePane(columns, heading + 1);
    }
    if (table == layout.repeated()) {
      target.setRepeatingRows(new CellRangeAddress(heading, heading, -1, -1));
      page.repeat(layout.headingPoints(table));
    }
    int first = next;
    besideRow = besideRow == 0 ? first : besideRow;
    writer.body();
    if (table == layout.filtered()) {
      target.setAutoFilter(new CellRangeAddress(heading, next - 1, 0, table.columns().size() - 1));
    }
    writer.totals(first, next - 1);
    if (!notesAbove) {
      space(6);
      notes(table.notes());
    }
    if (writer.hasCut()) {
      notes(
          List.of(
              "A text longer than a cell holds was cut; it stands whole in tables/"
                  + table.name()
                  + ".csv."));
    }
  }

  /** Rows that are not to be torn apart go to the next page where this one may be too small. */
  private void together(double points) {
    if (!page.isFresh() && !page.hasRoom(points)) {
      breakPage();
    }
  }

  private void notes(List<String> notes) {
    notes.forEach(each -> wrapped(Part.NOTE, each, 12.5, 1));
  }

  private Cell text(Part part, String text, double points) {
    Cell cell = newRow(points).createCell(0);
    cell.setCellValue(SafeText.forCell(text));
    cell.setCellStyle(styles.of(Look.text(part, Content.TEXT, text)));
    return cell;
  }

  /** A sentence over the width of the page, in as many lines as it needs. */
  private void wrapped(Part part, String text, double line, double air) {
    int last = layout.lastColumnOfText();
    double size = part == Part.SENTENCE ? 1.13 : 0.93;
    int lines = TextSize.lines(text, layout.widthTo(last) / size - 1);
    int row = next;
    Cell cell = newRow(Math.min(409, lines * line + air)).createCell(0);
    cell.setCellValue(SafeText.forCell(text));
    cell.setCellStyle(styles.of(Look.text(part, Content.WRAPPED, text)));
    if (last > 0) {
      target.addMergedRegionUnsafe(new CellRangeAddress(row, row, 0, last));
    }
  }

  private void space(double points) {
    newRow(points);
  }

  private Row newRow(double points) {
    Row row = target.createRow(next++);
    row.setHeightInPoints((float) points);
    heights.add(points);
    page.add(points);
    return row;
  }

  private void breakPage() {
    target.setRowBreak(next - 1);
    breaks.add(next - 1);
    page.startNew();
  }

  /** A chart in rows of its own, never split over two pages; a single one shares its page. */
  private void chartInRows(Chart chart, boolean single) {
    highest = page.height() - AROUND_CHART;
    highest =
        single ? roomForChart(LEAST_OF_ITS_SIZE * points(chart)) : roomForOneOfTwo(points(chart));
    double points = points(chart);
    if (!page.isFresh() && !page.hasRoom(points + AROUND_CHART - 1)) {
      breakPage();
    }
    int first = next;
    for (double left = points; left >= 0; left -= ROW) {
      space(ROW);
    }
    placements.add(new Placement(target, anchor(0, first, chart), chart));
    space(10);
  }

  /** Points of each of two charts on a page, or of one if two would be too small. */
  private double roomForOneOfTwo(double usual) {
    double half = (page.height() - 2 * (AROUND_CHART + ROW)) / 2;
    return half >= LEAST_OF_TWO * usual ? half : page.height() - AROUND_CHART;
  }

  /**
   * Points that a chart may take: what the first table leaves of the page if that is enough, else
   * all that is left, else a page.
   */
  private double roomForChart(double least) {
    double left = page.left() - AROUND_CHART;
    double table = layout.tables().stream().findFirst().map(layout::points).orElse(0.0) + ROW;
    if (left - table >= least) {
      return left - table;
    }
    return left >= least ? left : page.height() - AROUND_CHART;
  }

  /**
   * A chart right of the tables, below the heading that stays in sight: a long table keeps its
   * heading on the screen, and on paper the chart gets a page of its own.
   */
  private void chartBeside(Chart chart) {
    int first = besideRow;
    ClientAnchor anchor = anchor(beside(), first, chart);
    for (int row : breaks) {
      if (first <= row && row < anchor.getRow2()) {
        first = row + 1;
        anchor = anchor(beside(), first, chart);
      }
    }
    placements.add(new Placement(target, anchor, chart));
    besideRow = anchor.getRow2() + 2;
    areas.add(new CellRangeAddress(first, anchor.getRow2(), anchor.getCol1(), anchor.getCol2()));
  }

  private void printOneByOne() {
    if (!areas.isEmpty()) {
      areas.add(0, new CellRangeAddress(0, next - 1, 0, beside() - 2));
      int index = target.getWorkbook().getSheetIndex(target);
      String all =
          areas.stream()
              .map(each -> each.formatAsString(null, true))
              .collect(Collectors.joining(","));
      target.getWorkbook().setPrintArea(index, all);
    }
  }

  /**
   * Width of a chart in screen pixels: on paper it has the size it is drawn for, or less where it
   * is so high that it would not fit a page.
   */
  private double width(Chart chart) {
    double size = sheet.portrait() ? UPRIGHT_CHART_CENTIMETRES : CHART_CENTIMETRES;
    double wished = size * PIXELS_PER_CENTIMETRE / page.scale();
    return Math.min(wished, highest * 96 / 72 * ChartPainter.WIDTH / ChartPainter.height(chart));
  }

  private double points(Chart chart) {
    return width(chart) * ChartPainter.height(chart) / ChartPainter.WIDTH * 72 / 96;
  }

  private ClientAnchor anchor(int column, int row, Chart chart) {
    ClientAnchor anchor = target.getWorkbook().getCreationHelper().createClientAnchor();
    anchor.setCol1(column);
    anchor.setRow1(row);
    double pixels = width(chart);
    while (pixels > Page.pixels(layout.width(column))) {
      pixels -= Page.pixels(layout.width(column));
      column++;
    }
    double points = points(chart);
    while (points > height(row)) {
      points -= height(row);
      row++;
    }
    anchor.setCol2(column);
    anchor.setDx2((int) (pixels * Units.EMU_PER_PIXEL));
    anchor.setRow2(row);
    anchor.setDy2((int) (points * Units.EMU_PER_POINT));
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    return anchor;
  }

  private double height(int row) {
    return row < heights.size() ? heights.get(row) : ROW;
  }
}
