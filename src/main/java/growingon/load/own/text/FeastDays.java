package growingon.load.own.text;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Months that are told by a feast and its year, or by a part of the month: Easter 23, early Sept
 * 23.
 */
final class FeastDays {
  private static final Map<Month, Set<String>> FIXED =
      Map.of(
          Month.DECEMBER,
          Set.of(
              "xmas", "christmas", "weihnachten", "noel", "kerst", "kerstmis", "natale", "navidad"),
          Month.OCTOBER,
          Set.of("halloween"),
          Month.NOVEMBER,
          Set.of("allerheiligen", "toussaint", "ognissanti", "todos los santos"),
          Month.MARCH,
          Set.of("st patrick's day", "st patricks day", "paddy's day", "paddys day"));
  private static final Set<String> EASTER =
      Set.of("easter", "ostern", "paques", "pasen", "pasqua", "pascua", "semana santa");
  private static final Set<String> WHITSUN =
      Set.of("whitsun", "pfingsten", "pentecote", "pinksteren", "pentecoste", "pentecostes");
  private static final int DAYS_FROM_EASTER_TO_WHITSUN = 49;
  private static final Pattern DAY_AND_YEAR =
      Pattern.compile("(\\p{L}[\\p{L}' ]*?)[ .,]*'?((?:20)?[0-9]{2})");
  private static final Pattern PART_OF_MONTH =
      Pattern.compile(
          "(?:(?:early|mid|late|beg(?:inning)?(?: of)?|end(?:"
              + " of)?|anfang|mitte|ende|debut|mi|fin|begin|half|eind|inizio|meta|fine|principios"
              + " de|mediados de|finales de)[ -]|(?:[1-4](?:st|nd|rd|th)|first|last|second|third)"
              + " (?:wk|week)(?: (?:of|in))? )(.+)");

  private FeastDays() {}

  /** The month of a feast; empty where the text names none. */
  static Optional<YearMonth> month(String text) {
    Matcher day = DAY_AND_YEAR.matcher(text);
    if (!day.matches()) {
      return Optional.empty();
    }
    String name = day.group(1).strip();
    int year = Integer.parseInt(day.group(2)) % 100 + 2000;
    if (EASTER.contains(name)) {
      return Optional.of(YearMonth.from(easter(year)));
    }
    if (WHITSUN.contains(name)) {
      return Optional.of(YearMonth.from(easter(year).plusDays(DAYS_FROM_EASTER_TO_WHITSUN)));
    }
    return FIXED.entrySet().stream()
        .filter(each -> each.getValue().contains(name))
        .map(each -> YearMonth.of(year, each.getKey()))
        .findFirst();
  }

  /** What stands behind "early" or "1st wk": the month itself. */
  static Optional<String> wholeMonth(String text) {
    Matcher part = PART_OF_MONTH.matcher(text);
    return part.matches() ? Optional.of(part.group(1)) : Optional.empty();
  }

  /**
   * Easter Sunday of the western churches.
   *
   * <p>Source: the anonymous Gregorian computus (Nature, 20 April 1876; Meeus, Astronomical
   * Algorithms, chapter 8).
   */
  static LocalDate easter(int year) {
    int a = year % 19;
    int b = year / 100;
    int c = year % 100;
    int d = b / 4;
    int e = b % 4;
    int f = (b + 8) / 25;
    int g = (b - f + 1) / 3;
    int h = (19 * a + b - d - g + 15) % 30;
    int i = c / 4;
    int k = c % 4;
    int l = (32 + 2 * e + 2 * i - h - k) % 7;
    int m = (a + 11 * h + 22 * l) / 451;
    int sum = h + l - 7 * m + 114;
    return LocalDate.of(year, sum / 31, sum % 31 + 1);
  }
}
