package growingon.buying;

import growingon.buying.answer.Answer;
import growingon.buying.answer.Answer.OtherEnd;
import growingon.buying.answer.HoldAnswer;
import growingon.buying.answer.LimitWorth;
import growingon.buying.answer.OfferAnswer;
import growingon.buying.answer.Offers;
import growingon.buying.answer.PlanDraws;
import growingon.buying.answer.PlanValue;
import growingon.buying.answer.PlanValue.Kind;
import growingon.buying.answer.Worth;
import growingon.buying.engine.Engine;
import growingon.buying.limit.Limits;
import growingon.buying.question.Candidate;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.buying.question.Spread;
import growingon.buying.question.Wish;
import growingon.buying.search.Climb;
import growingon.buying.search.Found;
import growingon.buying.search.Known;
import growingon.buying.search.Moves;
import growingon.buying.search.OnTheLine;
import growingon.buying.search.Search;
import growingon.chance.luck.Luckless;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Hold;
import growingon.nursery.market.HorizonValue;
import growingon.project.Projector;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** What to buy, how many, and sell now or grow on: the run as a list. */
public final class Buying {
  private final Inputs inputs;
  private final Wish wish;
  private final Consumer<String> progress;
  private final Question question;
  private final Engine engine;
  private final boolean withLuck;
  private final PlanDraws planDraws;
  private final Limits limits;

  /** What single changes bring is judged on so many draws. */
  private static final int DRAWS_OF_CHANGES = 200;

  /** The same where there are very many. */
  private static final int DRAWS_OF_MANY_CHANGES = 100;

  private static final HorizonValue HALF_OF_LIST = new HorizonValue.OfListPrice(0.5);

  private Buying(Inputs inputs, Wish wish, int threads, Consumer<String> progress) {
    this.inputs = inputs;
    this.wish = wish;
    this.progress = progress;
    this.question = Question.of(inputs, wish.scope());
    this.engine = new Engine(question, threads);
    this.withLuck = !wish.isQuick() && !Luckless.is(inputs);
    int plans = inputs.scenario().plan().draws();
    int draws = Math.max(Wish.LEAST_DRAWS, Math.max(plans, wish.draws()));
    this.planDraws = new PlanDraws(engine, withLuck ? draws : 0);
    this.limits = limits();
  }

  /** As given is a limit too: it must not get worse. */
  private Limits limits() {
    Limits lines =
        Limits.of(
            engine.scenario(),
            engine.line(question.asGiven()),
            inputs.quick().isPresent() ? 0 : Limits.ALLOWED);
    if (!withLuck || !Double.isFinite(lines.lowestCash())) {
      return lines;
    }
    Sample given =
        engine.toChoose(question.asGiven(), List.of(question.asGiven()), 0, Search.CHOOSING)[0];
    return lines.withChanceBelow(given.below(lines.lowestCash()));
  }

  /**
   * Answers what to buy and to hold.
   *
   * @param inputs what was read
   * @param wish how it is asked
   * @param threads how many threads work; their number changes nothing but the time
   * @param progress told what is being done
   */
  public static Answer answer(Inputs inputs, Wish wish, int threads, Consumer<String> progress) {
    return new Buying(inputs, wish, threads, progress).answer();
  }

  /** Whether there is neither an offer nor a lot to decide about. */
  public static boolean isNothingToDecide(Inputs inputs, Question.Scope scope) {
    return Question.of(inputs, scope).choices().isEmpty();
  }

  private Answer answer() {
    Search search = new Search(engine, limits, wish.aim(), withLuck, progress);
    Found found = search.find();
    engine.forgetDraws();
    progress.accept("Judging what was found");
    List<PlanValue> plans = plans(found.recommended());
    List<OfferAnswer> offers =
        new Offers(engine, limits, planDraws, search.moves(), found, wish.aim()).answers();
    progress.accept("Looking at what holds the nursery back");
    List<LimitWorth> worth =
        new Worth(engine, limits, planDraws, search.moves(), found.recommended(), search.known())
            .limits();
    double unsoldShare = unsoldShare(found.recommended());
    return new Answer(
        inputs,
        question,
        wish,
        withLuck,
        planDraws.draws(),
        limits,
        found,
        plans,
        new PlanDraws(engine, Math.min(DRAWS_OF_CHANGES, planDraws.draws()))
            .gain(found.beforeLeavingOut(), found.recommended()),
        offers,
        holds(found.recommended(), search.moves()),
        worth,
        unsoldShare,
        otherEnd(found.recommended(), unsoldShare));
  }

  private List<PlanValue> plans(Candidate recommended) {
    Map<Kind, Candidate> kinds = new LinkedHashMap<>();
    kinds.put(Kind.AS_GIVEN, question.asGiven());
    if (!question.asPlanned().equals(question.asGiven())) {
      kinds.put(Kind.AS_PLANNED, question.asPlanned());
    }
    kinds.put(Kind.RECOMMENDED, recommended);
    Candidate alone = recommended;
    for (int i = 0; i < recommended.size(); i++) {
      alone = question.choice(i) instanceof Holding ? alone.with(i, 0) : alone;
    }
    if (!alone.equals(recommended) && question.bought(alone) > 0) {
      kinds.put(Kind.PURCHASES_ALONE, alone);
    }
    List<Candidate> candidates = List.copyOf(kinds.values());
    Sample[] samples = planDraws.on(candidates);
    List<PlanValue> plans = new ArrayList<>();
    for (Kind kind : kinds.keySet()) {
      Candidate candidate = kinds.get(kind);
      Sample sample = samples[plans.size()];
      plans.add(
          new PlanValue(
              kind,
              candidate,
              engine.line(candidate),
              Spread.of(sample.values()),
              Spread.of(sample.over(samples[0])),
              Double.isFinite(limits.lowestCash()) ? sample.below(limits.lowestCash()) : 0,
              laidOut(candidate)));
    }
    return plans;
  }

  private double laidOut(Candidate candidate) {
    double sum = 0;
    for (int i = 0; i < candidate.size(); i++) {
      int number = candidate.value(i);
      if (number > 0 && question.choice(i) instanceof Take take) {
        sum +=
            take.orders().stream()
                .mapToDouble(order -> order.taken(number).purchase().orElseThrow().landed(number))
                .sum();
      }
    }
    return sum;
  }

  private List<HoldAnswer> holds(Candidate recommended, Moves moves) {
    List<HoldAnswer> answers = new ArrayList<>();
    List<Candidate> undone = new ArrayList<>(List.of(recommended));
    List<Integer> changed = new ArrayList<>();
    for (int i = 0; i < recommended.size(); i++) {
      if (question.choice(i) instanceof Holding
          && recommended.value(i) != 0
          && question.counts(recommended, i)) {
        changed.add(i);
        undone.add(recommended.with(i, 0));
      }
    }
    int draws = moves.areMany() ? DRAWS_OF_MANY_CHANGES : DRAWS_OF_CHANGES;
    Sample[] samples = planDraws.on(undone, draws);
    for (int i = 0; i < recommended.size(); i++) {
      if (question.choice(i) instanceof Holding holding && question.counts(recommended, i)) {
        int at = changed.indexOf(i);
        Spread brings =
            at < 0 ? Spread.of(new double[] {0}) : Spread.of(samples[0].over(samples[at + 1]));
        Optional<Hold> given = holding.hold(0);
        Optional<Hold> advised = holding.hold(recommended.value(i));
        answers.add(new HoldAnswer(holding.name(), given, advised, brings));
      }
    }
    answers.sort(
        Comparator.comparing(HoldAnswer::isChange)
            .reversed()
            .thenComparing(answer -> -answer.brings().mean()));
    return answers;
  }

  /** Share of all plants that stand unsold at the end, on the plan's line. */
  private double unsoldShare(Candidate candidate) {
    double plants = 0;
    double left = 0;
    Scenario scenario = engine.scenario().withLots(question.lots(candidate));
    for (LotHistory lot : Projector.project(scenario).lots()) {
      plants += lot.quantity();
      left += lot.standing(lot.months() - 1) - lot.keptAtEnd();
    }
    return plants > 0 ? left / plants : 0;
  }

  /**
   * What would be done if plants unsold at the end counted for nothing or, where many are left that
   * do so in the plan, at half their list price: by a climb on the plan's line alone.
   */
  private Optional<OtherEnd> otherEnd(Candidate recommended, double unsoldShare) {
    if (!inputs.scenario().plan().horizonValue().equals(HorizonValue.NOTHING)) {
      return Optional.of(endingAt(HorizonValue.NOTHING, recommended));
    }
    return unsoldShare >= Answer.MANY_UNSOLD
        ? Optional.of(endingAt(HALF_OF_LIST, recommended))
        : Optional.empty();
  }

  private OtherEnd endingAt(HorizonValue value, Candidate recommended) {
    progress.accept("Looking at what it is worth where unsold plants count otherwise");
    Scenario scenario = engine.scenario();
    Scenario otherwise =
        new Scenario(scenario.nursery(), scenario.plan().withHorizonValue(value), scenario.lots());
    Engine other = new Engine(question, otherwise, engine.threads());
    Moves moves = new Search(other, limits, wish.aim(), false, progress).moves();
    double closeTo = 0.001 * other.line(question.asGiven()).sales();
    Candidate then =
        Climb.brief(moves, question, OnTheLine.within(other, limits), closeTo, 0, new Known())
            .from(recommended);
    Spread gain =
        new PlanDraws(other, Math.min(DRAWS_OF_CHANGES, planDraws.draws()))
            .gain(recommended, question.asGiven());
    return new OtherEnd(value, gain, then);
  }
}
