package growingon.nursery.number;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** How values of this package are written. */
public final class ValueText {
  private ValueText() {}

  /** A month by its English name, as files of input have it. */
  public static String of(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** A number without needless digits, a point before decimals: for files, not for people. */
  public static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
