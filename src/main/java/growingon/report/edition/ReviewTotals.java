package growingon.report.edition;

import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.review.Compared;
import growingon.review.Review;
import java.util.List;

/** All lots together as planned and as it came; costs and results are not for a partner. */
final class ReviewTotals {
  private final Review review;
  private final String currency;
  private final Phrases say;

  ReviewTotals(Review review, Phrases say) {
    this.review = review;
    this.currency = say.currency();
    this.say = say;
  }

  Table table(boolean isForPartner) {
    Review.Together all = review.nursery();
    TableBuilder table =
        TableBuilder.table("so-far", "The nursery so far")
            .note(
                "Up to the end of %s. ".formatted(say.month(review.through()))
                    + Sentences.AS_BOOKED)
            .text("what")
            .text("unit");
    for (String heading : List.of("planned", "real", "difference")) {
      table.column(heading, "", Kind.COUNT);
    }
    row(table, "plants alive", "plants", all.alive());
    row(table, "plants sold", "plants", all.unitsSold());
    row(table, "sales", currency, all.sales());
    if (!isForPartner) {
      row(table, "costs of all lots", currency, all.costs());
      row(table, "result of all lots", currency, all.result());
      ofNoLot(table);
    }
    return table.build();
  }

  /** What no lot costs and brings, in one sum that tells no single receipt, and what is left. */
  private void ofNoLot(TableBuilder table) {
    Compared costs = review.costsOfNoLotLessReceipts();
    if (costs.planned() != 0 || costs.real() != 0) {
      row(table, "costs of no lot, less its receipts", currency, costs);
      row(table, "result", currency, review.nursery().result().less(costs));
    }
  }

  private static void row(TableBuilder table, String what, String unit, Compared figure) {
    long planned = Math.round(figure.planned());
    long real = Math.round(figure.real());
    table.row(what, unit, planned, real, real - planned);
  }
}
