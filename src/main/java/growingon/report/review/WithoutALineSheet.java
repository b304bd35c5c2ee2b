package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.review.Review;
import growingon.review.book.GonePriced;
import growingon.review.book.SharedReceipt;
import java.time.LocalDate;
import java.util.List;

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
    TableBuilder table =
        TableBuilder.table("gone-without-a-line", "Sold or lost, no line says which")
            .note(
                "Plants that a count did not find. By the plan: what was to be sold, and to die or be"
                    + " culled, in the same time. At most: if all were sold on the day of the count at"
                    + " list price, the dearest grades first; in no result. Enter them in the daybook as"
                    + " sold, died, culled, used or lost, or add their receipts.")
            .text("lot")
            .text("species")
            .text("since")
            .text("counted")
            .plants("alive before")
            .plants("found")
            .plants("gone")
            .column("sold by the plan", "", Kind.COUNT)
            .column("lost by the plan", "", Kind.COUNT)
            .summed("at most", currency, Kind.MONEY)
            .text("row");
    for (GonePriced each : review.gone()) {
      table.row(
          each.gone().lot(),
          each.species(),
          each.gone().since().map(LocalDate::toString).orElse("the beginning"),
          each.gone().counted().toString(),
          Plants.nearest(each.gone().before()),
          Plants.nearest(each.gone().found()),
          Plants.nearest(each.gone().plants()),
          each.planned().map(plan -> Math.rint(plan.sold())).orElse(null),
          each.planned().map(plan -> Math.rint(plan.lost())).orElse(null),
          each.worth(),
          each.gone().where().toString());
    }
    return table.build();
  }

  private static Table together(Review review, String currency) {
    TableBuilder table =
        TableBuilder.table("receipts-together", "What the receipts were taken for")
            .note(
                "What fits no lot is in the nursery's result and in that of no lot. Money of what"
                    + " stands in the daybook is that of the daybook, where it says any.")
            .text("taken for")
            .summed("rows", "", Kind.COUNT)
            .plants("plants")
            .summed("amount", currency, Kind.MONEY_EACH);
    for (SharedReceipt.How how : SharedReceipt.How.values()) {
      List<SharedReceipt> of =
          review.receipts().stream().filter(each -> each.how() == how).toList();
      if (!of.isEmpty()) {
        table.row(
            how.toString(),
            of.size(),
            Plants.together(of.stream().mapToDouble(SharedReceipt::plants)),
            of.stream().mapToDouble(SharedReceipt::amount).sum());
      }
    }
    return table.build();
  }

  private static Table receipts(Review review, String currency) {
    TableBuilder table =
        TableBuilder.table("receipts", "Each receipt")
            .text("date")
            .text("species")
            .text("grade")
            .text("taken for")
            .text("lot")
            .plants("plants")
            .summed("amount", currency, Kind.MONEY_EACH)
            .text("row");
    for (SharedReceipt each : review.receipts()) {
      table.row(
          each.receipt().day().map(LocalDate::toString).orElse(each.receipt().month().toString()),
          Rows.text(each.receipt().species().orElse("")),
          Rows.text(each.receipt().grade().orElse("")),
          each.how().toString(),
          Rows.text(each.lot().orElse("")),
          Plants.nearest(each.plants()),
          each.amount(),
          each.receipt().where().toString());
    }
    return table.build();
  }
}
