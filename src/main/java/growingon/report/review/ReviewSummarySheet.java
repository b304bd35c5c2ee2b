package growingon.report.review;

import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Sentences;
import growingon.report.text.Shown;
import growingon.review.Compared;
import growingon.review.Review;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a grower reads first of a review; a suspicion that may have to be notified stands on top.
 */
final class ReviewSummarySheet {
  private ReviewSummarySheet() {}

  static Sheet of(Review review, ReviewWords words, ReviewCharts charts, String currency) {
    List<String> sentences = new ArrayList<>(words.notifiable());
    sentences.addAll(words.basis());
    sentences.addAll(words.verdicts());
    sentences.addAll(words.plants());
    sentences.addAll(words.faults());
    return new Sheet("Summary", sentences, List.of(soFar(review, currency)), charts.first(), true);
  }

  private static Table soFar(Review review, String currency) {
    Review.Together all = review.nursery();
    TableBuilder table =
        TableBuilder.table("so-far", "The nursery so far")
            .note(
                "Up to the end of the daybook's last month. What the daybook does not say is"
                    + " assumed. Costs of no lot are planned as other cash, and count their hours. "
                    + Sentences.AS_BOOKED)
            .text("what")
            .text("unit");
    ComparedCells.columns(table, "", Kind.NUMBER);
    row(table, "plants alive", "plants", all.alive(), Kind.PLANTS);
    row(table, "plants sold", "plants", all.unitsSold(), Kind.PLANTS);
    row(table, "sales", currency, all.sales(), Kind.MONEY);
    row(table, "hours", "hours", all.hours(), Kind.HOURS);
    row(table, "costs of lots", currency, all.costs(), Kind.MONEY);
    row(table, "result of lots", currency, all.result(), Kind.MONEY);
    Compared ofNoLot = review.ofNoLot().cost();
    if (ofNoLot.planned() != 0 || ofNoLot.real() != 0) {
      row(table, "costs of no lot", currency, ofNoLot, Kind.MONEY);
      row(table, "result", currency, all.result().less(ofNoLot), Kind.MONEY);
    }
    return table.build();
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
