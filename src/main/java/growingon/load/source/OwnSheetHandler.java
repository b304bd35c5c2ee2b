package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.problem.Where;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.xml.sax.Attributes;

/** Collects of a sheet also what a grower says without words: what is struck through or hidden. */
final class OwnSheetHandler extends SheetHandler {
  private final SheetValues values;
  private final Set<Integer> hiddenColumns = new HashSet<>();
  private final List<TreeMap<Integer, SheetCell>> rows = new ArrayList<>();
  private TreeMap<Integer, SheetCell> cells = new TreeMap<>();
  private boolean rowHidden;
  private boolean coloured;
  private boolean commented;
  private final Set<Integer> hiddenIndexes = new HashSet<>();

  OwnSheetHandler(SheetValues values) {
    super(values);
    this.values = values;
  }

  Sheet sheet(Where where) {
    Grid grid = grid(where);
    List<SheetRow> all = new ArrayList<>();
    for (int i = 0; i < grid.rows().size(); i++) {
      all.add(new SheetRow(grid.rows().get(i).number(), hiddenIndexes.contains(i), rows.get(i)));
    }
    List<Sheet.Merged> merges =
        grid.merges().stream()
            .map(
                each ->
                    new Sheet.Merged(
                        each.firstRow(), each.lastRow(), each.firstColumn(), each.lastColumn()))
            .toList();
    return new Sheet(
        where.file(), where.sheet(), false, all, merges, hiddenColumns, coloured || commented);
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    super.startElement(uri, name, qualified, attributes);
    switch (name) {
      case "row" -> {
        rowHidden = isTrue(attributes.getValue("hidden"));
        cells = new TreeMap<>();
      }
      case "col" -> addColumns(attributes);
      case "legacyDrawing" -> commented = true;
      default -> {
        // the rest is read for its values alone
      }
    }
  }

  private void addColumns(Attributes attributes) {
    if (isTrue(attributes.getValue("hidden"))) {
      int last = Math.min(Integer.parseInt(attributes.getValue("max")), 1000);
      for (int column = Integer.parseInt(attributes.getValue("min")); column <= last; column++) {
        hiddenColumns.add(column - 1);
      }
    }
  }

  private static boolean isTrue(String value) {
    return "1".equals(value) || "true".equals(value);
  }

  @Override
  void filled(int column, Cell cell, int style, String formula) {
    if (cells.isEmpty()) {
      if (rowHidden) {
        hiddenIndexes.add(rows.size());
      }
      rows.add(cells);
    }
    coloured |= values.isColoured(style);
    cells.put(column, cellOf(cell, values.isStruck(style), formula, values.currency(style)));
  }

  private static SheetCell cellOf(Cell cell, boolean struck, String formula, String currency) {
    OptionalDouble number =
        cell instanceof Cell.Number it ? OptionalDouble.of(it.value()) : OptionalDouble.empty();
    Optional<LocalDate> date =
        cell instanceof Cell.Date it ? Optional.of(it.date()) : Optional.empty();
    boolean yearShown = !(cell instanceof Cell.Date it) || it.yearShown();
    String shown = cell.shown().isBlank() ? "=" + formula : cell.shown();
    return new SheetCell(shown, number, date, yearShown, struck, formula, currency);
  }
}
