package growingon.buying.search;

import growingon.buying.limit.Change;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** What moves came to when they were looked at last, seen from where a climb stands. */
public final class Known {
  private final Map<Move, Change> moves = new HashMap<>();

  /** What is known by now, to go on from by itself. */
  public Known copy() {
    Known copy = new Known();
    copy.moves.putAll(moves);
    return copy;
  }

  /** The same without moves that something else has changed. */
  public Known without(Predicate<Move> changed) {
    Known less = copy();
    less.moves.keySet().removeIf(changed);
    return less;
  }

  boolean isEmpty() {
    return moves.isEmpty();
  }

  /** Keeps what moves were found to be worth. */
  public void note(List<Weighed> weighed) {
    weighed.forEach(each -> moves.put(each.move(), each.judged().change()));
  }

  /** What a move was worth when it was run last. */
  public Optional<Change> of(Move move) {
    return Optional.ofNullable(moves.get(move));
  }

  /** What other values of a changed choice came to is from now on seen from its new value. */
  void moved(Candidate from, Candidate to) {
    Map<Integer, Change> taken = new HashMap<>();
    for (int choice = 0; choice < from.size(); choice++) {
      if (from.value(choice) != to.value(choice)) {
        taken.put(choice, moves.remove(Move.of(choice, to.value(choice))));
      }
    }
    moves
        .keySet()
        .removeIf(move -> move.changes().size() > 1 && isOfAny(move, taken) || isLost(move, taken));
    moves.replaceAll((move, change) -> seenFrom(taken.get(move.only().choice()), change));
    taken.forEach(
        (choice, change) -> {
          if (change != null) {
            moves.put(Move.of(choice, from.value(choice)), change.back());
          }
        });
  }

  private static boolean isOfAny(Move move, Map<Integer, Change> taken) {
    return move.changes().stream().anyMatch(change -> taken.containsKey(change.choice()));
  }

  /** What it came to is nothing to go by where that of the value taken is not known. */
  private static boolean isLost(Move move, Map<Integer, Change> taken) {
    int choice = move.only().choice();
    return taken.containsKey(choice) && taken.get(choice) == null;
  }

  private static Change seenFrom(Change taken, Change change) {
    return taken == null ? change : change.less(taken);
  }
}
