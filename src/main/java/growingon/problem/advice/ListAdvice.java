package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.notice;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** What a user may read about a list of their own. */
public final class ListAdvice {
  private static final int FEW = 5;

  private ListAdvice() {}

  /** Which list a plan begins with. */
  public static Problem beginsWithEarlier(Where where, YearMonth first, YearMonth today) {
    return notice(
        where,
        Reason.ASSUMED,
        "the plan of "
            + MarkedText.month(first)
            + " begins with this list, since today's was counted in "
            + MarkedText.month(today),
        "");
  }

  /** No sheet is a list of plants. */
  public static Problem noList(Where where, List<String> sheets) {
    return new Problem(
        Severity.ERROR,
        Reason.MISSING,
        "no sheet has among its first 60 rows one of headings with a plant's name and one more",
        where,
        String.join(", ", sheets),
        "write headings above the columns, such as plant, size, number");
  }

  /** The only sheet is what a supplier offers, as the grower says. */
  public static Problem aSuppliers(Where where, String sheet) {
    return new Problem(
        Severity.ERROR,
        Reason.MISSING,
        "you said that it is a supplier's list, and no other says what stands in the nursery",
        where,
        sheet,
        "start a folder with --offers for it, and --from for your own list");
  }

  /** No column is the number of plants. */
  public static Problem noNumber(Where where, List<String> maybe) {
    return error(
        where,
        Reason.MISSING,
        "no column is the number of plants",
        maybe.isEmpty()
            ? "write number above it, or say in own words which heading it is"
            : "is it %s? write number above it, or say so in own words"
                .formatted(String.join(" or ", maybe)));
  }

  /** There is no lot. */
  public static Problem noLots(Where where) {
    return error(where, Reason.MISSING, "the list has no row of plants", "fill it in");
  }

  /** A list of more lots than can be planned together. */
  public static Problem tooManyLots(Where where, int lots, int most) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "%s lots are more than can be planned together (%s)"
            .formatted(MarkedText.number(lots), MarkedText.number(most)),
        "plan a sheet or a place at a time, or put rows of one plant and size together");
  }

  /** More offers than can be looked through. */
  public static Problem tooManyOffers(Where where, int offers, int most) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "%s offers are more than can be looked through (%s)"
            .formatted(MarkedText.number(offers), MarkedText.number(most)),
        "keep in the list what you may buy");
  }

  /** Offers in another currency, whose rate is not known. */
  public static Problem offersWithoutRate(Where where, String code, String currency) {
    return warning(
        where,
        Reason.MISSING,
        "these offers are in %s and left out till it is said what 1 %s is in %s"
            .formatted(code, code, currency),
        "answer in to fill");
  }

  /** No column is the price of a plant. */
  public static Problem noPrice(Where where) {
    return error(
        where,
        Reason.MISSING,
        "no column is the price of a plant",
        "write price above it, or say in own words which heading it is");
  }

  /** Too many rows cannot be read. */
  public static Problem manyAsked(Where where, int asked, int all, List<String> rows) {
    return new Problem(
        Severity.ERROR,
        Reason.WRONG_VALUE,
        new MarkedText(
            "%s of %s rows cannot be read"
                .formatted(MarkedText.number(asked), MarkedText.number(all))),
        where,
        few(rows),
        new MarkedText("see which column is the number; write whole numbers there"));
  }

  /** A few rows cannot be read and are left out. */
  public static Problem someAsked(Where where, int asked, List<String> rows) {
    return new Problem(
        Severity.WARNING,
        Reason.WRONG_VALUE,
        new MarkedText(
            "%s %s cannot be read and %s left out"
                .formatted(
                    MarkedText.number(asked),
                    asked == 1 ? "row" : "rows",
                    asked == 1 ? "is" : "are")),
        where,
        few(rows),
        new MarkedText("answer in to fill"));
  }

  private static MarkedText few(List<String> rows) {
    if (rows.size() <= FEW) {
      return MarkedText.asItIs(String.join(", ", rows));
    }
    return new MarkedText(
        "%s and %s more"
            .formatted(
                MarkedText.asItIs(String.join(", ", rows.subList(0, FEW))),
                MarkedText.number(rows.size() - FEW)));
  }

  /** A heading that may be several things. */
  public static Problem openHeading(Where where, String example, List<String> choices) {
    return new Problem(
        Severity.WARNING,
        Reason.UNKNOWN_NAME,
        "this heading is not understood for certain, and its column is not read",
        where,
        example.isEmpty() ? "" : "such as " + example,
        choices.isEmpty()
            ? "say in own words what it is"
            : "say in own words whether it is " + String.join(" or ", choices));
  }

  /** No column is the number, and every row is one plant. */
  public static Problem plantARow(Where where) {
    return warning(
        where,
        Reason.ASSUMED,
        "no column says how many plants there are, and every row is taken as one",
        "say not read of a plant a row in own words if that is wrong");
  }

  /** A heading that was decided by what stands below it. */
  public static Problem headingByCells(Where where, String ours) {
    return warning(
        where,
        Reason.ASSUMED,
        "by its cells this column is taken as " + ours,
        "say otherwise in own words");
  }

  /** A heading that is nearly one that is known. */
  public static Problem headingByWords(Where where, String ours) {
    return warning(
        where,
        Reason.ASSUMED,
        "by a part of its heading this column is taken as " + ours,
        "say otherwise in own words");
  }

  /** A heading that is taken as one thing and may be others. */
  public static Problem headingInDoubt(Where where, String ours, List<String> others) {
    return warning(
        where,
        Reason.ASSUMED,
        "this column is taken as %s, and may be %s".formatted(ours, String.join(" or ", others)),
        "say so in to fill");
  }

  /** A total of the list that its rows do not make. */
  public static Problem wrongTotal(Where where, long stated, long read, String why) {
    return new Problem(
        Severity.WARNING,
        Reason.CONTRADICTION,
        "the total says %s, the rows add up to %s"
            .formatted(MarkedText.number(stated), MarkedText.number(read)),
        where,
        why,
        "see which is right");
  }

  /** A title that says nothing that is known. */
  public static Problem titleNotUsed(Where where, String title) {
    return new Problem(
        Severity.WARNING,
        Reason.ASSUMED,
        "a title between the lots is not used",
        where,
        title,
        "make a column of it if it says something of the rows below");
  }

  /** Anything else that was done with the list. */
  public static Problem said(Where where, MarkedText sentence) {
    return new Problem(
        Severity.WARNING, Reason.ASSUMED, sentence, where, MarkedText.NONE, MarkedText.NONE);
  }

  /** A list that own words name is not there any more. */
  public static Problem listGone(Where where, String path, Optional<String> newest) {
    return new Problem(
        Severity.ERROR,
        Reason.UNREADABLE,
        "your list is not there any more",
        where,
        path,
        newest
            .map(near -> "is it %s now? type that under ours in own words".formatted(near))
            .orElse("put it back, or type its new name under ours in own words"));
  }

  /** A list that was named in the command is not there. */
  public static Problem notThere(String path) {
    return new Problem(
        Severity.ERROR,
        Reason.UNREADABLE,
        "there is no such list",
        Where.NOWHERE,
        path,
        "give an .xlsx or .csv file");
  }

  /** A list of the grower's own where a nursery is needed. */
  public static Problem listAlone(Where where, String path) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "a list of your own is enough for plan and check alone",
        "lay out a nursery around it: start mine --from \"%s\"".formatted(path));
  }

  /** What the grower has answered about a list stands beside it. */
  public static Problem wordsBeside(Where where, String files) {
    return notice(where, Reason.ASSUMED, "read by what stands beside it: " + files, "");
  }

  /** Routes that were laid out for the other half of the world. */
  public static Problem routesTurned(Where where, int steps) {
    return notice(
        where,
        Reason.ASSUMED,
        "%s %s laid out for the north %s half a year later, since the hemisphere is south"
            .formatted(
                MarkedText.number(steps), steps == 1 ? "step" : "steps", steps == 1 ? "is" : "are"),
        "");
  }

  /** Own words say of a heading what no column of a list can be. */
  public static Problem noColumn(Where where, String heading, String ours) {
    return new Problem(
        Severity.ERROR,
        Reason.UNKNOWN_NAME,
        "own words say of the heading %s what no column of a list is".formatted(heading),
        where,
        ours,
        "choose a word of the drop-down list under ours, such as quantity or not read");
  }

  /** An answer to whether something is read rightly that says neither. */
  public static Problem neitherYesNorNo(Where where, String reading, String answer) {
    return new Problem(
        Severity.WARNING,
        Reason.WRONG_VALUE,
        "to fill asks whether this is read rightly: %s; the answer is neither yes nor no"
            .formatted(reading),
        where,
        answer,
        "type yes or no; till then it is read so");
  }

  /** A cell that was changed and answered otherwise. */
  public static Problem answeredTwice(Where where, String cell, String answer, Where answered) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "this cell was changed to %s and to fill says %s (row %d), which holds"
            .formatted(cell, answer, answered.row()),
        "empty one of them");
  }

  /** A row of a table that a name new in a list needs, which has usual values till then. */
  public static Problem newInList(Where where, String name, String row) {
    return notice(
        where,
        Reason.ASSUMED,
        "new in your list, with usual values",
        name,
        "to type your own, paste this row there: " + row);
  }

  /** An answer of the sheet to fill names a row that is not there any more. */
  public static Problem answerOfNothing(Where where, String table, String row) {
    return new Problem(
        Severity.WARNING,
        Reason.UNKNOWN_NAME,
        "nothing in %s is called so, and the answer is not used".formatted(table),
        where,
        row,
        "take the answer away, or name a row that is there");
  }
}
