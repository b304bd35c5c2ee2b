package growingon.report.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.OfferAnswer;
import growingon.buying.answer.OfferAnswer.Tried;
import growingon.buying.answer.OfferAnswer.Verdict;
import growingon.nursery.lot.Offer;
import growingon.report.build.TableOf;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import java.util.List;

/** What is said of each offer. */
final class BuyingOfferTables {
  private final BuyingFigures figures;
  private final BuyingVerdicts verdicts;
  private final BuyingColumns columns;
  private final Answer answer;

  BuyingOfferTables(BuyingFigures figures) {
    this.figures = figures;
    this.verdicts = new BuyingVerdicts(figures);
    this.columns = new BuyingColumns(figures);
    this.answer = figures.answer;
  }

  Table offers() {
    TableOf<OfferAnswer> table =
        TableOf.<OfferAnswer>table("buying-offers", "What to buy")
            .note(
                "Each offer beside all else that is recommended; one that is not bought at the number"
                    + " that would be best for it, limits aside.")
            .note(
                "Order by: the month by whose end the order must be out. The most you can pay is a"
                    + " landed price, at which the mean gain is nil.");
    return columns.asDrawn(
        numbers(table)
            .column(columns.money("gain", "gain"), offer -> offer.gain().mean())
            .belowNil()
            .column(
                Column.of("pays", "pays in … of 100", "draws", Kind.COUNT),
                offer -> columns.ofHundred(offer.gain()))
            .column(
                columns.moneyEach("most_to_pay", "most you can pay, landed"),
                offer -> offer.mostLanded().isPresent() ? offer.mostLanded().getAsDouble() : null)
            .of(answer.offers()));
  }

  /** How many, and at what price. */
  private TableOf<OfferAnswer> numbers(TableOf<OfferAnswer> table) {
    return table
        .column(columns.text("offer", "offer"), offer -> offer.take().name())
        .column(Column.of("verdict", "what to do", "", Kind.LONG_TEXT).wide(60), verdicts::sentence)
        .column(columns.plants("take", "buy"), OfferAnswer::advised)
        .column(columns.plants("planned", "as planned"), OfferAnswer::planned)
        .column(
            columns.plants("good_from", "as good from"),
            offer -> isRanged(offer) ? offer.goodFrom() : null)
        .column(columns.plants("good_to", "to"), offer -> isRanged(offer) ? offer.goodTo() : null)
        .column(
            columns.text("price_step", "price step"),
            offer -> Rows.text(priceStep(offer.take().offer(), offer.at())))
        .column(columns.moneyEach("unit_price", "unit price"), BuyingOfferTables::unitPrice)
        .column(columns.moneyEach("landed", "landed, a plant"), OfferAnswer::landed)
        .column(Column.of("order_by", "order by", "", Kind.MONTH), figures::orderBy);
  }

  /** Whether it is bought, and other numbers are as good. */
  private static boolean isRanged(OfferAnswer offer) {
    return offer.advised() > 0 && offer.goodFrom() < offer.goodTo();
  }

  private static double unitPrice(OfferAnswer offer) {
    return offer.take().offer().unitPrice(offer.at()) * offer.take().offer().rate();
  }

  /** What that brings, and what stands in the way. */
  Table gains() {
    return columns.asDrawn(
        TableOf.<OfferAnswer>table("buying-offer-gains", "What each offer brings")
            .note(
                "Gains are those at the end of the season named: the plan's last, or a later one by which"
                    + " nine tenths are sold, at most ten.")
            .column(columns.text("offer", "offer"), offer -> offer.take().name())
            .column(columns.plants("at", "weighed at"), OfferAnswer::at)
            .column(columns.money("gain", "gain"), offer -> offer.gain().mean())
            .belowNil()
            .column(columns.money("p10", "P10"), offer -> offer.gain().p10())
            .column(columns.money("p50", "P50"), offer -> offer.gain().p50())
            .column(columns.money("p90", "P90"), offer -> offer.gain().p90())
            .column(
                columns.text("judged_at", "at the end of"),
                offer -> figures.season(offer.judgedAt()))
            .column(
                Column.of("money_back", "money back by", "", Kind.MONTH),
                offer ->
                    offer.payback().isPresent()
                        ? figures.horizon.month(offer.payback().getAsInt())
                        : null)
            .column(
                columns.money("misses_by", "misses by"),
                offer -> offer.verdict() == Verdict.DOES_NOT_PAY ? -offer.gain().mean() : null)
            .column(
                columns.text("needs", "needs more of"),
                offer -> offer.lacks().map(verdicts::lack).orElse(null))
            .column(
                columns.moneyEach("yield", "gain a m² and year"),
                offer -> Rows.number(offer.yieldPerM2Year()))
            .of(answer.offers()));
  }

  private static String priceStep(Offer offer, int number) {
    List<Offer.PriceBreak> breaks = offer.breaks();
    for (int i = breaks.size() - 1; i > 0; i--) {
      if (number >= breaks.get(i).least()) {
        return "from " + breaks.get(i).least();
      }
    }
    return breaks.size() > 1 ? "under " + breaks.get(1).least() : "";
  }

  /** A number of an offer that was tried. */
  private record Number(OfferAnswer offer, Tried tried) {}

  Table quantities() {
    return columns.asDrawn(
        TableOf.<Number>table(
                "buying-quantities",
                "Every number that was tried, beside all else recommended, at the plan's end")
            .text("offer", each -> each.offer.take().name())
            .column("quantity", "plants", "plants", Kind.COUNT, each -> each.tried.number())
            .column(columns.money("mean", "gain"), each -> each.tried.gain().mean())
            .column(columns.money("p10", "P10"), each -> each.tried.gain().p10())
            .column(columns.money("p90", "P90"), each -> each.tried.gain().p90())
            .text("as good", each -> each.tried.isGood() ? "yes" : "no")
            .text("fits", each -> each.tried.fits() ? "yes" : "no")
            .of(
                answer.offers().stream()
                    .flatMap(
                        offer -> offer.numbers().stream().map(tried -> new Number(offer, tried)))
                    .toList()));
  }
}
