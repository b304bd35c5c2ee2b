package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.limit.Limits;
import growingon.buying.question.Aim;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import growingon.buying.question.Sample;
import growingon.buying.search.Certificate.Tried;
import growingon.nursery.number.Writing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * The search as a list: climb on the plan's line, climb on a few draws, choose on more, leave out
 * what is not worth saying, and look whether anything beside it is better.
 */
public final class Search {
  /** Draws to climb on, the first of those to choose on. */
  static final int CLIMBING = 40;

  /** Draws to choose on; none of those of the plan, on which what was chosen is judged. */
  public static final int CHOOSING = 200;

  /** Double moves that are looked at in a round on the plan's line, the likeliest. */
  static final int PAIRS_ON_THE_LINE = 500;

  /** The same on draws, of which each costs as many runs as there are draws. */
  private static final int PAIRS_ON_DRAWS = 60;

  /** What lies beside the last end is added to the others up to so many to choose among. */
  private static final int ENDS = 10;

  /** How often what brings little is left out and what lies beside looked at, of few moves. */
  private static final int TIMES_LEFT_OUT = 4;

  private static final int TIMES_OF_LARGE = 2;
  private static final int TIMES_OF_VERY_LARGE = 1;

  /** What gains less than this share of the sales of the plan is not worth saying (own choice). */
  private static final double NOT_WORTH_SAYING = 0.001;

  /**
   * Nor what gains less present value than so much, plan currency, whatever that is worth (own
   * choice): it keeps small plans from splitting hairs; of a plan that sells for more than ten
   * thousand the share above decides.
   */
  private static final double LEAST_WORTH_SAYING = 10;

  /**
   * Present values that differ by less are as good as each other, plan currency: amounts are shown
   * without decimals, so a reader would see no difference.
   */
  private static final double A_TIE = 1;

  private static final double A_CENT = 0.01;

  private final Question question;
  private final Engine engine;
  private final Limits limits;
  private final Moves moves;
  private final Aim aim;
  private final boolean withLuck;
  private final Consumer<String> progress;
  private Known beside = new Known();

  /**
   * A search.
   *
   * @param withLuck whether there is luck to be looked at; else the plan's line is all
   * @param progress told what is being done
   */
  public Search(
      Engine engine, Limits limits, Aim aim, boolean withLuck, Consumer<String> progress) {
    this.question = engine.question();
    this.engine = engine;
    this.limits = limits;
    this.aim = aim;
    this.withLuck = withLuck;
    this.progress = progress;
    this.moves = new Moves(question, MostTried.of(engine));
  }

  /** All that may be changed. */
  public Moves moves() {
    return moves;
  }

  private void say(String doing) {
    progress.accept("%s, %s runs so far".formatted(doing, Writing.USUAL.whole(engine.runs())));
  }

  private double closeTo() {
    return NOT_WORTH_SAYING * engine.line(question.asGiven()).sales();
  }

  private Climb climb(Judge judge, int pairs) {
    return climb(judge, pairs, new Known());
  }

  private Climb climb(Judge judge, int pairs, Known takes) {
    return Climb.whole(moves, question, judge, closeTo(), pairs, takes);
  }

  private LineClimbs onTheLine() {
    return new LineClimbs(engine, limits, moves, closeTo(), this::say);
  }

  /** The best end of the climb on the plan's line. */
  Candidate climbed() {
    return onTheLine().ends().get(0);
  }

  /** Searches; the same question has the same end, however many threads there are. */
  public Found find() {
    say("Climbing on the plan's line");
    List<Candidate> ends = onTheLine().ends();
    Candidate onTheLine = ends.get(0);
    Set<Candidate> all = new LinkedHashSet<>(ends);
    all.add(question.asGiven());
    Candidate best = onTheLine;
    if (withLuck) {
      Judge fewDraws = judge(CLIMBING, 0, false);
      for (Candidate end : startsOnDraws(ends)) {
        say("Climbing on " + CLIMBING + " draws");
        all.add(climbOnDraws(fewDraws).from(end));
      }
      say("Choosing on " + CHOOSING + " draws");
      best = choose(new ArrayList<>(all), fewDraws);
    }
    return isRough() ? finishAmongMany(best, onTheLine) : finish(best, onTheLine);
  }

  /** Whether there are so many moves to be drawn that only the roughest way is taken. */
  private boolean isRough() {
    return withLuck && moves.areMany();
  }

  /** Of very many moves all, and two at once, are looked at again only about what is chosen. */
  private Climb climbOnDraws(Judge fewDraws) {
    return moves.areMany()
        ? Climb.amongMany(moves, question, fewDraws, closeTo(), 0)
        : climb(fewDraws, PAIRS_ON_DRAWS);
  }

  /** The two best ends; of a large question the second only where it is as good on the line. */
  private List<Candidate> startsOnDraws(List<Candidate> ends) {
    if (ends.size() < 2) {
      return ends;
    }
    double behind = engine.line(ends.get(0)).value() - engine.line(ends.get(1)).value();
    return ends.subList(0, !moves.areFew() && behind > closeTo() ? 1 : 2);
  }

  private Judge judge(int draws, double least, boolean seesAll) {
    return withLuck
        ? new OnDraws(engine, limits, aim, draws, least, seesAll, moves.areMany())
        : OnTheLine.within(engine, limits);
  }

  /** The best of the ends and of what is beside the best of them. */
  private Candidate choose(List<Candidate> ends, Judge fewDraws) {
    Candidate last = ends.get(ends.size() - 1);
    List<Weighed> beside = moves.areFew() ? climb(fewDraws, 0).singles(last) : List.of();
    beside.stream()
        .filter(each -> each.judged().fits() && !each.judged().isDropped())
        .sorted(Comparator.comparingDouble(Weighed::gain).reversed())
        .limit(Math.max(0, ENDS - ends.size()))
        .forEach(each -> ends.add(question.tidy(each.move().from(last))));
    Sample[] samples = engine.toChoose(ends.get(0), ends, 0, CHOOSING);
    Candidate best = question.asGiven();
    Sample of = samples[ends.indexOf(best)];
    for (int i = 0; i < ends.size(); i++) {
      boolean fits =
          limits.allow(engine.line(ends.get(i)))
              && samples[i].below(limits.lowestCash()) <= limits.chanceBelow();
      if (fits && isBetter(ends.get(i), samples[i], best, of)) {
        best = ends.get(i);
        of = samples[i];
      }
    }
    return best;
  }

  /** Of what is as good, that with fewer plants bought, then with fewer changes. */
  private boolean isBetter(Candidate one, Sample of, Candidate best, Sample ofBest) {
    double more = aim.of(of.values()) - aim.of(ofBest.values());
    if (Math.abs(more) >= A_TIE) {
      return more > 0;
    }
    int plants = question.bought(one) - question.bought(best);
    int changes =
        question.changes(one, question.asGiven()) - question.changes(best, question.asGiven());
    return plants < 0 || plants == 0 && changes < 0;
  }

  /** The more choices there are, the less each is of the whole, and all together still count. */
  private double threshold(Candidate best) {
    double share = NOT_WORTH_SAYING * question.shareOfFew();
    return Math.max(LEAST_WORTH_SAYING, share * engine.line(best).sales());
  }

  /** Leaves out what is not worth saying, and looks whether anything beside it is better. */
  private Found finish(Candidate chosen, Candidate onTheLine) {
    Judge undoing = judge(CHOOSING, -threshold(chosen), true);
    Judge choosing = judge(CHOOSING, threshold(chosen), true);
    int pairs = withLuck ? PAIRS_ON_DRAWS : PAIRS_ON_THE_LINE;
    Candidate whole = chosen;
    for (int time = 1; ; time++) {
      say("Leaving out what brings little");
      Candidate best = withBestNumbers(leaveOut(whole, undoing));
      say("Trying what lies beside it");
      beside = new Known();
      Climb climb = climb(choosing, pairs, beside);
      List<Weighed> singles = climb.singles(best);
      Optional<Weighed> single = bestSingle(singles);
      Optional<Weighed> both = climb.bestDouble(best, singles);
      Optional<Weighed> better =
          single
              .filter(each -> each.judged().helps(threshold(best)))
              .or(() -> both.filter(each -> each.judged().helps(threshold(best))));
      if (better.isEmpty() || time > timesLeftOut()) {
        return found(best, whole, onTheLine, singles.size(), single, both);
      }
      whole =
          withLuck || moves.areFew()
              ? question.tidy(better.get().move().from(best))
              : onward(choosing, pairs, threshold(best)).from(best);
    }
  }

  /**
   * The same on draws among very many moves: all that helps beside it is taken at once, and then
   * only what did not lose much is looked at again.
   */
  private Found finishAmongMany(Candidate chosen, Candidate onTheLine) {
    say("Leaving out what brings little");
    Judge undoing = judge(CHOOSING, -threshold(chosen), true);
    Candidate less = withBestNumbers(leaveOut(chosen, undoing));
    say("Trying what lies beside it");
    Judge choosing = judge(CHOOSING, threshold(less), false);
    Climb climb = climb(choosing, PAIRS_ON_DRAWS);
    List<Weighed> singles = climb.singles(less);
    Candidate best =
        new Taking(question, choosing, true, threshold(less)).theBest(less, singles).reached();
    if (!best.equals(less)) {
      say("Trying again what lies beside it");
      singles = climb.likelySingles(less, best);
    }
    return found(
        best,
        changedAlike(chosen, less, best),
        onTheLine,
        singles.size(),
        bestSingle(singles),
        climb.bestDouble(best, singles));
  }

  private static Optional<Weighed> bestSingle(List<Weighed> singles) {
    return singles.stream()
        .filter(each -> each.judged().fits())
        .max(
            Comparator.comparing((Weighed each) -> !each.judged().isDropped())
                .thenComparingDouble(Weighed::gain));
  }

  /** A candidate in which what changes between two others is changed too. */
  private static Candidate changedAlike(Candidate candidate, Candidate from, Candidate to) {
    Candidate changed = candidate;
    for (int choice = 0; choice < from.size(); choice++) {
      if (from.value(choice) != to.value(choice)) {
        changed = changed.with(choice, to.value(choice));
      }
    }
    return changed;
  }

  private int timesLeftOut() {
    return moves.areFew() ? TIMES_LEFT_OUT : moves.areMany() ? TIMES_OF_VERY_LARGE : TIMES_OF_LARGE;
  }

  private Climb onward(Judge judge, int pairs, double least) {
    return Climb.onward(moves, question, judge, closeTo(), pairs, beside, least);
  }

  /** What moves from what was found come to on the plan's line, where they were looked at on it. */
  public Known known() {
    return withLuck ? new Known() : beside;
  }

  /** Other numbers of what is bought anyway are nothing more to say, so the best is taken. */
  private Candidate withBestNumbers(Candidate from) {
    Judge judge = judge(CHOOSING, 0, true);
    Candidate now = from;
    double gained = A_TIE;
    while (gained >= A_TIE) {
      List<Move> others = otherNumbers(now);
      List<Judged> judged = judge.judge(now, others);
      int best = -1;
      gained = 0;
      for (int i = 0; i < others.size(); i++) {
        if (judged.get(i).helps(gained)) {
          best = i;
          gained = judged.get(i).gain();
        }
      }
      now = gained >= A_TIE ? others.get(best).from(now) : now;
    }
    return withFewest(now, judge);
  }

  /** Of numbers of an offer that do as well to the cent the least. */
  private Candidate withFewest(Candidate from, Judge judge) {
    Candidate now = from;
    for (int choice = 0; choice < from.size(); choice++) {
      int number = from.value(choice);
      int of = choice;
      List<Move> fewer =
          otherNumbers(now).stream()
              .filter(move -> move.only().choice() == of && move.only().value() < number)
              .toList();
      List<Judged> judged = judge.judge(now, fewer);
      Optional<Move> fewest =
          IntStream.range(0, fewer.size())
              .filter(i -> judged.get(i).helps(-A_CENT))
              .mapToObj(fewer::get)
              .findFirst();
      now = fewest.isPresent() ? fewest.get().from(now) : now;
    }
    return now;
  }

  private List<Move> otherNumbers(Candidate from) {
    List<Move> others = new ArrayList<>();
    for (int choice = 0; choice < from.size(); choice++) {
      if (question.isTake(choice) && from.value(choice) > 0) {
        for (int number : moves.values(choice)) {
          if (number > 0 && number != from.value(choice)) {
            others.add(Move.of(choice, number));
          }
        }
      }
    }
    return others;
  }

  private Found found(
      Candidate best,
      Candidate whole,
      Candidate onTheLine,
      int singles,
      Optional<Weighed> single,
      Optional<Weighed> both) {
    List<Integer> leftOut = new ArrayList<>();
    for (int i = 0; i < best.size(); i++) {
      if (best.value(i) == 0 && whole.value(i) != 0) {
        leftOut.add(i);
      }
    }
    List<Candidate> two = List.of(best, question.asGiven());
    double gain;
    if (withLuck) {
      Sample[] samples = engine.toChoose(best, two, 0, CHOOSING);
      gain = aim.of(samples[0].values()) - aim.of(samples[1].values());
    } else {
      gain = engine.line(best).value() - engine.line(question.asGiven()).value();
    }
    return new Found(
        best,
        whole,
        leftOut,
        onTheLine,
        gain,
        new Certificate(
            engine.runs(),
            singles,
            single.map(each -> new Tried(each.move(), each.gain())),
            both.map(each -> new Tried(each.move(), each.gain())),
            threshold(best)));
  }

  private Candidate leaveOut(Candidate from, Judge undoing) {
    LeavingOut leaving = new LeavingOut(question, undoing, threshold(from));
    return moves.areMany()
        ? leaving.together(from, judge(CHOOSING, Double.NEGATIVE_INFINITY, true))
        : leaving.oneByOne(from);
  }
}
