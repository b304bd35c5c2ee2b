package growingon.report;

import growingon.review.BoughtReview;
import growingon.review.Cause;
import growingon.review.CausePart;
import growingon.review.Review;
import java.util.ArrayList;
import java.util.List;

/** Why each bought lot brings more or less than planned. */
final class CausesSheet {
  static final String NAME = "Causes";

  private static final String NOTE =
      "The planned figures are replaced by the real ones one after the other, in this order: cost,"
          + " hours, losses, quality, growth, price, units sold. So the parts sum to the whole"
          + " difference, to the cent.";

  private CausesSheet() {}

  static Sheet of(Review review, ReviewCharts charts, String currency) {
    if (review.bought().isEmpty()) {
      return Sheet.of(NAME);
    }
    List<Table> tables = new ArrayList<>();
    tables.add(all(review, currency));
    List<BoughtReview> drawn = charts.drawn();
    for (int i = 0; i < drawn.size(); i++) {
      tables.add(bridge(drawn.get(i), ReviewCharts.name("causes-of-lot", i), currency));
    }
    return new Sheet(NAME, List.of(NOTE), tables, charts.bridges(), false);
  }

  private static Table all(Review review, String currency) {
    TableBuilder table =
        TableBuilder.table("causes", "The difference of each lot by cause")
            .note("Above nil: better than planned. " + Sentences.WITHOUT_VAT)
            .text("lot");
    for (Cause cause : Cause.values()) {
      table.summed(cause.toString(), currency, Kind.MONEY).flagged(Column.Flag.BELOW_ZERO);
    }
    table.summed("difference", currency, Kind.MONEY).flagged(Column.Flag.BELOW_ZERO);
    for (BoughtReview each : review.bought()) {
      List<Object> cells = new ArrayList<>(List.of(each.lot().name()));
      each.causes().forEach(part -> cells.add(part.amount()));
      cells.add(each.differenceCents() / 100.0);
      table.row(cells.toArray());
    }
    return table.build();
  }

  /** From the planned result to the one expected now, whose total follows what stands above it. */
  private static Table bridge(BoughtReview bought, String name, String currency) {
    TableBuilder table =
        TableBuilder.table(name, "%s: from planned to expected".formatted(bought.lot().name()))
            .note("The total is the result expected now.")
            .text("what")
            .summed("amount", currency, Kind.MONEY)
            .flagged(Column.Flag.BELOW_ZERO);
    long cents = Math.round(bought.expected() * 100) - bought.differenceCents();
    table.row("planned", cents / 100.0);
    for (CausePart part : bought.causes()) {
      table.row(part.cause().toString(), part.amount());
    }
    return table.build();
  }
}
