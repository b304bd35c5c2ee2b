package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.isJson;
import static growingon.problem.advice.Wording.list;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;
import java.util.List;
import java.util.Optional;

/** What is wrong, where, and what to do: headings and rows of a table. */
public final class TableAdvice {
  private TableAdvice() {}

  public static Problem noHeadings(Where where, String table, List<String> needed) {
    return error(
        where,
        Reason.MISSING,
        "no row looks like the headings of the table " + table,
        "it needs " + list(needed));
  }

  public static Problem missingHeading(Where where, String heading, Optional<String> nearest) {
    return error(
        where,
        Reason.MISSING,
        "the heading " + heading + " is missing",
        nearest.orElse(""),
        nearest.map(near -> "rename " + near + " if it is meant").orElse("add the column"));
  }

  public static Problem unknownHeading(Where where, String heading, Optional<String> nearest) {
    return warning(
        where,
        Reason.UNKNOWN_NAME,
        "this heading is not known, its column is not read",
        heading,
        nearest.map(near -> "the nearest known one is " + near).orElse(""));
  }

  public static Problem moreUnknownHeadings(Where where, int more) {
    return warning(
        where,
        Reason.UNKNOWN_NAME,
        MarkedText.number(more) + " more headings are not known, their columns are not read",
        "");
  }

  public static Problem headingTwice(Where where, String heading) {
    return error(
        where,
        Reason.DUPLICATE,
        "the heading " + heading + " comes twice",
        "keep one of the columns");
  }

  public static Problem noHeading(Where where, String found) {
    return warning(
        where,
        Reason.MISSING,
        "this column has no heading and is not read",
        found,
        "give it a heading if it is to count");
  }

  public static Problem missingValue(Where where) {
    return error(where, Reason.MISSING, "this value is missing", "fill it in");
  }

  public static Problem missingValues(Where where, String found, List<String> headings) {
    return error(
        where,
        Reason.MISSING,
        (isJson(where) ? "this entry lacks " : "this row lacks ") + list(headings),
        found,
        isJson(where) ? "complete it" : "complete it, or move totals and remarks out of the table");
  }

  public static Problem nothingUnderHeadings(Where where, String found) {
    return error(
        where,
        Reason.MISSING,
        "this row has nothing under a known heading",
        found,
        "move remarks out of the table");
  }

  public static Problem twoUnderOneHeading(Where where, String found) {
    return error(
        where,
        Reason.DUPLICATE,
        "there are two values under one merged heading",
        found,
        "keep one of them");
  }

  public static Problem mergedColumns(Where where) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this cell is merged with the one before it",
        "part them and give each its value");
  }

  public static Problem mergedRows(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "a number or date is merged over several rows",
        found,
        "part them and give each row its value");
  }

  public static Problem formulaWithoutValue(Where where) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this formula has no stored value",
        "open the workbook in a spreadsheet program and save it");
  }

  public static Problem formulaError(Where where, String found) {
    return error(where, Reason.WRONG_VALUE, "this cell shows an error", found, "mend its formula");
  }

  public static Problem notADate(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is formatted as a date but is none",
        found,
        "type the month as 2027-03");
  }
}
