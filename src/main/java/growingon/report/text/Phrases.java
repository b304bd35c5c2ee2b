package growingon.report.text;

import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.number.Writing;
import growingon.nursery.time.Horizon;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;

/**
 * How amounts, months and lists are said: an argument of whatever words something, made once from
 * the settings. Money is in the currency of the plan.
 *
 * @param currency of the plan
 * @param writing marks of numbers, months and where the currency stands
 */
public record Phrases(String currency, Writing writing) {
  /** What is less is shown as nil: square metres and hours have one decimal, plants none. */
  public static final double NEGLIGIBLE = 0.05;

  /** For files that other programs read: always written one way. */
  public static final Phrases PLAIN = new Phrases("", Writing.USUAL);

  public Phrases {
    Objects.requireNonNull(currency);
    Objects.requireNonNull(writing);
  }

  /** As the settings of a nursery have it. */
  public static Phrases of(Settings settings) {
    return new Phrases(settings.currency(), settings.writing());
  }

  /** As a plan has it. */
  public static Phrases of(Scenario scenario) {
    return of(scenario.nursery().settings());
  }

  /** EUR 12,345. */
  public String money(double amount) {
    return writing.money(currency, whole(amount));
  }

  /** EUR 12.30, of one plant. */
  public String each(double amount) {
    return each(currency, amount);
  }

  /** USD 12.30, of one plant in another currency. */
  public String each(String other, double amount) {
    return writing.money(other, decimals(amount, 2));
  }

  /** 14.5 m². */
  public String squareMetres(double amount) {
    return decimals(amount, 1) + " m²";
  }

  /** 52 hours; below ten with a decimal. */
  public String hours(double amount) {
    return decimals(amount, amount < 9.95 ? 1 : 0) + " hours";
  }

  /** 85 %. */
  public String percent(double share) {
    return whole(share * 100) + " %";
  }

  /** 12.3 %. */
  public String rate(double share) {
    return decimals(share * 100, 1) + " %";
  }

  /** 12,345. */
  public String whole(double number) {
    return writing.whole(number);
  }

  /** 3, or 2.5 where it is not whole. */
  public String number(double number) {
    return writing.number(number);
  }

  /** 12,345.60, with so many decimals. */
  public String decimals(double number, int places) {
    return writing.decimals(number, places);
  }

  /** A value as a file of the grower's has it, in these marks if it is numbers only. */
  public String value(String text) {
    return writing.value(text);
  }

  /** Mar 2027. */
  public String month(YearMonth month) {
    return writing.month(month);
  }

  /** 1 plant, 2 plants. */
  public String counted(double number, String one, String many) {
    String whole = whole(number);
    return whole + " " + ("1".equals(whole) ? one : many);
  }

  public String plants(double number) {
    return counted(number, "plant", "plants");
  }

  /** a, b and c. */
  public static String list(List<String> words) {
    return Writing.list(words);
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
  public String span(YearMonth from, YearMonth to) {
    if (from.equals(to)) {
      return "in " + month(from);
    }
    boolean sameYear = writing.namesMonths() && from.getYear() == to.getYear();
    String first = sameYear ? shortMonth(from.getMonthValue()) : month(from);
    return "from " + first + " to " + month(to);
  }

  public String month(Horizon horizon, int offset) {
    return month(horizon.month(offset));
  }

  /** When something is short or too much. */
  public String when(List<Spell> spells, Horizon horizon) {
    return new Shortage(this, spells, horizon).when();
  }

  /** By how much in the worst month, with its unit. */
  public String most(List<Spell> spells, Horizon horizon, String amount) {
    return new Shortage(this, spells, horizon).most(amount);
  }

  /** The same for a short line. */
  public String upTo(List<Spell> spells, Horizon horizon, String amount) {
    return new Shortage(this, spells, horizon).upTo(amount);
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
