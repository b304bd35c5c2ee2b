package growingon.report.text;

import growingon.nursery.Horizon;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;

/** How amounts, months and lists are said in sentences. */
public final class Phrases {
  /** What is less is shown as nil: square metres and hours have one decimal, plants none. */
  public static final double NEGLIGIBLE = 0.05;

  private Phrases() {}

  /** EUR 12,345. */
  public static String money(String currency, double amount) {
    return currency + " " + Labels.whole(amount);
  }

  /** EUR 12.30, of one plant. */
  public static String each(String currency, double amount) {
    return currency + String.format(Locale.ENGLISH, " %,.2f", amount);
  }

  /** 14.5 m². */
  public static String squareMetres(double amount) {
    return String.format(Locale.ENGLISH, "%,.1f m²", amount);
  }

  /** 52 hours; below ten with a decimal. */
  public static String hours(double amount) {
    String pattern = amount < 9.95 ? "%,.1f hours" : "%,.0f hours";
    return String.format(Locale.ENGLISH, pattern, amount);
  }

  /** 85 %. */
  public static String percent(double share) {
    return Labels.whole(share * 100) + " %";
  }

  /** 12.3 %. */
  public static String rate(double share) {
    return String.format(Locale.ENGLISH, "%.1f %%", share * 100);
  }

  /** 1 plant, 2 plants. */
  public static String counted(double number, String one, String many) {
    String whole = Labels.whole(number);
    return whole + " " + ("1".equals(whole) ? one : many);
  }

  public static String plants(double number) {
    return counted(number, "plant", "plants");
  }

  /** a, b and c. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /**
   * At most so many of them, and how many more there are: a, b and 3 more places.
   *
   * @param most how many are named
   * @param others what the rest are called, in the plural
   */
  public static String list(List<String> words, int most, String others) {
    int more = words.size() - most;
    return more < 2
        ? list(words)
        : "%s and %d more %s".formatted(String.join(", ", words.subList(0, most)), more, others);
  }

  /**
   * The longest of a line's forms that fits.
   *
   * @param size how many words there are to name
   * @param width most characters of the line
   * @param line the line with so many of them named
   */
  public static String fitted(int size, int width, IntFunction<String> line) {
    int named = size;
    while (named > 1 && line.apply(named).length() > width) {
      named--;
    }
    return line.apply(named);
  }

  /** in Mar 2027, from Mar to May 2027, or from Nov 2026 to Mar 2027. */
  public static String span(YearMonth from, YearMonth to) {
    if (from.equals(to)) {
      return "in " + Labels.month(from);
    }
    boolean sameYear = from.getYear() == to.getYear();
    String first = sameYear ? shortMonth(from.getMonthValue()) : Labels.month(from);
    return "from " + first + " to " + Labels.month(to);
  }

  public static String month(Horizon horizon, int offset) {
    return Labels.month(horizon.month(offset));
  }

  /**
   * The shortest span of the calendar that holds all months given: Nov–Mar, Mar, or all year.
   *
   * @param months 1 = January, at least one
   */
  public static String calendarSpan(Collection<Integer> months) {
    Set<Integer> sorted = new TreeSet<>(months);
    int bestFrom = 0;
    int bestLength = 13;
    for (int from : sorted) {
      int length =
          sorted.stream().mapToInt(each -> Math.floorMod(each - from, 12) + 1).max().getAsInt();
      bestFrom = length < bestLength ? from : bestFrom;
      bestLength = Math.min(bestLength, length);
    }
    if (bestLength > 10) {
      return "all year";
    }
    String from = shortMonth(bestFrom);
    String to = shortMonth((bestFrom + bestLength - 2) % 12 + 1);
    return bestLength == 1 ? from : from + "–" + to;
  }

  private static String shortMonth(int month) {
    return Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }

  /** The text with a capital first letter. */
  public static String sentence(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
