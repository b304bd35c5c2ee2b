package growingon.buying.search;

import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import growingon.buying.question.Question;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Takes moves that help: many of the best together, then one after another.
 *
 * @param takesTogether whether many moves that help are taken together
 * @param worthAMove a move that brings less is not taken
 */
record Taking(Question question, Judge judge, boolean takesTogether, double worthAMove) {
  private static final int TRIES = 2;

  /** So many moves that help are not valued one by one, but the first 1, 2, 4, 8 … together. */
  private static final int MANY_HELPING = 24;

  /** Where fewer than so many do best together, all others are valued one by one. */
  private static final int FEW_TAKEN = 4;

  /** So many moves at most are valued before it is known whether one before them is taken. */
  private static final int MOST_AHEAD = 8;

  private static final double ROUNDING = 1e-6;

  /** Where it came to, and what that gained. */
  record Round(Candidate reached, double gain) {}

  /** Takes moves from the best down, each valued again before it is taken. */
  Round theBest(Candidate from, List<Weighed> singles) {
    Candidate now = from;
    double gained = 0;
    Set<Integer> changed = new HashSet<>();
    Map<Integer, Integer> tries = new HashMap<>();
    List<Weighed> helping =
        singles.stream()
            .filter(each -> each.judged().helps(worthAMove))
            .sorted(Comparator.comparingDouble(Weighed::gain).reversed())
            .toList();
    if (takesTogether) {
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
    Ahead ahead = new Ahead();
    for (int i = 0; i < helping.size(); i++) {
      Weighed each = helping.get(i);
      // What does not help any more at its best two values waits for the next round.
      if (!isNew(each, changed)
          || tries.merge(each.move().only().choice(), 1, Integer::sum) > TRIES) {
        continue;
      }
      Judged again =
          now.equals(from)
              ? each.judged()
              : ahead.judged(now, i, helping, next -> isNew(next, changed));
      if (again.helps(worthAMove)) {
        now = question.tidy(each.move().from(now));
        gained += again.gain();
        each.move().changes().forEach(it -> changed.add(it.choice()));
        ahead.forget();
      }
    }
    return new Round(now, gained);
  }

  private static boolean isNew(Weighed move, Set<Integer> changed) {
    return move.move().changes().stream().noneMatch(it -> changed.contains(it.choice()));
  }

  /**
   * Values the next moves of a list beside each other, which takes less time than one after the
   * other. What was valued ahead holds until a move is taken, so the more moves in a row did not
   * help, the more are valued ahead.
   */
  private final class Ahead {
    private final Map<Integer, Judged> known = new HashMap<>();
    private int next = 1;

    void forget() {
      known.clear();
      next = 1;
    }

    Judged judged(Candidate now, int at, List<Weighed> list, Predicate<Weighed> isOpen) {
      if (!known.containsKey(at)) {
        List<Integer> some =
            IntStream.range(at, list.size())
                .filter(i -> isOpen.test(list.get(i)))
                .limit(next)
                .boxed()
                .toList();
        List<Judged> judged = judge.judge(now, some.stream().map(i -> list.get(i).move()).toList());
        for (int i = 0; i < some.size(); i++) {
          known.put(some.get(i), judged.get(i));
        }
        next = judge.isOneRun() ? Math.min(MOST_AHEAD, 2 * next) : 1;
      }
      return known.get(at);
    }
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

  /** The first 1, 2, 4, 8 … moves of a list as one, and all of them. */
  static List<Move> together(List<Weighed> list) {
    List<Move> together = new ArrayList<>();
    for (int number = 1; number < 2 * list.size(); number *= 2) {
      together.add(
          new Move(
              list.subList(0, Math.min(number, list.size())).stream()
                  .flatMap(each -> each.move().changes().stream())
                  .toList()));
    }
    return together;
  }

  private Several bestFirst(Candidate from, List<Weighed> list) {
    List<Move> together = together(list);
    List<Weighed> weighed = Weighed.by(judge, from, together);
    int best = 0;
    for (int i = 1; i < weighed.size(); i++) {
      if (weighed.get(i).judged().helps(Math.max(0, weighed.get(best).gain()))) {
        best = i;
      }
    }
    boolean helps = weighed.get(best).judged().helps(ROUNDING);
    return helps
        ? new Several(
            together.get(best), Math.min(1 << best, list.size()), weighed.get(best).gain())
        : new Several(new Move(List.of()), 0, 0);
  }
}
