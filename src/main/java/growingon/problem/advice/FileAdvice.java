package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.isJson;
import static growingon.problem.advice.Wording.notice;
import static growingon.problem.advice.Wording.of;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Severity;
import growingon.problem.Where;
import java.util.List;
import java.util.Optional;

/** What is wrong, where, and what to do: files and folders that cannot be read or written. */
public final class FileAdvice {
  private FileAdvice() {}

  public static Problem notThere(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "there is no such file or folder",
        "give a plan.json, a nursery folder or one .xlsx workbook");
  }

  public static Problem notReadable(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is none of the files that can be planned from",
        "give a plan.json, a nursery folder or one .xlsx workbook");
  }

  public static Problem notAPlan(Where where) {
    return error(
        where, Reason.UNREADABLE, "this file is part of a nursery, not a plan", "give its folder");
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
        "save it as a file");
  }

  public static Problem nothingOfANursery(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is no table of a nursery here",
        "give a plan.json, a nursery folder or one .xlsx workbook, or start a new folder");
  }

  public static Problem noWorkingFolder() {
    return error(
        Where.NOWHERE,
        Reason.UNREADABLE,
        "the folder that you work in is gone, or its name has letters that do not come through",
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
        where, Reason.UNREADABLE, "this file is empty", "fill it or take it out of the folder");
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
        "open it in the program that made it and save it as an Excel workbook (.xlsx)");
  }

  public static Problem brokenWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook is damaged",
        "open it in a spreadsheet program, let it be repaired, and save it again");
  }

  public static Problem strictWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook is saved as \"Strict Open XML\", which cannot be read",
        "save it as an Excel workbook (.xlsx)");
  }

  public static Problem oldWorkbook(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is a workbook of the old kind (.xls)",
        "save it as an Excel workbook (.xlsx)");
  }

  public static Problem encrypted(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook is locked with a password",
        "save it without the password");
  }

  public static Problem zipBomb(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "this workbook would unpack to far more than its size, as made-up files do",
        "copy its values into a new workbook");
  }

  public static Problem hiddenSheet(Where where) {
    return notice(
        where, Reason.ASSUMED, "this sheet is hidden and is not read", "show it if it is to count");
  }

  public static Problem emptySheet(Where where) {
    return notice(where, Reason.ASSUMED, "this sheet is empty and counts as not there", "");
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
        "keep one of them");
  }

  public static Problem missingTable(Where where, String table) {
    return error(
        where,
        Reason.MISSING,
        "there is no table " + table,
        "add a sheet of that name to a workbook of the folder, or " + table + ".csv");
  }

  public static Problem missingLots(Where where) {
    return error(
        where,
        Reason.MISSING,
        "there is neither a table stock nor a table offers, so there are no lots to plan",
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
        "add one of them");
  }

  public static Problem noPlaces() {
    return notice(
        Where.NOWHERE,
        Reason.MISSING,
        "there is no table places, so the plan says nothing about space, and places named elsewhere do not count",
        "");
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
        "add a table demand with prices");
  }

  public static Problem noLots(Where where) {
    return warning(where, Reason.MISSING, "the stock list has no lots", "");
  }

  public static Problem settingsTwice(Where where, Where there) {
    return error(
        where,
        Reason.DUPLICATE,
        "the settings are given twice, here and in " + there,
        "keep one of them");
  }
}
