package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.shown;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;
import java.time.YearMonth;

/** What is wrong, where, and what to do: demand, offers and the plan. */
public final class PlanAdvice {
  private PlanAdvice() {}

  public static Problem starWithoutLadder(Where where) {
    return error(where, Reason.MISSING, "a row for every species (*) needs a ladder", "name it");
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
        "widen the months or see to the pattern");
  }

  public static Problem offerNamedLikeLot(Where where, String name) {
    return error(
        where, Reason.DUPLICATE, "a lot of the stock list has this name", name, "rename the offer");
  }

  public static Problem leastTwice(Where where, String offer, int least) {
    return error(
        where,
        Reason.DUPLICATE,
        "the offer "
            + shown(offer)
            + " has two prices from "
            + MarkedText.number(least)
            + " plants",
        "give each price break its own least");
  }

  public static Problem mostBelowLeast(Where where, int most, int least) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the most is below the least of " + MarkedText.number(least),
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
        "the offer is taken but arrives outside the plan, which runs from "
            + MarkedText.month(first)
            + " to "
            + MarkedText.month(last),
        found,
        "correct the month, or do not take it");
  }

  public static Problem offerOutsidePlan(
      Where where, String found, YearMonth first, YearMonth last) {
    return warning(
        where,
        Reason.OUT_OF_RANGE,
        "the offer arrives outside the plan, which runs from "
            + MarkedText.month(first)
            + " to "
            + MarkedText.month(last)
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
        "name a grade, or write \"share %\": 0 to hold none");
  }

  public static Problem heldNotTaken(Where where, String offer) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "the plan says what is held of the offer " + shown(offer) + ", which it does not take",
        "take it, or leave the hold out");
  }

  public static Problem orderedNotTaken(Where where, String offer) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the offer " + shown(offer) + " is ordered but not taken",
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
        "of the offer "
            + shown(offer)
            + " at least "
            + MarkedText.number(least)
            + " plants must be taken",
        Integer.toString(quantity),
        "take that many, or 0");
  }

  public static Problem noMultiple(Where where, String offer, int quantity, int multiple) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "the offer " + shown(offer) + " is sold in multiples of " + MarkedText.number(multiple),
        Integer.toString(quantity),
        "take a multiple");
  }

  public static Problem moreThanMost(Where where, String offer, int quantity, int most) {
    return error(
        where,
        Reason.OUT_OF_RANGE,
        "of the offer "
            + shown(offer)
            + " at most "
            + MarkedText.number(most)
            + " plants can be had",
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
}
