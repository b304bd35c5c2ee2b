package growingon.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Judges moves by the plan's line. */
final class OnTheLine implements Judge {
  private final Engine engine;
  private final ToDoubleFunction<Outcome> worth;
  private final Predicate<Outcome> fits;

  private OnTheLine(Engine engine, ToDoubleFunction<Outcome> worth, Predicate<Outcome> fits) {
    this.engine = engine;
    this.worth = worth;
    this.fits = fits;
  }

  /** By what they are worth, and whether they keep within limits. */
  static OnTheLine within(Engine engine, Limits limits) {
    return new OnTheLine(engine, Outcome::value, limits::allow);
  }

  /**
   * Where what is over a limit may be had at a price.
   *
   * @param price of being over one limit by as much as it is, in money
   */
  static OnTheLine atAPrice(Engine engine, Limits limits, double price) {
    return new OnTheLine(
        engine, outcome -> outcome.value() - price * limits.shortage(outcome), any -> true);
  }

  @Override
  public List<Judged> judge(Candidate from, List<Move> moves) {
    double before = worth.applyAsDouble(engine.line(from));
    List<Judged> judged = new ArrayList<>();
    for (Outcome outcome :
        engine.lines(from, moves.stream().map(move -> move.from(from)).toList())) {
      judged.add(new Judged(worth.applyAsDouble(outcome) - before, fits.test(outcome), false));
    }
    return judged;
  }

  @Override
  public boolean isOneRun() {
    return true;
  }
}
