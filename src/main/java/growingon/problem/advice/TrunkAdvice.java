package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.notice;
import static growingon.problem.advice.Wording.shown;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;

/** What is wrong, where, and what to do: trunks and girths, and how they were taken. */
public final class TrunkAdvice {
  private TrunkAdvice() {}

  public static Problem trunkOrGirth(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is neither a trunk in mm nor a girth in cm",
        found,
        "write 35 for a trunk of 35 mm, or 12-14 cm for a girth");
  }

  public static Problem trunkOrGirthRange(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this may be a trunk in mm or a girth in cm",
        found,
        "write " + shown(found) + " mm for the trunk, or " + shown(found) + " cm for the girth");
  }

  public static Problem sizeBecameDate(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this size has become a date",
        found,
        "format the cell as text and type it again, as in 10-12 cm");
  }

  public static Problem trunkConverted(Where where, String found, String mm, int more) {
    return notice(
        where,
        Reason.ASSUMED,
        "this counts as a trunk of " + mm + " mm" + andMore(more),
        found,
        "");
  }

  public static Problem girthConverted(Where where, String found, String mm, int more) {
    return notice(
        where,
        Reason.ASSUMED,
        "this girth counts as a trunk of " + mm + " mm, by the girth base factor" + andMore(more),
        found,
        "");
  }

  public static Problem takenForGirth(Where where, String found, String mm, int more) {
    return warning(
        where,
        Reason.ASSUMED,
        "this is taken for a girth, as it is a girth class of the trade, and counts as a trunk of "
            + mm
            + " mm"
            + andMore(more),
        found,
        "if it is a trunk, write trunk behind it");
  }

  public static Problem rangesLikeGirths(Where where, String found, int ranges) {
    return warning(
        where,
        Reason.ASSUMED,
        ranges == 1
            ? "this range counts in the unit of its heading, but is also a girth class of the trade"
            : "the "
                + MarkedText.number(ranges)
                + " ranges here count in the unit of their heading, but all are also girth classes"
                + " of the trade",
        found,
        "if they are girths, call the column girth cm");
  }

  /** As in ", and 3 more rows are read so". */
  private static String andMore(int rows) {
    if (rows == 0) {
      return "";
    }
    return rows == 1
        ? "; 1 more row is read so"
        : "; " + MarkedText.number(rows) + " more rows are read so";
  }
}
