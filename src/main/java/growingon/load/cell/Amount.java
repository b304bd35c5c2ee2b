package growingon.load.cell;

import growingon.problem.advice.ValueAdvice;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number written as text, with what stands before and behind it: "€ 2.40", "3,5 l", "12 mm".
 *
 * @param before text before the number, may be empty
 * @param value the number
 * @param behind text behind the number, may be empty
 */
public record Amount(String before, double value, String behind) {
  private static final Pattern PARTS =
      Pattern.compile(
          "([^0-9+\\-−.,]*)([+\\-−]?[0-9.,](?:[0-9.,]|[ '’](?=[0-9]))*(?:[eE][+-]?[0-9]+(?![0-9.,\\p{L}]))?)(.*)");
  private static final Pattern SPACED =
      Pattern.compile("[0-9]{1,3}(?:[ '’][0-9]{3})+(?:[.,][0-9]+)?");
  private static final Pattern PLAIN = Pattern.compile("[0-9]+");
  private static final Pattern ONE_MARK = Pattern.compile("([0-9]*)([.,])([0-9]+)");
  private static final Pattern MANY_OF_ONE =
      Pattern.compile("[0-9]{1,3}(?:([.,])[0-9]{3})(?:\\1[0-9]{3})+");
  private static final Pattern BOTH =
      Pattern.compile("[0-9]{1,3}(?:([.,])[0-9]{3})+(?!\\1)[.,][0-9]+");
  private static final Pattern POWER = Pattern.compile("[0-9]*\\.?[0-9]+[eE][+-]?[0-9]+");

  /** Longest text that is looked at; no number is longer. */
  private static final int LONGEST = 100;

  /**
   * The amount that a text states.
   *
   * @throws CellFault if it states none, or might state two
   */
  public static Amount of(String text, NumberStyle style) {
    return find(text, style)
        .orElseThrow(() -> new CellFault(where -> ValueAdvice.notANumber(where, text)));
  }

  /** What stands before and behind the number of a text; nothing is said of the number itself. */
  public static Optional<String> mark(String text) {
    Matcher parts = PARTS.matcher(text);
    return text.length() <= LONGEST && parts.matches()
        ? Optional.of(parts.group(1).strip() + parts.group(3).strip())
        : Optional.empty();
  }

  /** Whether it is a number and nothing else. */
  public boolean isBare() {
    return before.isEmpty() && behind.isEmpty();
  }

  /** The amount that a text states, or empty if it is no number at all. */
  public static Optional<Amount> find(String text, NumberStyle style) {
    if (isPlain(text, style)) {
      return Optional.of(new Amount("", Double.parseDouble(text), ""));
    }
    Matcher parts = PARTS.matcher(text);
    if (text.length() > LONGEST || !parts.matches()) {
      return Optional.empty();
    }
    String digits = parts.group(2).replace('−', '-');
    boolean negative = digits.startsWith("-");
    String bare = digits.startsWith("+") || negative ? digits.substring(1) : digits;
    return value(bare, text, style)
        .map(
            value ->
                new Amount(
                    parts.group(1).strip(), negative ? -value : value, parts.group(3).strip()));
  }

  /**
   * Most numbers are a few digits, with a decimal point where nothing else can be meant by one, and
   * need not be taken apart.
   */
  private static boolean isPlain(String text, NumberStyle style) {
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      points += c == '.' ? 1 : 0;
      if (c != '.' && (c < '0' || c > '9')) {
        return false;
      }
    }
    boolean point = points == 1 && style == NumberStyle.POINT && !text.endsWith(".");
    return !text.isEmpty() && text.length() <= LONGEST && (points == 0 || point);
  }

  private static Optional<Double> value(String digits, String text, NumberStyle style) {
    String solid = SPACED.matcher(digits).matches() ? digits.replaceAll("[ '’]", "") : digits;
    Matcher oneMark = ONE_MARK.matcher(solid);
    if (PLAIN.matcher(solid).matches() || POWER.matcher(solid).matches()) {
      return finite(solid);
    }
    if (oneMark.matches()) {
      return oneMark(oneMark, solid, text, style);
    }
    if (MANY_OF_ONE.matcher(solid).matches()) {
      return finite(solid.replaceAll("[.,]", ""));
    }
    return BOTH.matcher(solid).matches() ? both(solid, text, style) : Optional.empty();
  }

  private static Optional<Double> finite(String digits) {
    double value = Double.parseDouble(digits);
    return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
  }

  /** One point or comma: a decimal mark, unless it may as well part thousands. */
  private static Optional<Double> oneMark(
      Matcher mark, String digits, String text, NumberStyle style) {
    boolean comma = mark.group(2).equals(",");
    boolean maybeThousands =
        mark.group(3).length() == 3
            && mark.group(1).matches("[1-9][0-9]{0,2}")
            && style != (comma ? NumberStyle.COMMA : NumberStyle.POINT);
    String thousands = mark.group(1) + mark.group(3);
    if (maybeThousands && style == NumberStyle.PLANTS) {
      return finite(thousands);
    }
    if (maybeThousands) {
      String decimals = Cell.Number.plain(Double.parseDouble(digits.replace(',', '.')));
      String inStyle = style == NumberStyle.COMMA ? decimals.replace('.', ',') : decimals;
      throw new CellFault(where -> ValueAdvice.ambiguousNumber(where, text, thousands, inStyle));
    }
    if (comma && style == NumberStyle.POINT) {
      throw new CellFault(where -> ValueAdvice.decimalComma(where, text));
    }
    return finite(digits.replace(',', '.'));
  }

  /** Thousands parted by one mark and decimals by the other: the last one is the decimal mark. */
  private static Optional<Double> both(String digits, String text, NumberStyle style) {
    int decimal = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
    if (digits.charAt(decimal) == ',' && style == NumberStyle.POINT) {
      throw new CellFault(where -> ValueAdvice.decimalComma(where, text));
    }
    return finite(
        digits.substring(0, decimal).replaceAll("[.,]", "") + "." + digits.substring(decimal + 1));
  }
}
