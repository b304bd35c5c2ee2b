package growingon.buying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * Climbs on the plan's line, or tries all there is where that is little. Of few moves from as
 * given, as planned, all that pays and what pays at rising prices of what is short; of many from
 * the last alone, which of 60 lots came out above all others.
 */
final class LineClimbs {
  /** At most so many combinations are all tried. */
  private static final int ALL_TRIED = 2000;

  /** At the first price all that is short costs an eighth of what it brings. */
  private static final int FIRST_PRICE = 8;

  private static final int PRICES = 12;
  private static final int STEP = 2;
  private static final int STEP_OF_MANY = 4;
  private static final int BACK = 32;
  private static final int TIMES_AGAIN = 2;
  private static final int MANY_MOVES = 2000;

  private final Question question;
  private final Engine engine;
  private final Limits limits;
  private final Moves moves;
  private final double closeTo;
  private final Consumer<String> say;
  private Known known = new Known();
  private double lastPrice;

  /**
   * Climbs of a question.
   *
   * @param closeTo a move that loses no more than this is looked at again
   * @param say told what is being done
   */
  LineClimbs(Engine engine, Limits limits, Moves moves, double closeTo, Consumer<String> say) {
    this.question = engine.question();
    this.engine = engine;
    this.limits = limits;
    this.moves = moves;
    this.closeTo = closeTo;
    this.say = say;
  }

  /** Ends of the climbs, the best first. */
  List<Candidate> ends() {
    if (isFew(this::isAny)) {
      return List.of(bestOfAll(this::isAny));
    }
    Climb climb = climb();
    Set<Candidate> starts = moves.areFew() ? startsOfFew() : new LinkedHashSet<>();
    Shedding shedding = new Shedding(engine, limits, moves);
    Candidate paying = whatPays();
    shedding.from(atRisingPrices(paying)).ifPresent(starts::add);
    if (starts.isEmpty() || moves.areFew()) {
      shedding.from(paying).ifPresent(starts::add);
    }
    if (starts.isEmpty()) {
      starts.add(question.asGiven());
    }
    Set<Candidate> ends = new LinkedHashSet<>();
    for (Candidate start : starts) {
      say.accept("Climbing on the plan's line");
      ends.add(climb.from(start));
    }
    for (int time = 0; time < timesAgain(); time++) {
      Candidate best = sorted(ends).get(0);
      shedding.from(againFrom(best)).map(climb::from).ifPresent(ends::add);
    }
    return sorted(ends);
  }

  private List<Candidate> sorted(Set<Candidate> ends) {
    List<Candidate> sorted = new ArrayList<>(ends);
    sorted.sort(
        Comparator.comparingDouble((Candidate end) -> -engine.line(end).value())
            .thenComparingInt(question::bought));
    return sorted;
  }

  /** Where few can be moved all starts are climbed from; of many the best takes long enough. */
  private Set<Candidate> startsOfFew() {
    Set<Candidate> starts = new LinkedHashSet<>(List.of(question.asGiven()));
    if (limits.allow(engine.line(question.asPlanned()))) {
      starts.add(question.asPlanned());
    }
    if (isFew(question::isTake)) {
      starts.add(bestOfAll(question::isTake));
    }
    return starts;
  }

  /** What would be done if nothing were short. */
  private Candidate whatPays() {
    return atPrice(0, question.asGiven());
  }

  /**
   * What pays when what is over the limits has a price, which is raised until everything fits.
   * Unlike undoing alone this also exchanges what needs much for what needs less.
   */
  private Candidate atRisingPrices(Candidate paying) {
    Outcome all = engine.line(paying);
    double gained = all.value() - engine.line(question.asGiven()).value();
    return atRisingPrices(paying, gained / limits.shortage(all) / FIRST_PRICE);
  }

  private Candidate atRisingPrices(Candidate start, double first) {
    Candidate now = start;
    double price = first;
    for (int time = 0; time < PRICES && !limits.allow(engine.line(now)); time++) {
      say.accept("Climbing at a price of what is short");
      now = atPrice(price, now);
      lastPrice = price;
      price *= isHuge() ? STEP_OF_MANY : STEP;
    }
    return now;
  }

  /**
   * From an end back to where what is short is cheap, and on at rising prices: what was given up on
   * the way is taken in another company. Of few moves every start was climbed from already, of very
   * many one way takes long enough.
   */
  private Candidate againFrom(Candidate end) {
    known = new Known();
    double cheap = lastPrice / BACK;
    return atRisingPrices(atPrice(cheap, end), STEP * cheap);
  }

  private int timesAgain() {
    return moves.areFew() || isHuge() ? 0 : TIMES_AGAIN;
  }

  /** Of very many lots a quarter of one more or less matters only at the end. */
  private Moves roughly() {
    return isHuge() ? moves.coarse() : moves;
  }

  private boolean isHuge() {
    return moves.fromAsGiven() > MANY_MOVES;
  }

  private Climb climb() {
    Judge judge = OnTheLine.within(engine, limits);
    int pairs = Search.PAIRS_ON_THE_LINE;
    return isHuge()
        ? Climb.brief(moves, question, judge, closeTo, pairs, new Known())
        : Climb.whole(moves, question, judge, closeTo, pairs, new Known());
  }

  private Candidate atPrice(double price, Candidate start) {
    Judge judge = OnTheLine.atAPrice(engine, limits, price);
    return Climb.toAStart(roughly(), question, judge, closeTo, known).from(start);
  }

  private boolean isAny(int choice) {
    return true;
  }

  /** Whether choices have so few values together that all can be tried. */
  private boolean isFew(IntPredicate which) {
    double combinations = 1;
    for (int i = 0; i < question.choices().size(); i++) {
      combinations *= which.test(i) ? moves.values(i).size() : 1;
    }
    return combinations <= ALL_TRIED;
  }

  /** The best of all combinations of some choices on the plan's line. */
  private Candidate bestOfAll(IntPredicate which) {
    List<Candidate> all = new ArrayList<>(List.of(question.asGiven()));
    for (int choice = 0; choice < question.choices().size(); choice++) {
      List<Candidate> longer = new ArrayList<>();
      for (Candidate each : all) {
        for (int value : which.test(choice) ? moves.values(choice) : List.of(0)) {
          longer.add(each.with(choice, value));
        }
      }
      all = longer;
    }
    List<Outcome> lines = engine.lines(question.asGiven(), all);
    Candidate best = question.asGiven();
    double most = engine.line(best).value();
    for (int i = 0; i < all.size(); i++) {
      if (limits.allow(lines.get(i)) && lines.get(i).value() > most + 1e-6) {
        best = question.tidy(all.get(i));
        most = lines.get(i).value();
      }
    }
    return moves.refine(best) ? climb().from(best) : best;
  }
}
