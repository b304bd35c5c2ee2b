package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Limits;
import growingon.buying.question.Candidate;
import growingon.buying.question.Quantities;
import growingon.buying.question.Question;
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
  private static final int TIMES_AGAIN = 2;

  private final Question question;
  private final Engine engine;
  private final Limits limits;
  private final Moves moves;
  private final double closeTo;
  private final Consumer<String> say;

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
    Ascent ascent = ascent();
    Candidate paying = ascent.whatPays();
    Ascent.Top top = ascent.from(paying);
    shedding.from(top.candidate()).ifPresent(starts::add);
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
      top = ascent().again(sorted(ends).get(0), top.price());
      shedding.from(top.candidate()).map(climb::from).ifPresent(ends::add);
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

  private Ascent ascent() {
    return new Ascent(engine, limits, moves, closeTo, say);
  }

  /** Of few moves every start was climbed from already, of very many one way takes long enough. */
  private int timesAgain() {
    return moves.areFew() || moves.areMany() ? 0 : TIMES_AGAIN;
  }

  private Climb climb() {
    Judge judge = OnTheLine.within(engine, limits);
    int pairs = Search.PAIRS_ON_THE_LINE;
    return moves.areMany()
        ? Climb.amongMany(moves, question, judge, closeTo, pairs)
        : Climb.whole(moves, question, judge, closeTo, pairs, new Known());
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
    return combinations <= Quantities.ALL_TRIED;
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
