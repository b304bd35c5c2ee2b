package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.list;
import static growingon.problem.advice.Wording.notice;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;
import java.util.List;
import java.util.Optional;

/** What is wrong, where, and what to do: JSON files and the settings of a nursery. */
public final class SettingsAdvice {
  private SettingsAdvice() {}

  public static Problem brokenJson(Where where, String why) {
    return error(
        where,
        Reason.UNREADABLE,
        "this is no proper JSON",
        why,
        "see to quotation marks, commas and brackets on this line and the one before");
  }

  public static Problem moreAfterJson(Where where) {
    return error(where, Reason.UNREADABLE, "there is more behind the closing brace", "remove it");
  }

  public static Problem noJsonObject(Where where) {
    return error(
        where,
        Reason.UNREADABLE,
        "a JSON file must hold an object in braces { }",
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

  public static Problem missingSettings(Where where, List<String> keys) {
    return error(
        where,
        Reason.MISSING,
        "the settings lack " + list(keys),
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
            .orElse("see the list of settings in demo-data/README.md"));
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
        where,
        Reason.ASSUMED,
        "1 " + foreign + " counts as " + MarkedText.number(rate) + " " + currency,
        "");
  }

  public static Problem hoursTwice(Where where, Where there) {
    return error(
        where, Reason.DUPLICATE, "hours are given twice, here and in " + there, "keep one of them");
  }

  public static Problem monthsMissing(Where where, List<String> months) {
    return error(
        where, Reason.MISSING, "hours are missing for " + list(months), "give all twelve months");
  }

  public static Problem cashOutsidePlan(Where where, String found) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "this month lies outside the plan, its cash does not count",
        found,
        "");
  }
}
