package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import growingon.review.written.SharedReceipt;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Plants that no line explains, and what became of each receipt. */
final class WithoutALineSheet {
  static final String NAME = "Sold or lost";

  private WithoutALineSheet() {}

  static Sheet of(Review review, ReviewWords words, String currency) {
    return FilledSheet.of(
        NAME,
        words.withoutALine(),
        gone(review, currency),
        together(review, currency),
        receipts(review, currency));
  }

  private static Table gone(Review review, String currency) {
    return TableOf.<GonePriced>table("gone-without-a-line", "Sold or lost, no line says which")
        .note(
            "Plants that a count did not find. By the plan: what was to be sold, and to die or be"
                + " culled, in the same time. At most: if all were sold on the day of the count at"
                + " list price, the dearest grades first; in no result. Enter them in the daybook as"
                + " sold, died, culled, used or lost, or add their receipts.")
        .text("lot", each -> each.gone().lot())
        .text("species", GonePriced::species)
        .text("since", each -> each.gone().since().map(LocalDate::toString).orElse("the beginning"))
        .text("counted", each -> each.gone().counted().toString())
        .plants("alive before", each -> Plants.nearest(each.gone().before()))
        .plants("found", each -> Plants.nearest(each.gone().found()))
        .plants("gone", each -> Plants.nearest(each.gone().plants()))
        .column(
            "sold by the plan",
            "",
            Kind.COUNT,
            each -> each.planned().map(plan -> Math.rint(plan.sold())).orElse(null))
        .column(
            "lost by the plan",
            "",
            Kind.COUNT,
            each -> each.planned().map(plan -> Math.rint(plan.lost())).orElse(null))
        .summed("at most", currency, Kind.MONEY, GonePriced::worth)
        .text("row", each -> each.gone().where().toString())
        .of(review.gone());
  }

  /** Receipts that were taken for the same. */
  private record Taken(SharedReceipt.How how, List<SharedReceipt> of) {}

  private static List<Taken> taken(Review review) {
    return Stream.of(SharedReceipt.How.values())
        .map(
            how ->
                new Taken(
                    how, review.receipts().stream().filter(each -> each.how() == how).toList()))
        .filter(each -> !each.of.isEmpty())
        .toList();
  }

  private static Table together(Review review, String currency) {
    return TableOf.<Taken>table("receipts-together", "What the receipts were taken for")
        .note(
            "What fits no lot is in the nursery's result and in that of no lot. Money of what"
                + " stands in the daybook is that of the daybook, where it says any.")
        .text("taken for", each -> each.how.toString())
        .summed("rows", "", Kind.COUNT, each -> each.of.size())
        .plants(
            "plants", each -> Plants.together(each.of.stream().mapToDouble(SharedReceipt::plants)))
        .summed(
            "amount",
            currency,
            Kind.MONEY_EACH,
            each -> each.of.stream().mapToDouble(SharedReceipt::amount).sum())
        .of(taken(review));
  }

  private static Table receipts(Review review, String currency) {
    return TableOf.<SharedReceipt>table("receipts", "Each receipt")
        .text(
            "date",
            each ->
                each.receipt()
                    .day()
                    .map(LocalDate::toString)
                    .orElse(each.receipt().month().toString()))
        .text("species", each -> Rows.text(each.receipt().species().orElse("")))
        .text("grade", each -> Rows.text(each.receipt().grade().orElse("")))
        .text("taken for", each -> each.how().toString())
        .text("lot", each -> Rows.text(each.lot().orElse("")))
        .plants("plants", each -> Plants.nearest(each.plants()))
        .summed("amount", currency, Kind.MONEY_EACH, SharedReceipt::amount)
        .text("row", each -> each.receipt().where().toString())
        .of(review.receipts());
  }
}
