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

/** What is wrong, where, and what to do: daybook rows. */
public final class DaybookAdvice {
  private DaybookAdvice() {}

  public static Problem beforeTheLot(Where where, String found, String lot, String from) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the lot " + shown(lot) + " is not there before " + from,
        found,
        "correct the date, or the arrival of the lot");
  }

  public static Problem noReportFolder(Where where, String why, String folder, String remedy) {
    return error(where, Reason.WRONG_VALUE, "the report's folder " + why, folder, remedy);
  }

  public static Problem quickWithoutRoom(Where where) {
    return error(
        where,
        Reason.MISSING,
        "a quick sheet is asked how many to buy by the room there is, and that is not filled in",
        "fill in free square metres, or ask plan, which answers a quick sheet");
  }

  public static Problem noDaybook(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is no daybook, no later stock list and no receipts, so there is nothing to review",
        "put the stock list that the plan began with into the folder earlier and keep today's as"
            + " stock, or add a daybook, such as a count sheet filled in, or a table receipts");
  }

  public static Problem goneWithoutALine(
      Where where, String lot, double gone, double before, double found, LocalDate counted) {
    return warning(
        where,
        Reason.MISSING,
        tenths(gone)
            + " plants of "
            + shown(lot)
            + " are gone without a line by "
            + MarkedText.day(counted)
            + ": "
            + tenths(before)
            + " were alive, "
            + tenths(found)
            + " were found",
        "enter them in the daybook as sold, died, culled, used or lost, or their receipts");
  }

  public static Problem countedInDaybook(Where where, String lot) {
    return warning(
        where,
        Reason.DUPLICATE,
        "the daybook has a count of " + shown(lot) + " on that day, which holds",
        "if the list is right, take that line out of the daybook");
  }

  public static Problem countedTwice(Where where, String lot) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "another list has other plants or trunks of " + shown(lot) + " for the same month",
        "correct one of the two; this row is left out");
  }

  public static Problem neverListed(Where where, String lot, String arrival) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "by the plan "
            + shown(lot)
            + " came in "
            + arrival
            + ", but this list lacks it; it is left"
            + " out as not bought",
        "if it came, give it the same name on the list, or enter arrived in the daybook");
  }

  public static Problem newOnAList(Where where, String lot) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "the plan does not have "
            + shown(lot)
            + ", and no line says how it came; it counts from this list on, and whether it paid"
            + " cannot be told",
        "enter it as an offer taken, with its price and month");
  }

  public static Problem newWithoutNumber(Where where, String lot) {
    return warning(
        where,
        Reason.MISSING,
        "no number of plants of " + shown(lot) + ", with which the lot could begin",
        "fill in the number; this row is left out");
  }

  public static Problem newWithoutTrunks(Where where, String lot, double taken) {
    return warning(
        where,
        Reason.MISSING,
        "no list has measured trunks of %s, so %s mm are taken"
            .formatted(shown(lot), MarkedText.number(taken, 0)),
        "fill in the trunk in this row");
  }

  public static Problem cameAsListed(Where where, String lot) {
    return warning(
        where,
        Reason.ASSUMED,
        "the plan does not take the offer "
            + shown(lot)
            + ", but it is listed; it came as it stands here, at the price of the offer",
        "enter arrived in the daybook if more came");
  }

  public static Problem afterToday(Where where, String found, LocalDate today) {
    return error(
        where,
        Reason.CONTRADICTION,
        "this day has not come yet, today is " + MarkedText.day(today),
        found,
        "correct the date");
  }

  public static Problem nearlyNamed(Where where, String found, String near) {
    return warning(
        where,
        Reason.UNKNOWN_NAME,
        "this split makes a new lot whose name is nearly that of the lot " + shown(near),
        found,
        "if " + shown(near) + " is meant, write it so");
  }

  public static Problem joinedSpecies(
      Where where, String lot, String species, String other, String otherSpecies) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a lot is of one species, but "
            + shown(lot)
            + " is "
            + shown(species)
            + " and "
            + shown(other)
            + " is "
            + shown(otherSpecies),
        other,
        "keep them as separate lots");
  }

  public static Problem splitWithoutLot(Where where) {
    return error(
        where,
        Reason.MISSING,
        "it is not said which lot the plants split off go to",
        "fill in to lot, with a new name if it is a new lot");
  }

  public static Problem movedWithoutLot(Where where) {
    return error(
        where,
        Reason.MISSING,
        "it is not said which lot the plants are moved to",
        "fill in to lot, or leave quantity empty if the whole lot went to another place");
  }

  public static Problem toLotOfOther(Where where, String found, String what) {
    return error(
        where,
        Reason.CONTRADICTION,
        "plants go to another lot only where they are split or moved, not " + what,
        found,
        "leave to lot empty, or write split or moved");
  }

  public static Problem intoItself(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "these plants would go to the lot they come from",
        found,
        "name the other lot");
  }

  public static Problem spentNothing(Where where) {
    return error(where, Reason.MISSING, "it is not said what was spent", "fill in amount or hours");
  }

  public static Problem joinedPassports(
      Where where,
      String lot,
      String passport,
      Where stated,
      String other,
      String otherPassport,
      Where otherStated) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a lot has one passport, but "
            + ofPassport(lot, passport, stated)
            + " and "
            + ofPassport(other, otherPassport, otherStated),
        other,
        "keep them as separate lots");
  }

  private static String ofPassport(String lot, String passport, Where stated) {
    return shown(lot) + " has " + shown(passport) + " by " + stated;
  }

  public static Problem notCounted(Where where, int rows) {
    return notice(
        where,
        Reason.MISSING,
        rows == 1
            ? "1 row to count was left blank and is passed over"
            : MarkedText.number(rows) + " rows to count were left blank and are passed over",
        "");
  }

  public static Problem moreThanAlive(
      Where where,
      double found,
      String lot,
      String what,
      double alive,
      int rows,
      List<Where> lastRows) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "more plants of "
            + shown(lot)
            + " "
            + what
            + " than the "
            + tenths(alive)
            + " alive"
            + by(rows, lastRows),
        new MarkedText(tenths(found)),
        "correct the row that is wrong, or enter plants that were found or returned");
  }

  public static Problem countRises(Where where, double found, String lot, double alive) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "more plants of "
            + shown(lot)
            + " are counted than the "
            + tenths(alive)
            + " that were alive",
        new MarkedText(tenths(found)),
        "enter plants that were found or returned, or correct the count");
  }

  public static Problem returnedWithoutRefund(Where where, String lot, double plants) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "plants of " + shown(lot) + " came back, and nothing says what was paid back for them",
        new MarkedText(tenths(plants)),
        "enter the amount paid back, 0 if there was none");
  }

  public static Problem invoiceWithoutCarriage(
      Where where, String lot, double amount, double charges) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "this is about the price of the plants of "
            + shown(lot)
            + " alone, without the "
            + tenths(charges)
            + " planned for carriage and charges; it counts as the whole invoice",
        new MarkedText(tenths(amount)),
        "if carriage was billed apart, enter a line spent with the reason carriage");
  }

  public static Problem gradeNotReached(
      Where where, String found, String lot, int months, long thickestMm) {
    String training =
        months < 0
            ? "its training has not started"
            : "it is in training for " + MarkedText.number(months) + " months";
    return warning(
        where,
        Reason.CONTRADICTION,
        "plants of "
            + shown(lot)
            + " cannot have reached this grade: "
            + training
            + " and its thickest are about "
            + MarkedText.number(thickestMm)
            + " mm",
        found,
        "correct the grade, or the lot's trunk and training since");
  }

  public static Problem notInThePlan(Where where, String lot) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "by the daybook this lot has not arrived, and the plan does not buy it; its rows are left"
            + " out",
        lot,
        "enter its arrival, or take the offer up in the plan");
  }

  public static Problem splitBeforeTheCount(Where where, String lot) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "this lot was split off before the stock was counted, but the stock list does not have it;"
            + " its rows are left out",
        lot,
        "add it to the stock list");
  }

  private static String tenths(double number) {
    return MarkedText.number(Math.round(number * 10) / 10.0);
  }

  /** As in " by rows 3, 5 and 8 before it". */
  private static String by(int rows, List<Where> last) {
    if (rows == 0) {
      return "";
    }
    List<String> numbers = last.stream().map(row -> Integer.toString(row.row())).toList();
    String these = (numbers.size() == 1 ? "row " : "rows ") + list(numbers);
    return rows > numbers.size()
        ? " by " + MarkedText.number(rows) + " rows before it, the last of them " + these
        : " by " + these + " before it";
  }
}
