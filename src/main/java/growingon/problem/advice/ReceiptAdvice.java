package growingon.problem.advice;

import static growingon.problem.advice.Wording.error;
import static growingon.problem.advice.Wording.shown;
import static growingon.problem.advice.Wording.warning;

import growingon.problem.MarkedText;
import growingon.problem.Problem;
import growingon.problem.Reason;
import growingon.problem.Where;

/** What is wrong, where, and what to do: receipts of a till or the bookkeeping. */
public final class ReceiptAdvice {
  private ReceiptAdvice() {}

  public static Problem vatNotSaid(Where where) {
    return error(
        where,
        Reason.MISSING,
        "the heading does not say whether VAT is in the amounts",
        where.column(),
        "head the column \"amount without VAT\", or \"amount with VAT\" with a column \"VAT %\""
            + " beside it");
  }

  public static Problem rateNotSaid(Where where, String amount) {
    return error(
        where,
        Reason.MISSING,
        "VAT is in the amount, and its rate is not said",
        amount,
        "fill in VAT %, 0 if there is none");
  }

  public static Problem oppositeSigns(Where where, String number) {
    return error(
        where,
        Reason.CONTRADICTION,
        "number and amount have opposite signs",
        number,
        "give both a minus where plants came back, else none");
  }

  public static Problem nearlyNamed(Where where, String found, String near) {
    return error(
        where,
        Reason.UNKNOWN_NAME,
        "nearly the name " + shown(near),
        found,
        "write it as it stands in the nursery's tables");
  }

  public static Problem notOurs(Where where, String found) {
    return warning(
        where,
        Reason.UNKNOWN_NAME,
        "none of the nursery's plants has this name; the row counts among the receipts of no lot",
        found,
        "if it is a plant of yours, write its species or lot as in the nursery's tables");
  }

  public static Problem noPlant(Where where) {
    return warning(
        where,
        Reason.MISSING,
        "neither species nor lot is said; the row counts among the receipts of no lot",
        "fill in the species or the lot");
  }

  public static Problem otherSpecies(Where where, String found, String lot, String of) {
    return error(
        where,
        Reason.CONTRADICTION,
        "the lot " + shown(lot) + " is of " + shown(of),
        found,
        "leave the species empty, or name the right lot");
  }

  public static Problem fitsNoLot(Where where, long plants, String why) {
    return warning(
        where,
        Reason.CONTRADICTION,
        "fits no lot: " + why + "; it counts among the receipts of no lot",
        new MarkedText(MarkedText.number(plants) + " plants"),
        "name the lot, or correct number, grade or the stock lists");
  }
}
