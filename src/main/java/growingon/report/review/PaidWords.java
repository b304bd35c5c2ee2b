package growingon.report.review;

import growingon.report.text.Phrases;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.CausePart;
import java.util.Comparator;
import java.util.List;

/** What is said of a bought lot: whether it paid, why, and what would make it even. */
record PaidWords(Review review, Phrases say) {
  private static final int CAUSES_NAMED = 2;
  private static final double HALF = 0.5;

  /** Two lines of a lot; the second belongs to the first. */
  List<String> headlines(BoughtReview bought) {
    return List.of(
        Phrases.sentence(bought.lot().name())
            + " "
            + reason(bought)
            + evenSold(bought)
            + unrecorded(bought),
        ReviewWords.INDENT
            + "Over the whole plan %s expected, %s planned%s."
                .formatted(money(bought.expected()), money(bought.planned()), mostly(bought)));
  }

  /** Whether a lot paid, why, against what was planned, and what would make it even. */
  String verdict(BoughtReview bought) {
    return String.join(
        " ",
        Phrases.sentence(bought.lot().name()) + " " + reason(bought) + evenSold(bought),
        result(bought),
        payback(bought) + toBeEven(bought) + unrecorded(bought));
  }

  /** A verdict on a lot that nobody wrote anything of is the plan's own. */
  private String unrecorded(BoughtReview bought) {
    boolean isRecorded =
        review.lots().stream()
            .anyMatch(each -> each.isRecorded() && bought.parts().contains(each.lot().name()));
    return isRecorded ? "" : " Nothing is written down of it: this is the plan's figure.";
  }

  private String reason(BoughtReview bought) {
    Verdict verdict = bought.verdict();
    String amount = money(Math.abs(verdict.amount()));
    String kind =
        switch (verdict.kind()) {
          case UNDECIDED, TOO_YOUNG -> "is " + verdict.kind();
          case PAID, DID_NOT_PAY -> verdict.kind().toString();
        };
    return kind
        + ": "
        + switch (verdict.why()) {
          case ALL_SOLD_AHEAD -> "nothing is left to sell, and %s remain.".formatted(amount);
          case MONEY_IS_BACK ->
              "its money is back and %s more, whatever becomes of the %s that stand."
                  .formatted(amount, say.plants(bought.wholeStanding()));
          case NOTHING_LEFT -> "nothing is left to sell, and %s are missing.".formatted(amount);
          case CANNOT_BE_REACHED ->
              "even if the %s that stand sell, %s will be missing with what they still cost."
                  .formatted(say.plants(bought.wholeStanding()), amount);
          case WITHOUT_A_GRADE ->
              "not all of the %s that stand have a grade yet; if it goes on as expected, %s will %s."
                  .formatted(
                      say.plants(bought.wholeStanding()),
                      amount,
                      verdict.amount() > 0 ? "be missing at the end of the plan" : "remain");
          case GONE_WITHOUT_A_LINE ->
              "%s are missing, but %s gone without a line: sold at list price they brought up to %s."
                  .formatted(amount, areGone(bought.missing()), money(bought.missing().worth()));
          case EXPECTED_TO_PAY -> "%s must still be earned%s.".formatted(amount, by(verdict));
          case EXPECTED_TO_FALL_SHORT ->
              "if it goes on as expected, %s will be missing at the end of the plan."
                  .formatted(amount);
        };
  }

  private String areGone(BoughtReview.Missing missing) {
    return say.counted(missing.plants(), "plant is", "plants are");
  }

  /** A loss stands also where all that is gone without a line was sold. */
  private String evenSold(BoughtReview bought) {
    boolean isTold =
        bought.verdict().kind() == Verdict.Kind.DID_NOT_PAY && bought.missing().plants() >= HALF;
    return isTold
        ? " Had the %s gone without a line been sold at list price (up to %s), it would not have paid either."
            .formatted(say.plants(bought.missing().plants()), money(bought.missing().worth()))
        : "";
  }

  private String by(Verdict verdict) {
    return verdict
        .by()
        .map(month -> ", by plants expected to sell until " + say.month(month))
        .orElse("");
  }

  private String result(BoughtReview bought) {
    double difference = bought.differenceCents() / 100.0;
    String against =
        Math.abs(difference) < HALF
            ? "as planned"
            : "%s %s than planned%s"
                .formatted(
                    money(Math.abs(difference)), difference > 0 ? "more" : "less", mostly(bought));
    return "Result so far %s; over the whole plan %s expected%s, %s."
        .formatted(money(bought.resultSoFar()), money(bought.expected()), likely(bought), against);
  }

  /** What it may become, where anything is still open. */
  private String likely(BoughtReview bought) {
    return bought
        .likely()
        .filter(range -> range.p90() - range.p10() >= 1)
        .map(
            range ->
                " (P10 %s, P50 %s, P90 %s)"
                    .formatted(
                        say.whole(range.p10()), say.whole(range.p50()), say.whole(range.p90())))
        .orElse("");
  }

  /** The causes that weigh most. */
  private String mostly(BoughtReview bought) {
    List<String> causes =
        bought.causes().stream()
            .filter(each -> Math.abs(each.amount()) >= HALF)
            .sorted(Comparator.comparingLong((CausePart each) -> -Math.abs(each.cents())))
            .limit(CAUSES_NAMED)
            .map(
                each ->
                    "%s (%s)".formatted(each.cause().word(each.cents() > 0), signed(each.amount())))
            .toList();
    return causes.isEmpty() ? "" : ", mostly by " + Phrases.list(causes);
  }

  private String payback(BoughtReview bought) {
    BoughtReview.Payback payback = bought.payback();
    String planned =
        payback
            .planned()
            .map(month -> " (planned: %s)".formatted(say.month(month)))
            .orElse(" (planned: not within the plan)");
    return switch (payback.state()) {
      case REACHED ->
          "Its money was back in " + say.month(payback.month().orElseThrow()) + planned + ".";
      case EXPECTED ->
          "Its money is expected back in "
              + say.month(payback.month().orElseThrow())
              + planned
              + ".";
      case NEVER -> "Its money does not come back within the plan" + planned + ".";
    };
  }

  private String toBeEven(BoughtReview bought) {
    return bought
        .toBeEven()
        .map(
            even ->
                even.isEnough()
                    ? " Sell %s more at %s to be even."
                        .formatted(even.plants(), say.each(even.price()))
                    : " To be even, %s more would have to sell at %s, and %s."
                        .formatted(even.plants(), say.each(even.price()), stand(bought)))
        .orElse("");
  }

  private String stand(BoughtReview bought) {
    long standing = bought.wholeStanding();
    return standing == 0
        ? "none stands"
        : "only %s".formatted(standing == 1 ? "1 stands" : say.whole(standing) + " stand");
  }

  private String money(double amount) {
    return say.money(amount);
  }

  private String signed(double amount) {
    return "%s%s".formatted(amount > 0 ? "+" : "", say.whole(amount));
  }
}
