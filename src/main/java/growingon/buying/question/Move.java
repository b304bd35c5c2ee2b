package growingon.buying.question;

import java.util.List;

/** A change of one choice, or a double one: something is given up and something else taken. */
public record Move(List<Change> changes) {
  /**
   * One choice changed to a value.
   *
   * @param choice its index in the question
   */
  public record Change(int choice, int value) {}

  public Move {
    changes = List.copyOf(changes);
  }

  /**
   * Another value of one choice.
   *
   * @param choice its index
   * @param value index of the value that it gets
   */
  public static Move of(int choice, int value) {
    return new Move(List.of(new Change(choice, value)));
  }

  /** Two at once. */
  public static Move both(Move first, Move second) {
    return new Move(List.of(first.only(), second.only()));
  }

  /** The change of a single move. */
  public Change only() {
    return changes.get(0);
  }

  /** What it makes of a candidate. */
  public Candidate from(Candidate candidate) {
    Candidate changed = candidate;
    for (Change each : changes) {
      changed = changed.with(each.choice(), each.value());
    }
    return changed;
  }
}
