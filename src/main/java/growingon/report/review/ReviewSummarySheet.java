package growingon.report.review;

import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.review.ComparedColumns.Line;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.review.Compared;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a grower reads first of a review; a suspicion that may have to be notified stands on top.
 */
final class ReviewSummarySheet {
  private ReviewSummarySheet() {}

  static Sheet of(Review review, ReviewWords words, ReviewCharts charts, Phrases say) {
    List<String> sentences = new ArrayList<>(words.notifiable());
    sentences.addAll(words.basis());
    sentences.addAll(words.verdicts());
    sentences.addAll(words.plants());
    sentences.addAll(words.faults());
    return new Sheet("Summary", sentences, List.of(soFar(review, say)), charts.first(), true);
  }

  private static Table soFar(Review review, Phrases say) {
    Review.Together all = review.nursery();
    List<Line> lines = new ArrayList<>();
    lines.add(Line.of("plants alive", "plants", all.alive(), Kind.PLANTS));
    lines.add(Line.of("plants sold", "plants", all.unitsSold(), Kind.PLANTS));
    lines.add(Line.of("sales", say.currency(), all.sales(), Kind.MONEY));
    lines.add(Line.of("hours", "hours", all.hours(), Kind.HOURS));
    lines.add(Line.of("costs of lots", say.currency(), all.costs(), Kind.MONEY));
    lines.add(Line.of("result of lots", say.currency(), all.result(), Kind.MONEY));
    lines.addAll(noLot(review, say.currency()));
    lines.addAll(gone(review, say.currency()));
    return ComparedColumns.of(
        TableOf.<Line>table("so-far", "The nursery so far")
            .note(
                "Up to the end of %s. What %s say is assumed. Costs of no lot are planned as other cash, and count their hours. "
                        .formatted(
                            say.month(review.through()),
                            review.sources().isDaybookAlone()
                                ? "the daybook does not"
                                : "the records do not")
                    + Sentences.AS_BOOKED)
            .text("what", Line::first)
            .text("unit", Line::second),
        "",
        Kind.NUMBER,
        ComparedColumns.said(review),
        lines);
  }

  /** Costs and receipts of no lot, and what is left with them. */
  private static List<Line> noLot(Review review, String currency) {
    Compared costs = review.ofNoLot().cost();
    Compared receipts = review.receiptsOfNoLot();
    List<Line> lines = new ArrayList<>();
    if (costs.planned() != 0 || costs.real() != 0) {
      lines.add(Line.of("costs of no lot", currency, costs, Kind.MONEY));
    }
    if (receipts.real() != 0) {
      lines.add(Line.of("receipts of no lot", currency, receipts, Kind.MONEY));
    }
    if (!lines.isEmpty()) {
      Compared left = review.nursery().result().less(review.costsOfNoLotLessReceipts());
      lines.add(Line.of("result", currency, left, Kind.MONEY));
    }
    return lines;
  }

  private static List<Line> gone(Review review, String currency) {
    if (review.gone().isEmpty()) {
      return List.of();
    }
    Plants plants =
        Plants.together(review.gone().stream().mapToDouble(each -> each.gone().plants()));
    double worth = review.gone().stream().mapToDouble(GonePriced::worth).sum();
    return List.of(
        Line.of("sold or lost, no line says which", "plants", real(plants.whole()), Kind.PLANTS),
        Line.of("the same sold at list price, at most", currency, real(worth), Kind.MONEY));
  }

  private static Compared real(double figure) {
    return new Compared(0, figure, true, Optional.empty());
  }
}
