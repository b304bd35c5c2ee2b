package growingon.buying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Climbs from a candidate by moves that help, the best first, and where none does by double moves,
 * until neither helps.
 */
final class Climb {
  /** A round that brings less is the last. */
  static final double WORTH_A_ROUND = 1;

  /** With no more single moves than this all is looked at more closely. */
  static final int FEW_MOVES = 200;

  private static final int FEW_CHOICES = 50;

  private static final int PAIRS_OF_FEW = 4000;
  private static final int TRIES = 2;

  /** So many moves that help are not valued one by one, but the first 1, 2, 4, 8 … together. */
  private static final int MANY_HELPING = 24;

  /** Where fewer than so many do best together, all others are valued one by one. */
  private static final int FEW_TAKEN = 4;

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
   * @param worthAMove a move that brings less is not taken
   * @param worthARound a round that brings less is the last
   */
  private record Care(
      boolean seesAll, boolean triesAnyTwo, double worthAMove, double worthARound) {}

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
    Care care = new Care(true, judge.isOneRun(), ROUNDING, WORTH_A_ROUND);
    return new Climb(moves, question, judge, closeTo, pairs, care, known);
  }

  /**
   * A climb that of many moves looks no more at what lost more than little once, for the question
   * what would change if something were different.
   *
   * @param known what moves gained when they were looked at last, here or in a climb before
   */
  static Climb brief(
      Moves moves, Question question, Judge judge, double closeTo, int pairs, Known known) {
    Care care = new Care(moves.areFew(), false, ROUNDING, WORTH_A_ROUND);
    return new Climb(moves, question, judge, closeTo, pairs, care, known);
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
    Care care = new Care(false, false, least, least);
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
            ? new Care(true, judge.isOneRun(), ROUNDING, WORTH_A_ROUND)
            : new Care(known.isEmpty(), false, ROUNDING, closeTo);
    return new Climb(moves, question, judge, closeTo, 0, care, known);
  }

  /** A move with what it is worth. */
  record Weighed(Move move, Judged judged) {
    double gain() {
      return judged.gain();
    }
  }

  /** Climbs as far as it goes, over finer and finer numbers of the offers taken. */
  Candidate from(Candidate start) {
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
      singles.forEach(each -> known.note(each.move(), each.judged().change()));
      Round round = takeTheBest(now, singles);
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
    double least = -closeTo * Math.min(1, FEW_CHOICES / (double) question.choices().size());
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
      Round round = takeTheBest(now, singlesBut(but, now));
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

  private record Round(Candidate reached, double gain) {}

  private List<Weighed> weigh(Candidate from, List<Move> some) {
    List<Judged> judged = judge.judge(from, some);
    return IntStream.range(0, some.size())
        .mapToObj(i -> new Weighed(some.get(i), judged.get(i)))
        .toList();
  }

  /** Takes moves from the best down, each valued again before it is taken. */
  private Round takeTheBest(Candidate from, List<Weighed> singles) {
    Candidate now = from;
    double gained = 0;
    Set<Integer> changed = new HashSet<>();
    Map<Integer, Integer> tries = new HashMap<>();
    List<Weighed> helping =
        singles.stream()
            .filter(each -> each.judged().helps(care.worthAMove()))
            .sorted(Comparator.comparingDouble(Weighed::gain).reversed())
            .toList();
    if (judge.isOneRun()) {
      List<Weighed> left = firstOfEachChoice(helping);
      while (left.size() >= MANY_HELPING) {
        Several several = bestFirst(now, left);
        now = question.tidy(several.move().from(now));
        gained += several.gain();
        several.move().changes().forEach(it -> changed.add(it.choice()));
        left =
            several.number() < FEW_TAKEN ? List.of() : left.subList(several.number(), left.size());
      }
    }
    for (Weighed each : helping) {
      boolean isNew = each.move().changes().stream().noneMatch(it -> changed.contains(it.choice()));
      // What does not help any more at its best two values waits for the next round.
      if (!isNew || tries.merge(each.move().only().choice(), 1, Integer::sum) > TRIES) {
        continue;
      }
      Judged again =
          now.equals(from) ? each.judged() : judge.judge(now, List.of(each.move())).get(0);
      if (again.helps(care.worthAMove())) {
        now = question.tidy(each.move().from(now));
        gained += again.gain();
        each.move().changes().forEach(it -> changed.add(it.choice()));
      }
    }
    return new Round(now, gained);
  }

  private static List<Weighed> firstOfEachChoice(List<Weighed> moves) {
    Set<Integer> met = new HashSet<>();
    List<Weighed> first = new ArrayList<>();
    for (Weighed each : moves) {
      if (each.move().changes().stream().allMatch(it -> met.add(it.choice()))) {
        first.add(each);
      }
    }
    return first;
  }

  /** The first moves of a list taken together: so many of them that they gain most. */
  private record Several(Move move, int number, double gain) {}

  private Several bestFirst(Candidate from, List<Weighed> list) {
    List<Move> together = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (int number = 1; number < 2 * list.size(); number *= 2) {
      int some = Math.min(number, list.size());
      numbers.add(some);
      together.add(
          new Move(
              list.subList(0, some).stream()
                  .flatMap(each -> each.move().changes().stream())
                  .toList()));
    }
    List<Weighed> weighed = weigh(from, together);
    int best = 0;
    for (int i = 1; i < weighed.size(); i++) {
      if (weighed.get(i).judged().helps(Math.max(0, weighed.get(best).gain()))) {
        best = i;
      }
    }
    boolean helps = weighed.get(best).judged().helps(ROUNDING);
    return helps
        ? new Several(together.get(best), numbers.get(best), weighed.get(best).gain())
        : new Several(new Move(List.of()), 0, 0);
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
    singles.forEach(each -> known.note(each.move(), each.judged().change()));
    return singles;
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
