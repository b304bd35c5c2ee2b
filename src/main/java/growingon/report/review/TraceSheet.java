package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableOf;
import growingon.report.model.Rows;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.review.Review;
import growingon.review.book.Trace;
import growingon.review.book.Trace.Left;
import growingon.review.book.Trace.Moved;
import growingon.review.book.Trace.TracedLot;
import java.util.List;

/** Where the plants of each passport are: lots, places, sales. */
final class TraceSheet {
  private final Review review;

  private TraceSheet(Review review) {
    this.review = review;
  }

  static Sheet of(Review review) {
    TraceSheet sheet = new TraceSheet(review);
    return FilledSheet.of(
        "Trace",
        List.of("From a passport to its lots, where they stand, and who got their plants when."),
        sheet.table(),
        sheet.moves(),
        sheet.left());
  }

  /** A lot of a passport. */
  private record OfPassport(Trace trace, TracedLot lot) {}

  private List<OfPassport> lots() {
    return review.traces().stream()
        .flatMap(trace -> trace.lots().stream().map(lot -> new OfPassport(trace, lot)))
        .toList();
  }

  private Table table() {
    return TableOf.<OfPassport>table("trace", "Lots of each passport")
        .text("passport", each -> each.trace.passport())
        .text("lot", each -> each.lot.lot())
        .text("species", each -> each.lot.species())
        .text("supplier", each -> Rows.text(each.lot.supplier()))
        .text("origin", each -> Rows.text(each.lot.origin()))
        .text("split from", each -> each.lot.splitFrom().orElse(null))
        .text("stands in", each -> each.lot.place().orElse(null))
        .plants("alive", each -> Plants.of(each.lot.alive(), each.lot.wholeAlive()))
        .plants("sold or used", each -> left(each.lot))
        .of(lots());
  }

  private static Plants left(TracedLot lot) {
    return lot.sales().stream()
        .map(sale -> Plants.nearest(sale.plants()))
        .reduce(Plants.NONE, Plants::plus);
  }

  /** Plants of a passport that went to another lot. */
  private record Move(String passport, Moved moved) {}

  private List<Move> moved() {
    return review.traces().stream()
        .flatMap(
            trace ->
                trace.lots().stream()
                    .flatMap(lot -> lot.moves().stream())
                    .distinct()
                    .map(move -> new Move(trace.passport(), move)))
        .toList();
  }

  private Table moves() {
    return TableOf.<Move>table("trace-moves", "Plants that went from lot to lot")
        .text("passport", each -> each.passport)
        .text("date", each -> each.moved.date().toString())
        .text("from", each -> each.moved.from())
        .text("to", each -> each.moved.to())
        .plants("plants", each -> Plants.nearest(each.moved.plants()))
        .text("row", each -> each.moved.where().toString())
        .of(moved());
  }

  /** Plants of a passport that left. */
  private record Sale(OfPassport of, Left left) {}

  private List<Sale> sold() {
    return lots().stream()
        .flatMap(of -> of.lot.sales().stream().map(sale -> new Sale(of, sale)))
        .toList();
  }

  private Table left() {
    return TableOf.<Sale>table("trace-sales", "Plants that left the nursery")
        .note("Returned plants count below nil.")
        .text("passport", each -> each.of.trace().passport())
        .text("date", each -> each.left.date().toString())
        .text("lot", each -> each.of.lot().lot())
        .text("what", each -> each.left.what().toString())
        .plants("plants", each -> Plants.nearest(each.left.plants()))
        .text("grade", each -> each.left.grade().orElse(null))
        .text("quality", each -> each.left.quality().map(Object::toString).orElse(null))
        .text("customer code", each -> Rows.text(each.left.customer()))
        .text("row", each -> each.left.where().toString())
        .of(sold());
  }
}
