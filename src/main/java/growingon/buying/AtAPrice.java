package growingon.buying;

import java.util.ArrayList;
import java.util.List;

/** Judges moves by the plan's line where what is over a limit may be had at a price. */
final class AtAPrice implements Judge {
  private final Engine engine;
  private final Limits limits;
  private final double price;

  /**
   * A judge.
   *
   * @param price of being over one limit by as much as it is, in money
   */
  AtAPrice(Engine engine, Limits limits, double price) {
    this.engine = engine;
    this.limits = limits;
    this.price = price;
  }

  @Override
  public List<Judged> judge(Candidate from, List<Move> moves) {
    double before = worth(engine.line(from));
    List<Judged> judged = new ArrayList<>();
    for (Outcome outcome :
        engine.lines(from, moves.stream().map(move -> move.from(from)).toList())) {
      judged.add(new Judged(worth(outcome) - before, true, false));
    }
    return judged;
  }

  private double worth(Outcome outcome) {
    return outcome.value() - price * limits.shortage(outcome);
  }

  @Override
  public boolean isOneRun() {
    return true;
  }
}
