package growingon.nursery;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** How values of this package are written. */
final class Words {
  private Words() {}

  static String of(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }
}
