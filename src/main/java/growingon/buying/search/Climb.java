package growingon.buying.search;

import growingon.buying.limit.Change;
import growingon.buying.question.Candidate;
import growingon.buying.question.Choice;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Climbs from a candidate by moves that help, the best first, and where none does by double moves,
 * until neither helps.
 */
public final class Climb {
  /**
   * A round that brings less present value is the last, plan currency: amounts are shown without
   * decimals, so nobody would see it.
   */
  static final double WORTH_A_ROUND = 1;

  /** With no more single moves than this all is looked at more closely. */
  static final int FEW_MOVES = 200;

  /** Of few moves so many double moves are looked at in a round. */
  private static final int PAIRS_OF_FEW = 4000;

  /** What gains no more, plan currency, differs in the last digits of sums only. */
  private static final double ROUNDING = 1e-6;

  private final Moves moves;
  private final Question question;
  private final Judge judge;
  private final double closeTo;
  private final int pairs;
  private final Care care;
  private final Known known;

  /**
   * How closely a climb looks.
   *
   * @param seesAll whether all moves are looked at once more before it ends
   * @param triesAnyTwo whether any two moves are tried together, where there are few
   * @param onlyGains whether a move that promised a loss when it was looked at last is looked at no
   *     more, were it ever so little
   * @param worthAMove a move that brings less is not taken
   * @param worthARound a round that brings less is the last
   */
  private record Care(
      boolean seesAll,
      boolean triesAnyTwo,
      boolean onlyGains,
      double worthAMove,
      double worthARound) {}

  private Climb(
      Moves moves,
      Question question,
      Judge judge,
      double closeTo,
      int pairs,
      Care care,
      Known known) {
    this.moves = moves;
    this.question = question;
    this.judge = judge;
    this.closeTo = closeTo;
    this.pairs = pairs;
    this.care = care;
    this.known = known;
  }

  /**
   * A climb from whose end no single move helps.
   *
   * @param closeTo a hold that alone loses no more than this is tried in a double move
   * @param pairs at most so many double moves are looked at in a round, the likeliest
   * @param known takes what moves gain when they are looked at
   */
  static Climb whole(
      Moves moves, Question question, Judge judge, double closeTo, int pairs, Known known) {
    Care care = new Care(true, judge.isOneRun(), false, ROUNDING, WORTH_A_ROUND);
    return new Climb(moves, question, judge, closeTo, pairs, care, known);
  }

  /**
   * A climb that of many moves looks no more at what lost more than little once, for the question
   * what would change if something were different.
   *
   * @param known what moves gained when they were looked at last, here or in a climb before
   */
  public static Climb brief(
      Moves moves, Question question, Judge judge, double closeTo, int pairs, Known known) {
    Care care = new Care(moves.areFew(), false, moves.areMany(), ROUNDING, WORTH_A_ROUND);
    return new Climb(moves, question, judge, closeTo, pairs, care, known);
  }

  /**
   * A climb among very many moves: as brief, but that it looks again at what lost little, and ends
   * where a round brings little.
   */
  static Climb amongMany(Moves moves, Question question, Judge judge, double closeTo, int pairs) {
    double worthARound = Math.max(WORTH_A_ROUND, closeTo * question.shareOfFew());
    Care care = new Care(false, false, false, ROUNDING, worthARound);
    return new Climb(moves, question, judge, closeTo, pairs, care, new Known());
  }

  /**
   * A climb that goes on by what brings enough to be worth saying.
   *
   * @param known what moves gain from where it begins
   * @param least a move that brings less is not taken
   */
  static Climb onward(
      Moves moves,
      Question question,
      Judge judge,
      double closeTo,
      int pairs,
      Known known,
      double least) {
    Care care = new Care(false, false, false, least, least);
    return new Climb(moves, question, judge, closeTo, pairs, care, known);
  }

  /**
   * A climb to where another is to begin: of many moves it ends where a round brings little.
   *
   * @param known what moves gained when they were looked at last, here or in a climb before
   */
  static Climb toAStart(Moves moves, Question question, Judge judge, double closeTo, Known known) {
    Care care =
        moves.areFew()
            ? new Care(true, judge.isOneRun(), false, ROUNDING, WORTH_A_ROUND)
            : new Care(known.isEmpty() && !moves.areMany(), false, false, ROUNDING, closeTo);
    return new Climb(moves, question, judge, closeTo, 0, care, known);
  }

  /** Climbs as far as it goes, over finer and finer numbers of the offers taken. */
  public Candidate from(Candidate start) {
    Candidate top = climb(start);
    while (moves.refine(top)) {
      top = climb(top);
    }
    return top;
  }

  private Candidate climb(Candidate start) {
    Candidate now = start;
    List<Weighed> singles = weigh(now, care.seesAll() ? moves.singles(now) : likely(now));
    boolean isAll = true;
    while (true) {
      known.note(singles);
      Taking.Round round = takeTheBest(now, singles);
      known.moved(now, round.reached());
      now = round.reached();
      if (round.gain() >= care.worthARound()) {
        singles = weigh(now, likely(now));
        isAll = false;
      } else if (!isAll && care.seesAll()) {
        singles = weigh(now, moves.singles(now));
        isAll = true;
      } else {
        Candidate next =
            pairs == 0
                ? now
                : beyondSingles(now, round.gain() > 0 ? weighAgain(now, singles) : singles);
        if (next.equals(now)) {
          return now;
        }
        known.moved(now, next);
        now = next;
        singles = weigh(now, likely(now));
        isAll = false;
      }
    }
  }

  /**
   * Moves that promise to lose little by what they changed when they were looked at last. The more
   * choices there are, the less each is of the whole.
   */
  private List<Move> likely(Candidate from) {
    double least = care.onlyGains() ? 0 : -closeTo * question.shareOfFew();
    ToDoubleFunction<Change> promises = judge.promises(from);
    return moves.singles(from).stream()
        .filter(
            move ->
                known
                    .of(move)
                    .map(it -> it.isAny() && promises.applyAsDouble(it) > least)
                    .orElse(true))
        .toList();
  }

  private List<Weighed> weighAgain(Candidate from, List<Weighed> singles) {
    Set<Move> there = Set.copyOf(moves.singles(from));
    return weigh(from, singles.stream().map(Weighed::move).filter(there::contains).toList());
  }

  private Candidate beyondSingles(Candidate from, List<Weighed> singles) {
    Optional<Weighed> best = bestDouble(from, singles);
    boolean helps = best.filter(each -> each.judged().helps(care.worthARound())).isPresent();
    return helps
        ? question.tidy(best.get().move().from(from))
        : afterGivingUp(from, singles.size());
  }

  /**
   * The best that comes of giving one thing up for good and climbing on, by single moves or first
   * by the likeliest double moves; looked at where there are few moves. Where nothing is better,
   * what there was.
   */
  private Candidate afterGivingUp(Candidate from, int singles) {
    Candidate best = from;
    if (!care.seesAll() || singles > FEW_MOVES) {
      return best;
    }
    double most = WORTH_A_ROUND;
    List<Move> giveUps = moves.givingUp(from);
    int doubles = Math.max(pairs, PAIRS_OF_FEW / Math.max(1, giveUps.size()));
    for (Move giving : giveUps) {
      Candidate without = question.tidy(giving.from(from));
      Move.Change back =
          new Move.Change(giving.only().choice(), from.value(giving.only().choice()));
      Set<Candidate> starts = new LinkedHashSet<>(List.of(without));
      if (care.triesAnyTwo()) {
        starts.add(afterADouble(without, back, doubles));
      }
      for (Candidate start : starts) {
        Candidate top = refilled(start, back);
        double gain = judge.judge(from, List.of(between(from, top))).get(0).gain();
        if (gain > most) {
          most = gain;
          best = top;
        }
      }
    }
    return best;
  }

  private Candidate refilled(Candidate without, Move.Change but) {
    Candidate now = without;
    double gain = WORTH_A_ROUND;
    while (gain >= WORTH_A_ROUND) {
      Taking.Round round = takeTheBest(now, singlesBut(but, now));
      now = round.reached();
      gain = round.gain();
    }
    return now;
  }

  private List<Weighed> singlesBut(Move.Change but, Candidate from) {
    List<Move> others =
        moves.singles(from).stream().filter(move -> !move.changes().contains(but)).toList();
    return weigh(from, others);
  }

  private Candidate afterADouble(Candidate without, Move.Change but, int most) {
    List<Move> doubles = doubles(without, singlesBut(but, without));
    List<Weighed> some = weigh(without, doubles.stream().limit(most).toList());
    return fitting(some)
        .filter(each -> each.judged().helps(WORTH_A_ROUND))
        .map(each -> question.tidy(each.move().from(without)))
        .orElse(without);
  }

  private static Move between(Candidate from, Candidate to) {
    List<Move.Change> changes = new ArrayList<>();
    for (int choice = 0; choice < from.size(); choice++) {
      if (from.value(choice) != to.value(choice)) {
        changes.add(new Move.Change(choice, to.value(choice)));
      }
    }
    return changes.isEmpty() ? Move.of(0, from.value(0)) : new Move(changes);
  }

  private List<Weighed> weigh(Candidate from, List<Move> some) {
    return Weighed.by(judge, from, some);
  }

  private Taking.Round takeTheBest(Candidate from, List<Weighed> singles) {
    boolean together = judge.isOneRun() || moves.areMany();
    return new Taking(question, judge, together, care.worthAMove()).theBest(from, singles);
  }

  /** The best double move that fits, whether it gains or loses. */
  Optional<Weighed> bestDouble(Candidate from, List<Weighed> singles) {
    return fitting(weigh(from, doubles(from, singles)));
  }

  private static Optional<Weighed> fitting(List<Weighed> some) {
    return some.stream()
        .filter(each -> each.judged().fits() && !each.judged().isDropped())
        .max(Comparator.comparingDouble(Weighed::gain));
  }

  /** Every single move weighed, for the certificate. */
  List<Weighed> singles(Candidate from) {
    List<Weighed> singles = weigh(from, moves.singles(from));
    known.note(singles);
    return singles;
  }

  /**
   * Those of them that did not lose much when they were weighed last.
   *
   * @param before from where they were weighed then
   */
  List<Weighed> likelySingles(Candidate before, Candidate from) {
    known.moved(before, from);
    return weigh(from, likely(from));
  }

  /**
   * Double moves, those whose parts alone promise most first; of few moves that cost a run each any
   * two together.
   */
  private List<Move> doubles(Candidate from, List<Weighed> singles) {
    List<Weighed> ofOne =
        singles.stream().filter(each -> each.move().changes().size() == 1).toList();
    boolean few = pairs > 0 && care.seesAll() && singles.size() <= FEW_MOVES;
    boolean anyTwo = few && care.triesAnyTwo();
    List<Weighed> takes = anyTwo ? ofOne : ofOne.stream().filter(this::mayHelp).toList();
    List<Pair> list = new ArrayList<>();
    for (Weighed given : anyTwo ? ofOne : givenUp(from, ofOne)) {
      for (Weighed taken : takes) {
        int one = given.move().only().choice();
        int other = taken.move().only().choice();
        double promise = given.gain() + taken.gain();
        if ((anyTwo ? one < other : one != other)
            && (promise > 0 || mayHelpEachOther(given.move(), taken.move()))) {
          list.add(new Pair(Move.both(given.move(), taken.move()), promise));
        }
      }
    }
    list.sort(Comparator.comparingDouble(Pair::promise).reversed());
    return list.stream()
        .limit(few ? Math.max(pairs, PAIRS_OF_FEW) : pairs)
        .map(Pair::move)
        .toList();
  }

  private boolean mayHelp(Weighed move) {
    return isTake(move.move()) || !move.judged().fits() || move.gain() >= -closeTo;
  }

  private List<Weighed> givenUp(Candidate from, List<Weighed> singles) {
    List<Move> giving = moves.givingUp(from);
    return singles.stream().filter(each -> giving.contains(each.move())).toList();
  }

  /** Of one ladder what is given up leaves buyers to what is taken; of two it only leaves room. */
  private boolean mayHelpEachOther(Move given, Move taken) {
    Choice one = question.choice(given.only().choice());
    Choice other = question.choice(taken.only().choice());
    return one.ladder().equals(other.ladder());
  }

  private record Pair(Move move, double promise) {}

  private boolean isTake(Move move) {
    return question.isTake(move.only().choice());
  }
}
