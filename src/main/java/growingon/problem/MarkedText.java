package growingon.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text in which numbers, months and days of the program's own are marked, so that whoever writes
 * it for people can write them as a nursery does. Names and what was found in a cell bear no mark
 * and stay as they are.
 *
 * @param marked the text with its marks
 */
public record MarkedText(String marked) {
  /** No text. */
  public static final MarkedText NONE = new MarkedText("");

  // Two letters that are none, which Unicode keeps for use within a program.
  private static final char BEGIN = '\ufdd0';
  private static final char END = '\ufdd1';
  private static final int DAY = 1;
  private static final int MONTH = 2;
  private static final int NUMBER = 3;
  private static final Pattern MARKED =
      Pattern.compile(
          BEGIN + "(?:(\\d{4,}-\\d\\d-\\d\\d)|(\\d{4,}-\\d\\d)|(-?\\d+(?:\\.\\d+)?))" + END);
  private static final Pattern MARKS = Pattern.compile("[" + BEGIN + END + "]");

  public MarkedText {
    Objects.requireNonNull(marked);
  }

  /** A whole number of the program's own, to be put into a text. */
  public static String number(long number) {
    return mark(Long.toString(number));
  }

  /** The same with as many decimals as it has, nine at most. */
  public static String number(double number) {
    return Double.isFinite(number) ? mark(plain(number)) : Double.toString(number);
  }

  /** The digits of a number without needless ones: 12, and not 12.0; nine decimals at most. */
  public static String plain(double number) {
    double rounded = Math.rint(number * 1e9) / 1e9;
    return Double.isFinite(rounded)
        ? BigDecimal.valueOf(rounded).stripTrailingZeros().toPlainString()
        : Double.toString(number);
  }

  /** The same with so many decimals. */
  public static String number(double number, int places) {
    return mark(BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP).toPlainString());
  }

  /** A month of the program's own. */
  public static String month(YearMonth month) {
    return mark(month.toString());
  }

  /** A day of the program's own. */
  public static String day(LocalDate day) {
    return mark(day.toString());
  }

  private static String mark(String what) {
    return BEGIN + what + END;
  }

  /** A text of somebody else's, in which nothing is marked. */
  public static MarkedText asItIs(String text) {
    return new MarkedText(unmarked(text));
  }

  static String unmarked(String text) {
    return MARKS.matcher(text).replaceAll("");
  }

  /** A way of writing for people. */
  public interface Way {
    /** Digits, as in 1234.5. */
    String number(String digits);

    /** A month. */
    String month(YearMonth month);

    /** A day. */
    String day(LocalDate day);
  }

  /** The text with its numbers, months and days written in a way. */
  public String told(Way way) {
    return unmarked(
        MARKED.matcher(marked).replaceAll(found -> Matcher.quoteReplacement(written(found, way))));
  }

  private static String written(MatchResult found, Way way) {
    if (found.group(DAY) != null) {
      return way.day(LocalDate.parse(found.group(DAY)));
    }
    return found.group(MONTH) != null
        ? way.month(YearMonth.parse(found.group(MONTH)))
        : way.number(found.group(NUMBER));
  }

  public boolean isEmpty() {
    return marked.isEmpty();
  }

  /** The text with its numbers written plainly, months as in 2027-03 and days as in 2027-03-14. */
  @Override
  public String toString() {
    return unmarked(marked);
  }
}
