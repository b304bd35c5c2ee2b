package growingon.report.review;

import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.ToBeEven;
import growingon.review.kept.Range;
import java.util.ArrayList;
import java.util.List;

/** Each bought lot: what it has brought, what is still to come, when its money is back. */
final class DidItPaySheet {
  static final String NAME = "Did it pay";

  private DidItPaySheet() {}

  static Sheet of(Review review, ReviewWords words, ReviewCharts charts, String currency) {
    if (review.bought().isEmpty()) {
      return Sheet.of(NAME);
    }
    List<String> sentences = new ArrayList<>(words.verdicts());
    sentences.add(Sentences.AS_BOOKED);
    return new Sheet(
        NAME,
        sentences,
        List.of(results(review, currency), ahead(review, currency)),
        charts.money(),
        false);
  }

  private static Table results(Review review, String currency) {
    return TableOf.<BoughtReview>table("did-it-pay", "Did it pay")
        .note(
            "Result: sales less plants, carriage, pots, substrate, materials, all hours at the"
                + " hourly rate, care and place; what was split off counts with the lot that"
                + " was bought. Cash so far: hours at the share that is paid, no place. P10, P50 and"
                + " P90: what expected now may become, by luck and by what is not known from now"
                + " on; of a lot without a line as planned. Expected now is the run with expected"
                + " values; where demand binds, P50 lies below it.")
        .text("lot", each -> each.lot().name())
        .text("supplier", each -> Rows.text(each.lot().papers().supplier()))
        .text("verdict", each -> each.verdict().kind().toString())
        .summed("cost landed", currency, Kind.MONEY, BoughtReview::landed)
        .summed("cash so far", currency, Kind.MONEY, BoughtReview::cashSoFar)
        .summed("result so far", currency, Kind.MONEY, BoughtReview::resultSoFar)
        .summed("result to come", currency, Kind.MONEY, BoughtReview::resultToCome)
        .summed("expected now", currency, Kind.MONEY, BoughtReview::expected)
        .belowNil()
        .column("P10", currency, Kind.MONEY, each -> each.likely().map(Range::p10).orElse(null))
        .column("P50", currency, Kind.MONEY, each -> each.likely().map(Range::p50).orElse(null))
        .column("P90", currency, Kind.MONEY, each -> each.likely().map(Range::p90).orElse(null))
        .summed("planned", currency, Kind.MONEY, BoughtReview::planned)
        .summed("difference", currency, Kind.MONEY, each -> each.differenceCents() / 100.0)
        .belowNil()
        .of(review.bought());
  }

  private static Table ahead(Review review, String currency) {
    return TableOf.<BoughtReview>table(
            "money-back", "When the money is back, and what is still to sell")
        .note(
            "To be even: so many more at that price, with the costs still to come. Unsold at list:"
                + " plants unsold at the end of the plan; in no result.")
        .text("lot", each -> each.lot().name())
        .text("money back", each -> words(each.payback().state()))
        .month("back in", each -> each.payback().month().orElse(null))
        .month("planned in", each -> each.payback().planned().orElse(null))
        .plants("standing", each -> Plants.of(each.standing(), each.wholeStanding()))
        .plants("to sell", each -> Plants.of(each.unitsToCome(), each.wholeToCome()))
        .summed("sales to come", currency, Kind.MONEY, BoughtReview::salesToCome)
        .column(
            "sell more to be even",
            "",
            Kind.COUNT,
            each -> each.toBeEven().map(ToBeEven::plants).orElse(null))
        .column(
            "at",
            currency,
            Kind.MONEY_EACH,
            each -> each.toBeEven().map(ToBeEven::price).orElse(null))
        .text(
            "so many stand",
            each -> each.toBeEven().map(even -> even.isEnough() ? "yes" : "no").orElse(null))
        .summed("unsold at list", currency, Kind.MONEY, BoughtReview::unsoldAtList)
        .of(review.bought());
  }

  private static String words(BoughtReview.Payback.State state) {
    return switch (state) {
      case REACHED -> "reached";
      case EXPECTED -> "expected";
      case NEVER -> "not within the plan";
    };
  }
}
