package growingon.write.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A written workbook, read again by an independent reader of the same format. */
final class Reopened {
  private Reopened() {}

  static XSSFWorkbook open(Path workbook) throws IOException {
    try {
      return new XSSFWorkbook(workbook.toFile());
    } catch (InvalidFormatException broken) {
      throw new IOException(broken);
    }
  }

  /** Every formula cell by sheet and address, with the value cached beside it. */
  static Map<String, Double> totals(XSSFWorkbook book) {
    Map<String, Double> totals = new LinkedHashMap<>();
    for (Cell cell : cells(book)) {
      if (cell.getCellType() == CellType.FORMULA) {
        totals.put(name(cell), cell.getNumericCellValue());
      }
    }
    return totals;
  }

  static List<Cell> cells(XSSFWorkbook book) {
    List<Cell> cells = new ArrayList<>();
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        row.forEach(cells::add);
      }
    }
    return cells;
  }

  static String name(Cell cell) {
    return cell.getSheet().getSheetName() + "!" + cell.getAddress().formatAsString();
  }

  /** The first cell of a sheet with this text. */
  static Cell find(Sheet sheet, String text) {
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(text)) {
          return cell;
        }
      }
    }
    throw new AssertionError("no cell of " + sheet.getSheetName() + " says " + text);
  }
}
