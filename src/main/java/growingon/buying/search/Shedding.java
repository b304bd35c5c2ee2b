package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Limits;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Undoes changes that need too much, those first that cost least value for what they free. */
record Shedding(Engine engine, Limits limits, Moves moves) {
  /** One in so many of the changes is undone before all are looked at again. */
  private static final int AT_ONCE = 10;

  private record Undoing(Move move, double costForWhatItFrees) {}

  /** What fits; empty if undoing does not lead there. */
  Optional<Candidate> from(Candidate candidate) {
    Candidate now = candidate;
    while (!limits.allow(engine.line(now))) {
      List<Undoing> undoings = undoings(now);
      if (undoings.isEmpty()) {
        return Optional.empty();
      }
      int most = Math.max(1, undoings.size() / AT_ONCE);
      for (Undoing each : undoings.subList(0, most)) {
        if (!limits.allow(engine.line(now))) {
          now = engine.question().tidy(each.move().from(now));
        }
      }
    }
    return Optional.of(now);
  }

  private List<Undoing> undoings(Candidate now) {
    Outcome before = engine.line(now);
    double lacking = limits.shortage(before);
    List<Move> giving = moves.givingUp(now);
    List<Outcome> lines = engine.lines(now, giving.stream().map(move -> move.from(now)).toList());
    List<Undoing> undoings = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double frees = lacking - limits.shortage(lines.get(i));
      if (frees > 0) {
        double cost = before.value() - lines.get(i).value();
        undoings.add(new Undoing(giving.get(i), cost / frees));
      }
    }
    undoings.sort(Comparator.comparingDouble(Undoing::costForWhatItFrees));
    return undoings;
  }
}
