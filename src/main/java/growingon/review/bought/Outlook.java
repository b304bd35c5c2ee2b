package growingon.review.bought;

import growingon.nursery.time.Horizon;
import growingon.review.bought.BoughtReview.Missing;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.BoughtReview.Verdict.Kind;
import growingon.review.bought.BoughtReview.Verdict.Why;
import java.time.YearMonth;
import java.util.Optional;

/**
 * What a bought lot has brought and what may still come, and whether it has paid by that.
 *
 * @param soFar sales less costs up to now, plan currency
 * @param toCome sales less costs after it
 * @param salesToCome sales after it
 * @param unitsToCome plants that are still to be sold
 * @param unsoldAtList list price of those unsold at the end of the plan
 * @param stands plants alive now that are not kept
 * @param wholeStands the same in whole plants
 * @param wholeToCome whole plants that are still to be sold
 * @param isYoung whether plants stand that have no grade yet
 * @param lastSale month of its last sale to come; -1 for none
 */
record Outlook(
    double soFar,
    double toCome,
    double salesToCome,
    double unitsToCome,
    double unsoldAtList,
    double stands,
    long wholeStands,
    long wholeToCome,
    boolean isYoung,
    int lastSale) {
  /** Costs that are still to come. */
  double costsToCome() {
    return salesToCome - toCome;
  }

  /** A lot did not pay only where it did not even if all that is gone without a line was sold. */
  Verdict verdict(Missing missing, Horizon horizon) {
    Optional<YearMonth> by = lastSale < 0 ? Optional.empty() : Optional.of(horizon.month(lastSale));
    Verdict found = verdict(by);
    boolean isOpen =
        found.kind() == Kind.DID_NOT_PAY
            && missing.plants() > 0
            && missing.worth() >= found.amount();
    return isOpen
        ? new Verdict(Kind.UNDECIDED, Why.GONE_WITHOUT_A_LINE, found.amount(), by)
        : found;
  }

  private Verdict verdict(Optional<YearMonth> by) {
    double expected = soFar + toCome;
    if (wholeStands == 0) {
      return soFar >= 0
          ? new Verdict(Kind.PAID, Why.ALL_SOLD_AHEAD, soFar, by)
          : new Verdict(Kind.DID_NOT_PAY, Why.NOTHING_LEFT, -soFar, by);
    }
    if (soFar >= 0 && expected >= 0) {
      return new Verdict(Kind.PAID, Why.MONEY_IS_BACK, soFar, by);
    }
    if (isYoung) {
      return new Verdict(Kind.TOO_YOUNG, Why.WITHOUT_A_GRADE, -expected, by);
    }
    double atBest = expected + unsoldAtList;
    if (atBest < 0) {
      return new Verdict(Kind.DID_NOT_PAY, Why.CANNOT_BE_REACHED, -atBest, by);
    }
    return expected >= 0
        ? new Verdict(Kind.UNDECIDED, Why.EXPECTED_TO_PAY, -soFar, by)
        : new Verdict(Kind.UNDECIDED, Why.EXPECTED_TO_FALL_SHORT, -expected, by);
  }
}
