package growingon.report.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.HoldAnswer;
import growingon.buying.answer.LimitWorth;
import growingon.buying.answer.PlanValue;
import growingon.buying.engine.Extra;
import growingon.buying.engine.Outcome;
import growingon.buying.question.Candidate;
import growingon.buying.question.Choice;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Move;
import growingon.buying.search.Certificate;
import growingon.project.lot.LotHistory;
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
import java.util.function.Supplier;

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
            .column(columns.money("gain", "gain over as given"), plan -> plan.gain().mean())
            .belowNil()
            .column(columns.money("p10", "gain, P10"), plan -> plan.gain().p10())
            .column(columns.money("p90", "gain, P90"), plan -> plan.gain().p90())
            .column(
                Column.of("better", "better in … of 100", "draws", Kind.COUNT),
                plan ->
                    plan.kind() == PlanValue.Kind.AS_GIVEN ? null : columns.ofHundred(plan.gain()))
            .column(columns.money("lowest_cash", "lowest cash"), plan -> plan.line().lowestCash())
            .belowNil()
            .column(
                Column.of("lowest_month", "in", "", Kind.MONTH),
                plan -> figures.horizon.month(plan.line().lowestMonth()))
            .column(
                Column.of("missing", "most room missing", "m²", Kind.SQUARE_METRES),
                plan -> mostMissing(plan.line()))
            .aboveNil()
            .column(
                Column.of("hours_short", "hours short", "hours", Kind.HOURS),
                plan -> hoursShort(plan.line()))
            .aboveNil()
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

  /** What is held of a lot, with its plants as given and as recommended. */
  private record Held(HoldAnswer hold, List<LotHistory> before, List<LotHistory> after) {
    List<LotHistory> any() {
      return before.isEmpty() ? after : before;
    }

    <N> N ifChanged(Supplier<N> what) {
      return hold.isChange() ? what.get() : null;
    }
  }

  private Held held(HoldAnswer hold) {
    return new Held(
        hold,
        figures.histories(figures.given, hold.name()),
        figures.histories(figures.recommended, hold.name()));
  }

  Table holds() {
    return columns.asDrawn(
        broughtBy(
                TableOf.<Held>table("buying-holds", "Sell or hold")
                    .note(
                        "Held plants are not sold below the grade named; the best are those that were thickest"
                            + " when the lot was counted: tag every fifth down the row, and hold those. What a"
                            + " change brings is weighed beside all others; one that brings nothing itself,"
                            + " or costs, leaves them room, hours or cash.")
                    .note(Sentences.WITHOUT_VAT)
                    .column(Rows.lot(), each -> each.hold.name())
                    .text("species", each -> each.any().get(0).lot().species())
                    .column(
                        columns.plants("standing", "standing"),
                        each ->
                            Math.round(
                                each.any().stream().mapToDouble(LotHistory::standingAtStart).sum()))
                    .text(
                        "ready_now",
                        "now, by grade",
                        each -> Rows.text(figures.standingByGrade(each.any())))
                    .text("given", "held as given", each -> figures.held(each.hold.given()))
                    .text(
                        "advised",
                        "hold",
                        each ->
                            each.hold.isChange() ? figures.held(each.hold.advised()) : "as it is"))
            .of(answer.holds().stream().map(this::held).toList()));
  }

  /** What a change of the hold brings. */
  private TableOf<Held> broughtBy(TableOf<Held> table) {
    return table
        .column(
            "sold_given",
            "sold this season as given",
            "plants",
            Kind.PLANTS,
            each -> figures.soldThisSeason(figures.given, each.before))
        .column(
            "sold_advised",
            "as advised",
            "plants",
            Kind.PLANTS,
            each -> figures.soldThisSeason(figures.recommended, each.after))
        .text(
            "become",
            "what they become",
            each -> each.ifChanged(() -> Rows.text(become(each.before, each.after))))
        .column(
            columns.money("brings", "brings"),
            each -> each.ifChanged(() -> each.hold.brings().mean()))
        .column(
            "sure",
            "sure in … of 100",
            "draws",
            Kind.COUNT,
            each -> each.ifChanged(() -> columns.ofHundred(each.hold.brings())));
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

  /** More of something that is short. */
  private record More(LimitWorth limit, LimitWorth.Step step) {
    /** Of the first step of a limit; null for the others. */
    <N> N first(Supplier<N> what) {
      return step == limit.steps().get(0) ? what.get() : null;
    }

    Double without() {
      return first(
          () -> limit.without().isPresent() ? (Double) limit.without().getAsDouble() : null);
    }
  }

  Table limits() {
    return TableOf.<More>table("buying-limits", "What more would be worth")
        .note(
            "What would be gained if there were so much more, and what you would then do: the same"
                + " as changing the cell and asking again. Plants and holds come in steps, so a"
                + " little more may bring nothing and more of it much. The charge of a larger"
                + " place is taken off, what else it costs is not. Room and hours are those of the"
                + " tightest month.")
        .note(Sentences.WITHOUT_VAT)
        .text(
            "limit", each -> each.first(() -> Phrases.sentence(BuyingWords.limitName(each.limit))))
        .text("when", each -> each.first(() -> when(each.limit)))
        .text("amount", "there is", each -> each.first(() -> there(each.limit)))
        .text(
            "used_given",
            "used as given",
            each -> each.first(() -> used(each.limit, each.limit.usedAsGiven())))
        .text(
            "used",
            "as recommended",
            each -> each.first(() -> used(each.limit, each.limit.usedAsRecommended())))
        .text("more", each -> say.percent(each.step.share()))
        .text("added", "that is", each -> added(each.limit, each.step.added()))
        .column(columns.money("worth", "worth"), each -> each.step.worth())
        .column(columns.moneyEach("each", "worth of each"), each -> each.step.each())
        .longText("then", "what you would then do", each -> thenDo(each.step))
        .wide(40)
        .column(columns.money("without", "worth without the limit"), More::without)
        .of(
            answer.limitsWorth().stream()
                .flatMap(limit -> limit.steps().stream().map(step -> new More(limit, step)))
                .toList());
  }

  private String thenDo(LimitWorth.Step step) {
    return step.worth() > 0 ? Rows.text(then(step.then(), step.instead())) : null;
  }

  private String when(LimitWorth limit) {
    if (limit.what() != LimitWorth.What.DEMAND) {
      return say.span(figures.horizon.month(limit.from()), figures.horizon.month(limit.to()));
    }
    int season = figures.horizon.season(limit.from());
    return season == figures.horizon.season(limit.to()) ? figures.season(season) : "every season";
  }

  private String there(LimitWorth limit) {
    return limit.what() == LimitWorth.What.CASH
        ? figures.money(answer.limits().lowestCash()) + " allowed"
        : amount(limit, limit.amount());
  }

  private String used(LimitWorth limit, double amount) {
    return limit.what() == LimitWorth.What.CASH
        ? figures.money(amount) + " at the lowest"
        : amount(limit, amount);
  }

  private String added(LimitWorth limit, double amount) {
    return limit.what() == LimitWorth.What.CASH
        ? figures.money(amount) + " lower"
        : amount(limit, amount);
  }

  private String amount(LimitWorth limit, double amount) {
    return switch (limit.what()) {
      case ROOM -> say.squareMetres(amount);
      case HOURS -> say.hours(amount) + " a month";
      case DEMAND -> "%s %s".formatted(say.number(amount), amount == 1 ? "plant" : "plants");
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
        Optional<growingon.nursery.lot.Hold> hold = holding.hold(candidate.value(i));
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

  /** A line of what was tried. */
  private record Tried(String what, double number, Optional<Move> change) {
    Tried(String what, double number) {
      this(what, number, Optional.empty());
    }
  }

  private List<Tried> tried(String chosenOn) {
    Certificate tried = answer.found().certificate();
    List<Tried> lines = new ArrayList<>();
    lines.add(new Tried("plans run", tried.runs()));
    lines.add(new Tried("single changes looked at", tried.singles()));
    tried.bestSingle().ifPresent(best -> lines.add(wouldGain("single", best)));
    tried.bestDouble().ifPresent(best -> lines.add(wouldGain("double", best)));
    lines.add(new Tried("what is not worth saying", tried.threshold()));
    lines.add(new Tried("gain on " + chosenOn, answer.found().gainOnChosen()));
    return lines;
  }

  private static Tried wouldGain(String which, Certificate.Tried best) {
    return new Tried(
        "the best %s change would gain".formatted(which), best.gain(), Optional.of(best.move()));
  }

  Table certificate() {
    String chosen = answer.draws() == 0 ? "the plan's line" : "the draws that were chosen on";
    return TableOf.<Tried>table("buying-certificate", "What was tried")
        .note(
            "Nothing that was tried beside the recommended gains more than what is not worth"
                + " saying, on %s.".formatted(chosen))
        .text("what", Tried::what)
        .column("value", "number", "", Kind.COUNT, Tried::number)
        .text("change", each -> each.change.map(this::said).orElse(null))
        .of(tried(chosen));
  }

  private String said(Move move) {
    Candidate changed = answer.found().recommended();
    return then(move.from(changed), changed);
  }
}
