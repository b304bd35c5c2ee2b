package growingon.load.table.route;

import growingon.load.cell.Amount;
import growingon.load.cell.Cell;
import growingon.load.cell.CellFault;
import growingon.load.cell.Months;
import growingon.load.cell.Spot;
import growingon.load.cell.Texts;
import growingon.load.row.As;
import growingon.load.row.Names;
import growingon.load.row.Unit;
import growingon.nursery.route.When;
import growingon.problem.advice.RouteAdvice;
import java.time.Month;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a step is due, as typed: "arrival", "March year 0", "3 months after wire", "every 3 years in
 * March", "every year in March", "March once trunk 40".
 */
final class WhenText {
  private static final Pattern ARRIVAL = Pattern.compile("(?:on |at )?arrival");
  private static final Pattern IN_YEAR =
      Pattern.compile("(?:in )?(\\p{L}+)\\.?,?(?: of| in)? year ([0-9]{1,2})");
  private static final Pattern AFTER = Pattern.compile("([0-9]{1,3}) months? after (.+)");
  private static final Pattern EVERY =
      Pattern.compile("every (?:([0-9]{1,2}) years?|year),?(?: in)? (\\p{L}+)\\.?");
  private static final Pattern ONCE =
      Pattern.compile("(?:in )?(\\p{L}+)\\.?,? once(?: the)? trunk(?: is)? (.+)");

  /** Longest text that is looked at. */
  private static final int LONGEST = 200;

  private WhenText() {}

  /**
   * As the cell of a step.
   *
   * @param earlier the once-only steps above it in its route
   */
  static As<When> cell(Names earlier) {
    return new As<>(
        new When.Arrival(),
        (cell, spot) -> read(cell, earlier, spot),
        When::toString,
        heading -> "");
  }

  private static When read(Cell cell, Names earlier, Spot spot) {
    String text = Texts.clean(cell.shown());
    if (!(cell instanceof Cell.Text) || text.length() > LONGEST) {
      throw new CellFault(where -> RouteAdvice.notAWhen(where, text));
    }
    String key = Texts.key(text);
    if (ARRIVAL.matcher(key).matches()) {
      return new When.Arrival();
    }
    return inYear(key)
        .or(() -> after(key, earlier))
        .or(() -> every(key))
        .or(() -> once(key, spot))
        .orElseThrow(() -> new CellFault(where -> RouteAdvice.notAWhen(where, text)));
  }

  private static Optional<When> inYear(String key) {
    Matcher matcher = IN_YEAR.matcher(key);
    return matcher.matches()
        ? Months.named(matcher.group(1))
            .map(month -> new When.InYear(month, Integer.parseInt(matcher.group(2))))
        : Optional.empty();
  }

  private static Optional<When> after(String key, Names earlier) {
    Matcher matcher = AFTER.matcher(key);
    return matcher.matches()
        ? Optional.of(
            new When.After(Integer.parseInt(matcher.group(1)), earlier.spelling(matcher.group(2))))
        : Optional.empty();
  }

  private static Optional<When> every(String key) {
    Matcher matcher = EVERY.matcher(key);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int years = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
    Optional<Month> month = Months.named(matcher.group(2));
    return years < 1 ? Optional.empty() : month.map(found -> new When.Every(years, found));
  }

  private static Optional<When> once(String key, Spot spot) {
    Matcher matcher = ONCE.matcher(key);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    Optional<Double> trunk =
        Amount.find(matcher.group(2), spot.style())
            .filter(each -> each.before().isEmpty() && Unit.MM.accepts(each.behind()))
            .map(Amount::value)
            .filter(mm -> mm > 0);
    return Months.named(matcher.group(1))
        .flatMap(month -> trunk.map(mm -> new When.Once(month, mm)));
  }
}
