package growingon.load.own.text;

import growingon.load.own.sheet.SheetCell;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Months as growers write them in six languages.
 *
 * @param dayFirst whether 3/11/24 is the 3rd of November: as the column shows, empty if it does not
 * @param south whether seasons are those of the southern hemisphere
 */
public record MonthText(Optional<Boolean> dayFirst, boolean south) {
  private static final String[][] NAMES = {
    {"january", "januar", "janner", "janvier", "januari", "gennaio", "enero"},
    {"february", "februar", "feber", "fevrier", "februari", "febbraio", "febrero"},
    {"march", "marz", "maerz", "mrz", "mars", "maart", "mrt", "marzo"},
    {"april", "avril", "aprile", "abril"},
    {"may", "mai", "mei", "maggio", "mayo"},
    {"june", "juni", "juin", "giugno", "junio"},
    {"july", "juli", "juillet", "luglio", "julio"},
    {"august", "aout", "augustus", "agosto"},
    {"september", "septembre", "settembre", "septiembre", "setiembre"},
    {"october", "oktober", "octobre", "ottobre", "octubre"},
    {"november", "novembre", "noviembre"},
    {"december", "dezember", "decembre", "dicembre", "diciembre"},
  };

  /** In place of a month from which on something is so. */
  private static final Set<String> NOW =
      Set.of(
          "now",
          "ready",
          "yes",
          "y",
          "x",
          "ja",
          "jetzt",
          "sofort",
          "fertig",
          "oui",
          "pret",
          "nu",
          "klaar",
          "si",
          "pronto",
          "pronta",
          "lista",
          "listo",
          "immediat",
          "immediatement",
          "dispo",
          "disponible",
          "disponibile",
          "subito",
          "direct",
          "inmediato",
          "ab sofort",
          "lieferbar",
          "leverbaar",
          "available",
          "in stock",
          "ok",
          "asap",
          "ya",
          "ahora");

  private static final Map<Month, Set<String>> SEASONS =
      Map.of(
          Month.APRIL,
          Set.of(
              "spring",
              "fruhjahr",
              "fruehjahr",
              "fruhling",
              "fruhj",
              "fruehj",
              "fj",
              "printemps",
              "voorjaar",
              "lente",
              "primavera",
              "spr"),
          Month.JULY,
          Set.of("summer", "sommer", "ete", "zomer", "estate", "verano", "sum"),
          Month.OCTOBER,
          Set.of(
              "autumn", "aut", "fall", "herbst", "automne", "najaar", "herfst", "autunno",
              "otono"));
  private static final Set<String> WINTER = Set.of("winter", "hiver", "inverno", "invierno");
  private static final Pattern EMPTY =
      Pattern.compile("[-–—?.]+|0{1,2}[./-]0{1,2}[./-]0{2,4}|n/?a|tba");
  private static final Pattern ISO =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})(?:[-/.](\\d{1,2})(?:[T ].*)?)?");
  private static final Pattern DATE =
      Pattern.compile("(\\d{1,2})\\s*([-/.])\\s*(\\d{1,2})\\s*[-/.]\\s*(\\d{4}|\\d{2})");
  private static final Pattern MONTH = Pattern.compile("(\\d{1,2})\\s*[-/.]\\s*(\\d{4}|\\d{2})");
  private static final Pattern WEEK =
      Pattern.compile(
          "(?:wk|week|kw|semaine|sem|settimana|sett|semana)\\.?\\s*(\\d{1,2})\\s*[-/., ]\\s*'?(\\d{4}|\\d{2})");
  private static final Pattern WEEK_ALONE =
      Pattern.compile("(\\d{1,2})\\s*[-/., ]\\s*'?(\\d{4}|\\d{2})");
  private static final Pattern YEAR_WEEK =
      Pattern.compile("(\\d{4})[- ]?(?:wk|w|kw)\\s?(\\d{1,2})");
  private static final Pattern WORD_YEAR =
      Pattern.compile(
          "(?:(\\d{1,2})(?:st|nd|rd|th|er)?[-./ ]*(?:de )?)?(\\p{L}+)[-./, ]*(?:de"
              + " )?'?(\\d{4}|\\d{2})");
  private static final Pattern WORD_DAY_YEAR =
      Pattern.compile("(\\p{L}+)\\.? (\\d{1,2})(?:st|nd|rd|th)?,? '?(\\d{4})");
  private static final Pattern YEAR_WORD = Pattern.compile("(\\d{4})[-./ ]*(\\p{L}+)\\.?");
  private static final Pattern YEAR = Pattern.compile("'?((?:19|20)\\d{2})");
  private static final Pattern ABOUT =
      Pattern.compile("^(?:ca|c|circa|about|approx|env|etwa|~)\\.?\\s*");
  private static final int FIRST_DAY_NUMBER = 36_526;
  private static final int LAST_DAY_NUMBER = 73_050;
  private static final LocalDate DAY_NIL = LocalDate.of(1899, 12, 30);
  private static final Map<String, Month> WORDS = words();

  private static Map<String, Month> words() {
    Map<String, Month> words = new HashMap<>();
    for (Month month : Month.values()) {
      for (String name : NAMES[month.ordinal()]) {
        words.put(name, month);
      }
    }
    return words;
  }

  /** Which order the dates of a column have, where one of them shows it. */
  public static Optional<Boolean> order(List<SheetCell> column) {
    boolean dayFirst = false;
    boolean monthFirst = false;
    for (SheetCell cell : column) {
      Matcher date = DATE.matcher(cell.text().strip());
      if (cell.isText() && date.matches() && !date.group(2).equals(".")) {
        dayFirst |= Integer.parseInt(date.group(1)) > 12;
        monthFirst |= Integer.parseInt(date.group(3)) > 12;
      }
    }
    return dayFirst == monthFirst ? Optional.empty() : Optional.of(dayFirst);
  }

  /** Whether a cell reads as a month, also one that may be two. */
  public static boolean isMonth(SheetCell cell) {
    Read<YearMonth> read = new MonthText(Optional.empty(), false).of(cell);
    return read.value().isPresent() || read.ask().startsWith("is it");
  }

  /** Whether a cell says that something is so already. */
  public static boolean isNow(SheetCell cell) {
    return NOW.contains(Keys.of(cell.text()));
  }

  public Read<YearMonth> of(SheetCell cell) {
    if (cell.date().isPresent()) {
      return ofDate(cell);
    }
    if (cell.number().isPresent()) {
      return ofNumber(cell.number().getAsDouble());
    }
    return text(cell.text().strip());
  }

  /** The month of a cell below a heading that says week: 12/24 is a week of a year. */
  public Read<YearMonth> ofWeek(SheetCell cell) {
    Matcher week = WEEK_ALONE.matcher(cell.text().strip());
    return cell.isText() && week.matches() ? thursday(week.group(2), week.group(1)) : of(cell);
  }

  private static Read<YearMonth> ofDate(SheetCell cell) {
    LocalDate date = cell.date().orElseThrow();
    if (!cell.yearShown()) {
      return Read.ask("which year? the spreadsheet shows none");
    }
    return isOfOurTime(date.getYear()) ? Read.of(YearMonth.from(date)) : Read.ask("which month?");
  }

  private Read<YearMonth> ofNumber(double number) {
    if (number != Math.rint(number)) {
      return Read.ask("which month?");
    }
    if (number >= 1990 && number <= 2099) {
      return year((int) number);
    }
    if (number >= 19_900_101 && number <= 20_991_231) {
      return ofDigits(Long.toString((long) number));
    }
    return number >= FIRST_DAY_NUMBER && number <= LAST_DAY_NUMBER
        ? Read.of(YearMonth.from(DAY_NIL.plusDays((long) number)))
        : Read.ask("which month?");
  }

  private Read<YearMonth> ofDigits(String digits) {
    return date(digits.substring(0, 4), digits.substring(4, 6), digits.substring(6));
  }

  private Read<YearMonth> year(int year) {
    return Read.about(YearMonth.of(year, south ? Month.SEPTEMBER : Month.MARCH));
  }

  private Read<YearMonth> text(String text) {
    String key = folded(text);
    if (EMPTY.matcher(key).matches()) {
      return Read.none();
    }
    String bare = ABOUT.matcher(key).replaceFirst("");
    Read<YearMonth> read =
        numbered(bare)
            .or(() -> week(bare))
            .or(() -> worded(bare))
            .or(() -> FeastDays.month(bare).map(Read::about))
            .or(() -> FeastDays.wholeMonth(bare).flatMap(this::worded).map(Read::roughly))
            .orElseGet(() -> Read.ask("which month and year?"));
    return bare.equals(key) || read.value().isEmpty() ? read : read.roughly();
  }

  private static String folded(String text) {
    return java.text.Normalizer.normalize(text.replace("ß", "ss"), java.text.Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(java.util.Locale.ROOT)
        .replaceAll("[\\s\\p{Z}]+", " ")
        .strip();
  }

  private Optional<Read<YearMonth>> numbered(String text) {
    Matcher iso = ISO.matcher(text);
    if (iso.matches()) {
      return Optional.of(
          date(iso.group(1), iso.group(2), iso.group(3) == null ? "1" : iso.group(3)));
    }
    Matcher date = DATE.matcher(text);
    if (date.matches()) {
      return Optional.of(dayDate(date));
    }
    Matcher month = MONTH.matcher(text);
    if (month.matches() && mayBeDay(month)) {
      return Optional.of(Read.ask("which month and year? %s may be a day too".formatted(text)));
    }
    if (month.matches()) {
      return Optional.of(date(month.group(2), month.group(1), "1"));
    }
    Matcher year = YEAR.matcher(text);
    if (year.matches()) {
      return Optional.of(year(Integer.parseInt(year.group(1))));
    }
    if (text.matches("[34][0-9]{4}")) {
      return Optional.of(ofNumber(Double.parseDouble(text)));
    }
    return text.matches("(?:19|20)[0-9]{6}") ? Optional.of(ofDigits(text)) : Optional.empty();
  }

  /** 11/12 is November 2012, or the 11th of December of some year. */
  private static boolean mayBeDay(Matcher month) {
    int first = Integer.parseInt(month.group(1));
    int second = Integer.parseInt(month.group(2));
    return month.group(2).length() == 2 && first <= 12 && second >= 1 && second <= 12;
  }

  private Read<YearMonth> dayDate(Matcher date) {
    int first = Integer.parseInt(date.group(1));
    int second = Integer.parseInt(date.group(3));
    boolean point = date.group(2).equals(".");
    boolean both = first <= 12 && second <= 12 && first != second && !point;
    if (both && dayFirst.isEmpty()) {
      return twoMonths(date.group(4), first, second);
    }
    boolean dayLeads = point || (both ? dayFirst.get() : second <= 12);
    return dayLeads
        ? date(date.group(4), date.group(3), date.group(1))
        : date(date.group(4), date.group(1), date.group(3));
  }

  private static Read<YearMonth> twoMonths(String year, int first, int second) {
    int whole = yearOf(year);
    return Read.ask(
        "is it %s or %s %d?".formatted(dayOf(first, second), dayOf(second, first), whole));
  }

  private static String dayOf(int day, int month) {
    return day
        + " "
        + Month.of(month).getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH);
  }

  private static int yearOf(String digits) {
    return Integer.parseInt(digits) + (digits.length() == 2 ? 2000 : 0);
  }

  private static Read<YearMonth> date(String year, String month, String day) {
    try {
      LocalDate date = LocalDate.of(yearOf(year), Integer.parseInt(month), Integer.parseInt(day));
      return isOfOurTime(date.getYear()) ? Read.of(YearMonth.from(date)) : Read.ask("which year?");
    } catch (DateTimeException noSuchDay) {
      return Read.ask("there is no such day; which month?");
    }
  }

  private static boolean isOfOurTime(int year) {
    return year >= 1950 && year <= 2099;
  }

  /** The month of the week's Thursday (ISO 8601). */
  private static Optional<Read<YearMonth>> week(String text) {
    Matcher week = WEEK.matcher(text);
    if (week.matches()) {
      return Optional.of(thursday(week.group(2), week.group(1)));
    }
    Matcher yearWeek = YEAR_WEEK.matcher(text);
    return yearWeek.matches()
        ? Optional.of(thursday(yearWeek.group(1), yearWeek.group(2)))
        : Optional.empty();
  }

  private static Read<YearMonth> thursday(String year, String week) {
    int number = Integer.parseInt(week);
    if (number < 1 || number > 53) {
      return Read.ask("which week?");
    }
    LocalDate start = LocalDate.of(yearOf(year), 1, 4);
    LocalDate thursday =
        start.with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, number).with(java.time.DayOfWeek.THURSDAY);
    return Read.of(YearMonth.from(thursday));
  }

  private Optional<Read<YearMonth>> worded(String text) {
    Matcher wordDay = WORD_DAY_YEAR.matcher(text);
    if (wordDay.matches() && named(wordDay.group(1)).isPresent()) {
      return Optional.of(date(wordDay.group(3), number(wordDay.group(1)), wordDay.group(2)));
    }
    Matcher word = WORD_YEAR.matcher(text);
    if (word.matches()) {
      return wordAndYear(word.group(2), word.group(3), Optional.ofNullable(word.group(1)));
    }
    Matcher yearWord = YEAR_WORD.matcher(text);
    return yearWord.matches()
        ? wordAndYear(yearWord.group(2), yearWord.group(1), Optional.empty())
        : Optional.empty();
  }

  private static String number(String word) {
    return Integer.toString(named(word).orElseThrow().getValue());
  }

  private Optional<Read<YearMonth>> wordAndYear(String word, String year, Optional<String> day) {
    Optional<Month> month = named(word);
    if (month.isPresent()) {
      return Optional.of(date(year, number(word), day.orElse("1")));
    }
    if (WINTER.contains(word)) {
      return Optional.of(Read.ask("which month and year?"));
    }
    return season(word)
        .map(found -> Read.about(YearMonth.of(yearOf(year), south ? found.plus(6) : found)));
  }

  private static Optional<Month> season(String word) {
    return SEASONS.entrySet().stream()
        .filter(each -> each.getValue().contains(word))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** The month a word names; beginnings of three letters and more count where one month fits. */
  public static Optional<Month> named(String word) {
    Month whole = WORDS.get(word);
    if (whole != null || word.length() < 3) {
      return Optional.ofNullable(whole);
    }
    List<Month> begun =
        WORDS.entrySet().stream()
            .filter(
                each ->
                    each.getKey().startsWith(word)
                        || (word.equals("sept") && each.getKey().startsWith("sep")))
            .map(Map.Entry::getValue)
            .distinct()
            .toList();
    return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
  }

  /** Whether a text is a season or year by itself: what a group row says of the rows below it. */
  public static boolean isSeasonOrYear(String text) {
    String key = Keys.of(text);
    return YEAR.matcher(key).matches()
        || new MonthText(Optional.empty(), false)
            .worded(key)
            .filter(read -> read.value().isPresent())
            .isPresent();
  }
}
