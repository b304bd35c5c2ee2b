package growingon.nursery.number;

import growingon.problem.MarkedText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * How numbers, months and money are written for whoever reads a report: in sentences, in charts, on
 * the page and in the cells of a workbook. Files for other programs are written one way always.
 *
 * @param digits marks between thousands and before decimals
 * @param days how days and months are written
 * @param sign where the currency stands
 */
public record Writing(Digits digits, Days days, Sign sign) implements MarkedText.Way {
  /** Where nothing is said. */
  public static final Writing USUAL = new Writing(Digits.POINT, Days.IN_WORDS, Sign.BEFORE);

  private static final Pattern NUMBERS =
      Pattern.compile(
          "(?:[-–+×%:()0-9. ]*(?:to|and|or)?[-–+×%:()0-9. ]*(?: (?:m|ml|g|kg)\\b[^0-9;]*)?;?)+");
  private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");
  private static final Pattern DECIMAL = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  /** Marks between thousands and before decimals. */
  public enum Digits {
    POINT("1,234.5", ',', '.', ""),
    COMMA("1.234,5", '.', ',', "[$-407]"),
    BLANK("1 234,5", '\u00a0', ',', "[$-40C]");

    private final String word;
    private final char thousands;
    private final char decimal;
    private final String language;

    Digits(String word, char thousands, char decimal, String language) {
      this.word = word;
      this.thousands = thousands;
      this.decimal = decimal;
      this.language = language;
    }

    /** Between thousands. */
    public char thousands() {
      return thousands;
    }

    /** Before decimals. */
    public char decimal() {
      return decimal;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /** How days and months are written. */
  public enum Days {
    IN_WORDS("in words", "MMM yyyy", "MMMM yyyy", "d MMMM yyyy", "mmm yyyy"),
    YEAR_FIRST("year first", "yyyy-MM", "yyyy-MM", "yyyy-MM-dd", "yyyy-mm"),
    SLASHES("slashes", "MM/yyyy", "MM/yyyy", "dd/MM/yyyy", "mm\\/yyyy"),
    POINTS("points", "MM.yyyy", "MM.yyyy", "dd.MM.yyyy", "mm.yyyy");

    private final String word;
    private final DateTimeFormatter month;
    private final DateTimeFormatter longMonth;
    private final DateTimeFormatter day;
    private final String cell;

    Days(String word, String month, String longMonth, String day, String cell) {
      this.word = word;
      this.month = DateTimeFormatter.ofPattern(month, Locale.ENGLISH);
      this.longMonth = DateTimeFormatter.ofPattern(longMonth, Locale.ENGLISH);
      this.day = DateTimeFormatter.ofPattern(day, Locale.ENGLISH);
      this.cell = cell;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /** Where the currency stands. */
  public enum Sign {
    BEFORE("before"),
    BEHIND("behind");

    private final String word;

    Sign(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  public Writing {
    Objects.requireNonNull(digits);
    Objects.requireNonNull(days);
    Objects.requireNonNull(sign);
  }

  /** 12,345.6, with so many decimals. */
  public String decimals(double number, int places) {
    return marked(grouped(number, places));
  }

  /** a, b and c. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /**
   * As English has it, half up. It is what "%,.2f" gives; a page has thousands of numbers, and a
   * format string is read anew for each.
   */
  private static String grouped(double number, int places) {
    if (!Double.isFinite(number)) {
      return Double.toString(number);
    }
    String digits =
        BigDecimal.valueOf(Math.abs(number)).setScale(places, RoundingMode.HALF_UP).toPlainString();
    return (number < 0 ? "-" : "") + grouped(digits);
  }

  /** Digits, with or without a minus and decimals, with a comma between thousands. */
  private static String grouped(String digits) {
    StringBuilder text = new StringBuilder(digits);
    int first = digits.startsWith("-") ? 1 : 0;
    int point = digits.indexOf('.');
    for (int comma = (point < 0 ? digits.length() : point) - 3; comma > first; comma -= 3) {
      text.insert(comma, ',');
    }
    return text.toString();
  }

  /** 1234.5 in these marks; a text of digits as English has them. */
  public String marked(String english) {
    if (digits == Digits.POINT) {
      return english;
    }
    StringBuilder marked = new StringBuilder(english);
    for (int i = 0; i < marked.length(); i++) {
      char mark = marked.charAt(i);
      if (mark == ',' || mark == '.') {
        marked.setCharAt(i, mark == ',' ? digits.thousands : digits.decimal);
      }
    }
    return marked.toString();
  }

  /** 12,345. */
  public String whole(double number) {
    long whole = Math.round(number);
    return Math.abs(whole) < 1000 ? Long.toString(whole) : decimals(whole, 0);
  }

  /** 12,300: whole, and no more than three figures of it. */
  public String threeFigures(double number) {
    double size = Math.abs(number);
    double step =
        size < 100 ? 1 : size < 1000 ? 10 : Math.pow(10, Math.floor(Math.log10(size)) - 2);
    return whole(step * Math.round(number / step));
  }

  /** 3, or 2.5 where it is not whole. */
  public String number(double number) {
    return Math.abs(number - Math.rint(number)) < 0.05 ? whole(number) : decimals(number, 1);
  }

  /** EUR 12,345, an amount that is written already. */
  public String money(String currency, String amount) {
    return sign == Sign.BEFORE ? currency + " " + amount : amount + " " + currency;
  }

  /** Mar 2027. */
  @Override
  public String month(YearMonth month) {
    return month.format(days.month);
  }

  /** March 2027. */
  public String longMonth(YearMonth month) {
    return month.format(days.longMonth);
  }

  /** 3 March 2027. */
  @Override
  public String day(LocalDate day) {
    return day.format(days.day);
  }

  /** A sentence of ours, which holds nothing of the grower's, with its numbers in these marks. */
  public String told(String english) {
    if (digits == Digits.POINT) {
      return english;
    }
    String parted = THOUSANDS.matcher(english).replaceAll("\u0000");
    return DECIMAL
        .matcher(parted)
        .replaceAll(String.valueOf(digits.decimal))
        .replace('\u0000', digits.thousands);
  }

  /** What is said of an input, with the numbers, months and days of our own as written here. */
  public String told(MarkedText said) {
    return said.told(this);
  }

  @Override
  public String number(String digits) {
    return marked(grouped(digits));
  }

  /** A value as a file of the grower's has it, in these marks if it is numbers only. */
  public String value(String text) {
    return NUMBERS.matcher(text).matches() ? told(text) : text;
  }

  /** Whether months are written by their names. */
  public boolean namesMonths() {
    return days == Days.IN_WORDS;
  }

  /** The format of a number in a cell of a workbook, in the language whose marks these are. */
  public String cell(String format) {
    return digits == Digits.POINT
        ? format
        : digits.language + format.replace(";", ";" + digits.language);
  }

  /** The format of a month in a cell of a workbook. */
  public String monthCell() {
    return days.cell;
  }
}
