package growingon.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text in which the numbers of the program's own are marked, so that whoever writes it for people
 * can write them as a nursery does. Names and what was found in a cell bear no mark and stay as
 * they are.
 *
 * @param marked the text with its marks
 */
public record MarkedText(String marked) {
  /** No text. */
  public static final MarkedText NONE = new MarkedText("");

  // Two letters that are none, which Unicode keeps for use within a program.
  private static final char BEGIN = '\ufdd0';
  private static final char END = '\ufdd1';
  private static final Pattern NUMBER = Pattern.compile(BEGIN + "(-?\\d+(?:\\.\\d+)?)" + END);
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

  private static String mark(String number) {
    return BEGIN + number + END;
  }

  /** A text of somebody else's, in which nothing is marked. */
  public static MarkedText asItIs(String text) {
    return new MarkedText(unmarked(text));
  }

  static String unmarked(String text) {
    return MARKS.matcher(text).replaceAll("");
  }

  /**
   * The text with its numbers written in a way.
   *
   * @param way from digits, as in 1234.5, to what is to stand there
   */
  public String told(UnaryOperator<String> way) {
    return unmarked(
        NUMBER
            .matcher(marked)
            .replaceAll(found -> Matcher.quoteReplacement(way.apply(found.group(1)))));
  }

  public boolean isEmpty() {
    return marked.isEmpty();
  }

  /** The text with its numbers written plainly. */
  @Override
  public String toString() {
    return unmarked(marked);
  }
}
