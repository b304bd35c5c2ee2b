package growingon.report.review;

import growingon.report.build.TableOf;
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
import java.util.stream.IntStream;

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
    TableOf<BoughtReview> table =
        TableOf.<BoughtReview>table("causes", "The difference of each lot by cause")
            .note("Above nil: better than planned. " + Sentences.AS_BOOKED)
            .text("lot", each -> each.lot().name());
    for (Cause cause : Cause.values()) {
      table
          .summed(
              cause.toString(),
              currency,
              Kind.MONEY,
              each -> each.causes().get(cause.ordinal()).amount())
          .belowNil();
    }
    return table
        .summed("difference", currency, Kind.MONEY, each -> each.differenceCents() / 100.0)
        .belowNil()
        .of(review.bought());
  }

  /** A part of the difference, and the step it comes from. */
  private record Part(CausePart part, CauseStep step) {}

  /** The figures that the parts of a lot are worked out from. */
  private static Table again(BoughtReview bought, String name) {
    return TableOf.<Part>table(name, "%s: how the parts come about".formatted(bought.lot().name()))
        .text("cause", each -> each.part.cause().toString())
        .text("what is replaced", each -> words(each.step.factor()))
        .column("planned", "", Kind.NUMBER, each -> each.step.planned())
        .column("real", "", Kind.NUMBER, each -> each.step.real())
        .summed("worth", "", Kind.MONEY, each -> each.part.amount())
        .belowNil()
        .of(
            IntStream.range(0, bought.causes().size())
                .mapToObj(i -> new Part(bought.causes().get(i), bought.steps().get(i)))
                .toList());
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

  /** A stone of the bridge. */
  private record Amount(String what, double amount) {}

  /** From the planned result to the one expected now, whose total follows what stands above it. */
  private static Table bridge(BoughtReview bought, String name, String currency) {
    long cents = Math.round(bought.expected() * 100) - bought.differenceCents();
    List<Amount> amounts = new ArrayList<>(List.of(new Amount("planned", cents / 100.0)));
    bought
        .causes()
        .forEach(part -> amounts.add(new Amount(part.cause().toString(), part.amount())));
    return TableOf.<Amount>table(
            name, "%s: from planned to expected".formatted(bought.lot().name()))
        .note("The total is the result expected now.")
        .text("what", Amount::what)
        .summed("amount", currency, Kind.MONEY, Amount::amount)
        .belowNil()
        .of(amounts);
  }
}
