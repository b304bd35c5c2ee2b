package growingon.problem;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The one home of every sentence a user may read when something about the input is wrong: what is
 * wrong, where, what to do. One method a fault; tests compare whole sentences. What was found is
 * shown as it stands in the input, but cut short, and without letters that are not seen.
 */
public final class Advice {
  private static final int LONGEST = 100;

  private Advice() {}

  // Files

  public static Problem notThere(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "there is no such file or folder",
        "",
        "give a plan.json, a nursery folder or one .xlsx workbook");
  }

  public static Problem notReadable(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is none of the files that can be planned from",
        "",
        "give a plan.json, a nursery folder or one .xlsx workbook");
  }

  public static Problem notAPlan(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this file is part of a nursery, not a plan",
        "",
        "give its folder");
  }

  public static Problem noNursery(Where where, String folder) {
    return error(
        where,
        Reason.UNREADABLE,
        "there is no such nursery folder",
        folder,
        "the path is seen from the plan's own folder");
  }

  public static Problem notAPath(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this cannot be a path",
        found,
        "write a folder name such as ../nursery");
  }

  public static Problem notAFile(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is no file but a pipe or a device, which is not read",
        "",
        "save it as a file");
  }

  public static Problem nothingOfANursery(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is no table of a nursery here",
        "",
        "give a plan.json, a nursery folder or one .xlsx workbook, or start a new folder");
  }

  public static Problem noWorkingFolder() {
    return error(
        Where.NOWHERE,
        Reason.UNREADABLE,
        "the folder that you work in is gone, or its name has letters that do not come through",
        "",
        "go to another folder, or set LC_ALL=C.UTF-8");
  }

  /** Of a path on the command line. */
  public static Problem noPathHere(String found) {
    return error(
        Where.NOWHERE,
        Reason.UNREADABLE,
        "this cannot be a path on this computer",
        found,
        "write it otherwise; where letters such as ö do not come through, set LC_ALL=C.UTF-8");
  }

  public static Problem noAccess(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this file may not be read",
        "",
        "close it in other programs and see to its permissions");
  }

  public static Problem cannotRead(Where where, String why) {
    return error(
        where,
        Reason.UNREADABLE,
        "this file cannot be read",
        why,
        "see whether it opens in another program");
  }

  public static Problem emptyFile(Where where) {
    return error(
        where, Reason.UNREADABLE, "this file is empty", "", "fill it or take it out of the folder");
  }

  public static Problem tooLarge(Where where, long megabytes) {
    return error(
        where,
        Reason.UNREADABLE,
        "this file is too large",
        megabytes + " MB",
        "keep tables below 64 MB; look for pictures or formatted blank rows");
  }

  public static Problem notUtf8(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this text file is not UTF-8",
        "",
        isJson(where)
            ? "save it as UTF-8"
            : "save it as \"CSV UTF-8\", or keep the table in an .xlsx workbook");
  }

  /** Of a list of the grower's own. */
  public static Problem readAsWindows(Where where) {
    return notice(
        where,
        Reason.ASSUMED,
        "this text file is not UTF-8 and is read as Windows-1252",
        "",
        "see that names with accents are right");
  }

  public static Problem brokenCsv(Where where, String row) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is no proper CSV: a quotation mark does not close or closes too early",
        row,
        "write a quotation mark within quoted text twice");
  }

  public static Problem noWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this file has the name of a workbook but is none",
        "",
        "open it in the program that made it and save it as an Excel workbook (.xlsx)");
  }

  public static Problem brokenWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook is damaged",
        "",
        "open it in a spreadsheet program, let it be repaired, and save it again");
  }

  public static Problem strictWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook is saved as \"Strict Open XML\", which cannot be read",
        "",
        "save it as an Excel workbook (.xlsx)");
  }

  public static Problem oldWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is a workbook of the old kind (.xls)",
        "",
        "save it as an Excel workbook (.xlsx)");
  }

  public static Problem encrypted(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook is locked with a password",
        "",
        "save it without the password");
  }

  public static Problem zipBomb(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook would unpack to far more than its size, as made-up files do",
        "",
        "copy its values into a new workbook");
  }

  public static Problem hiddenSheet(Where where) {
    return notice(
        where,
        Reason.ASSUMED,
        "this sheet is hidden and is not read",
        "",
        "show it if it is to count");
  }

  public static Problem emptySheet(Where where) {
    return notice(where, Reason.ASSUMED, "this sheet is empty and counts as not there", "", "");
  }

  public static Problem noTable(Where where, String name, Optional<String> nearest) {
    return of(
        nearest.isPresent() ? Severity.WARNING : Severity.NOTICE,
        where,
        Reason.UNKNOWN_NAME,
        "this is no table of a nursery and is not read",
        name,
        nearest.map(near -> "if it is the table " + near + ", name it so").orElse(""));
  }

  public static Problem otherSpreadsheet(Where where) {
    return warning(
        where,
        Reason.UNREADABLE,
        "spreadsheets of this kind are not read",
        "",
        "save it as an Excel workbook (.xlsx) or as CSV");
  }

  public static Problem otherJson(Where where, Optional<String> nearest) {
    return of(
        nearest.isPresent() ? Severity.WARNING : Severity.NOTICE,
        where,
        Reason.UNKNOWN_NAME,
        "this file is not read",
        "",
        nearest.map(near -> "if it is meant to be " + near + ", name it so").orElse(""));
  }

  public static Problem tableTwice(Where where, String table, Where there) {
    return error(
        where,
        Reason.DUPLICATE,
        "the table " + table + " is given twice, here and in " + there,
        "",
        "keep one of them");
  }

  public static Problem missingTable(Where where, String table) {
    return error(
        where,
        Reason.MISSING,
        "there is no table " + table,
        "",
        "add a sheet of that name to a workbook of the folder, or " + table + ".csv");
  }

  public static Problem missingLots(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is neither a table stock nor a table offers, so there are no lots to plan",
        "",
        "add one of them");
  }

  public static Problem noTableOf(Where where, String found, String table) {
    return error(
        where,
        Reason.MISSING,
        "there is no table " + table + ", which should define this",
        found,
        "add a sheet of that name to a workbook of the folder, or " + table + ".csv");
  }

  public static Problem missingSpecies(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is neither a table species nor species.json",
        "",
        "add one of them");
  }

  public static Problem noPlaces() {
    return notice(
        Where.NOWHERE,
        Reason.MISSING,
        "there is no table places, so the plan says nothing about space, and places named elsewhere do not count",
        "",
        "");
  }

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
                + ranges
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
    return rows == 1 ? "; 1 more row is read so" : "; " + rows + " more rows are read so";
  }

  public static Problem firstsAndSeconds(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "firsts and seconds in ten are two numbers that make at most ten",
        found,
        "write them as 6 and 2, or one number if you cannot tell them apart");
  }

  public static Problem quickLinesEmpty(Where where, List<String> lines) {
    return error(
        where,
        Reason.MISSING,
        lines.size() == 1
            ? "one of the ten cells is empty: " + lines.get(0)
            : "of the ten cells these are empty: " + String.join(", ", lines),
        "",
        "fill in all ten, or none of them to plan the tables");
  }

  public static Problem unknownQuickLine(Where where, String found, Optional<String> nearest) {
    return error(
        where,
        Reason.UNKNOWN_NAME,
        "the quick sheet has no such line",
        found,
        nearest
            .map(near -> "the nearest line is " + near)
            .orElse("start a new folder to see its lines"));
  }

  public static Problem noDemand() {
    return warning(
        Where.NOWHERE,
        Reason.MISSING,
        "there is no demand, so nothing is sold",
        "",
        "add a table demand with prices");
  }

  public static Problem noLots(Where where) {
    return warning(where, Reason.MISSING, "the stock list has no lots", "", "");
  }

  public static Problem settingsTwice(Where where, Where there) {
    return error(
        where,
        Reason.DUPLICATE,
        "the settings are given twice, here and in " + there,
        "",
        "keep one of them");
  }

  // Headings

  public static Problem noHeadings(Where where, String table, List<String> needed) {
    return error(
        where,
        Reason.MISSING,
        "no row looks like the headings of the table " + table,
        "",
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
        more + " more headings are not known, their columns are not read",
        "",
        "");
  }

  public static Problem headingTwice(Where where, String heading) {
    return error(
        where,
        Reason.DUPLICATE,
        "the heading " + heading + " comes twice",
        "",
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

  // Rows

  public static Problem missingValue(Where where) {
    return error(where, Reason.MISSING, "this value is missing", "", "fill it in");
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
        "",
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
        "",
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

  // Values

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
        "",
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
      String place, String needed, String usable, String month) {
    return warning(
        Where.NOWHERE,
        Reason.OUT_OF_RANGE,
        "the place "
            + shown(place)
            + " would need "
            + needed
            + " in "
            + month
            + " and has "
            + usable
            + ", which looks like a slip",
        "",
        "see to the numbers of plants, their spacing and pots, and its square metres");
  }

  public static Problem potIsHuge(Where where, String found, String litres) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this looks like a slip, as the pot holds " + litres + " litres by its measures",
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
    return error(
        where, Reason.MISSING, "here a name of the " + what + " must stand", "", "name it");
  }

  public static Problem nameTooLong(Where where, String found, int most) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "a name has at most " + most + " letters",
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
        "twelve numbers are needed, January first, but there are " + count,
        found,
        "write one for each month");
  }

  public static Problem sharesDoNotSum(Where where, String sum) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the twelve shares must sum to 1 or 100, but sum to " + sum,
        "",
        "correct them");
  }

  public static Problem sharesScaled(Where where, String sum) {
    return notice(
        where,
        Reason.ASSUMED,
        "the twelve shares sum to " + sum + " and are scaled to the whole",
        "",
        "");
  }

  public static Problem halfSpan(Where where) {
    return error(
        where,
        Reason.MISSING,
        "from month and to month go together",
        "",
        "fill in both, or neither for the whole year");
  }

  // JSON

  public static Problem brokenJson(Where where, String why) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is no proper JSON",
        why,
        "see to quotation marks, commas and brackets on this line and the one before");
  }

  public static Problem moreAfterJson(Where where) {
    return error(
        where, Reason.UNREADABLE, "there is more behind the closing brace", "", "remove it");
  }

  public static Problem noJsonObject(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "a JSON file must hold an object in braces { }",
        "",
        "begin it with { and end it with }");
  }

  public static Problem keyTwice(Where where, String key, int line) {
    return error(
        where,
        Reason.DUPLICATE,
        "this key comes twice, first on line " + line,
        key,
        "keep one of them");
  }

  public static Problem unknownKey(
      Where where, String key, Optional<String> nearest, List<String> known) {
    return error(
        where,
        Reason.UNKNOWN_NAME,
        "this key is not known",
        key,
        nearest
            .map(near -> "the nearest known one is " + near)
            .orElse("known here are " + list(known)));
  }

  public static Problem wrongJsonSort(Where where, String found, String needed) {
    return error(where, Reason.WRONG_VALUE, "this must be " + needed, found, "correct it");
  }

  public static Problem numberTooLarge(Where where, String found) {
    return error(
        where, Reason.OUT_OF_RANGE, "this number is too large to reckon with", found, "correct it");
  }

  // Settings

  public static Problem missingSettings(Where where, List<String> keys) {
    return error(
        where,
        Reason.MISSING,
        "the settings lack " + list(keys),
        "",
        "add to nursery.json or to a table settings what is missing");
  }

  public static Problem unknownSetting(Where where, String found, Optional<String> nearest) {
    return error(
        where,
        Reason.UNKNOWN_NAME,
        "this setting is not known",
        found,
        nearest
            .map(near -> "the nearest known one is " + near)
            .orElse("see the list of settings in the README"));
  }

  public static Problem notACurrency(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is no currency",
        found,
        "write its code of three letters, such as EUR");
  }

  public static Problem exchangeRate(Where where, String foreign, double rate, String currency) {
    return notice(
        where, Reason.ASSUMED, "1 " + foreign + " counts as " + rate + " " + currency, "", "");
  }

  public static Problem hoursTwice(Where where, Where there) {
    return error(
        where,
        Reason.DUPLICATE,
        "hours are given twice, here and in " + there,
        "",
        "keep one of them");
  }

  public static Problem monthsMissing(Where where, List<String> months) {
    return error(
        where,
        Reason.MISSING,
        "hours are missing for " + list(months),
        "",
        "give all twelve months");
  }

  public static Problem cashOutsidePlan(Where where, String found) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this month lies outside the plan, its cash does not count",
        found,
        "");
  }

  // Definitions

  public static Problem rankTwice(Where where, int rank) {
    return error(
        where,
        Reason.DUPLICATE,
        "two grades of the ladder have the rank " + rank,
        "",
        "give each its own");
  }

  public static Problem trunkFallsUpLadder(
      Where where, String found, String lower, String lowerTrunk) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the least trunk is less than the " + lowerTrunk + " mm of the lower grade " + shown(lower),
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
        "the measures give %.2f litres to the brim, but %.2f litres are stated and used"
            .formatted(brim, stated),
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
        "the place closes before it opens in " + from,
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
        "it ends before it begins in " + from,
        to.toString(),
        "correct one of them");
  }

  public static Problem orderedAfterArrival(Where where, YearMonth month, YearMonth arrival) {
    return error(
        where,
        Reason.CONTRADICTION,
        "it is ordered after it arrives in " + arrival,
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

  // Routes

  public static Problem notAWhen(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this does not say when the step is due",
        found,
        "write arrival, March year 0, 3 months after STEP, every 3 years in March, or March once trunk 40");
  }

  public static Problem mixWithoutPot(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a mix needs a pot in the same step",
        found,
        "name the pot, also if it is the same size again");
  }

  public static Problem potWithoutMix(Where where, String pot) {
    return warning(
        where,
        Reason.MISSING,
        "the step pots without a mix and uses no substrate",
        pot,
        "name the mix");
  }

  public static Problem ballWithoutPot(Where where, String found) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "a ball is lifted but not potted, and has no effect",
        found,
        "name the pot");
  }

  public static Problem notAMaterialAmount(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is no amount of a material",
        found,
        "write it as 2.4 m wire; 5 ml dressing");
  }

  public static Problem materialTwice(Where where, String material) {
    return error(
        where,
        Reason.DUPLICATE,
        "the step names this material twice",
        material,
        "add up the amounts");
  }

  public static Problem wrongMaterialUnit(Where where, String found, String material, String unit) {
    return error(
        where,
        Reason.WRONG_VALUE,
        shown(material) + " is counted in " + shown(unit),
        found,
        "write the amount in that unit");
  }

  public static Problem arrivalTooLow(Where where, String above) {
    return error(
        where,
        Reason.CONTRADICTION,
        "nothing can be done on arrival after the step " + shown(above),
        "",
        "move the row up, or date it");
  }

  public static Problem yearFalls(Where where, String found) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "a step above is of a later year, so this one always comes late",
        found,
        "put the steps in the order of their dates");
  }

  public static Problem sortRecurs(Where where) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a step that recurs cannot sort",
        "",
        "sort in a step that is done once");
  }

  public static Problem liftedOutOfSeason(Where where, String found, String month, String season) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this step lifts plants from the ground in "
            + month
            + ", outside the dormant season "
            + season,
        found,
        "lift them in that season");
  }

  // Demand

  public static Problem starWithoutLadder(Where where) {
    return error(
        where, Reason.MISSING, "a row for every species (*) needs a ladder", "", "name it");
  }

  public static Problem otherLadder(Where where, String found, String species, String ladder) {
    return error(
        where,
        Reason.CONTRADICTION,
        shown(species) + " is on the ladder " + shown(ladder),
        found,
        "write that ladder or leave it empty");
  }

  public static Problem notASeason(Where where, String found, String example) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "this is no season of this nursery",
        found,
        "write it as " + example + ", or every");
  }

  public static Problem seasonOutsidePlan(Where where, String found) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this season lies outside the plan, its demand does not count",
        found,
        "");
  }

  public static Problem noSalesInMonths(Where where) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "no sales fall in these months by the month pattern of sales, so nothing is sold",
        "",
        "widen the months or see to the pattern");
  }

  // Lots

  public static Problem noTrunk(Where where) {
    return error(
        where,
        Reason.MISSING,
        "the trunks are not stated",
        "",
        "fill in trunk mm, or trunk from mm and trunk to mm, or girth from cm and girth to cm");
  }

  public static Problem trunkTwice(Where where) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the trunks are stated in more than one way",
        "",
        "keep one of trunk mm, trunk from/to mm and girth from/to cm");
  }

  public static Problem spreadOfClass(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a size class has no spread",
        found,
        "leave trunk spread % empty");
  }

  public static Problem classFalls(Where where, String found, String from) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the class ends below its beginning of " + from,
        found,
        "swap them");
  }

  public static Problem qualitiesOverAll(Where where, String sum) {
    return error(
        where,
        Reason.CONTRADICTION,
        "firsts and seconds are more than all",
        sum + " %",
        "thirds are what is left of 100");
  }

  public static Problem holdWithoutGrade(Where where, String found) {
    return error(
        where, Reason.MISSING, "a hold share needs a grade", found, "fill in hold to grade");
  }

  public static Problem stockFromTheFuture(Where where, String found, YearMonth first) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the lot arrives in or after the first month of the plan, " + first,
        found,
        "enter it as an offer");
  }

  public static Problem countedBeforeArrival(Where where, String found, YearMonth arrived) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the lot is counted before it arrives in " + arrived,
        found,
        "correct one of them");
  }

  public static Problem notYetHappened(Where where, String found, YearMonth first) {
    return error(
        where,
        Reason.CONTRADICTION,
        "this lies after the first month of the plan, " + first,
        found,
        "correct it, or begin the plan later");
  }

  public static Problem keptOverQuantity(Where where, int kept, int quantity) {
    return error(
        where,
        Reason.CONTRADICTION,
        "more plants are kept than the " + quantity + " there are",
        Integer.toString(kept),
        "correct one of them");
  }

  public static Problem pottedWithoutPot(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a month of potting needs a pot",
        found,
        "name the pot or leave potted empty");
  }

  public static Problem recurringLastStep(Where where, String step) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a step that recurs cannot be the last step done",
        step,
        "name the last once-only step");
  }

  public static Problem potAgainstSteps(Where where, String found, String step, String pot) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "after the step " + shown(step) + " the lot should stand in the pot " + shown(pot),
        found.isEmpty() ? "no pot" : found,
        "see which of them is right");
  }

  public static Problem arrivesOutOfSeason(
      Where where, String found, String form, String month, String season) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "plants of the form "
            + form
            + " arrive in "
            + month
            + ", outside the dormant season "
            + season,
        found,
        "see that the month is right");
  }

  public static Problem conditionWithoutCurve(
      Where where,
      String found,
      String lot,
      Optional<String> step,
      String condition,
      String species,
      Collection<String> curves) {
    return error(
        where,
        Reason.MISSING,
        "the lot "
            + shown(lot)
            + " comes to grow in the condition "
            + shown(condition)
            + step.map(name -> " at the step " + shown(name)).orElse("")
            + ", for which "
            + shown(species)
            + " has no growth; it has growth for "
            + list(curves),
        found,
        "add that growth, or another condition of pot or place");
  }

  public static Problem noSpacing(Where where, String found, String lot, Optional<String> step) {
    return error(
        where,
        Reason.MISSING,
        "the lot "
            + shown(lot)
            + " stands without a pot"
            + step.map(name -> " from the step " + shown(name)).orElse("")
            + " and has no plants per m2",
        found,
        "fill it in, on the lot or on the step");
  }

  public static Problem passportsDiffer(Where where, String found, List<String> passports) {
    return error(
        where,
        Reason.CONTRADICTION,
        "lots with different passports cannot be one: " + list(passports),
        found,
        "keep them as separate lots");
  }

  // Offers and plan

  public static Problem offerNamedLikeLot(Where where, String name) {
    return error(
        where, Reason.DUPLICATE, "a lot of the stock list has this name", name, "rename the offer");
  }

  public static Problem leastTwice(Where where, String offer, int least) {
    return error(
        where,
        Reason.DUPLICATE,
        "the offer " + shown(offer) + " has two prices from " + least + " plants",
        "",
        "give each price break its own least");
  }

  public static Problem mostBelowLeast(Where where, int most, int least) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the most is below the least of " + least,
        Integer.toString(most),
        "correct one of them");
  }

  public static Problem noExchangeRate(Where where, String currency) {
    return error(
        where,
        Reason.MISSING,
        "there is no exchange rate for this currency",
        currency,
        "add a setting exchange rate "
            + shown(currency)
            + ", or "
            + shown(currency)
            + " under exchange rates in nursery.json");
  }

  public static Problem arrivesOutsidePlan(
      Where where, String found, YearMonth first, YearMonth last) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "the offer is taken but arrives outside the plan, which runs from " + first + " to " + last,
        found,
        "correct the month, or do not take it");
  }

  public static Problem offerOutsidePlan(
      Where where, String found, YearMonth first, YearMonth last) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "the offer arrives outside the plan, which runs from "
            + first
            + " to "
            + last
            + ", and is left out",
        found,
        "");
  }

  public static Problem notAgain(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "it must be said how often the offer comes again",
        found,
        "write no, every season, or every 2 seasons");
  }

  public static Problem untilWithoutAgain(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the offer does not come again",
        found,
        "fill in again, or empty this cell");
  }

  public static Problem holdNeedsGrade(Where where) {
    return error(
        where,
        Reason.MISSING,
        "what is held needs a grade from which it is sold",
        "",
        "name a grade, or write \"share %\": 0 to hold none");
  }

  public static Problem heldNotTaken(Where where, String offer) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "the plan says what is held of the offer " + shown(offer) + ", which it does not take",
        "",
        "take it, or leave the hold out");
  }

  public static Problem orderedNotTaken(Where where, String offer) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the offer " + shown(offer) + " is ordered but not taken",
        "",
        "name it under take with its number, or leave it out here");
  }

  public static Problem takenOutsidePlan(Where where, String offer, YearMonth arrival) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "the offer " + shown(offer) + " arrives outside the plan",
        arrival.toString(),
        "take it out, or let the plan run at that time");
  }

  public static Problem fewerThanLeast(Where where, String offer, int quantity, int least) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "of the offer " + shown(offer) + " at least " + least + " plants must be taken",
        Integer.toString(quantity),
        "take that many, or 0");
  }

  public static Problem noMultiple(Where where, String offer, int quantity, int multiple) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "the offer " + shown(offer) + " is sold in multiples of " + multiple,
        Integer.toString(quantity),
        "take a multiple");
  }

  public static Problem moreThanMost(Where where, String offer, int quantity, int most) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "of the offer " + shown(offer) + " at most " + most + " plants can be had",
        Integer.toString(quantity),
        "take fewer");
  }

  public static Problem nameTooLongForAFolder(Where where, String found) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "a plan's name is that of its report folder, and is too long for one",
        found,
        "rename the plan with at most 100 letters, or 33 where a letter takes three bytes");
  }

  public static Problem reservedName(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "a plan's name is that of its report folder, and Windows keeps this one for a device",
        found,
        "rename the plan");
  }

  public static Problem nameWithoutAPath(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "a plan's name is that of its report folder, and this computer cannot write these letters",
        found,
        "rename the plan, or set LC_ALL=C.UTF-8");
  }

  public static Problem noFolderName(Where where, String found) {
    return error(
        where,
        Reason.WRONG_VALUE,
        "a plan's name is that of its report folder and may not hold / \\ : * ? \" < > | or begin or end with a dot",
        found,
        "rename the plan");
  }

  // Daybook

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
        "",
        "fill in free square metres, or ask plan, which answers a quick sheet");
  }

  public static Problem noDaybook(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is no daybook, or nothing in it, so there is nothing to review",
        "",
        "add a sheet or file daybook with a line for each happening, such as a count sheet filled"
            + " in");
  }

  public static Problem afterToday(Where where, String found, LocalDate today) {
    return error(
        where,
        Reason.CONTRADICTION,
        "this day has not come yet, today is " + today,
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
        "",
        "fill in to lot, with a new name if it is a new lot");
  }

  public static Problem movedWithoutLot(Where where) {
    return error(
        where,
        Reason.MISSING,
        "it is not said which lot the plants are moved to",
        "",
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
    return error(
        where, Reason.MISSING, "it is not said what was spent", "", "fill in amount or hours");
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
            : rows + " rows to count were left blank and are passed over",
        "",
        "");
  }

  public static Problem moreThanAlive(
      Where where,
      String found,
      String lot,
      String what,
      String alive,
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
            + alive
            + " alive"
            + by(rows, lastRows),
        found,
        "correct the row that is wrong, or enter plants that were found or returned");
  }

  /** As in " by rows 3, 5 and 8 before it". */
  private static String by(int rows, List<Where> last) {
    if (rows == 0) {
      return "";
    }
    List<String> numbers = last.stream().map(row -> Integer.toString(row.row())).toList();
    String these = (numbers.size() == 1 ? "row " : "rows ") + list(numbers);
    return rows > numbers.size()
        ? " by " + rows + " rows before it, the last of them " + these
        : " by " + these + " before it";
  }

  public static Problem countRises(Where where, String found, String lot, String alive) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "more plants of " + shown(lot) + " are counted than the " + alive + " that were alive",
        found,
        "enter plants that were found or returned, or correct the count");
  }

  public static Problem returnedWithoutRefund(Where where, String lot, String plants) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "plants of " + shown(lot) + " came back, and nothing says what was paid back for them",
        plants,
        "enter the amount paid back, 0 if there was none");
  }

  public static Problem invoiceWithoutCarriage(
      Where where, String lot, String amount, String charges) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "this is about the price of the plants of "
            + shown(lot)
            + " alone, without the "
            + charges
            + " planned for carriage and charges; it counts as the whole invoice",
        amount,
        "if carriage was billed apart, enter a line spent with the reason carriage");
  }

  public static Problem gradeNotReached(
      Where where, String found, String lot, int months, long thickestMm) {
    String training =
        months < 0 ? "its training has not started" : "it is in training for " + months + " months";
    return warning(
        where,
        Reason.CONTRADICTION,
        "plants of "
            + shown(lot)
            + " cannot have reached this grade: "
            + training
            + " and its thickest are about "
            + thickestMm
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

  // What was frozen

  private static final String FREEZE_AGAIN =
      "bring the file back as it was, or keep the plan again with plan --keep";

  public static Problem frozenLacks(Where where, String key) {
    return error(where, Reason.MISSING, "the key " + key + " is missing", "", FREEZE_AGAIN);
  }

  public static Problem frozenWrong(Where where, String found) {
    return error(
        where, Reason.WRONG_VALUE, "this is not what was written here", found, FREEZE_AGAIN);
  }

  private static boolean isJson(Where where) {
    return where.file().endsWith(".json");
  }

  static Problem error(Where where, Reason reason, String sentence, String found, String remedy) {
    return of(Severity.ERROR, where, reason, sentence, found, remedy);
  }

  static Problem warning(Where where, Reason reason, String sentence, String found, String remedy) {
    return of(Severity.WARNING, where, reason, sentence, found, remedy);
  }

  static Problem notice(Where where, Reason reason, String sentence, String found, String remedy) {
    return of(Severity.NOTICE, where, reason, sentence, found, remedy);
  }

  static Problem of(
      Severity severity, Where where, Reason reason, String sentence, String found, String remedy) {
    return new Problem(severity, reason, sentence, where, shown(found), remedy);
  }

  /** Fit to print: one line, not too long, nothing that hides or turns the text around it. */
  static String shown(String text) {
    String seen =
        text.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]+", " ").replaceAll("\\p{Cf}", "").strip();
    int letters = seen.codePointCount(0, seen.length());
    return letters <= LONGEST
        ? seen
        : seen.substring(0, seen.offsetByCodePoints(0, LONGEST)) + "...";
  }

  /** As in "lot, species and form". */
  static String list(Collection<String> words) {
    List<String> shown = words.stream().map(Advice::shown).sorted().toList();
    if (words instanceof List<String> ordered) {
      shown = ordered.stream().map(Advice::shown).toList();
    }
    if (shown.size() < 2) {
      return String.join("", shown);
    }
    int last = shown.size() - 1;
    return String.join(", ", shown.subList(0, last)) + " and " + shown.get(last);
  }
}
