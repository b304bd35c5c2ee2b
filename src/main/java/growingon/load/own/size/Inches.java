package growingon.load.own.size;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths in feet and inches as a tape is read: 5'6", 6 ft 6, 11 1/4, 7-3/4, 10½", 12-15in. */
public final class Inches {
  private static final double IN_A_FOOT = 12;
  private static final String FOOT = "\\s*(?:'|’|′|ft\\.?|feet|foot)";
  private static final String INCH = "\\s*(?:\"|”|″|''|ins?\\.?|inch(?:es)?)";
  private static final String NUMBER =
      "(\\d{1,3})(?:[ -](\\d{1,2})/(\\d{1,2})|\\s?([½¼¾])|([.,]\\d+))?";
  private static final String PLAIN = "(\\d{1,3}(?:[.,]\\d+)?)";
  private static final Pattern MIXED = Pattern.compile(NUMBER);
  private static final Pattern WITH_MARK = Pattern.compile(NUMBER + INCH);
  private static final Pattern FEET =
      Pattern.compile(PLAIN + FOOT + "(?:\\s*" + NUMBER + "(?:" + INCH + ")?)?");
  private static final Pattern RANGE =
      Pattern.compile(PLAIN + "\\s*[-–/]\\s*" + PLAIN + INCH + "\\s*\\+?");

  private Inches() {}

  /**
   * The only length of a cell, in inches.
   *
   * @param unmarked whether a number without a mark is one too, as under a heading of inches
   */
  public static Optional<Span> of(String text, boolean unmarked) {
    String cell = text.strip().toLowerCase(Locale.ROOT);
    Matcher feet = FEET.matcher(cell);
    if (feet.matches()) {
      double inches = feet.group(2) == null ? 0 : value(feet, 2);
      return Optional.of(one(number(feet.group(1)) * IN_A_FOOT + inches));
    }
    for (Pattern pattern :
        unmarked ? new Pattern[] {WITH_MARK, MIXED} : new Pattern[] {WITH_MARK}) {
      Matcher single = pattern.matcher(cell);
      if (single.matches()) {
        return Optional.of(one(value(single, 1)));
      }
    }
    Matcher range = RANGE.matcher(cell);
    return range.matches() && number(range.group(1)) <= number(range.group(2))
        ? Optional.of(Span.of(number(range.group(1)), number(range.group(2))))
        : Optional.empty();
  }

  private static Span one(double inches) {
    return Span.of(inches, inches);
  }

  private static double value(Matcher matcher, int group) {
    double whole = number(matcher.group(group));
    if (matcher.group(group + 1) != null) {
      return whole + number(matcher.group(group + 1)) / number(matcher.group(group + 2));
    }
    if (matcher.group(group + 3) != null) {
      return whole + SizeGrammar.vulgar(matcher.group(group + 3));
    }
    return matcher.group(group + 4) == null
        ? whole
        : whole + number("0" + matcher.group(group + 4));
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
