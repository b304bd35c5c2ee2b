package growingon.buying.search;

import growingon.buying.question.Candidate;
import growingon.buying.question.Choice.Holding;
import growingon.buying.question.Choice.Take;
import growingon.buying.question.Move;
import growingon.buying.question.Quantities;
import growingon.buying.question.Question;
import growingon.nursery.lot.Hold;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The moves that there are from a candidate. */
public final class Moves {
  /** Shares that are tried where what is held is looked at coarsely. */
  private static final double COARSE = 0.5;

  /** With more moves than this only the roughest way is taken. */
  private static final int MANY = 2000;

  private final Question question;
  private final boolean isCoarse;
  private final Map<Integer, Quantities> quantities;

  private Moves(Question question, boolean isCoarse, Map<Integer, Quantities> quantities) {
    this.question = question;
    this.isCoarse = isCoarse;
    this.quantities = quantities;
  }

  Moves(Question question, Map<Integer, Integer> mostOf) {
    this(question, false, new LinkedHashMap<>());
    Candidate planned = question.asPlanned();
    int atOnce = Quantities.atOnce(question.choices());
    mostOf.forEach(
        (choice, most) -> {
          Take take = (Take) question.choice(choice);
          quantities.put(choice, new Quantities(take, most, planned.value(choice), atOnce));
        });
  }

  /** The same, but of what is held only halves and all, for where much is still to be moved. */
  Moves coarse() {
    return new Moves(question, true, quantities);
  }

  Quantities quantities(int choice) {
    return quantities.get(choice);
  }

  /** How many moves there are from what is given. */
  int fromAsGiven() {
    return singles(question.asGiven()).size();
  }

  /** Whether there are so few moves that all is looked at more closely. */
  boolean areFew() {
    return fromAsGiven() <= Climb.FEW_MOVES;
  }

  /** Whether there are so many that only the roughest way is taken. */
  public boolean areMany() {
    return isCoarse || fromAsGiven() > MANY;
  }

  /** Every change of one choice, and every offer not taken together with each hold of it. */
  public List<Move> singles(Candidate from) {
    List<Move> moves = new ArrayList<>();
    for (int choice = 0; choice < from.size(); choice++) {
      if (question.counts(from, choice)) {
        for (int value : values(choice)) {
          if (value != from.value(choice)) {
            moves.add(Move.of(choice, value));
          }
        }
      } else {
        moves.addAll(takenAndHeld(choice));
      }
    }
    return moves;
  }

  private List<Move> takenAndHeld(int holding) {
    int take = question.takeOf(question.choice(holding).name());
    List<Integer> numbers = quantities.get(take).tried();
    List<Move> moves = new ArrayList<>();
    for (int index : new int[] {1, numbers.size() / 2, numbers.size() - 1}) {
      for (int hold : values(holding)) {
        if (hold == 0) {
          continue;
        }
        Move both = Move.both(Move.of(take, numbers.get(index)), Move.of(holding, hold));
        if (index < numbers.size() && !moves.contains(both)) {
          moves.add(both);
        }
      }
    }
    return moves;
  }

  /** The values of a choice that are tried. */
  public List<Integer> values(int choice) {
    if (question.choice(choice) instanceof Take) {
      return quantities.get(choice).tried();
    }
    Holding holding = (Holding) question.choice(choice);
    return IntStream.range(0, holding.holds().size())
        .filter(hold -> !isCoarse || hold == 0 || isCoarse(holding.hold(hold)))
        .boxed()
        .toList();
  }

  private static boolean isCoarse(Optional<Hold> hold) {
    return hold.map(each -> each.share() % COARSE == 0).orElse(true);
  }

  /** Moves that give something up: an offer, some of it, or a hold. */
  List<Move> givingUp(Candidate from) {
    List<Move> moves = new ArrayList<>();
    for (int choice = 0; choice < from.size(); choice++) {
      int value = from.value(choice);
      if (value == 0 || !question.counts(from, choice)) {
        continue;
      }
      moves.add(Move.of(choice, 0));
      if (question.choice(choice) instanceof Take) {
        for (int less : quantities.get(choice).lower(value)) {
          Move some = Move.of(choice, less);
          if (less > 0 && !moves.contains(some)) {
            moves.add(some);
          }
        }
      }
    }
    return moves;
  }

  /** Adds the numbers about those taken; whether there were any that were not tried. */
  boolean refine(Candidate about) {
    boolean finer = false;
    for (Map.Entry<Integer, Quantities> each : quantities.entrySet()) {
      finer |= each.getValue().refine(about.value(each.getKey()));
    }
    return finer;
  }
}
