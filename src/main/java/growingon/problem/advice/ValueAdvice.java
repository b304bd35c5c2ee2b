package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.list;
import static growingon.problem.advice.Wording.notice;
import static growingon.problem.advice.Wording.shown;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is wrong, where, and what to do: values of cells. */
public final class ValueAdvice {
  private ValueAdvice() {}

  public static Problem notANumber(Where where, String found) {
    return error(
        where, Reason.WRONG_VALUE, "this is no number", found, "write digits, such as 12.5");
  }

  public static Problem ambiguousNumber(
      Where where, String found, String thousands, String decimals) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this may be thousands or decimals",
        found,
        "write " + thousands + " or " + decimals);
  }

  public static Problem decimalComma(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this number has a decimal comma, which only files with semicolons between the columns may use",
        found,
        "write a decimal point");
  }

  public static Problem notWhole(Where where, String found) {
    return error(where, Reason.WRONG_VALUE, "this must be a whole number", found, "round it");
  }

  public static Problem wrongUnit(Where where, String found, String unit) {
    return error(
        where,
        Reason.WRONG_VALUE,
        unit.isEmpty() ? "this is a count and has no such unit" : "this number must be in " + unit,
        found,
        unit.isEmpty() ? "write the number alone" : "write it in " + unit + " or without a unit");
  }

  public static Problem percentWhereNone(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is a percentage under a heading without %",
        found,
        "write the number itself and format the cell as a number");
  }

  public static Problem smallPercent(Where where, String found) {
    return notice(
        where,
        Reason.ASSUMED,
        "less than 1 % is meant here, by the heading",
        found,
        "write 80 for 80 %");
  }

  public static Problem wrongCurrency(Where where, String found, String currency) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this amount must be in " + currency,
        found,
        "write it in " + currency + " or without a currency");
  }

  public static Problem outOfRange(Where where, String found, String allowed) {
    return error(where, Reason.OUT_OF_RANGE, "this must be " + allowed, found, "correct it");
  }

  public static Problem unused(Where where, String what, List<String> names) {
    return notice(
        where,
        Reason.UNKNOWN_NAME,
        names.size() == 1
            ? "no lot and no offer uses the " + what + " " + list(names)
            : "no lot and no offer uses the " + plural(what) + " " + list(names),
        "");
  }

  public static Problem unusedSlip(Where where, String what, String found, String near) {
    return warning(
        where,
        Reason.UNKNOWN_NAME,
        "no lot and no offer uses this "
            + what
            + ", whose name is nearly that of the "
            + what
            + " "
            + shown(near)
            + " in use",
        found,
        "if " + shown(near) + " is meant, write it so");
  }

  private static String plural(String what) {
    return what.endsWith("x") ? what + "es" : what + "s";
  }

  public static Problem looksLikeASlip(Where where, String found, String how) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this looks like a slip, as it is " + how,
        found,
        "see that it is right");
  }

  public static Problem roomLooksLikeASlip(
      String place, double neededM2, double usableM2, String month) {
    return warning(
        Where.NOWHERE,
        Reason.OUT_OF_RANGE,
        "the place "
            + shown(place)
            + " would need "
            + MarkedText.number(neededM2, 1)
            + " m² in "
            + month
            + " and has "
            + MarkedText.number(usableM2, 1)
            + " m², which looks like a slip",
        "see to the numbers of plants, their spacing and pots, and its square metres");
  }

  public static Problem potIsHuge(Where where, String found, double litres) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this looks like a slip, as the pot holds "
            + MarkedText.number(litres, 0)
            + " litres by its measures",
        found,
        "see that they are in mm");
  }

  public static Problem notSure(Where where, String found) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "how sure something is must be between 1 and 100",
        found,
        "write 20 or so where you hardly know");
  }

  public static Problem notAMonth(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is no month of a year",
        found,
        "write it as 2027-03 or Mar 2027");
  }

  public static Problem ambiguousDate(
      Where where, String found, LocalDate dayFirst, LocalDate monthFirst) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this date may be day or month first",
        found,
        "write " + dayFirst + " or " + monthFirst);
  }

  public static Problem yearNotShown(Where where, String found) {
    return warning(
        where,
        Reason.ASSUMED,
        "this cell shows no year but holds one, perhaps that in which it was typed",
        found,
        "see that the year is right, and write it as 2027-03");
  }

  public static Problem notADay(Where where, String found) {
    return error(
        where, Reason.WRONG_VALUE, "this is no date with its day", found, "write it as 2027-03-15");
  }

  public static Problem yearOfDateNotShown(Where where, String found) {
    return warning(
        where,
        Reason.ASSUMED,
        "this cell shows no year but holds one, perhaps that in which it was typed",
        found,
        "see that the year is right, and write it as 2027-03-15");
  }

  public static Problem notACalendarMonth(Where where, String found) {
    return error(where, Reason.WRONG_VALUE, "this is no month", found, "write March or 3");
  }

  public static Problem notYesOrNo(Where where, String found) {
    return error(where, Reason.WRONG_VALUE, "this must be yes or no", found, "write yes or no");
  }

  public static Problem notOneOf(
      Where where, String found, List<String> words, Optional<String> nearest) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this must be one of " + list(words),
        found,
        nearest.map(near -> "perhaps " + near + " is meant").orElse("write one of them"));
  }

  public static Problem notOneValue(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "a single value must stand here",
        found,
        "write a text or number");
  }

  public static Problem dateForName(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this name has become a date",
        found,
        "format the cell as text and type the name again");
  }

  public static Problem nameless(Where where, String what) {
    return error(where, Reason.MISSING, "here a name of the " + what + " must stand", "name it");
  }

  public static Problem nameTooLong(Where where, String found, int most) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "a name has at most " + MarkedText.number(most) + " letters",
        found,
        "shorten it; longer texts belong under note");
  }

  public static Problem unknownName(
      Where where, String what, String found, String table, Optional<String> nearest) {
    return error(
        where,
        Reason.UNKNOWN_NAME,
        "unknown " + what,
        found,
        nearest.map(near -> "the nearest known one is " + near).orElse("see the table " + table));
  }

  public static Problem defined(Where where, String found, String there) {
    return error(
        where,
        Reason.DUPLICATE,
        "this is given already" + (found.equals(there) ? "" : ", as " + shown(there)),
        found,
        "keep one of them, or rename it");
  }

  public static Problem otherwiseAbove(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a row above says otherwise",
        found,
        "say it once, or the same on every row");
  }

  public static Problem notTwelve(Where where, String found, int count) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "twelve numbers are needed, January first, but there are " + MarkedText.number(count),
        found,
        "write one for each month");
  }

  public static Problem sharesDoNotSum(Where where, double sum) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the twelve shares must sum to 1 or 100, but sum to " + MarkedText.number(sum),
        "correct them");
  }

  public static Problem sharesScaled(Where where, double sum) {
    return notice(
        where,
        Reason.ASSUMED,
        "the twelve shares sum to " + MarkedText.number(sum) + " and are scaled to the whole",
        "");
  }

  public static Problem halfSpan(Where where) {
    return error(
        where,
        Reason.MISSING,
        "from month and to month go together",
        "fill in both, or neither for the whole year");
  }
}
