package growingon.report.review;

import growingon.report.build.TableBuilder;
import growingon.report.model.Column;
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
    TableBuilder table =
        TableBuilder.table("did-it-pay", "Did it pay")
            .note(
                "Result: sales less plants, carriage, pots, substrate, materials, all hours at the"
                    + " hourly rate, care and place; what was split off counts with the lot that"
                    + " was bought. Cash so far: hours at the share that is paid, no place. P10, P50 and"
                    + " P90: what expected now may become, by luck and by what is not known from now"
                    + " on; of a lot without a line as planned. Expected now is the run with expected"
                    + " values; where demand binds, P50 lies below it.")
            .text("lot")
            .text("supplier")
            .text("verdict");
    money(table, currency, "cost landed", "cash so far", "result so far", "result to come");
    table.summed("expected now", currency, Kind.MONEY).flagged(Column.Flag.BELOW_ZERO);
    table.column("P10", currency, Kind.MONEY).column("P50", currency, Kind.MONEY);
    table.column("P90", currency, Kind.MONEY);
    money(table, currency, "planned");
    table.summed("difference", currency, Kind.MONEY).flagged(Column.Flag.BELOW_ZERO);
    for (BoughtReview each : review.bought()) {
      table.row(
          each.lot().name(),
          Rows.text(each.lot().papers().supplier()),
          each.verdict().kind().toString(),
          each.landed(),
          each.cashSoFar(),
          each.resultSoFar(),
          each.resultToCome(),
          each.expected(),
          each.likely().map(Range::p10).orElse(null),
          each.likely().map(Range::p50).orElse(null),
          each.likely().map(Range::p90).orElse(null),
          each.planned(),
          each.differenceCents() / 100.0);
    }
    return table.build();
  }

  private static void money(TableBuilder table, String currency, String... headings) {
    for (String heading : headings) {
      table.summed(heading, currency, Kind.MONEY);
    }
  }

  private static Table ahead(Review review, String currency) {
    TableBuilder table =
        TableBuilder.table("money-back", "When the money is back, and what is still to sell")
            .note(
                "To be even: so many more at that price, with the costs still to come. Unsold at list:"
                    + " plants unsold at the end of the plan; in no result.")
            .text("lot")
            .text("money back")
            .month("back in")
            .month("planned in")
            .plants("standing")
            .plants("to sell")
            .summed("sales to come", currency, Kind.MONEY)
            .column("sell more to be even", "", Kind.COUNT)
            .column("at", currency, Kind.MONEY_EACH)
            .text("so many stand")
            .summed("unsold at list", currency, Kind.MONEY);
    for (BoughtReview each : review.bought()) {
      table.row(
          each.lot().name(),
          words(each.payback().state()),
          each.payback().month().orElse(null),
          each.payback().planned().orElse(null),
          Plants.of(each.standing(), each.wholeStanding()),
          Plants.of(each.unitsToCome(), each.wholeToCome()),
          each.salesToCome(),
          each.toBeEven().map(ToBeEven::plants).orElse(null),
          each.toBeEven().map(ToBeEven::price).orElse(null),
          each.toBeEven().map(even -> even.isEnough() ? "yes" : "no").orElse(null),
          each.unsoldAtList());
    }
    return table.build();
  }

  private static String words(BoughtReview.Payback.State state) {
    return switch (state) {
      case REACHED -> "reached";
      case EXPECTED -> "expected";
      case NEVER -> "not within the plan";
    };
  }
}
