package growingon.report.edition;

import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import growingon.review.Compared;
import growingon.review.Review;
import java.util.ArrayList;
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

  /** A figure of all lots together. */
  private record Line(String what, String unit, Compared figure) {
    long planned() {
      return Math.round(figure.planned());
    }

    long real() {
      return Math.round(figure.real());
    }
  }

  Table table(boolean isForPartner) {
    return TableOf.<Line>table("so-far", "The nursery so far")
        .note("Up to the end of %s. ".formatted(say.month(review.through())) + Sentences.AS_BOOKED)
        .text("what", Line::what)
        .text("unit", Line::unit)
        .column("planned", "", Kind.COUNT, Line::planned)
        .column("real", "", Kind.COUNT, Line::real)
        .column("difference", "", Kind.COUNT, line -> line.real() - line.planned())
        .of(lines(isForPartner));
  }

  private List<Line> lines(boolean isForPartner) {
    Review.Together all = review.nursery();
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("plants alive", "plants", all.alive()));
    lines.add(new Line("plants sold", "plants", all.unitsSold()));
    lines.add(new Line("sales", currency, all.sales()));
    if (!isForPartner) {
      lines.add(new Line("costs of all lots", currency, all.costs()));
      lines.add(new Line("result of all lots", currency, all.result()));
      lines.addAll(ofNoLot());
    }
    return lines;
  }

  /** What no lot costs and brings, in one sum that tells no single receipt, and what is left. */
  private List<Line> ofNoLot() {
    Compared costs = review.costsOfNoLotLessReceipts();
    return costs.planned() == 0 && costs.real() == 0
        ? List.of()
        : List.of(
            new Line("costs of no lot, less its receipts", currency, costs),
            new Line("result", currency, review.nursery().result().less(costs)));
  }
}
