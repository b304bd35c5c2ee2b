package growingon.write.workbook;

import growingon.nursery.number.Writing;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.model.Units;
import growingon.write.text.CellText;
import growingon.write.text.ColumnFormat;
import growingon.write.text.Numbers;
import growingon.write.text.TextSize;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Decisions about a sheet that are made before its first row is written. */
final class SheetLayout {
  /** Characters of a column that nobody set. */
  static final double USUAL_WIDTH = 9;

  private static final double LONG_TEXT_WIDTH = 62;
  private static final double TEXT_WIDTH = 42;

  /** Widest text where another table of the sheet has something else in the same column. */
  private static final double SHARED_TEXT_WIDTH = 26;

  /** Characters of a sheet that still prints legibly on one page, at about 7 points. */
  private static final double UPRIGHT_LIMIT = 140;

  private static final double LANDSCAPE_LIMIT = 205;
  private static final double LEAST_TEXT_WIDTH = 13;
  private static final double LEAST_LONG_TEXT_WIDTH = 24;
  private static final double LEAST_WIDTH = 6;
  private static final double ROOM_FOR_ARROW = 2.5;
  private static final double PADDING = 2;
  private static final double MONTH_WIDTH = 9;
  private static final double SHED_SCALE = 1.2;

  /** Bold, but a little smaller than the rows. */
  private static final double HEADING_SCALE = 1.02;

  private static final double LINE = 13;
  private static final double SHED_ROW = 23;
  private static final double TALLEST_ROW = 409;
  private static final double NOTE_SCALE = 0.93;
  private static final double HEADING_MARGIN = 1.6;
  private static final int CHARTS_ABOVE_UP_TO = 30;

  /** What is turned upright prints at no less than this part of its full size. */
  private static final double LEAST_UPRIGHT_SCALE = 0.75;

  private static final int NOTES_ABOVE_UP_TO = 3;

  private final Sheet sheet;
  private final List<Table> tables;
  private final Map<Table, Double> scales = new IdentityHashMap<>();
  private final Map<Table, List<ColumnFormat>> formats = new IdentityHashMap<>();
  private final Map<Table, double[]> unwrapped = new IdentityHashMap<>();
  private final Map<Table, Units> units = new IdentityHashMap<>();
  private final double[] widths;

  SheetLayout(Sheet sheet) {
    this.sheet = sheet;
    this.tables = sheet.tables().stream().filter(each -> !each.rows().isEmpty()).toList();
    this.widths = widths();
  }

  Sheet sheet() {
    return sheet;
  }

  /** Tables that have rows. */
  List<Table> tables() {
    return tables;
  }

  /** The table that gets the filter: the largest, the first of equals; null if there is none. */
  Table filtered() {
    return tables.stream()
        .max(Comparator.comparingInt((Table each) -> each.rows().size()))
        .orElse(null);
  }

  /** The first table, if its heading serves for the filtered one too: then it stays in sight. */
  Table headed() {
    if (tables.isEmpty()) {
      return null;
    }
    Table first = tables.get(0);
    return first.columns().equals(filtered().columns()) ? first : null;
  }

  /**
   * The table whose heading is repeated on each printed page after it: the last one, or the first
   * of the last ones if they have the same columns.
   */
  Table repeated() {
    int place = tables.size() - 1;
    while (place > 0 && tables.get(place - 1).columns().equals(tables.get(place).columns())) {
      place--;
    }
    return place < 0 ? null : tables.get(place);
  }

  /** Whether charts stand above the tables: unless that would push a long table out of sight. */
  boolean chartsAbove() {
    return tables.isEmpty()
        || tables.get(0).rows().size() <= CHARTS_ABOVE_UP_TO
        || !isLong(tables.get(0));
  }

  /**
   * The sheet as it prints best: one that has no charts and is narrow enough prints upright at the
   * same size, with half as many rows more on a page.
   */
  SheetLayout turned() {
    if (sheet.portrait() || !sheet.charts().isEmpty() || tables.stream().noneMatch(this::isLong)) {
      return this;
    }
    SheetLayout upright =
        new SheetLayout(
            new Sheet(sheet.name(), sheet.sentences(), tables, sheet.charts(), true, sheet.book()));
    return upright.page().scale() >= LEAST_UPRIGHT_SCALE ? upright : this;
  }

  static boolean notesAbove(Table table) {
    return table.notes().size() <= NOTES_ABOVE_UP_TO;
  }

  /** Whether a table is read and written on in the shed, and so printed larger. */
  static boolean isForTheShed(Table table) {
    return table.columns().stream().anyMatch(each -> each.kind() == Kind.TO_FILL);
  }

  /** How much larger a table is set than others. */
  double scale(Table table) {
    return scales.computeIfAbsent(table, each -> isForTheShed(each) ? SHED_SCALE : 1);
  }

  /** Whether a column begins further in, because numbers end right before it. */
  static boolean isIndented(Table table, int column) {
    return column > 0
        && !hasNumbers(table.columns().get(column).kind())
        && hasNumbers(table.columns().get(column - 1).kind());
  }

  /** Width of a column in characters. */
  double width(int column) {
    return column < widths.length ? widths[column] : USUAL_WIDTH;
  }

  int columns() {
    return widths.length;
  }

  /** Width of the columns from the first to this one, both included. */
  double widthTo(int column) {
    double width = 0;
    for (int i = 0; i <= column; i++) {
      width += width(i);
    }
    return width;
  }

  /** Last column over which a sentence runs, so that it fills about the width of the page. */
  int lastColumnOfText() {
    double page = textWidth();
    int column = 0;
    while (widthTo(column) < page
        && (column < widths.length - 1 || widthTo(column) < page * 0.75)) {
      column++;
    }
    return column;
  }

  private double textWidth() {
    return sheet.portrait() ? 92 : 120;
  }

  private double[] widths() {
    int most = tables.stream().mapToInt(each -> each.columns().size()).max().orElse(0);
    if (most == 0) {
      // A spreadsheet shrinks a sheet to a page's width only where it could break it: not one
      // column.
      double[] quarters = new double[4];
      Arrays.fill(quarters, textWidth() / quarters.length);
      return quarters;
    }
    double[] widest = new double[most];
    double[] least = new double[most];
    for (Table table : tables) {
      for (int i = 0; i < table.columns().size(); i++) {
        double width = width(table, i);
        widest[i] = Math.max(widest[i], width);
        least[i] = Math.max(least[i], shrinks(table, i) ? least(table, i) : width);
      }
    }
    return shrunk(widest, least, sheet.portrait() ? UPRIGHT_LIMIT : LANDSCAPE_LIMIT);
  }

  /** Columns of text give way, the widest first, until the sheet is narrow enough to print. */
  static double[] shrunk(double[] widest, double[] least, double limit) {
    double[] widths = widest.clone();
    double cap = Math.floor(LONG_TEXT_WIDTH * SHED_SCALE);
    while (DoubleStream.of(widths).sum() > limit && cap > LEAST_TEXT_WIDTH) {
      cap--;
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.min(widths[i], Math.max(least[i], cap));
      }
    }
    return widths;
  }

  private static boolean shrinks(Table table, int index) {
    Column column = table.columns().get(index);
    return column.width() == 0 && column.kind().isText();
  }

  private double least(Table table, int index) {
    Column column = table.columns().get(index);
    double text = column.kind() == Kind.LONG_TEXT ? LEAST_LONG_TEXT_WIDTH : LEAST_TEXT_WIDTH;
    return Math.max(text, heading(table, column)) * scale(table);
  }

  /** Whether another table of the sheet has a column of another kind at this place, or none. */
  private boolean isShared(int index) {
    return tables.stream()
            .map(each -> index < each.columns().size() ? each.columns().get(index).kind() : null)
            .distinct()
            .count()
        > 1;
  }

  private double width(Table table, int index) {
    Column column = table.columns().get(index);
    double scale = scale(table);
    if (column.width() > 0) {
      return column.width() * scale;
    }
    double content = content(table, index) + PADDING + (isIndented(table, index) ? 1.5 : 0);
    return Math.max(LEAST_WIDTH, Math.max(content, heading(table, column))) * scale;
  }

  /** The longest word fits, and no heading takes more than three lines. */
  private double heading(Table table, Column column) {
    String text = units(table).heading(column);
    double third = TextSize.width(text) / 3 + 2;
    return Math.max(TextSize.longestWord(text), third) * HEADING_SCALE + ROOM_FOR_ARROW;
  }

  private double content(Table table, int index) {
    Column column = table.columns().get(index);
    double widest = 0;
    for (List<Object> row : table.rows()) {
      widest = Math.max(widest, widthBeyond(widest, row.get(index)));
    }
    double usual = column.kind() == Kind.LONG_TEXT ? LONG_TEXT_WIDTH : TEXT_WIDTH;
    double most = isShared(index) ? SHARED_TEXT_WIDTH : usual;
    double indent = 0.7;
    double number =
        hasNumbers(column.kind())
            ? format(table, index).characters(Numbers.total(table, index).orElse(0)) + indent
            : 0;
    return Math.max(Math.min(widest, most), number);
  }

  /** How the numbers of a column are shown. */
  ColumnFormat format(Table table, int column) {
    return formats
        .computeIfAbsent(
            table,
            each ->
                IntStream.range(0, each.columns().size())
                    .mapToObj(index -> ColumnFormat.of(each, index))
                    .toList())
        .get(column);
  }

  static boolean hasNumbers(Kind kind) {
    return switch (kind) {
      case TEXT, VALUE, LONG_TEXT, MONTH, TO_FILL -> false;
      default -> true;
    };
  }

  /** Width of a cell's text; 0 for one that is surely no wider than some other. */
  private static double widthBeyond(double other, Object cell) {
    if (cell instanceof YearMonth) {
      return MONTH_WIDTH;
    }
    String text = text(cell);
    return TextSize.surelyFits(text, other) ? 0 : TextSize.width(text);
  }

  /** The text of a cell; in one style of numbers it is as wide as in another. */
  private static String text(Object cell) {
    return CellText.of(cell, Kind.TEXT, Writing.USUAL);
  }

  /** Lines that the tallest cell of a row takes. */
  int lines(Table table, List<Object> row) {
    int lines = 1;
    for (int i = 0; i < row.size(); i++) {
      String text = text(row.get(i));
      if (!text.isEmpty() && wraps(table, i, text)) {
        lines = Math.max(lines, TextSize.lines(text, room(table, i)));
      }
    }
    return lines;
  }

  /** Whether a text wraps; one in the last column of its table may run on over empty cells. */
  boolean wraps(Table table, int column, String text) {
    double room = roomsUnwrapped(table)[column];
    boolean fits = TextSize.surelyFits(text, room) || TextSize.width(text) <= room;
    return text.indexOf('\n') >= 0 || !fits;
  }

  /** Widest text of each column that does not wrap. */
  private double[] roomsUnwrapped(Table table) {
    return unwrapped.computeIfAbsent(
        table,
        each -> {
          double[] rooms = new double[each.columns().size()];
          Arrays.setAll(rooms, column -> room(each, column));
          int last = rooms.length - 1;
          double beyond = widthTo(Math.max(columns() - 1, lastColumnOfText())) - widthTo(last);
          rooms[last] += beyond / scale(each);
          return rooms;
        });
  }

  private double room(Table table, int column) {
    double indent = isIndented(table, column) ? 1.5 : 0;
    return width(column) / scale(table) - 1 - indent;
  }

  Units units(Table table) {
    return units.computeIfAbsent(table, Units::of);
  }

  /** Lines that the tallest heading of a table takes. */
  int headingLines(Table table) {
    int lines = 1;
    for (int i = 0; i < table.columns().size(); i++) {
      String text = units(table).heading(table.columns().get(i));
      double room = width(i) / scale(table) / HEADING_SCALE - HEADING_MARGIN;
      lines = Math.max(lines, TextSize.lines(text, room));
    }
    return lines;
  }

  /** Points of the row of headings. */
  double headingPoints(Table table) {
    return headingLines(table) * LINE * scale(table) + 5;
  }

  /** Points of a row of a table. */
  double points(Table table, List<Object> cells) {
    double lines = lines(table, cells) * LINE * scale(table) + 3;
    return Math.min(TALLEST_ROW, isForTheShed(table) ? Math.max(SHED_ROW, lines) : lines);
  }

  /** Points of the row of totals. */
  static double totalPoints(Table table) {
    return isForTheShed(table) ? SHED_ROW : LINE + 4;
  }

  /** Points of the rows of a table from one on, with its totals. */
  double pointsFrom(Table table, int first) {
    List<List<Object>> rows = table.rows();
    double totals = table.hasTotals() ? totalPoints(table) : 0;
    return totals
        + rows.subList(first, rows.size()).stream().mapToDouble(row -> points(table, row)).sum();
  }

  /** Points of a whole table with its title, notes and totals. */
  double points(Table table) {
    double above = 20 + headingPoints(table);
    double width = widthTo(lastColumnOfText()) / NOTE_SCALE - 1;
    above += units(table).line().isPresent() ? LINE + 1 : 0;
    for (String note : table.notes()) {
      above += TextSize.lines(note, width) * LINE + 1;
    }
    return above + pointsFrom(table, 0);
  }

  /** Whether a table takes more than a page. */
  boolean isLong(Table table) {
    double page = page().height();
    return table.rows().size() * LINE > page || points(table) > page;
  }

  /** The printed page that the sheet needs. */
  Page page() {
    int last = Math.max(columns() - 1, lastColumnOfText());
    double pixels = IntStream.rangeClosed(0, last).mapToDouble(i -> Page.pixels(width(i))).sum();
    return new Page(sheet.portrait(), sheet.paper(), pixels);
  }
}
