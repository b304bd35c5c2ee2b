package growingon.report.review;

import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.review.Compared;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import java.util.ArrayList;
import java.util.Arrays;
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
    TableBuilder table =
        TableBuilder.table("so-far", "The nursery so far")
            .note(
                "Up to the end of %s. What %s say is assumed. Costs of no lot are planned as other cash, and count their hours. "
                        .formatted(
                            say.month(review.through()),
                            review.sources().isDaybookAlone()
                                ? "the daybook does not"
                                : "the records do not")
                    + Sentences.AS_BOOKED)
            .text("what")
            .text("unit");
    ComparedCells.columns(table, "", Kind.NUMBER, ComparedCells.said(review));
    row(table, "plants alive", "plants", all.alive(), Kind.PLANTS);
    row(table, "plants sold", "plants", all.unitsSold(), Kind.PLANTS);
    row(table, "sales", say.currency(), all.sales(), Kind.MONEY);
    row(table, "hours", "hours", all.hours(), Kind.HOURS);
    row(table, "costs of lots", say.currency(), all.costs(), Kind.MONEY);
    row(table, "result of lots", say.currency(), all.result(), Kind.MONEY);
    noLot(table, review, say.currency());
    gone(table, review, say.currency());
    return ComparedCells.built(table);
  }

  /** Costs and receipts of no lot, and what is left with them. */
  private static void noLot(TableBuilder table, Review review, String currency) {
    Compared costs = review.ofNoLot().cost();
    Compared receipts = review.receiptsOfNoLot();
    if (costs.planned() != 0 || costs.real() != 0) {
      row(table, "costs of no lot", currency, costs, Kind.MONEY);
    }
    if (receipts.real() != 0) {
      row(table, "receipts of no lot", currency, receipts, Kind.MONEY);
    }
    if (costs.planned() != 0 || costs.real() != 0 || receipts.real() != 0) {
      Compared left = review.nursery().result().less(review.costsOfNoLotLessReceipts());
      row(table, "result", currency, left, Kind.MONEY);
    }
  }

  private static void gone(TableBuilder table, Review review, String currency) {
    if (!review.gone().isEmpty()) {
      Plants plants =
          Plants.together(review.gone().stream().mapToDouble(each -> each.gone().plants()));
      double worth = review.gone().stream().mapToDouble(GonePriced::worth).sum();
      row(table, "sold or lost, no line says which", "plants", real(plants.whole()), Kind.PLANTS);
      row(table, "the same sold at list price, at most", currency, real(worth), Kind.MONEY);
    }
  }

  private static Compared real(double figure) {
    return new Compared(0, figure, true, Optional.empty());
  }

  private static void row(
      TableBuilder table, String what, String unit, Compared figure, Kind kind) {
    Object[] cells = ComparedCells.row(figure, kind, what, unit);
    table.row(Arrays.stream(cells).map(cell -> rounded(cell, kind)).toArray());
  }

  /** Money whole and hours in tenths, as the column holds both. */
  private static Object rounded(Object cell, Kind kind) {
    double parts = kind == Kind.MONEY ? 1 : 10;
    return cell instanceof Double number && Double.isFinite(number)
        ? new Shown(number, Math.rint(number * parts) / parts)
        : cell;
  }
}
