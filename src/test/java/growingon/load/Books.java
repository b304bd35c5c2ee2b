package growingon.load;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;

/** Workbooks made for a test. */
public final class Books {
  private Books() {}

  /** A formula with the value that was stored with it. */
  public record Formula(String text, Object value) {}

  /** A value in a number format. */
  public record Formatted(Object value, String format) {}

  /** Fills a row from a column on; null leaves a cell out. */
  static Row row(Sheet sheet, int row, int column, Object... values) {
    Row made = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    for (int i = 0; i < values.length; i++) {
      if (values[i] != null) {
        set(made.createCell(column + i), values[i]);
      }
    }
    return made;
  }

  private static void set(Cell cell, Object value) {
    if (value instanceof Formatted formatted) {
      set(cell, formatted.value());
      format(cell, formatted.format());
    } else if (value instanceof Formula formula) {
      set(cell, formula.value());
      cell.setCellFormula(formula.text());
      set(cell, formula.value());
    } else if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      format(cell, "yyyy-mm-dd");
    } else if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof Boolean flag) {
      cell.setCellValue(flag);
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private static void format(Cell cell, String format) {
    Workbook book = cell.getSheet().getWorkbook();
    CellStyle style = book.createCellStyle();
    style.setDataFormat(book.createDataFormat().getFormat(format));
    cell.setCellStyle(style);
  }

  public static void save(Workbook book, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
  }
}
