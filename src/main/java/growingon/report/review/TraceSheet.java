package growingon.report.review;

import growingon.report.build.FilledSheet;
import growingon.report.build.TableBuilder;
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
        sheet.lots(),
        sheet.moves(),
        sheet.left());
  }

  private Table lots() {
    TableBuilder table =
        TableBuilder.table("trace", "Lots of each passport")
            .text("passport")
            .text("lot")
            .text("species")
            .text("supplier")
            .text("origin")
            .text("split from")
            .text("stands in")
            .plants("alive")
            .plants("sold or used");
    for (Trace trace : review.traces()) {
      for (TracedLot lot : trace.lots()) {
        table.row(
            trace.passport(),
            lot.lot(),
            lot.species(),
            Rows.text(lot.supplier()),
            Rows.text(lot.origin()),
            lot.splitFrom().orElse(null),
            Rows.text(lot.place()),
            Plants.of(lot.alive(), lot.wholeAlive()),
            left(lot));
      }
    }
    return table.build();
  }

  private static Plants left(TracedLot lot) {
    return lot.sales().stream()
        .map(sale -> Plants.nearest(sale.plants()))
        .reduce(Plants.NONE, Plants::plus);
  }

  private Table moves() {
    TableBuilder table =
        TableBuilder.table("trace-moves", "Plants that went from lot to lot")
            .text("passport")
            .text("date")
            .text("from")
            .text("to")
            .plants("plants")
            .text("row");
    for (Trace trace : review.traces()) {
      trace.lots().stream()
          .flatMap(lot -> lot.moves().stream())
          .distinct()
          .forEach(move -> add(table, trace.passport(), move));
    }
    return table.build();
  }

  private static void add(TableBuilder table, String passport, Moved move) {
    table.row(
        passport,
        move.date().toString(),
        move.from(),
        move.to(),
        Plants.nearest(move.plants()),
        move.where().toString());
  }

  private Table left() {
    TableBuilder table =
        TableBuilder.table("trace-sales", "Plants that left the nursery")
            .note("Returned plants count below nil.")
            .text("passport")
            .text("date")
            .text("lot")
            .text("what")
            .plants("plants")
            .text("grade")
            .text("quality")
            .text("customer code")
            .text("row");
    for (Trace trace : review.traces()) {
      for (TracedLot lot : trace.lots()) {
        lot.sales().forEach(sale -> add(table, trace.passport(), lot.lot(), sale));
      }
    }
    return table.build();
  }

  private static void add(TableBuilder table, String passport, String lot, Left sale) {
    table.row(
        passport,
        sale.date().toString(),
        lot,
        sale.what().toString(),
        Plants.nearest(sale.plants()),
        sale.grade().orElse(null),
        sale.quality().map(Object::toString).orElse(null),
        Rows.text(sale.customer()),
        sale.where().toString());
  }
}
