package growingon.write.workbook;

import growingon.nursery.number.Writing;
import growingon.write.text.ColumnFormat;
import growingon.write.text.SafeText;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of cells, each made once. One accent colour; everything else is grey or black. */
final class CellStyles {
  private static final String RULE = "D5DAD8";
  private static final String ALARM = "B34700";

  /** What a cell is on its sheet. */
  enum Part {
    TITLE(16, true, Ink.ACCENT),
    SUBTITLE(9, false, Ink.GREY),
    SENTENCE(11, false, null),
    TABLE_TITLE(12, true, Ink.ACCENT),
    NOTE(9, false, Ink.GREY),
    LINK(9, false, Ink.ACCENT),
    HEADING(9.5, true, null),
    BODY(10, false, null),
    LINKED(10, false, Ink.ACCENT),
    FIRST_OF_GROUP(10, false, null),
    TOTAL(10, true, null);

    private final double size;
    private final boolean bold;
    private final String colour;

    Part(double size, boolean bold, String colour) {
      this.size = size;
      this.bold = bold;
      this.colour = colour;
    }
  }

  /** What stands in a cell. */
  enum Content {
    TEXT,
    WRAPPED,
    NUMBER,
    BOX;

    private static final int COUNT = values().length;
  }

  /**
   * Everything a look depends on.
   *
   * @param format number format, empty for text
   * @param marked whether the value calls for a look
   * @param quoted whether it is text that looks like a formula
   * @param large whether it is to be read and written on in the shed
   * @param indented whether it begins a little further in
   */
  record Look(
      Part part,
      Content content,
      String format,
      boolean marked,
      boolean quoted,
      boolean large,
      boolean indented) {
    private static int count() {
      return Part.values().length * Content.COUNT * 16;
    }

    /** Its number among the looks of one format. */
    private int number() {
      int flags = (marked ? 1 : 0) + (quoted ? 2 : 0) + (large ? 4 : 0) + (indented ? 8 : 0);
      return (part.ordinal() * Content.COUNT + content.ordinal()) * 16 + flags;
    }

    static Look text(Part part, Content content, String text) {
      return new Look(part, content, "", false, SafeText.looksLikeFormula(text), false, false);
    }
  }

  /** What a font depends on. */
  private record Face(double size, boolean bold, String colour, boolean underlined) {}

  private final XSSFWorkbook book;
  private final Writing writing;
  private final Map<String, CellStyle[]> byFormat = new HashMap<>();
  private final Map<Face, XSSFFont> fonts = new HashMap<>();

  CellStyles(XSSFWorkbook book, Writing writing) {
    this.book = book;
    this.writing = writing;
    Ink.writeUsual(book);
  }

  CellStyle of(Look look) {
    CellStyle[] styles =
        byFormat.computeIfAbsent(look.format(), format -> new CellStyle[Look.count()]);
    int number = look.number();
    styles[number] = styles[number] == null ? make(look) : styles[number];
    return styles[number];
  }

  private CellStyle make(Look look) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font(look));
    style.setQuotePrefixed(look.quoted());
    place(style, look);
    border(style, look);
    if (!look.format().isEmpty()) {
      style.setDataFormat(book.createDataFormat().getFormat(format(look)));
    }
    return style;
  }

  private String format(Look look) {
    return look.format().equals(ColumnFormat.MONTH)
        ? writing.monthCell()
        : writing.cell(look.format());
  }

  Writing writing() {
    return writing;
  }

  private XSSFFont font(Look look) {
    Part part = look.part();
    return fonts.computeIfAbsent(
        new Face(
            part.size + (look.large() ? 2 : 0),
            part.bold || look.marked(),
            look.marked() ? ALARM : part.colour,
            part == Part.LINK || part == Part.LINKED),
        this::font);
  }

  private XSSFFont font(Face face) {
    XSSFFont font = Ink.font(book, face.size(), face.bold());
    if (face.underlined()) {
      font.setUnderline(XSSFFont.U_SINGLE);
    }
    Ink.paint(font, face.colour());
    return font;
  }

  private static void place(XSSFCellStyle style, Look look) {
    boolean number = look.content() == Content.NUMBER;
    style.setAlignment(number ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
    style.setIndention((short) (look.indented() || number && look.part() == Part.HEADING ? 1 : 0));
    boolean heading = look.part() == Part.HEADING;
    style.setWrapText(look.content() == Content.WRAPPED || heading);
    style.setVerticalAlignment(
        heading
            ? VerticalAlignment.BOTTOM
            : look.large() ? VerticalAlignment.CENTER : VerticalAlignment.TOP);
  }

  private static void border(XSSFCellStyle style, Look look) {
    switch (look.part()) {
      case HEADING -> {
        style.setFillForegroundColor(Ink.colour(Ink.TINT));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderBottom(BorderStyle.MEDIUM);
        style.setBottomBorderColor(Ink.colour(Ink.ACCENT));
      }
      case BODY, LINKED, FIRST_OF_GROUP -> {
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(Ink.colour(RULE));
        if (look.part() == Part.FIRST_OF_GROUP) {
          style.setBorderTop(BorderStyle.THIN);
          style.setTopBorderColor(Ink.colour(Ink.GREY));
        }
      }
      case TOTAL -> {
        style.setBorderTop(BorderStyle.THIN);
        style.setBorderBottom(BorderStyle.DOUBLE);
      }
      default -> {
        // sentences, titles and notes stand free
      }
    }
    if (look.content() == Content.BOX) {
      box(style);
    }
  }

  private static void box(XSSFCellStyle style) {
    Ink.box(style);
    style.setBottomBorderColor(Ink.colour("000000"));
    style.setTopBorderColor(Ink.colour("000000"));
  }
}
