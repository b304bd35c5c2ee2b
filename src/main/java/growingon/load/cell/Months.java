package growingon.load.cell;

import growingon.problem.advice.ValueAdvice;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Months as people type them. With a year: 2027-03, 2027/3, 3/2027, "Mar 2027", "March 27", "Mar
 * '27", "2027 March", or a date: 2027-03-15, 15.3.2027, 15/3/27, 15 March 2027, 15-Mar-27, March
 * 15, 2027. A year of two digits is of this century. Without a year: "March", "Mar", or 3 where a
 * month of the year is asked for.
 */
public final class Months {
  private static final Map<String, Month> WORDS = words();
  private static final String YEAR = "['’]?([0-9]{4}|[0-9]{2})";
  private static final Pattern YEAR_FIRST = Pattern.compile("([0-9]{4})[-/. ]([0-9]{1,2})");
  private static final Pattern MONTH_FIRST = Pattern.compile("([0-9]{1,2})[-/.]([0-9]{4})");
  private static final Pattern ISO_DATE =
      Pattern.compile("([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})(?:[T ][0-9:.Z]+)?");
  private static final Pattern DAY_DATE =
      Pattern.compile("([0-9]{1,2})([-/.]) ?([0-9]{1,2})[-/.] ?" + YEAR);
  private static final Pattern WORD_YEAR = Pattern.compile("(\\p{L}+)[.,]?[-/ ]?" + YEAR);
  private static final Pattern YEAR_WORD = Pattern.compile("([0-9]{4})[-/ ](\\p{L}+)\\.?");
  private static final Pattern DAY_WORD_YEAR =
      Pattern.compile("([0-9]{1,2})(?:st|nd|rd|th)?[-/. ]{1,2}(\\p{L}+)[-/., ]{1,2}" + YEAR);
  private static final Pattern WORD_DAY_YEAR =
      Pattern.compile("(\\p{L}+)\\.? ([0-9]{1,2})(?:st|nd|rd|th)?,? " + YEAR);

  /** Years that a nursery may speak of; anything else is a slip. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2200;

  /** Longest text that is looked at; no month is longer. */
  private static final int LONGEST = 40;

  private Months() {}

  private static Map<String, Month> words() {
    Map<String, Month> words = new HashMap<>();
    for (Month month : Month.values()) {
      String full = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH).toLowerCase(Locale.ROOT);
      words.put(full, month);
      words.put(full.substring(0, 3), month);
    }
    words.put("sept", Month.SEPTEMBER);
    return words;
  }

  /** The month that a word names. */
  public static Optional<Month> named(String word) {
    String key = Texts.key(word);
    return Optional.ofNullable(
        WORDS.get(key.endsWith(".") ? key.substring(0, key.length() - 1) : key));
  }

  /**
   * A month of a year.
   *
   * @throws CellFault if the text is none, or may be two
   */
  public static YearMonth month(String text) {
    return findDate(text)
        .map(YearMonth::from)
        .or(() -> text.length() > LONGEST ? Optional.empty() : withoutDay(text))
        .filter(found -> isOfOurTime(found.getYear()))
        .orElseThrow(() -> new CellFault(where -> ValueAdvice.notAMonth(where, text)));
  }

  /** Whether a text is a month with its year and without a day. */
  public static boolean isMonthAlone(String text) {
    return text.length() <= LONGEST && withoutDay(text).isPresent();
  }

  /**
   * A date with its day.
   *
   * @throws CellFault if the text is none, or may be two
   */
  public static LocalDate date(String text) {
    return findDate(text)
        .filter(found -> isOfOurTime(found.getYear()))
        .orElseThrow(() -> new CellFault(where -> ValueAdvice.notADay(where, text)));
  }

  private static boolean isOfOurTime(int year) {
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  }

  private static Optional<LocalDate> findDate(String text) {
    return text.length() > LONGEST
        ? Optional.empty()
        : dateWithNumbers(text).or(() -> dateWithWords(Texts.key(text)));
  }

  private static Optional<LocalDate> dateWithNumbers(String text) {
    Matcher iso = ISO_DATE.matcher(text);
    if (iso.matches()) {
      return ofDate(iso.group(1), Integer.parseInt(iso.group(2)), iso.group(3));
    }
    Matcher date = DAY_DATE.matcher(text);
    return date.matches() ? ofDayDate(date, text) : Optional.empty();
  }

  /** 15.3.2027 is European; 3/4/2027 may be April or March. */
  private static Optional<LocalDate> ofDayDate(Matcher date, String text) {
    int first = Integer.parseInt(date.group(1));
    int second = Integer.parseInt(date.group(3));
    boolean point = date.group(2).equals(".");
    if (!point && isMonth(first) && isMonth(second) && first != second) {
      LocalDate one = LocalDate.of(year(date.group(4)), second, first);
      LocalDate other = LocalDate.of(year(date.group(4)), first, second);
      throw new CellFault(where -> ValueAdvice.ambiguousDate(where, text, one, other));
    }
    boolean dayFirst = point || second <= 12;
    return ofDate(
        date.group(4), dayFirst ? second : first, dayFirst ? date.group(1) : date.group(3));
  }

  private static boolean isMonth(int number) {
    return number >= 1 && number <= 12;
  }

  private static int year(String digits) {
    return Integer.parseInt(digits) + (digits.length() == 2 ? 2000 : 0);
  }

  private static Optional<LocalDate> dateWithWords(String text) {
    Matcher dayWord = DAY_WORD_YEAR.matcher(text);
    if (dayWord.matches()) {
      return ofNamedDate(dayWord.group(3), dayWord.group(2), dayWord.group(1));
    }
    Matcher wordDay = WORD_DAY_YEAR.matcher(text);
    return wordDay.matches()
        ? ofNamedDate(wordDay.group(3), wordDay.group(1), wordDay.group(2))
        : Optional.empty();
  }

  private static Optional<YearMonth> withoutDay(String text) {
    Matcher yearFirst = YEAR_FIRST.matcher(text);
    if (yearFirst.matches()) {
      return of(yearFirst.group(1), yearFirst.group(2));
    }
    Matcher monthFirst = MONTH_FIRST.matcher(text);
    return monthFirst.matches()
        ? of(monthFirst.group(2), monthFirst.group(1))
        : withWords(Texts.key(text));
  }

  private static Optional<YearMonth> withWords(String text) {
    Matcher wordYear = WORD_YEAR.matcher(text);
    if (wordYear.matches()) {
      return of(wordYear.group(2), wordYear.group(1));
    }
    Matcher yearWord = YEAR_WORD.matcher(text);
    return yearWord.matches() ? of(yearWord.group(1), yearWord.group(2)) : Optional.empty();
  }

  private static Optional<YearMonth> of(String year, String month) {
    Optional<Month> named =
        Character.isDigit(month.charAt(0)) ? numbered(Integer.parseInt(month)) : named(month);
    return named.map(found -> YearMonth.of(year(year), found));
  }

  private static Optional<LocalDate> ofNamedDate(String year, String month, String day) {
    return named(month).flatMap(found -> ofDate(year, found.getValue(), day));
  }

  private static Optional<LocalDate> ofDate(String year, int month, String day) {
    try {
      return Optional.of(LocalDate.of(year(year), month, Integer.parseInt(day)));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  public static Optional<Month> numbered(double number) {
    return number >= 1 && number <= 12 && number == Math.rint(number)
        ? Optional.of(Month.of((int) number))
        : Optional.empty();
  }
}
