package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.notice;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;

/** What is said of records that assumptions are learnt from. */
public final class FitAdvice {
  private FitAdvice() {}

  public static Problem nothingToLearnFrom(Where where, YearMonth lastYear) {
    return error(
        where,
        Reason.MISSING,
        "no records to learn from",
        "it takes two stock lists (put last year's as earlier/stock "
            + lastYear
            + ".xlsx), counts in the daybook, or a table records");
  }

  public static Problem noSpeciesThere(Where where) {
    return error(
        where,
        Reason.MISSING,
        "neither species.csv nor species.json is in this folder",
        "give --species the folder of a proposal, such as reports/larkfield-fit/proposal");
  }

  public static Problem renamed(Where where, String lot, String other) {
    return new Problem(
        Severity.WARNING,
        Reason.CONTRADICTION,
        "this lot is not on the next list, where a lot of the same species and arrival is new",
        where,
        lot,
        "if it is "
            + other
            + ", say so on the sheet own words (kind lot, yours the old name, ours the new one); else"
            + " nothing need be done");
  }

  public static Problem tooLong(YearMonth first) {
    return new Problem(
        Severity.WARNING,
        Reason.OUT_OF_RANGE,
        "records from before this month are too old to be learnt from",
        Where.NOWHERE,
        first.toString(),
        "leave them out, and this warning is gone");
  }

  public static Problem otherSpecies(Where where, String lot, String before) {
    return new Problem(
        Severity.WARNING,
        Reason.CONTRADICTION,
        "this lot was of the species " + before + " on the list before, so the row is not used",
        where,
        lot,
        "correct the species, or give another lot another name");
  }

  public static Problem monthOfList(Where where) {
    return error(
        where,
        Reason.MISSING,
        "neither its rows nor its name say of which month this list is",
        "put the month into the file's name, as in \"stock 2025-11.xlsx\", or fill the column"
            + " counted");
  }

  public static Problem noTrunkRead(Where where) {
    return warning(
        where,
        Reason.MISSING,
        "no trunk is read in this row, so nothing is learnt from it",
        "fill in the trunk, or leave the row out where the plant is gone");
  }

  public static Problem plantTwice(Where where, String plant, LocalDate date, Where there) {
    return ofARecord(
        Reason.DUPLICATE,
        "a plant has one reading a day, and it has one of " + MarkedText.day(date) + " in " + there,
        where,
        plant,
        "keep one of the two");
  }

  public static Problem plantOfTwoKinds(Where where, String plant, Where there) {
    return ofARecord(
        Reason.DUPLICATE,
        "a plant is of one lot, species and condition, and it is of others in " + there,
        where,
        plant,
        "use another name for each plant");
  }

  public static Problem sampleWithoutLot(Where where) {
    return error(
        where,
        Reason.MISSING,
        "a row without a plant is the mean of a lot, and names none",
        "name the plant or the lot");
  }

  public static Problem kindNeeded(Where where, List<String> missing) {
    return error(
        where,
        Reason.MISSING,
        "a plant without a lot needs its " + String.join(" and ", missing),
        "fill in the lot, or species and condition");
  }

  public static Problem noSuchCondition(Where where, String condition, String species) {
    return ofARecord(
        Reason.UNKNOWN_NAME,
        species + " has no growth in this condition",
        where,
        condition,
        "use one of those that the species has");
  }

  public static Problem otherKindThanLot(Where where, String found, String lot, String of) {
    return ofARecord(
        Reason.CONTRADICTION,
        "the lot " + lot + " is of " + of,
        where,
        found,
        "leave the species empty, or name the plant's own lot");
  }

  public static Problem olderListWithoutMonth(Where where) {
    return warning(
        where,
        Reason.MISSING,
        "neither its title nor its name say of which month this older list is, so nothing is learnt"
            + " from it",
        "put the month into the file's name, as in \"stock 2025-11.xlsx\"");
  }

  public static Problem leftOutOfList(Where where, int left, int all) {
    return notice(
        where,
        Reason.UNKNOWN_NAME,
        "%s of %s rows of this earlier list are left out: their plants, pots or routes are not those"
                .formatted(MarkedText.number(left), MarkedText.number(all))
            + " of the nursery now",
        "");
  }

  public static Problem noTrunksOfList(Where where, List<String> headings) {
    return new Problem(
        Severity.WARNING,
        Reason.UNKNOWN_NAME,
        "no trunk of this earlier list is read, so it tells of losses and not of growth",
        where,
        String.join(", ", headings),
        "call that heading trunk mm in the list, or say so on the sheet own words (kind heading)");
  }

  public static Problem keptUnread(Where where, MarkedText why) {
    return new Problem(
        Severity.WARNING,
        Reason.WRONG_VALUE,
        new MarkedText("this kept plan cannot be read and is not scored"),
        where,
        why,
        new MarkedText("keep the plan again where its figures matter"));
  }

  private static Problem ofARecord(
      Reason reason, String sentence, Where where, String found, String remedy) {
    return new Problem(Severity.ERROR, reason, sentence, where, found, remedy);
  }
}
