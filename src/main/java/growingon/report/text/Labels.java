package growingon.report.text;

import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How months and numbers are written in sentences. */
public final class Labels {
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);

  private Labels() {}

  /** Mar 2027. */
  public static String month(YearMonth month) {
    return month.format(MONTH);
  }

  /** 12,345. */
  public static String whole(double number) {
    long whole = Math.round(number);
    return Math.abs(whole) < 1000
        ? Long.toString(whole)
        : String.format(Locale.ENGLISH, "%,d", whole);
  }

  /** 3, or 2.5 where it is not whole. */
  public static String number(double number) {
    return Math.abs(number - Math.rint(number)) < 0.05
        ? whole(number)
        : String.format(Locale.ENGLISH, "%,.1f", number);
  }
}
