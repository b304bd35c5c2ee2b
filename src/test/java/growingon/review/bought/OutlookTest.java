package growingon.review.bought;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.time.Horizon;
import growingon.review.bought.BoughtReview.Missing;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.BoughtReview.Verdict.Kind;
import growingon.review.bought.BoughtReview.Verdict.Why;
import java.time.Month;
import java.time.YearMonth;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a lot paid by what it has brought, may bring, and what stands; on either side of nil. */
class OutlookTest {
  private static final Horizon HORIZON = new Horizon(YearMonth.of(2026, 11), 3, Month.NOVEMBER);

  private static Outlook outlook(
      double soFar, double toCome, double unsold, long stands, boolean isYoung) {
    return new Outlook(soFar, toCome, toCome + 20, 5, unsold, stands, stands, 5, isYoung, 14);
  }

  private static Verdict verdict(
      double soFar, double toCome, double unsold, long stands, boolean isYoung) {
    return outlook(soFar, toCome, unsold, stands, isYoung).verdict(Missing.NONE, HORIZON);
  }

  @ParameterizedTest
  @CsvSource({
    // nothing stands: what was brought decides
    "  0,   0,  0, 0, false, PAID,        ALL_SOLD_AHEAD,          0",
    " 30,   0,  0, 0, true,  PAID,        ALL_SOLD_AHEAD,         30",
    " -5,   0,  0, 0, false, DID_NOT_PAY, NOTHING_LEFT,            5",
    // what stands will not take away what is there
    "  0,   0,  0, 9, true,  PAID,        MONEY_IS_BACK,           0",
    " 10, -10,  0, 9, true,  PAID,        MONEY_IS_BACK,          10",
    " 10, -11,  1, 9, false, UNDECIDED,   EXPECTED_TO_FALL_SHORT,  1",
    " 10, -11,  1, 9, true,  TOO_YOUNG,   WITHOUT_A_GRADE,         1",
    "-50,  60,  0, 9, true,  TOO_YOUNG,   WITHOUT_A_GRADE,       -10",
    // what is unsold at the end could just bring it, or not
    "-50,  30, 19, 9, false, DID_NOT_PAY, CANNOT_BE_REACHED,       1",
    "-50,  30, 20, 9, false, UNDECIDED,   EXPECTED_TO_FALL_SHORT, 20",
    "-50,  50,  0, 9, false, UNDECIDED,   EXPECTED_TO_PAY,        50",
  })
  void verdict_isByWhatIsThere_andWhatMayCome(
      double soFar,
      double toCome,
      double unsold,
      long stands,
      boolean isYoung,
      Kind kind,
      Why why,
      double amount) {
    assertThat(verdict(soFar, toCome, unsold, stands, isYoung))
        .isEqualTo(new Verdict(kind, why, amount, Optional.of(YearMonth.of(2028, 1))));
  }

  /** 5 are missing: plants gone without a line that are worth 5 may have brought it. */
  @ParameterizedTest
  @CsvSource({"3, 5, UNDECIDED", "3, 4.99, DID_NOT_PAY", "0, 5, DID_NOT_PAY"})
  void lotThatDidNotPay_isOpen_whereWhatIsGoneMayHaveBroughtIt(
      double plants, double worth, Kind kind) {
    Verdict verdict = outlook(-5, 0, 0, 0, false).verdict(new Missing(plants, worth), HORIZON);

    assertThat(verdict.kind()).isEqualTo(kind);
    assertThat(verdict.amount()).isEqualTo(5);
    assertThat(verdict.why() == Why.GONE_WITHOUT_A_LINE).isEqualTo(kind == Kind.UNDECIDED);
  }

  @Test
  void lotThatPaid_isNotOpen_whateverIsGone() {
    assertThat(outlook(5, 0, 0, 0, false).verdict(new Missing(3, 90), HORIZON).kind())
        .isEqualTo(Kind.PAID);
  }

  @Test
  void costsToCome_areTheSalesToCome_lessWhatIsLeftOfThem() {
    assertThat(outlook(-50, 30, 0, 9, false).costsToCome()).isEqualTo(20);
  }

  @Test
  void lastSale_inTheFirstMonth_isNamed_andNoneIsNot() {
    Outlook first = new Outlook(0, 0, 0, 0, 0, 0, 0, 0, false, 0);
    Outlook none = new Outlook(0, 0, 0, 0, 0, 0, 0, 0, false, -1);

    assertThat(first.verdict(Missing.NONE, HORIZON).by()).contains(YearMonth.of(2026, 11));
    assertThat(none.verdict(Missing.NONE, HORIZON).by()).isEmpty();
  }
}
