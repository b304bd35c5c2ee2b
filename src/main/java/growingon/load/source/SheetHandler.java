package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.cell.NumberStyle;
import growingon.load.source.Grid.GridRow;
import growingon.load.source.Grid.Merge;
import growingon.problem.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Collects the filled cells of a sheet from its XML. */
class SheetHandler extends DefaultHandler {
  private final SheetValues values;
  private final List<GridRow> rows = new ArrayList<>();
  private final List<Merge> merges = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private TreeMap<Integer, Cell> cells = new TreeMap<>();
  private int row;
  private int column = -1;
  private String type = "n";
  private int style;
  private String value = "";
  private boolean formula;
  private String formulaText = "";
  private boolean inFormula;
  private boolean phonetic;
  private boolean collecting;

  SheetHandler(SheetValues values) {
    this.values = values;
  }

  Grid grid(Where where) {
    return new Grid(where, NumberStyle.EITHER, rows, merges);
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    switch (name) {
      case "row" -> startRow(attributes);
      case "c" -> startCell(attributes);
      case "f" -> startFormula();
      case "rPh" -> phonetic = true;
      case "v", "t" -> startText();
      case "mergeCell" -> addMerge(attributes.getValue("ref"));
      default -> {
        // formats, widths and the like say nothing about values
      }
    }
  }

  private void startRow(Attributes attributes) {
    String number = attributes.getValue("r");
    row = number == null ? row + 1 : Integer.parseInt(number);
    column = -1;
    cells = new TreeMap<>();
  }

  private void startCell(Attributes attributes) {
    String address = attributes.getValue("r");
    column = address == null ? column + 1 : new CellAddress(address).getColumn();
    String stated = attributes.getValue("t");
    type = stated == null ? "n" : stated;
    String styled = attributes.getValue("s");
    style = styled == null ? 0 : Integer.parseInt(styled);
    value = "";
    formula = false;
    formulaText = "";
  }

  private void startFormula() {
    formula = true;
    text.setLength(0);
    inFormula = true;
  }

  private void startText() {
    text.setLength(0);
    collecting = !phonetic;
  }

  private void addMerge(String reference) {
    CellRangeAddress area = CellRangeAddress.valueOf(reference);
    merges.add(
        new Merge(
            area.getFirstRow() + 1,
            area.getLastRow() + 1,
            area.getFirstColumn(),
            area.getLastColumn()));
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (collecting || inFormula) {
      text.append(characters, start, length);
    }
  }

  @Override
  public void endElement(String uri, String name, String qualified) {
    switch (name) {
      case "v", "t" -> endText();
      case "f" -> endFormula();
      case "rPh" -> phonetic = false;
      case "c" -> endCell();
      case "row" -> endRow();
      default -> {
        // see startElement
      }
    }
  }

  private void endFormula() {
    formulaText = text.toString();
    inFormula = false;
  }

  /** An inline text may come in several runs. */
  private void endText() {
    if (collecting) {
      value = value + text;
      collecting = false;
    }
  }

  private void endCell() {
    Cell cell = values.cell(type, style, value, formula);
    if (!cell.isEmpty()) {
      cells.put(column, cell);
      filled(column, cell, style, formulaText);
    }
  }

  /** Told of each filled cell, for whoever wants to know more of it than its value. */
  void filled(int ofColumn, Cell cell, int ofStyle, String itsFormula) {}

  private void endRow() {
    if (!cells.isEmpty()) {
      rows.add(new GridRow(row, cells));
    }
  }
}
