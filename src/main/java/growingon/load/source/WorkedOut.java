package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.load.own.sheet.Sheet;
import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.eval.NotImplementedException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Works out what a workbook was saved without, as some programs do: formulas of numbers and cells
 * by + − × ÷ and SUM. Any other formula stays as it is, and its row is asked for.
 */
final class WorkedOut {
  private static final Pattern SIMPLE =
      Pattern.compile("(?:SUM(?=\\()|\\$?[A-Z]{1,3}\\$?[0-9]{1,7}|[0-9.]+|[-+*/(),: ])+");

  private final XSSFWorkbook workbook;
  private final FormulaEvaluator evaluator;

  private WorkedOut(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.evaluator = workbook.getCreationHelper().createFormulaEvaluator();
  }

  /** The sheets of a workbook with what can be worked out. */
  static List<Sheet> of(Path file, List<Sheet> sheets) throws IOException, InvalidFormatException {
    if (sheets.stream().flatMap(sheet -> sheet.rows().stream()).noneMatch(WorkedOut::isOpen)) {
      return sheets;
    }
    try (OPCPackage contents = OPCPackage.open(file.toFile(), PackageAccess.READ);
        XSSFWorkbook workbook = new XSSFWorkbook(contents)) {
      WorkedOut workedOut = new WorkedOut(workbook);
      return sheets.stream().map(workedOut::sheet).toList();
    }
  }

  private static boolean isOpen(SheetRow row) {
    return row.cells().values().stream().anyMatch(WorkedOut::isOpen);
  }

  private static boolean isOpen(SheetCell cell) {
    return cell.number().isEmpty()
        && cell.text().equals("=" + cell.formula())
        && SIMPLE.matcher(cell.formula()).matches();
  }

  private Sheet sheet(Sheet sheet) {
    List<SheetRow> rows =
        sheet.rows().stream().map(row -> isOpen(row) ? row(sheet.name(), row) : row).toList();
    return new Sheet(
        sheet.file(),
        sheet.name(),
        sheet.csv(),
        rows,
        sheet.merges(),
        sheet.hiddenColumns(),
        sheet.coloured());
  }

  private SheetRow row(String sheet, SheetRow row) {
    SortedMap<Integer, SheetCell> cells = new TreeMap<>(row.cells());
    Row source = workbook.getSheet(sheet).getRow(row.number() - 1);
    cells.replaceAll(
        (column, cell) ->
            isOpen(cell)
                ? value(source.getCell(column)).map(it -> valued(cell, it)).orElse(cell)
                : cell);
    return new SheetRow(row.number(), row.hidden(), cells);
  }

  /** Empty where it hangs on a formula that the library does not know: its row is asked for. */
  private Optional<Double> value(org.apache.poi.ss.usermodel.Cell cell) {
    try {
      CellValue value = evaluator.evaluate(cell);
      boolean isNumber = value != null && value.getCellType() == CellType.NUMERIC;
      return isNumber ? Optional.of(value.getNumberValue()) : Optional.empty();
    } catch (NotImplementedException | FormulaParseException unknown) {
      return Optional.empty();
    }
  }

  private static SheetCell valued(SheetCell cell, double value) {
    return new SheetCell(
        new Cell.Number(value, false).shown(),
        OptionalDouble.of(value),
        Optional.empty(),
        true,
        cell.struck(),
        cell.formula(),
        cell.currency());
  }
}
