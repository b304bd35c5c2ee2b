package growingon.report.review;

import growingon.report.build.TableBuilder;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Sentences;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.Cause;
import growingon.review.bought.CausePart;
import growingon.review.bought.CauseStep;
import java.util.ArrayList;
import java.util.List;

/** Why each bought lot brings more or less than planned. */
final class CausesSheet {
  static final String NAME = "Causes";

  private static final String NOTE =
      "The planned figures are replaced by the real ones one after the other, in this order: cost,"
          + " hours, losses, what is gone without a line, quality, growth, the grade sold, price, the share that finds a buyer. So"
          + " the parts sum to the whole difference, to the cent.";

  /** How the worth of each step follows from the figures of its table. */
  static final String AGAIN =
      "To do it again: costs and hours are worth planned less real. The others are worth plants that"
          + " live × share sold × money of a plant, one of them real less planned; take the other"
          + " two as real where they stand above, and as planned where they stand below. Growth:"
          + " what a plant fetches at list price when it was to be sold, with the trunks measured"
          + " in place of those planned.";

  private CausesSheet() {}

  static Sheet of(Review review, ReviewCharts charts, String currency) {
    if (review.bought().isEmpty()) {
      return Sheet.of(NAME);
    }
    List<Table> tables = new ArrayList<>();
    tables.add(all(review, currency));
    List<BoughtReview> drawn = charts.drawn();
    for (int i = 0; i < drawn.size(); i++) {
      tables.add(again(drawn.get(i), ReviewCharts.name("causes-again", i)));
      tables.add(bridge(drawn.get(i), ReviewCharts.name("causes-of-lot", i), currency));
    }
    return new Sheet(NAME, List.of(NOTE, AGAIN), tables, charts.bridges(), false);
  }

  private static Table all(Review review, String currency) {
    TableBuilder table =
        TableBuilder.table("causes", "The difference of each lot by cause")
            .note("Above nil: better than planned. " + Sentences.AS_BOOKED)
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

  /** The figures that the parts of a lot are worked out from. */
  private static Table again(BoughtReview bought, String name) {
    TableBuilder table =
        TableBuilder.table(name, "%s: how the parts come about".formatted(bought.lot().name()))
            .text("cause")
            .text("what is replaced")
            .column("planned", "", Kind.NUMBER)
            .column("real", "", Kind.NUMBER)
            .summed("worth", "", Kind.MONEY)
            .flagged(Column.Flag.BELOW_ZERO);
    List<CausePart> parts = bought.causes();
    for (int i = 0; i < parts.size(); i++) {
      CauseStep step = bought.steps().get(i);
      table.row(
          parts.get(i).cause().toString(),
          words(step.factor()),
          step.planned(),
          step.real(),
          parts.get(i).amount());
    }
    return table.build();
  }

  private static String words(CauseStep.Factor factor) {
    return switch (factor) {
      case COSTS -> "all costs but hours";
      case COST_OF_HOURS -> "cost of hours";
      case LIVING -> "plants that live";
      case MONEY_OF_A_PLANT -> "money of a plant";
      case SHARE_SOLD -> "share sold";
    };
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
