package growingon.review.bought;

import growingon.nursery.lot.Lot;
import growingon.review.kept.Range;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/**
 * Whether a lot bought within the plan paid, with all lots that were split off from it. Money is
 * that of lot accounts: sales less plants, carriage, pots, substrate, materials, all hours at the
 * hourly rate, care and the charge for its place, plan currency without VAT; real up to the
 * daybook's last month, from then on by the projection that starts from what is there.
 *
 * @param lot the lot as it was bought
 * @param parts names of the lots that its plants stand in, itself among them
 * @param isSeen whether its quality was known when it was bought
 * @param landed what it cost landed
 * @param cashSoFar what it has brought in cash: hours at the share that is paid, no charge for its
 *     place
 * @param resultSoFar sales less costs up to the daybook's last month
 * @param resultToCome sales less costs after it, to the end of the plan
 * @param salesToCome sales after it, to the end of the plan
 * @param standing plants alive now that are not kept
 * @param unitsToCome plants that are still to be sold within the plan
 * @param wholeStanding whole plants alive now that are not kept
 * @param wholeToCome whole plants that are still to be sold within the plan
 * @param unsoldAtList list price of those unsold at the end of the plan; in no result
 * @param likely between what its result over the whole plan is now likely to lie; empty without
 *     draws
 * @param planned result over the whole plan as planned
 * @param payback when its money is back
 * @param toBeEven what must be sold to be even; empty where it is even already or has nothing to
 *     sell
 * @param verdict whether it paid
 * @param steps what each cause replaces, in their order
 * @param missing plants of which no line says what became of them; what they may have brought is in
 *     no result
 * @param money its result up to the end of each month
 */
@RecordBuilder
public record BoughtReview(
    Lot lot,
    List<String> parts,
    boolean isSeen,
    double landed,
    double cashSoFar,
    double resultSoFar,
    double resultToCome,
    double salesToCome,
    double standing,
    double unitsToCome,
    long wholeStanding,
    long wholeToCome,
    double unsoldAtList,
    Optional<Range> likely,
    double planned,
    Payback payback,
    Optional<ToBeEven> toBeEven,
    Verdict verdict,
    List<CauseStep> steps,
    Missing missing,
    Money money) {
  public BoughtReview {
    parts = List.copyOf(parts);
    steps = List.copyOf(steps);
  }

  /** The parts of {@code expected − planned} by cause in their order; they sum to it exactly. */
  public List<CausePart> causes() {
    return Causes.parts(steps);
  }

  /**
   * Plants gone without a line: sold or lost.
   *
   * @param plants how many
   * @param worth the most they can have brought at list price, plan currency
   */
  public record Missing(double plants, double worth) {
    /** Every plant is accounted for. */
    public static final Missing NONE = new Missing(0, 0);
  }

  /**
   * Result up to the end of each month of the plan, plan currency.
   *
   * @param planned [month] as planned
   * @param expected [month] real up to the daybook's last month, then as now expected
   * @param range [month] what the plan's own draws said; empty where it had none
   */
  public record Money(List<Double> planned, List<Double> expected, List<Range> range) {
    public Money {
      planned = List.copyOf(planned);
      expected = List.copyOf(expected);
      range = List.copyOf(range);
    }
  }

  /** Result over the whole plan as now expected. */
  public double expected() {
    return resultSoFar + resultToCome;
  }

  /** Expected less planned, in hundredths, as {@code causes} sum to it. */
  public long differenceCents() {
    return causes().stream().mapToLong(CausePart::cents).sum();
  }

  /**
   * When the money of a lot is back.
   *
   * @param state whether it is
   * @param month first month from which its result stays at or above nil; empty for never
   * @param planned the same as planned; empty for never
   */
  public record Payback(State state, Optional<YearMonth> month, Optional<YearMonth> planned) {
    /** Whether the money is back. */
    public enum State {
      /** It is. */
      REACHED,
      /** It will be by the projection. */
      EXPECTED,
      /** Not within the plan. */
      NEVER
    }
  }

  /**
   * Sell so many more at such a price to be even, with the costs that are still to come.
   *
   * @param plants whole plants
   * @param price each, plan currency: the mean price of what is still to be sold, or the list price
   *     of what stands where nothing is
   * @param isEnough whether so many stand
   */
  public record ToBeEven(int plants, double price, boolean isEnough) {}

  /**
   * Whether a lot paid.
   *
   * @param kind the verdict
   * @param why the reason
   * @param amount plan currency; what it means depends on the reason
   * @param by last month of the plan in which it is expected to sell; empty if it sells no more
   */
  public record Verdict(Kind kind, Why why, double amount, Optional<YearMonth> by) {
    /** The verdict. */
    public enum Kind {
      /** It paid. */
      PAID("paid"),
      /** It did not pay. */
      DID_NOT_PAY("did not pay"),
      /** Not yet decided. */
      UNDECIDED("undecided"),
      /** Plants stand that have no grade yet, and its money is not back. */
      TOO_YOUNG("too young to tell");

      private final String word;

      Kind(String word) {
        this.word = word;
      }

      /** The word used in reports. */
      @Override
      public String toString() {
        return word;
      }
    }

    /** The reason of a verdict. */
    public enum Why {
      /** Paid: nothing is left, and the amount remains. */
      ALL_SOLD_AHEAD,
      /** Paid: the amount is there already, and what still stands does not take it away. */
      MONEY_IS_BACK,
      /** Did not pay: nothing is left to sell, and the amount is missing. */
      NOTHING_LEFT,
      /** Did not pay: even with all that is unsold at the end at list price it is short. */
      CANNOT_BE_REACHED,
      /** Undecided: the amount is missing, and what is gone without a line may have brought it. */
      GONE_WITHOUT_A_LINE,
      /** Too young: by the projection the amount will be missing; below nil, it will be left. */
      WITHOUT_A_GRADE,
      /** Undecided: the amount is still to be earned, and is expected to be within the plan. */
      EXPECTED_TO_PAY,
      /** Undecided: by the projection the amount will be missing at the end of the plan. */
      EXPECTED_TO_FALL_SHORT
    }
  }

  /** A bought lot of which nothing else is said yet. */
  public static BoughtReviewBuilder of(Lot lot, Payback payback, Verdict verdict, Money money) {
    return BoughtReviewBuilder.builder()
        .lot(lot)
        .payback(payback)
        .verdict(verdict)
        .money(money)
        .parts(List.of())
        .steps(List.of())
        .missing(Missing.NONE);
  }
}
