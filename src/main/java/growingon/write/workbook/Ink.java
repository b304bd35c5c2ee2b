package growingon.write.workbook;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Letters, colours and boxes of all workbooks. */
final class Ink {
  static final String ACCENT = "2B5D50";
  static final String TINT = "E9F0ED";
  static final String GREY = "5F6865";

  private static final String FONT = "Arial";

  private Ink() {}

  /** What cells without a look of their own are written in. */
  static void writeUsual(XSSFWorkbook book) {
    XSSFFont usual = book.getFontAt(0);
    usual.setFontName(FONT);
    usual.setFontHeight(10);
  }

  /** A new font of a size in points. */
  static XSSFFont font(XSSFWorkbook book, double size, boolean bold) {
    XSSFFont font = book.createFont();
    font.setFontName(FONT);
    font.setFontHeight(size);
    font.setBold(bold);
    return font;
  }

  /** Gives a font a colour, RRGGBB; null leaves it black. */
  static void paint(XSSFFont font, String colour) {
    if (colour != null) {
      font.setColor(colour(colour));
    }
  }

  /** A colour given as RRGGBB. */
  static XSSFColor colour(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value}, null);
  }

  static void box(XSSFCellStyle style) {
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
  }
}
