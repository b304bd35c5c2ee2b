package growingon.buying;

import java.util.ArrayList;
import java.util.List;

/** Judges moves by the plan's line. */
final class OnTheLine implements Judge {
  private final Engine engine;
  private final Limits limits;

  OnTheLine(Engine engine, Limits limits) {
    this.engine = engine;
    this.limits = limits;
  }

  @Override
  public List<Judged> judge(Candidate from, List<Move> moves) {
    double before = engine.line(from).value();
    List<Judged> judged = new ArrayList<>();
    for (Outcome outcome :
        engine.lines(from, moves.stream().map(move -> move.from(from)).toList())) {
      judged.add(new Judged(outcome.value() - before, limits.allow(outcome), false));
    }
    return judged;
  }

  @Override
  public boolean isOneRun() {
    return true;
  }
}
