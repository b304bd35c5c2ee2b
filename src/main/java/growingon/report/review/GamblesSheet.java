package growingon.report.review;

import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Sentences;
import growingon.review.Review;
import growingon.review.bought.GambleKind;

/** Which kinds of gamble paid so far. */
final class GamblesSheet {
  private GamblesSheet() {}

  static Sheet of(Review review, String currency) {
    return review.kinds().isEmpty()
        ? Sheet.of("Gambles so far")
        : Sheet.of("Gambles so far", table(review, currency));
  }

  private static Table table(Review review, String currency) {
    return TableOf.<GambleKind>table("gambles-so-far", "Which kinds of gamble paid")
        .note(
            "Every bought lot that has come, once by supplier, once by species, once by whether"
                + " its quality was known when it was bought. "
                + Sentences.AS_BOOKED)
        .text("by", each -> each.by().toString())
        .text("kind", each -> each.kind().isEmpty() ? "not said" : each.kind())
        .column("lots", "", Kind.COUNT, GambleKind::lots)
        .column("paid", "", Kind.COUNT, GambleKind::paid)
        .column("did not pay", "", Kind.COUNT, GambleKind::didNotPay)
        .column("undecided", "", Kind.COUNT, GambleKind::undecided)
        .column("too young", "", Kind.COUNT, GambleKind::tooYoung)
        .column("cost landed", currency, Kind.MONEY, GambleKind::landed)
        .column("planned", currency, Kind.MONEY, GambleKind::planned)
        .column("expected now", currency, Kind.MONEY, GambleKind::expected)
        .belowNil()
        .of(review.kinds());
  }
}
