package growingon.write.workbook;

import growingon.report.model.InputBook.Holds;
import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of a workbook to type into. */
final class InputStyles {
  private static final String PALE = "F4F4F2";
  private static final String TO_FILL = "FFF7D6";
  private static final String WHITE = "FFFFFF";

  private final XSSFWorkbook book;
  private final Map<Holds, CellStyle> cells = new EnumMap<>(Holds.class);
  private final Map<Holds, CellStyle> wrapped = new EnumMap<>(Holds.class);
  private final CellStyle needed;
  private final CellStyle plain;
  private final CellStyle expert;
  private final CellStyle title;
  private final CellStyle words;
  private final CellStyle fill;
  private final CellStyle linked;

  InputStyles(XSSFWorkbook book) {
    this.book = book;
    Ink.writeUsual(book);
    needed = heading(Ink.ACCENT, WHITE);
    plain = heading(Ink.TINT, null);
    expert = heading(PALE, Ink.GREY);
    title = text(14, Ink.ACCENT);
    words = text(11, null);
    for (Holds holds : Holds.values()) {
      cells.put(holds, cell(holds, false));
      wrapped.put(holds, cell(holds, true));
    }
    fill = fill();
    linked = link();
  }

  CellStyle heading(boolean isNeeded, boolean isExpert) {
    return isNeeded ? needed : isExpert ? expert : plain;
  }

  CellStyle cell(Holds holds) {
    return cells.get(holds);
  }

  CellStyle wrapped(Holds holds) {
    return wrapped.get(holds);
  }

  CellStyle toFill() {
    return fill;
  }

  CellStyle linked() {
    return linked;
  }

  CellStyle title() {
    return title;
  }

  CellStyle words() {
    return words;
  }

  private CellStyle heading(String ground, String ink) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font(10, true, ink));
    style.setFillForegroundColor(Ink.colour(ground));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setWrapText(true);
    style.setIndention((short) 1);
    style.setAlignment(HorizontalAlignment.LEFT);
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setBorderBottom(BorderStyle.MEDIUM);
    style.setBottomBorderColor(Ink.colour(Ink.ACCENT));
    style.setBorderRight(BorderStyle.THIN);
    style.setRightBorderColor(Ink.colour(WHITE));
    return style;
  }

  private CellStyle text(double size, String ink) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font(size, ink != null, ink));
    style.setWrapText(true);
    style.setVerticalAlignment(ink == null ? VerticalAlignment.TOP : VerticalAlignment.BOTTOM);
    return style;
  }

  private XSSFCellStyle cell(Holds holds, boolean wraps) {
    XSSFCellStyle style = book.createCellStyle();
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    style.setIndention((short) 1);
    style.setWrapText(wraps);
    if (holds == Holds.MONTH) {
      style.setDataFormat(book.createDataFormat().getFormat("mmm yyyy"));
    }
    boolean left = holds == Holds.TEXT || holds == Holds.MONTH;
    style.setAlignment(left ? HorizontalAlignment.LEFT : HorizontalAlignment.RIGHT);
    return style;
  }

  private CellStyle fill() {
    XSSFCellStyle style = cell(Holds.TEXT, false);
    style.setFillForegroundColor(Ink.colour(TO_FILL));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    style.setFont(font(11, true, null));
    Ink.box(style);
    return style;
  }

  private CellStyle link() {
    XSSFCellStyle style = cell(Holds.TEXT, false);
    XSSFFont font = font(10, false, Ink.ACCENT);
    font.setUnderline(XSSFFont.U_SINGLE);
    style.setFont(font);
    return style;
  }

  private XSSFFont font(double size, boolean bold, String ink) {
    XSSFFont font = Ink.font(book, size, bold);
    Ink.paint(font, ink);
    return font;
  }
}
