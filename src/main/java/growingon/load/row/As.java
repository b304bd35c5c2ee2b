package growingon.load.row;

import growingon.load.cell.Amount;
import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Currency;
import growingon.load.cell.Months;
import growingon.load.cell.Nearest;
import growingon.load.cell.Range;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.problem.advice.SettingsAdvice;
import growingon.problem.advice.ValueAdvice;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a cell is read as.
 *
 * @param <T> type of the value
 * @param placeholder stands in for a value that could not be read; never gets past its row
 * @param reader turns a filled cell into a value or throws {@link CellFault}
 * @param shown the value as listed among the assumptions
 * @param unit its unit, from the heading
 */
public record As<T>(
    T placeholder, Reader<T> reader, Function<T, String> shown, Function<String, String> unit) {

  /** Turns a filled cell into a value. */
  public interface Reader<T> {
    T read(Cell cell, Spot spot);
  }

  /** Longest name; anything longer is a note that slipped into the wrong column. */
  public static final int LONGEST_NAME = 100;

  private static final Range SURE = Range.of(1, 100);
  private static final Function<String, String> NO_UNIT = heading -> "";
  private static final Function<String, String> OF_HEADING = heading -> Unit.of(heading).word();

  /** Free text. */
  public static final As<String> TEXT = new As<>("", As::text, text -> text, NO_UNIT);

  /** A name; a number as it is shown, so that lot 12 is "12". */
  public static final As<String> NAME = new As<>("", As::name, text -> text, NO_UNIT);

  /** A month of a year. */
  public static final As<YearMonth> MONTH =
      new As<>(YearMonth.of(2000, 1), As::month, YearMonth::toString, NO_UNIT);

  /** A date with its day. */
  public static final As<LocalDate> DATE =
      new As<>(LocalDate.of(2000, 1, 1), As::date, LocalDate::toString, NO_UNIT);

  /** A month of every year. */
  public static final As<Month> CALENDAR_MONTH =
      new As<>(Month.JANUARY, As::calendarMonth, As::nameOf, NO_UNIT);

  /** Yes or no. */
  public static final As<Boolean> YES_NO =
      new As<>(false, As::yesNo, yes -> yes ? "yes" : "no", NO_UNIT);

  private static final Map<String, Boolean> YES_NO_WORDS =
      Map.of(
          "yes", true, "y", true, "true", true, "x", true, "1", true, "no", false, "n", false,
          "false", false, "0", false);

  /** A number in the unit of the heading. */
  public static As<Double> number(Range range) {
    return new As<>(
        0.0,
        (cell, spot) -> range.check(measure(cell, spot), cell.shown(), spot),
        Cell.Number::plain,
        OF_HEADING);
  }

  /** A whole number. */
  public static As<Integer> whole(Range range) {
    return new As<>(
        0,
        (cell, spot) -> wholeOf(range.check(measure(cell, spot), cell.shown(), spot), cell),
        Object::toString,
        OF_HEADING);
  }

  /** A whole number of any size. */
  public static As<Long> wholeLong() {
    return new As<>(0L, As::longOf, Object::toString, OF_HEADING);
  }

  /** A share of 0 to 100 %, kept as 0 to 1. */
  public static As<Double> share() {
    return percent(Range.SHARE);
  }

  /** How sure something is: 1 to 100 %, kept as 0.01 to 1. */
  public static As<Double> sure() {
    return new As<>(
        1.0,
        (cell, spot) -> sureOf(percentTyped(cell, spot), cell.shown()) / 100,
        share -> Cell.Number.plain(share * 100),
        heading -> Unit.PERCENT.word());
  }

  private static double sureOf(double percent, String shown) {
    if (percent < SURE.least()) {
      throw new CellFault(where -> ValueAdvice.notSure(where, shown));
    }
    return SURE.check(percent, shown);
  }

  /** A percentage, kept as a share of 1. */
  public static As<Double> percent(Range range) {
    return new As<>(
        0.0,
        (cell, spot) -> range.check(percentOf(cell, spot), cell.shown(), spot) / 100,
        share -> Cell.Number.plain(share * 100),
        OF_HEADING);
  }

  /** The code of a currency. */
  public static As<String> currency() {
    return new As<>("", (cell, spot) -> currencyOf(cell), text -> text, heading -> "");
  }

  private static String currencyOf(Cell cell) {
    return Currency.code(cell.shown())
        .orElseThrow(
            () -> new CellFault(where -> SettingsAdvice.notACurrency(where, cell.shown())));
  }

  /** An amount of money in the currency. */
  public static As<Double> money(String currency, Range range) {
    return new As<>(
        0.0,
        (cell, spot) -> range.check(moneyOf(cell, spot, currency), cell.shown(), spot),
        Cell.Number::plain,
        heading -> currency);
  }

  /** One of the words that the values of an enumeration are written as. */
  public static <E extends Enum<E>> As<E> word(Class<E> type) {
    List<E> values = Arrays.asList(type.getEnumConstants());
    return new As<>(values.get(0), (cell, spot) -> oneOf(values, cell), E::toString, NO_UNIT);
  }

  /** Twelve shares or percentages of a year, January first. */
  static As<List<Double>> twelve() {
    return new As<>(List.of(), As::twelveOf, As::list, NO_UNIT);
  }

  public static String nameOf(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String text(Cell cell, Spot spot) {
    if (cell instanceof Cell.Items || cell instanceof Cell.Fields) {
      throw new CellFault(where -> ValueAdvice.notOneValue(where, cell.shown()));
    }
    return cell.shown();
  }

  private static String name(Cell cell, Spot spot) {
    if (cell instanceof Cell.Date) {
      throw new CellFault(where -> ValueAdvice.dateForName(where, cell.shown()));
    }
    String name = text(cell, spot);
    if (name.length() > LONGEST_NAME) {
      throw new CellFault(where -> ValueAdvice.nameTooLong(where, name, LONGEST_NAME));
    }
    return name;
  }

  /** The number of a cell in the unit of its heading; a percentage is none. */
  private static double measure(Cell cell, Spot spot) {
    if (cell instanceof Cell.Number number) {
      if (number.percent()) {
        throw new CellFault(where -> ValueAdvice.percentWhereNone(where, cell.shown()));
      }
      return number.value();
    }
    Amount amount = amount(cell, spot);
    if (!amount.isBare() && !isIn(Unit.of(spot.heading()), amount)) {
      String unit = Unit.of(spot.heading()).word();
      throw new CellFault(where -> ValueAdvice.wrongUnit(where, cell.shown(), unit));
    }
    return amount.value();
  }

  private static boolean isIn(Unit unit, Amount amount) {
    return amount.before().isEmpty() && unit.accepts(amount.behind());
  }

  /** 0.8 under a % heading is 0.8 %, but may have been meant as 80 %. */
  private static double percentOf(Cell cell, Spot spot) {
    double percent = percentTyped(cell, spot);
    if (percent > 0 && percent < 1 && !saysPercent(cell, spot)) {
      spot.remark(where -> ValueAdvice.smallPercent(where, cell.shown()));
    }
    return percent;
  }

  private static boolean saysPercent(Cell cell, Spot spot) {
    return cell instanceof Cell.Number number
        ? number.percent()
        : !amount(cell, spot).behind().isEmpty();
  }

  /** A number under a % heading is in percent; 0.2 that the spreadsheet shows as 20 % is 20. */
  private static double percentTyped(Cell cell, Spot spot) {
    if (cell instanceof Cell.Number number) {
      return number.percent() ? number.value() * 100 : number.value();
    }
    Amount amount = amount(cell, spot);
    if (!isIn(Unit.PERCENT, amount)) {
      throw new CellFault(where -> ValueAdvice.wrongUnit(where, cell.shown(), "%"));
    }
    return amount.value();
  }

  private static double moneyOf(Cell cell, Spot spot, String currency) {
    if (cell instanceof Cell.Number number && !number.percent()) {
      return number.value();
    }
    Amount amount = amount(cell, spot);
    String mark = amount.before() + amount.behind();
    if (!mark.isEmpty() && !Currency.means(mark, currency)) {
      throw new CellFault(where -> ValueAdvice.wrongCurrency(where, cell.shown(), currency));
    }
    return amount.value();
  }

  private static Amount amount(Cell cell, Spot spot) {
    if (cell instanceof Cell.Text text) {
      return Amount.of(text.text(), spot.style());
    }
    throw new CellFault(where -> ValueAdvice.notANumber(where, cell.shown()));
  }

  private static int wholeOf(double value, Cell cell) {
    if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
      throw new CellFault(where -> ValueAdvice.notWhole(where, cell.shown()));
    }
    return (int) value;
  }

  private static long longOf(Cell cell, Spot spot) {
    double value = measure(cell, spot);
    if (value != Math.rint(value) || Math.abs(value) > 1L << 53) {
      throw new CellFault(where -> ValueAdvice.notWhole(where, cell.shown()));
    }
    return (long) value;
  }

  private static YearMonth month(Cell cell, Spot spot) {
    if (cell instanceof Cell.Date date) {
      return monthOf(date, spot);
    }
    if (cell instanceof Cell.Text text) {
      return Months.month(text.text());
    }
    throw new CellFault(where -> ValueAdvice.notAMonth(where, cell.shown()));
  }

  private static YearMonth monthOf(Cell.Date date, Spot spot) {
    if (!date.yearShown()) {
      spot.remark(where -> ValueAdvice.yearNotShown(where, date.shown()));
    }
    return YearMonth.from(date.date());
  }

  private static LocalDate date(Cell cell, Spot spot) {
    if (cell instanceof Cell.Date date) {
      if (!date.yearShown()) {
        spot.remark(where -> ValueAdvice.yearOfDateNotShown(where, date.shown()));
      }
      return date.date();
    }
    if (cell instanceof Cell.Text text) {
      return Months.date(text.text());
    }
    throw new CellFault(where -> ValueAdvice.notADay(where, cell.shown()));
  }

  private static Month calendarMonth(Cell cell, Spot spot) {
    Optional<Month> month = Optional.empty();
    if (cell instanceof Cell.Date date) {
      month = Optional.of(date.date().getMonth());
    } else if (cell instanceof Cell.Number number && !number.percent()) {
      month = Months.numbered(number.value());
    } else if (cell instanceof Cell.Text text) {
      month = Months.named(text.text()).or(() -> numberedMonth(text.text(), spot));
    }
    return month.orElseThrow(
        () -> new CellFault(where -> ValueAdvice.notACalendarMonth(where, cell.shown())));
  }

  private static Optional<Month> numberedMonth(String text, Spot spot) {
    return Amount.find(text, spot.style())
        .filter(Amount::isBare)
        .flatMap(amount -> Months.numbered(amount.value()));
  }

  private static boolean yesNo(Cell cell, Spot spot) {
    return yesOrNo(cell)
        .orElseThrow(() -> new CellFault(where -> ValueAdvice.notYesOrNo(where, cell.shown())));
  }

  /** Yes or no, if the cell says either. */
  public static Optional<Boolean> yesOrNo(Cell cell) {
    return Optional.ofNullable(YES_NO_WORDS.get(Texts.key(cell.shown())));
  }

  private static <E extends Enum<E>> E oneOf(List<E> values, Cell cell) {
    return find(values, cell.shown())
        .or(() -> find(values, Texts.headingKey(cell.shown())))
        .orElseThrow(() -> noneOf(values.stream().map(E::toString).toList(), cell));
  }

  private static <E extends Enum<E>> Optional<E> find(List<E> values, String word) {
    for (E value : values) {
      if (value.toString().equals(word)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  private static CellFault noneOf(List<String> words, Cell cell) {
    return new CellFault(
        where -> ValueAdvice.notOneOf(where, cell.shown(), words, Nearest.to(cell.shown(), words)));
  }

  /** A JSON list, or a text with semicolons between the numbers. */
  private static List<Double> twelveOf(Cell cell, Spot spot) {
    List<Cell> cells = cell instanceof Cell.Items items ? items.items() : parts(cell);
    List<Double> values = new ArrayList<>();
    for (Cell each : cells) {
      values.add(Range.FROM_ZERO.check(percentOrShare(each, spot), each.shown()));
    }
    if (values.size() != 12) {
      throw new CellFault(where -> ValueAdvice.notTwelve(where, cell.shown(), values.size()));
    }
    return values;
  }

  private static double percentOrShare(Cell cell, Spot spot) {
    if (cell instanceof Cell.Number number) {
      return number.value();
    }
    Amount amount = amount(cell, spot);
    if (!isIn(Unit.PERCENT, amount)) {
      throw new CellFault(where -> ValueAdvice.notANumber(where, cell.shown()));
    }
    return amount.value();
  }

  private static List<Cell> parts(Cell cell) {
    return cell instanceof Cell.Text text
        ? Arrays.stream(text.text().split(";", -1)).map(Cell::ofText).toList()
        : List.of(cell);
  }

  private static String list(List<Double> values) {
    return String.join("; ", values.stream().map(Cell.Number::plain).toList());
  }

  /** A number that may be missing, as the domain has it. */
  public static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
