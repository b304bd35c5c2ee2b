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
import java.util.Optional;

/** What is wrong, where, and what to do: lots. */
public final class LotAdvice {
  private LotAdvice() {}

  public static Problem noTrunk(Where where) {
    return error(
        where,
        Reason.MISSING,
        "the trunks are not stated",
        "fill in trunk mm, or trunk from mm and trunk to mm, or girth from cm and girth to cm");
  }

  public static Problem trunkTwice(Where where) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the trunks are stated in more than one way",
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

  public static Problem usualOfClass(Where where, String found) {
    return error(
        where,
        Reason.CONTRADICTION,
        "a usual trunk is a mean, and here is a size class",
        found,
        "write trunk mm in place of the class, or leave usual trunk of empty");
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
        "the lot arrives in or after the first month of the plan, " + MarkedText.month(first),
        found,
        "enter it as an offer");
  }

  public static Problem listedBeforeArrival(Where where, String found, YearMonth list) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the lot arrives after the month of this list, " + MarkedText.month(list),
        found,
        "correct the month, or leave the row out");
  }

  public static Problem countedBeforeArrival(Where where, String found, YearMonth arrived) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the lot is counted before it arrives in " + MarkedText.month(arrived),
        found,
        "correct one of them");
  }

  public static Problem notYetHappened(Where where, String found, YearMonth first) {
    return error(
        where,
        Reason.CONTRADICTION,
        "this lies after the first month of the plan, " + MarkedText.month(first),
        found,
        "correct it, or begin the plan later");
  }

  public static Problem keptOverQuantity(Where where, int kept, int quantity) {
    return error(
        where,
        Reason.CONTRADICTION,
        "more plants are kept than the " + MarkedText.number(quantity) + " there are",
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
}
