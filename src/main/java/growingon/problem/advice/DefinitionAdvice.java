package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.list;
import static growingon.problem.advice.Wording.shown;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;

/** What is wrong, where, and what to do: names that are defined in one table and used in others. */
public final class DefinitionAdvice {
  private DefinitionAdvice() {}

  public static Problem rankTwice(Where where, int rank) {
    return error(
        where,
        Reason.DUPLICATE,
        "two grades of the ladder have the rank " + MarkedText.number(rank),
        "give each its own");
  }

  public static Problem trunkFallsUpLadder(
      Where where, String found, String lower, double lowerTrunkMm) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the least trunk is less than the "
            + MarkedText.number(lowerTrunkMm)
            + " mm of the lower grade "
            + shown(lower),
        found,
        "correct trunks or ranks");
  }

  public static Problem baseOverTop(Where where, String found) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "the base of this pot is wider than its top",
        found,
        "see that they are not swapped");
  }

  public static Problem litresAgainstMeasures(
      Where where, String found, double brim, double stated) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "the measures give %s litres to the brim, but %s litres are stated and used"
            .formatted(MarkedText.number(brim, 2), MarkedText.number(stated, 2)),
        found,
        "a label is not a volume: leave litres empty to use the measures");
  }

  public static Problem componentTwice(Where where, String component) {
    return error(
        where,
        Reason.DUPLICATE,
        "the mix has this component already",
        component,
        "add up its parts");
  }

  public static Problem closesBeforeOpening(Where where, YearMonth until, YearMonth from) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the place closes before it opens in " + MarkedText.month(from),
        until.toString(),
        "correct one of them");
  }

  public static Problem onceWithFrom(Where where, YearMonth month) {
    return error(
        where,
        Reason.CONTRADICTION,
        "what falls in one month has no first or last month",
        month.toString(),
        "leave it empty, or write every month or every season under month");
  }

  public static Problem endsBeforeItBegins(Where where, YearMonth to, YearMonth from) {
    return error(
        where,
        Reason.CONTRADICTION,
        "it ends before it begins in " + MarkedText.month(from),
        to.toString(),
        "correct one of them");
  }

  public static Problem orderedAfterArrival(Where where, YearMonth month, YearMonth arrival) {
    return error(
        where,
        Reason.CONTRADICTION,
        "it is ordered after it arrives in " + MarkedText.month(arrival),
        month.toString(),
        "correct one of them");
  }

  public static Problem growthAfterWithoutRootWork(Where where, String found) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "growth after root work changes nothing in a step without root work",
        found,
        "write yes under root work, or leave this empty");
  }

  public static Problem speciesTwice(Where where, String name) {
    return error(
        where,
        Reason.DUPLICATE,
        "this species is given already, in this file or in the table species",
        name,
        "keep one of them");
  }

  public static Problem usualWithoutCurve(
      Where where, String condition, Collection<String> curves) {
    return error(
        where,
        Reason.MISSING,
        curves.isEmpty()
            ? "the species has no growth in any condition"
            : "the usual condition has no growth; there is growth for " + list(curves),
        condition,
        "add mm a year " + shown(condition) + ", or a curve in species.json");
  }

  public static Problem notOfCurve(Where where, String key, String curve, List<String> parameters) {
    return error(
        where,
        Reason.UNKNOWN_NAME,
        "a " + curve + " curve has no such parameter",
        key,
        "it has " + list(parameters));
  }
}
