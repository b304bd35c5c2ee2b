package growingon.report.buying;

import growingon.buying.Answer;
import growingon.buying.Candidate;
import growingon.buying.Certificate;
import growingon.buying.Choice;
import growingon.buying.Choice.Holding;
import growingon.buying.Extra;
import growingon.buying.HoldAnswer;
import growingon.buying.LimitWorth;
import growingon.buying.Move;
import growingon.buying.OfferAnswer;
import growingon.buying.OfferAnswer.Tried;
import growingon.buying.OfferAnswer.Verdict;
import growingon.buying.Outcome;
import growingon.buying.PlanValue;
import growingon.buying.Spread;
import growingon.nursery.Offer;
import growingon.project.LotHistory;
import growingon.report.build.Columns;
import growingon.report.build.Picked;
import growingon.report.build.TableOf;
import growingon.report.buying.BuyingFigures.Sold;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The tables of an answer. */
final class BuyingTables {
  /** Columns that say how sure something is. */
  private static final Set<String> OF_DRAWS = Set.of("p10", "p50", "p90", "better", "pays", "sure");

  private final BuyingFigures figures;
  private final BuyingVerdicts verdicts;
  private final Answer answer;
  private final String currency;
  private final Phrases say;

  BuyingTables(BuyingFigures figures) {
    this.say = figures.say;
    this.figures = figures;
    this.verdicts = new BuyingVerdicts(figures);
    this.answer = figures.answer;
    this.currency = figures.currency;
  }

  /** Without the columns that only draws can fill, where there are none. */
  private Table asDrawn(Table table) {
    return answer.draws() == 0 ? Picked.without(table, OF_DRAWS) : table;
  }

  private Long ofHundred(Spread spread) {
    return answer.draws() == 0 ? null : (Long) Odds.whole(spread.shareAbove());
  }

  Table plans() {
    TableOf<PlanValue> table =
        TableOf.<PlanValue>table("buying-plans", "The plans side by side")
            .note(
                "Present value of all cash, what is unsold at the end counted as the plan says. "
                    + drawn()
                    + " Room, hours and cash are those of the plan's line.")
            .note(Sentences.WITHOUT_VAT)
            .column(text("plan", "plan"), plan -> plan.kind().toString())
            .column(money("value", "present value"), plan -> plan.value().mean())
            .column(
                Columns.belowNil(money("gain", "gain over as given")), plan -> plan.gain().mean())
            .column(money("p10", "gain, P10"), plan -> plan.gain().p10())
            .column(money("p90", "gain, P90"), plan -> plan.gain().p90())
            .column(
                Column.of("better", "better in … of 100", "draws", Kind.COUNT),
                plan -> plan.kind() == PlanValue.Kind.AS_GIVEN ? null : ofHundred(plan.gain()))
            .column(
                Columns.belowNil(money("lowest_cash", "lowest cash")),
                plan -> plan.line().lowestCash())
            .column(
                Column.of("lowest_month", "in", "", Kind.MONTH),
                plan -> figures.horizon.month(plan.line().lowestMonth()))
            .column(
                Columns.aboveNil(
                    Column.of("missing", "most room missing", "m²", Kind.SQUARE_METRES)),
                plan -> mostMissing(plan.line()))
            .column(
                Columns.aboveNil(Column.of("hours_short", "hours short", "hours", Kind.HOURS)),
                plan -> hoursShort(plan.line()))
            .column(money("laid_out", "money laid out"), PlanValue::laidOut);
    if (Extra.isToBeHad(answer.inputs().scenario())) {
      table =
          table
              .note("What more room and hours than there are cost is taken off value and gain.")
              .column(money("extra", "more room and hours"), plan -> plan.line().extra());
    }
    return asDrawn(table.of(answer.plans()));
  }

  private static Column text(String key, String heading) {
    return Column.of(key, heading, "", Kind.TEXT);
  }

  private static Column plants(String key, String heading) {
    return Column.of(key, heading, "plants", Kind.COUNT);
  }

  private Column money(String key, String heading) {
    return Column.of(key, heading, currency, Kind.MONEY);
  }

  private Column moneyEach(String key, String heading) {
    return Column.of(key, heading, currency, Kind.MONEY_EACH);
  }

  private String drawn() {
    return answer.draws() == 0
        ? "On the plan's line, without luck."
        : "Over %s draws, none of which was used to choose.".formatted(say.whole(answer.draws()));
  }

  private double mostMissing(Outcome line) {
    double most = 0;
    for (int place = 0; place < line.space().length; place++) {
      for (int month = 0; month < line.hours().length; month++) {
        double over = line.space()[place][month] - answer.limits().capacity()[place][month];
        most = Math.max(most, over);
      }
    }
    return most;
  }

  private double hoursShort(Outcome line) {
    double sum = 0;
    for (int month = 0; month < line.hours().length; month++) {
      sum += Math.max(0, line.hours()[month] - answer.limits().available()[month]);
    }
    return sum;
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
    return asDrawn(
        numbers(table)
            .column(Columns.belowNil(money("gain", "gain")), offer -> offer.gain().mean())
            .column(
                Column.of("pays", "pays in … of 100", "draws", Kind.COUNT),
                offer -> ofHundred(offer.gain()))
            .column(
                moneyEach("most_to_pay", "most you can pay, landed"),
                offer -> offer.mostLanded().isPresent() ? offer.mostLanded().getAsDouble() : null)
            .of(answer.offers()));
  }

  /** How many, and at what price. */
  private TableOf<OfferAnswer> numbers(TableOf<OfferAnswer> table) {
    return table
        .column(text("offer", "offer"), offer -> offer.take().name())
        .column(Column.of("verdict", "what to do", "", Kind.LONG_TEXT).wide(60), verdicts::sentence)
        .column(plants("take", "buy"), OfferAnswer::advised)
        .column(plants("planned", "as planned"), OfferAnswer::planned)
        .column(
            plants("good_from", "as good from"), offer -> isRanged(offer) ? offer.goodFrom() : null)
        .column(plants("good_to", "to"), offer -> isRanged(offer) ? offer.goodTo() : null)
        .column(
            text("price_step", "price step"),
            offer -> Rows.text(priceStep(offer.take().offer(), offer.at())))
        .column(moneyEach("unit_price", "unit price"), BuyingTables::unitPrice)
        .column(moneyEach("landed", "landed, a plant"), OfferAnswer::landed)
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
  Table offerGains() {
    return asDrawn(
        TableOf.<OfferAnswer>table("buying-offer-gains", "What each offer brings")
            .note("Gains are those at the end of the season named, when nine tenths are sold.")
            .column(text("offer", "offer"), offer -> offer.take().name())
            .column(plants("at", "weighed at"), OfferAnswer::at)
            .column(Columns.belowNil(money("gain", "gain")), offer -> offer.gain().mean())
            .column(money("p10", "P10"), offer -> answer.draws() == 0 ? null : offer.gain().p10())
            .column(money("p50", "P50"), offer -> answer.draws() == 0 ? null : offer.gain().p50())
            .column(money("p90", "P90"), offer -> answer.draws() == 0 ? null : offer.gain().p90())
            .column(text("judged_at", "at the end of"), offer -> figures.season(offer.judgedAt()))
            .column(
                Column.of("money_back", "money back by", "", Kind.MONTH),
                offer ->
                    offer.payback().isPresent()
                        ? figures.horizon.month(offer.payback().getAsInt())
                        : null)
            .column(
                money("misses_by", "misses by"),
                offer -> offer.verdict() == Verdict.DOES_NOT_PAY ? -offer.gain().mean() : null)
            .column(
                text("needs", "needs more of"),
                offer -> offer.lacks().map(verdicts::lack).orElse(null))
            .column(
                moneyEach("yield", "gain a m² and year"),
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

  Table quantities() {
    Rows rows = new Rows();
    for (OfferAnswer offer : answer.offers()) {
      for (Tried tried : offer.numbers()) {
        rows.add(
            offer.take().name(),
            tried.number(),
            tried.gain().mean(),
            tried.gain().p10(),
            tried.gain().p90(),
            tried.isGood() ? "yes" : "no",
            tried.fits() ? "yes" : "no");
      }
    }
    return asDrawn(
        new Table(
            "buying-quantities",
            "Every number that was tried, beside all else recommended, at the plan's end",
            List.of(),
            List.of(
                Column.of("offer", "offer", "", Kind.TEXT),
                Column.of("quantity", "plants", "plants", Kind.COUNT),
                Column.of("mean", "gain", currency, Kind.MONEY),
                Column.of("p10", "P10", currency, Kind.MONEY),
                Column.of("p90", "P90", currency, Kind.MONEY),
                Column.of("as_good", "as good", "", Kind.TEXT),
                Column.of("fits", "fits", "", Kind.TEXT)),
            rows.list()));
  }

  Table holds() {
    Rows rows = new Rows();
    for (HoldAnswer hold : answer.holds()) {
      List<LotHistory> before = figures.histories(figures.given, hold.name());
      List<LotHistory> after = figures.histories(figures.recommended, hold.name());
      List<LotHistory> any = before.isEmpty() ? after : before;
      rows.add(
          hold.name(),
          any.get(0).lot().species(),
          Math.round(any.stream().mapToDouble(LotHistory::standingAtStart).sum()),
          Rows.text(figures.standingByGrade(any)),
          figures.held(hold.given()),
          hold.isChange() ? figures.held(hold.advised()) : "as it is",
          figures.soldThisSeason(figures.given, before),
          figures.soldThisSeason(figures.recommended, after),
          hold.isChange() ? Rows.text(become(before, after)) : null,
          hold.isChange() ? (Double) hold.brings().mean() : null,
          hold.isChange() ? ofHundred(hold.brings()) : null);
    }
    return asDrawn(
        new Table(
            "buying-holds",
            "Sell or hold",
            List.of(
                "Held plants are not sold below the grade named; the best are those that were thickest"
                    + " when the lot was counted: tag every fifth down the row, and hold those. What a"
                    + " change brings is weighed beside all others; one that brings nothing itself,"
                    + " or costs, leaves them room, hours or cash.",
                Sentences.WITHOUT_VAT),
            List.of(
                Rows.lot(),
                Column.of("species", "species", "", Kind.TEXT),
                Column.of("standing", "standing", "plants", Kind.COUNT),
                Column.of("ready_now", "now, by grade", "", Kind.TEXT),
                Column.of("given", "held as given", "", Kind.TEXT),
                Column.of("advised", "hold", "", Kind.TEXT),
                Column.of("sold_given", "sold this season as given", "plants", Kind.PLANTS),
                Column.of("sold_advised", "as advised", "plants", Kind.PLANTS),
                Column.of("become", "what they become", "", Kind.TEXT),
                Column.of("brings", "brings", currency, Kind.MONEY),
                Column.of("sure", "sure in … of 100", "draws", Kind.COUNT)),
            rows.list()));
  }

  private String become(List<LotHistory> before, List<LotHistory> after) {
    List<String> words = new ArrayList<>();
    for (Map.Entry<Sold, Double> each : figures.more(before, after).stream().limit(2).toList()) {
      words.add(
          "%s %s in %s"
              .formatted(
                  say.whole(each.getValue()),
                  each.getKey().grade(),
                  figures.season(each.getKey().season())));
    }
    return Phrases.list(words);
  }

  Table limits() {
    Rows rows = new Rows();
    for (LimitWorth limit : answer.limitsWorth()) {
      for (LimitWorth.Step step : limit.steps()) {
        boolean first = step == limit.steps().get(0);
        rows.add(
            first ? Phrases.sentence(BuyingWords.limitName(limit)) : null,
            first ? when(limit) : null,
            first ? amount(limit, limit.amount()) : null,
            first ? amount(limit, limit.usedAsGiven()) : null,
            first ? amount(limit, limit.usedAsRecommended()) : null,
            say.percent(step.share()),
            amount(limit, step.added()),
            step.worth(),
            step.each(),
            step.worth() > 0 ? Rows.text(then(step.then(), step.instead())) : null,
            first && limit.without().isPresent() ? limit.without().getAsDouble() : null);
      }
    }
    return new Table(
        "buying-limits",
        "What more would be worth",
        List.of(
            "What would be gained if there were so much more, and what you would then do: the same"
                + " as changing the cell and asking again. Plants and holds come in steps, so a"
                + " little more may bring nothing and more of it much. The charge of a larger"
                + " place is taken off, what else it costs is not.",
            Sentences.WITHOUT_VAT),
        List.of(
            Column.of("limit", "limit", "", Kind.TEXT),
            Column.of("when", "when", "", Kind.TEXT),
            Column.of("amount", "there is", "", Kind.TEXT),
            Column.of("used_given", "used as given", "", Kind.TEXT),
            Column.of("used", "as recommended", "", Kind.TEXT),
            Column.of("more", "more", "", Kind.TEXT),
            Column.of("added", "that is", "", Kind.TEXT),
            Column.of("worth", "worth", currency, Kind.MONEY),
            Column.of("each", "worth of each", currency, Kind.MONEY_EACH),
            Column.of("then", "what you would then do", "", Kind.LONG_TEXT).wide(40),
            Column.of("without", "worth without the limit", currency, Kind.MONEY)),
        rows.list());
  }

  private String when(LimitWorth limit) {
    return limit.what() == LimitWorth.What.DEMAND
        ? "every season"
        : say.span(figures.horizon.month(limit.from()), figures.horizon.month(limit.to()));
  }

  private String amount(LimitWorth limit, double amount) {
    return switch (limit.what()) {
      case ROOM -> say.squareMetres(amount);
      case HOURS -> say.hours(amount);
      case DEMAND -> say.number(amount) + " plants";
      case CASH -> figures.money(amount);
    };
  }

  /** 40 more Hornbeam; hold half of the best of Crab apple 2022 to stout. */
  String then(Candidate candidate, Candidate instead) {
    List<String> words = new ArrayList<>();
    List<Choice> choices = answer.question().choices();
    for (int i = 0; i < choices.size(); i++) {
      int difference = candidate.value(i) - instead.value(i);
      if (difference != 0 && choices.get(i) instanceof Holding holding) {
        Optional<growingon.nursery.Hold> hold = holding.hold(candidate.value(i));
        words.add("hold " + figures.held(hold) + " of " + holding.name());
      } else if (difference != 0) {
        words.add(
            0,
            "%d %s %s"
                .formatted(
                    Math.abs(difference),
                    difference > 0 ? "more" : "fewer",
                    choices.get(i).name()));
      }
    }
    return words.size() > 3
        ? String.join("; ", words.subList(0, 3)) + "; and %d more".formatted(words.size() - 3)
        : String.join("; ", words);
  }

  Table certificate() {
    Certificate tried = answer.found().certificate();
    Rows rows = new Rows();
    rows.add("plans run", (double) tried.runs(), null);
    rows.add("single changes looked at", (double) tried.singles(), null);
    tried
        .bestSingle()
        .ifPresent(
            best -> rows.add("the best single change would gain", best.gain(), said(best.move())));
    tried
        .bestDouble()
        .ifPresent(
            best -> rows.add("the best double change would gain", best.gain(), said(best.move())));
    rows.add("what is not worth saying", tried.threshold(), null);
    String chosen = answer.draws() == 0 ? "the plan's line" : "the draws that were chosen on";
    rows.add("gain on " + chosen, answer.found().gainOnChosen(), null);
    return new Table(
        "buying-certificate",
        "What was tried",
        List.of(
            "Nothing that was tried beside the recommended gains more than what is not worth"
                + " saying, on %s.".formatted(chosen)),
        List.of(
            Column.of("what", "what", "", Kind.TEXT),
            Column.of("value", "number", "", Kind.COUNT),
            Column.of("change", "change", "", Kind.TEXT)),
        rows.list());
  }

  private String said(Move move) {
    Candidate changed = answer.found().recommended();
    return then(move.from(changed), changed);
  }
}
