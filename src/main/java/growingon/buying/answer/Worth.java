package growingon.buying.answer;

import growingon.buying.answer.LimitWorth.Step;
import growingon.buying.answer.LimitWorth.What;
import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Change;
import growingon.buying.limit.Limits;
import growingon.buying.limit.Shortage;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.buying.search.Climb;
import growingon.buying.search.Known;
import growingon.buying.search.Moves;
import growingon.buying.search.OnTheLine;
import growingon.buying.search.Weighed;
import growingon.money.Finance;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * What more of each limit would be worth that is reached, or that alone stopped a better move: what
 * one would then do is climbed to on the plan's line, and judged on the draws.
 */
public final class Worth {
  private static final double[] MORE = {0.1, 0.25, 0.5};
  private static final int SHOWN = 8;
  private static final int LOOKED_AT = 6;
  private static final int DEMAND_LOOKED_AT = 2;

  /** What more would be worth is judged on so many draws. */
  private static final int DRAWS = 100;

  /** What is worth less would be shown as nothing; plan currency. */
  private static final double WORTH_SAYING = 0.5;

  private static final double REACHED = 0.99;
  private static final int PAIRS = 40;

  private final Engine engine;
  private final Question question;
  private final Limits limits;
  private final PlanDraws planDraws;
  private final Moves moves;
  private final Candidate recommended;
  private final Outcome line;
  private final Outcome given;
  private final double closeTo;
  private final Known known;
  private final SoldOut soldOut;
  private final List<Bound> bounds;
  private final Candidate base;
  private final double baseValue;
  private final Map<Candidate, Double> gains = new HashMap<>();

  /**
   * The worth of limits.
   *
   * @param known what moves from the recommended come to on the plan's line, as far as it is known
   */
  public Worth(
      Engine engine,
      Limits limits,
      PlanDraws planDraws,
      Moves moves,
      Candidate recommended,
      Known known) {
    this.engine = engine;
    this.question = engine.question();
    this.limits = limits;
    this.planDraws = planDraws;
    this.moves = moves;
    this.recommended = recommended;
    this.line = engine.line(recommended);
    this.given = engine.line(question.asGiven());
    this.closeTo = 0.001 * line.sales();
    this.known = known.copy();
    this.soldOut = soldOut(recommended);
    lookAtAll();
    this.bounds = bounds();
    this.base = climb(engine, limits, recommended, this.known);
    this.baseValue = value(engine, base);
  }

  /** A limit that may be worth something, with what the best move gains that it alone stopped. */
  private record Bound(What what, int index, double stopped) {}

  /** A limit of room in one place, of hours or of cash, over all months. */
  private record Limit(What what, int index) {
    static Limit of(Shortage shortage) {
      return switch (shortage.what()) {
        case ROOM -> new Limit(What.ROOM, shortage.place());
        case HOURS -> new Limit(What.HOURS, 0);
        case CASH -> new Limit(What.CASH, 0);
      };
    }
  }

  /** What more of each limit is worth, the most first; not what is too little to be said. */
  public List<LimitWorth> limits() {
    List<LimitWorth> list = new ArrayList<>();
    for (Bound bound : bounds) {
      list.add(
          switch (bound.what()) {
            case ROOM -> room(bound.index());
            case HOURS -> hours();
            case CASH -> cash();
            case DEMAND -> demand(bound.index());
          });
    }
    list.sort(Comparator.comparingDouble(LimitWorth::best).reversed());
    return list.stream().filter(each -> each.best() >= WORTH_SAYING).limit(SHOWN).toList();
  }

  private SoldOut soldOut(Candidate candidate) {
    return new SoldOut(engine.scenario().withLots(question.lots(candidate)));
  }

  /** Every move is looked at once, where it was not before. */
  private void lookAtAll() {
    List<Move> open =
        moves.singles(recommended).stream().filter(move -> known.of(move).isEmpty()).toList();
    known.note(Weighed.by(OnTheLine.within(engine, limits), recommended, open));
  }

  /** The limits looked at, those first that stopped most. */
  private List<Bound> bounds() {
    Map<Limit, Double> stopped = new LinkedHashMap<>();
    reached(stopped);
    for (Move move : moves.singles(recommended)) {
      Change change = known.of(move).orElseThrow();
      Set<Limit> over = change.value() > 0 ? over(change) : Set.of();
      if (over.size() == 1) {
        stopped.merge(over.iterator().next(), change.value(), Math::max);
      }
    }
    List<Bound> bounds = new ArrayList<>();
    stopped.forEach((limit, gain) -> bounds.add(new Bound(limit.what(), limit.index(), gain)));
    soldOut.seasons().stream()
        .sorted(Comparator.comparingDouble(SoldOut.Season::brings).reversed())
        .limit(DEMAND_LOOKED_AT)
        .forEach(row -> bounds.add(new Bound(What.DEMAND, row.row(), row.brings())));
    bounds.sort(Comparator.comparingDouble(Bound::stopped).reversed());
    return bounds.stream().limit(LOOKED_AT).toList();
  }

  private void reached(Map<Limit, Double> stopped) {
    for (int place = 0; place < limits.room().length; place++) {
      if (months(line.space()[place], limits.room()[place]).length > 0) {
        stopped.put(new Limit(What.ROOM, place), 0.0);
      }
    }
    if (months(line.hours(), limits.hours()).length > 0) {
      stopped.put(new Limit(What.HOURS, 0), 0.0);
    }
    boolean cash = line.lowestCash() < limits.lowestCash() + 0.05 * Math.abs(limits.lowestCash());
    if (Double.isFinite(limits.lowestCash()) && cash) {
      stopped.put(new Limit(What.CASH, 0), 0.0);
    }
  }

  /** The limits that a move alone would lead over. */
  private Set<Limit> over(Change change) {
    return limits.shortages(line, change).stream()
        .filter(each -> each.share() > 0)
        .map(Limit::of)
        .collect(Collectors.toSet());
  }

  /** First and last month in which a limit is reached; empty if it never is. */
  private static int[] months(double[] needed, double[] limit) {
    int first = -1;
    int last = -1;
    for (int month = 0; month < needed.length; month++) {
      if (needed[month] > 0 && needed[month] >= REACHED * limit[month]) {
        first = first < 0 ? month : first;
        last = month;
      }
    }
    return first < 0 ? new int[0] : new int[] {first, last};
  }

  private double value(Engine of, Candidate candidate) {
    PlanDraws judged = new PlanDraws(of, Math.min(DRAWS, planDraws.draws()));
    return Sample.mean(judged.on(List.of(candidate))[0].values());
  }

  private Candidate climb(Engine of, Limits within, Candidate start, Known knownThere) {
    return Climb.brief(moves, question, OnTheLine.within(of, within), closeTo, PAIRS, knownThere)
        .from(start);
  }

  /** What a step is worth where what is added costs something itself; never below nil. */
  private Step step(double share, double added, Candidate then, double cost) {
    double worth = gain(then) - cost;
    return worth > 0
        ? new Step(share, added, worth, then, base)
        : new Step(share, added, 0, base, base);
  }

  /** What is gained by doing something else than the base. */
  private double gain(Candidate then) {
    return then.equals(base)
        ? 0
        : gains.computeIfAbsent(then, other -> value(engine, other) - baseValue);
  }

  /**
   * What more of a limit is worth, from most to least: what one would do with more of it is best
   * with less too where it still fits.
   *
   * @param amount how much of it there is
   * @param freed what one would do without it
   * @param within the limits with so much more of it, as a share
   * @param cost what all of it costs besides
   */
  private List<Step> steps(
      double amount, Candidate freed, DoubleFunction<Limits> within, double cost) {
    List<Step> steps = new ArrayList<>();
    Candidate then = gain(freed) > 0 ? freed : base;
    for (int i = MORE.length - 1; i >= 0; i--) {
      double more = MORE[i];
      Limits limitsThen = within.apply(more);
      then = limitsThen.allow(engine.line(then)) ? then : freely(limitsThen);
      steps.add(0, step(more, more * amount, then, more * cost));
    }
    return rising(
        steps, (step, less) -> step(step.share(), step.added(), less, step.share() * cost));
  }

  /**
   * No step worth less than a smaller one: what is done with less can be done with more. What is
   * climbed to on the plan's line alone may be judged worse.
   *
   * @param doing what a step is worth where something else is done
   */
  private static List<Step> rising(List<Step> steps, BiFunction<Step, Candidate, Step> doing) {
    List<Step> rising = new ArrayList<>();
    for (Step step : steps) {
      Step less = rising.isEmpty() ? step : rising.get(rising.size() - 1);
      Step as = less.worth() > step.worth() ? doing.apply(step, less.then()) : step;
      rising.add(as.worth() > step.worth() ? as : step);
    }
    return rising;
  }

  /** What one would do within other limits. */
  private Candidate freely(Limits within) {
    return climb(engine, within, base, known.copy());
  }

  private LimitWorth room(int index) {
    Place place = List.copyOf(question.nursery().places().values()).get(index);
    double[] capacity = limits.capacity()[index];
    double amount = 0;
    for (double each : capacity) {
      amount = Math.max(amount, each);
    }
    Candidate freed = freely(limits.withoutRoom(index));
    List<Step> steps =
        steps(amount, freed, more -> limits.withMoreRoom(index, more), costOf(place));
    int[] months = months(line.space()[index], limits.room()[index]);
    return new LimitWorth(
        What.ROOM,
        place.name(),
        months.length == 0 ? 0 : months[0],
        months.length == 0 ? capacity.length - 1 : months[1],
        amount,
        most(given.space()[index]),
        most(line.space()[index]),
        steps,
        OptionalDouble.of(Math.max(0, gain(freed))));
  }

  /** The month in which least is left of what there is; the first of several. */
  private static int tightest(double[] needed, double[] there) {
    int tightest = 0;
    for (int month = 1; month < needed.length; month++) {
      if (needed[month] * there[tightest] > needed[tightest] * there[month]) {
        tightest = month;
      }
    }
    return tightest;
  }

  private static double most(double[] values) {
    double most = 0;
    for (double each : values) {
      most = Math.max(most, each);
    }
    return most;
  }

  /** Present value of what a place costs over the plan. */
  private double costOf(Place place) {
    double[] cost = new double[line.hours().length];
    for (int month = 0; month < cost.length; month++) {
      cost[month] = place.monthlyCost(engine.scenario().horizon().month(month));
    }
    return Finance.presentValue(cost, question.nursery().settings().discountRate());
  }

  private LimitWorth hours() {
    double[] available = limits.available();
    int[] months = months(line.hours(), limits.hours());
    int from = months.length == 0 ? 0 : months[0];
    int to = months.length == 0 ? available.length - 1 : months[1];
    int tightest = tightest(line.hours(), available);
    double amount = available[tightest];
    Candidate freed = freely(limits.withoutHours());
    List<Step> steps = steps(amount, freed, limits::withMoreHours, 0);
    return new LimitWorth(
        What.HOURS,
        "",
        from,
        to,
        amount,
        given.hours()[tightest],
        line.hours()[tightest],
        steps,
        OptionalDouble.of(Math.max(0, gain(freed))));
  }

  private LimitWorth cash() {
    double bought = given.lowestCash() - line.lowestCash();
    double amount = Math.max(Math.abs(limits.lowestCash()), Math.abs(bought));
    Candidate freed = freely(limits.withLessCash(Double.POSITIVE_INFINITY));
    List<Step> steps = steps(amount, freed, more -> limits.withLessCash(more * amount), 0);
    return new LimitWorth(
        What.CASH,
        "",
        line.lowestMonth(),
        line.lowestMonth(),
        amount,
        given.lowestCash(),
        line.lowestCash(),
        steps,
        OptionalDouble.of(Math.max(0, gain(freed))));
  }

  /** What more of it that is wanted would be worth. */
  private LimitWorth demand(int index) {
    WantedMore wanted = new WantedMore(question, index);
    int season =
        soldOut.seasons().stream()
            .filter(each -> each.row() == index)
            .findFirst()
            .orElseThrow()
            .season();
    Horizon horizon = engine.scenario().horizon();
    boolean isOfOne = wanted.row().season().isPresent();
    return new LimitWorth(
        What.DEMAND,
        wanted.name(),
        isOfOne ? horizon.seasonFirst(season) : 0,
        isOfOne ? horizon.seasonLast(season) : horizon.months() - 1,
        wanted.units(),
        soldOut(question.asGiven()).sold(index, season),
        soldOut.sold(index, season),
        steps(wanted),
        OptionalDouble.empty());
  }

  /** From most added to least: what does not help where more is wanted is not tried with less. */
  private List<Step> steps(WantedMore wanted) {
    Known knownThere = known.without(wanted::isMetBy);
    List<Step> steps = new ArrayList<>();
    Map<Double, Engine> engines = new HashMap<>();
    for (int i = MORE.length - 1; i >= 0; i--) {
      double more = MORE[i];
      Engine other = engine.withDemand(wanted.demand(more), wanted.row().ladder());
      engines.put(more, other);
      Candidate then = climb(other, limits, base, knownThere);
      double kept = value(other, base) - baseValue;
      double worth = then.equals(base) ? kept : value(other, then) - baseValue;
      Candidate better = worth >= kept ? then : base;
      double added = more * wanted.units();
      steps.add(0, new Step(more, added, Math.max(0, Math.max(worth, kept)), better, base));
    }
    return rising(
        steps,
        (step, less) -> {
          double worth = value(engines.get(step.share()), less) - baseValue;
          return new Step(step.share(), step.added(), worth, less, base);
        });
  }
}
