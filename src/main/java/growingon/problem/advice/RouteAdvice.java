package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.shown;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;

/** What is wrong, where, and what to do: routes and their steps. */
public final class RouteAdvice {
  private RouteAdvice() {}

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
}
