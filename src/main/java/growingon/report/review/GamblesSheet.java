package growingon.report.review;

import growingon.report.build.TableBuilder;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.text.Sentences;
import growingon.review.Review;
import growingon.review.bought.GambleKind;

/** Which kinds of gamble paid so far. */
final class GamblesSheet {
  private GamblesSheet() {}

  static Sheet of(Review review, String currency) {
    if (review.kinds().isEmpty()) {
      return Sheet.of("Gambles so far");
    }
    TableBuilder table =
        TableBuilder.table("gambles-so-far", "Which kinds of gamble paid")
            .note(
                "Every bought lot that has come, once by supplier, once by species, once by whether"
                    + " its quality was known when it was bought. "
                    + Sentences.AS_BOOKED)
            .text("by")
            .text("kind");
    for (String heading : new String[] {"lots", "paid", "did not pay", "undecided", "too young"}) {
      table.column(heading, "", Kind.COUNT);
    }
    table
        .column("cost landed", currency, Kind.MONEY)
        .column("planned", currency, Kind.MONEY)
        .column("expected now", currency, Kind.MONEY)
        .flagged(Column.Flag.BELOW_ZERO);
    for (GambleKind each : review.kinds()) {
      table.row(
          each.by().toString(),
          each.kind().isEmpty() ? "not said" : each.kind(),
          each.lots(),
          each.paid(),
          each.didNotPay(),
          each.undecided(),
          each.tooYoung(),
          each.landed(),
          each.planned(),
          each.expected());
    }
    return Sheet.of("Gambles so far", table.build());
  }
}
