package growingon.load.own.text;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers written as text, with points or commas. */
public final class Numbers {
  private static final Pattern PLAIN = Pattern.compile("[0-9]+");
  private static final Pattern ONE_MARK = Pattern.compile("([0-9]*)([.,])([0-9]+)");
  private static final Pattern THOUSANDS =
      Pattern.compile("[0-9]{1,3}(?:[., '’\u00a0\u202f][0-9]{3})+");
  private static final Pattern BOTH =
      Pattern.compile("[0-9]{1,3}(?:([.,'’ ])[0-9]{3})*(?!\\1)[.,][0-9]+");

  private Numbers() {}

  /** A measure: one mark is a decimal mark. */
  static OptionalDouble measure(String text) {
    String bare = text.strip();
    if (PLAIN.matcher(bare).matches() || ONE_MARK.matcher(bare).matches()) {
      return finite(bare.replace(',', '.'));
    }
    return OptionalDouble.empty();
  }

  /** A number of plants: one mark before three digits parts thousands. */
  static OptionalDouble plants(String text) {
    String bare = text.strip();
    if (PLAIN.matcher(bare).matches()) {
      return finite(bare);
    }
    if (THOUSANDS.matcher(bare).matches()) {
      return finite(bare.replaceAll("[^0-9]", ""));
    }
    return ONE_MARK.matcher(bare).matches() || BOTH.matcher(bare).matches()
        ? money(bare)
        : OptionalDouble.empty();
  }

  /** An amount of money: of two marks the last is the decimal one. */
  public static OptionalDouble money(String text) {
    String bare = text.strip();
    Matcher one = ONE_MARK.matcher(bare);
    if (one.matches()) {
      return finite(bare.replace(',', '.'));
    }
    if (PLAIN.matcher(bare).matches()) {
      return finite(bare);
    }
    if (BOTH.matcher(bare).matches()) {
      int mark = Math.max(bare.lastIndexOf('.'), bare.lastIndexOf(','));
      return finite(
          bare.substring(0, mark).replaceAll("[^0-9]", "") + "." + bare.substring(mark + 1));
    }
    return THOUSANDS.matcher(bare).matches()
        ? finite(bare.replaceAll("[^0-9]", ""))
        : OptionalDouble.empty();
  }

  /** Whether one mark stands before three digits, so that an amount may be two. */
  static boolean mayBeThousands(String text) {
    return text.strip().matches("[1-9][0-9]{0,2}[.,][0-9]{3}");
  }

  private static OptionalDouble finite(String digits) {
    double value = Double.parseDouble(digits);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
