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
import growingon.buying.Outcome;
import growingon.buying.PlanValue;
import growingon.project.LotHistory;
import growingon.report.build.Columns;
import growingon.report.build.TableOf;
import growingon.report.buying.BuyingFigures.Sold;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Rows;
import growingon.report.model.Table;
import growingon.report.text.Phrases;
import growingon.report.text.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables of an answer. */
final class BuyingTables {
  private final BuyingFigures figures;
  private final BuyingColumns columns;
  private final Answer answer;
  private final String currency;
  private final Phrases say;

  BuyingTables(BuyingFigures figures) {
    this.say = figures.say;
    this.figures = figures;
    this.columns = new BuyingColumns(figures);
    this.answer = figures.answer;
    this.currency = figures.currency;
  }

  Table plans() {
    TableOf<PlanValue> table =
        TableOf.<PlanValue>table("buying-plans", "The plans side by side")
            .note(
                "Present value of all cash, what is unsold at the end counted as the plan says. "
                    + drawn()
                    + " Room, hours and cash are those of the plan's line.")
            .note(Sentences.WITHOUT_VAT)
            .column(columns.text("plan", "plan"), plan -> plan.kind().toString())
            .column(columns.money("value", "present value"), plan -> plan.value().mean())
            .column(
                Columns.belowNil(columns.money("gain", "gain over as given")),
                plan -> plan.gain().mean())
            .column(columns.money("p10", "gain, P10"), plan -> plan.gain().p10())
            .column(columns.money("p90", "gain, P90"), plan -> plan.gain().p90())
            .column(
                Column.of("better", "better in … of 100", "draws", Kind.COUNT),
                plan ->
                    plan.kind() == PlanValue.Kind.AS_GIVEN ? null : columns.ofHundred(plan.gain()))
            .column(
                Columns.belowNil(columns.money("lowest_cash", "lowest cash")),
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
            .column(columns.money("laid_out", "money laid out"), PlanValue::laidOut);
    if (Extra.isToBeHad(answer.inputs().scenario())) {
      table =
          table
              .note("What more room and hours than there are cost is taken off value and gain.")
              .column(columns.money("extra", "more room and hours"), plan -> plan.line().extra());
    }
    return columns.asDrawn(table.of(answer.plans()));
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
          hold.isChange() ? columns.ofHundred(hold.brings()) : null);
    }
    return columns.asDrawn(
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
                + " place is taken off, what else it costs is not. Room and hours are those of the"
                + " tightest month.",
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
      case HOURS -> say.hours(amount) + " a month";
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
