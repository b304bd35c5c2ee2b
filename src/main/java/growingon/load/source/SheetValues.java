package growingon.load.source;

import growingon.load.cell.Cell;
import growingon.problem.advice.TableAdvice;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** Turns what a sheet stores of a cell (type, style, value) into a {@link Cell}. */
final class SheetValues {
  /** Texts in quotes, colours in brackets and escaped letters of a number format. */
  private static final Pattern NOT_FORMAT = Pattern.compile("\"[^\"]*\"|\\[[^]]*]|\\\\.|_.|\\*.");

  /** A sign by itself, in quotes or as in {@code [$£-809]}; {@code [$-409]} names no currency. */
  private static final Pattern CURRENCY = Pattern.compile("£|€|GBP|EUR|USD|CHF|(?<!\\[)\\$");

  /** Numbers of formats below are those of every workbook (ECMA-376, part 1, 18.8.30). */
  private static final int FIRST_OWN_FORMAT = 164;

  private final SharedStrings strings;
  private final Optional<StylesTable> styles;
  private final boolean from1904;
  private final Map<Integer, Shape> shapes = new HashMap<>();
  private final Map<Integer, String> currencies = new HashMap<>();

  /** Shared texts as cells, by their index as written: many cells share one. */
  private final Map<String, Cell> texts = new HashMap<>();

  private record Shape(boolean date, boolean yearShown, boolean percent) {}

  private static final Shape PLAIN = new Shape(false, false, false);

  SheetValues(SharedStrings strings, Optional<StylesTable> styles, boolean from1904) {
    this.strings = strings;
    this.styles = styles;
    this.from1904 = from1904;
  }

  /**
   * A cell.
   *
   * @param type the letter or word of its type: s, str, inlineStr, b, e, d or n
   * @param style number of its style
   * @param value what is stored, empty if nothing is
   * @param formula whether a formula made the value
   */
  Cell cell(String type, int style, String value, boolean formula) {
    if (value.isEmpty() && formula && !type.equals("str")) {
      return new Cell.Broken("", where -> TableAdvice.formulaWithoutValue(where));
    }
    return switch (type) {
      case "s" -> value.isEmpty() ? Cell.EMPTY : texts.computeIfAbsent(value, this::shared);
      case "b" -> value.isEmpty() ? Cell.EMPTY : new Cell.Flag(value.equals("1"));
      case "e" -> new Cell.Broken(value, where -> TableAdvice.formulaError(where, value));
      case "str", "inlineStr", "d" -> Cell.ofText(value);
      default -> value.isEmpty() ? Cell.EMPTY : number(value, shape(style));
    };
  }

  private Cell shared(String index) {
    try {
      return Cell.ofText(strings.getItemAt(Integer.parseInt(index)).getString());
    } catch (NumberFormatException | IndexOutOfBoundsException broken) {
      throw new POIXMLException("a shared text is missing", broken);
    }
  }

  private Cell number(String value, Shape shape) {
    double number;
    try {
      number = Double.parseDouble(value);
    } catch (NumberFormatException noNumber) {
      return Cell.ofText(value);
    }
    if (!Double.isFinite(number)) {
      return Cell.ofText(value);
    }
    return shape.date ? date(number, value, shape) : new Cell.Number(number, shape.percent);
  }

  private Cell date(double number, String value, Shape shape) {
    LocalDateTime time = null;
    try {
      time = DateUtil.getLocalDateTime(number, from1904);
    } catch (DateTimeException outside) {
      return new Cell.Broken(value, where -> TableAdvice.notADate(where, value));
    }
    return time == null
        ? new Cell.Broken(value, where -> TableAdvice.notADate(where, value))
        : new Cell.Date(time.toLocalDate(), shape.yearShown);
  }

  /** Whether cells of a style are struck through. */
  boolean isStruck(int style) {
    return isKnown(style) && styles.get().getStyleAt(style).getFont().getStrikeout();
  }

  /** Whether cells of a style are filled with a colour. */
  boolean isColoured(int style) {
    return isKnown(style)
        && styles.get().getStyleAt(style).getFillPattern() != FillPatternType.NO_FILL;
  }

  /** Sign or code of the currency with which cells of a style are shown; empty if none. */
  String currency(int style) {
    return currencies.computeIfAbsent(style, this::currencyOf);
  }

  /** A built-in format shows the money of whoever looks at it, so its dollar says nothing. */
  private String currencyOf(int style) {
    if (!isKnown(style)) {
      return "";
    }
    XSSFCellStyle found = styles.get().getStyleAt(style);
    String format = found.getDataFormatString();
    Matcher sign = CURRENCY.matcher(format == null ? "" : format);
    boolean builtIn = found.getDataFormat() < FIRST_OWN_FORMAT;
    return sign.find() && !(builtIn && sign.group().equals("$")) ? sign.group() : "";
  }

  private boolean isKnown(int style) {
    return styles.isPresent() && style >= 0 && style < styles.get().getNumCellStyles();
  }

  private Shape shape(int style) {
    return shapes.computeIfAbsent(style, this::shapeOf);
  }

  private Shape shapeOf(int style) {
    if (!isKnown(style)) {
      return PLAIN;
    }
    XSSFCellStyle found = styles.get().getStyleAt(style);
    int index = found.getDataFormat();
    String text = found.getDataFormatString();
    String format = text == null ? String.valueOf(BuiltinFormats.getBuiltinFormat(index)) : text;
    String bare = NOT_FORMAT.matcher(format).replaceAll("").toLowerCase(Locale.ROOT);
    boolean date = DateUtil.isADateFormat(index, format);
    return new Shape(date, bare.contains("y"), !date && bare.contains("%"));
  }
}
