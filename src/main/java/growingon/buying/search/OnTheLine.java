package growingon.buying.search;

import growingon.buying.engine.Engine;
import growingon.buying.engine.Outcome;
import growingon.buying.limit.Change;
import growingon.buying.limit.Limits;
import growingon.buying.question.Candidate;
import growingon.buying.question.Move;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Judges moves by the plan's line. */
public final class OnTheLine implements Judge {
  /** What seems to be over its limits by no more than this may fit: it is only an estimate. */
  private static final double NEARLY = 0.02;

  private final Engine engine;
  private final Limits limits;
  private final double price;
  private final boolean isFree;

  private OnTheLine(Engine engine, Limits limits, double price, boolean isFree) {
    this.engine = engine;
    this.limits = limits;
    this.price = price;
    this.isFree = isFree;
  }

  /** By what they are worth, and whether they keep within limits. */
  public static OnTheLine within(Engine engine, Limits limits) {
    return new OnTheLine(engine, limits, 0, false);
  }

  /**
   * Where what is over a limit may be had at a price.
   *
   * @param price of being over one limit by as much as it is, in money
   */
  static OnTheLine atAPrice(Engine engine, Limits limits, double price) {
    return new OnTheLine(engine, limits, price, true);
  }

  @Override
  public List<Judged> judge(Candidate from, List<Move> moves) {
    Outcome before = engine.line(from);
    double shortage = price > 0 ? limits.shortage(before) : 0;
    List<Judged> judged = new ArrayList<>();
    for (Outcome after : engine.lines(from, moves.stream().map(move -> move.from(from)).toList())) {
      double more = price > 0 ? limits.shortage(after) - shortage : 0;
      double gain = after.value() - before.value() - price * more;
      judged.add(
          new Judged(gain, isFree || limits.allow(after), false, Change.between(before, after)));
    }
    return judged;
  }

  @Override
  public ToDoubleFunction<Change> promises(Candidate from) {
    Outcome line = engine.line(from);
    double before = limits.shortage(line);
    return change -> {
      double shortage = limits.shortage(line, change);
      boolean mayBeHad = isFree || shortage <= NEARLY;
      return mayBeHad ? change.value() - price * (shortage - before) : Double.NEGATIVE_INFINITY;
    };
  }

  @Override
  public boolean isOneRun() {
    return true;
  }
}
