package growingon.buying.answer;

import growingon.buying.engine.Engine;
import growingon.buying.question.Candidate;
import growingon.buying.question.Sample;
import growingon.buying.question.Spread;
import java.util.List;

/** Values candidates on the draws that a plan uses, none of which was chosen on. */
public final class PlanDraws {
  private final Engine engine;
  private final int draws;

  /**
   * The draws of a plan.
   *
   * @param draws how many; 0 for the plan's line alone
   */
  public PlanDraws(Engine engine, int draws) {
    this.engine = engine;
    this.draws = draws;
  }

  /** How many draws; 0 for the plan's line alone. */
  public int draws() {
    return draws;
  }

  public Sample[] on(List<Candidate> candidates) {
    return on(candidates, draws);
  }

  /** On the first of the draws. */
  public Sample[] on(List<Candidate> candidates, int most) {
    if (draws == 0) {
      return candidates.stream()
          .map(engine::line)
          .map(line -> new Sample(new double[] {line.value()}, new double[] {line.lowestCash()}))
          .toArray(Sample[]::new);
    }
    return engine.on(candidates.get(0), candidates, 0, Math.min(draws, most));
  }

  /** What one candidate gains over another. */
  public Spread gain(Candidate one, Candidate over) {
    Sample[] both = on(List.of(one, over));
    return Spread.of(both[0].over(both[1]));
  }
}
