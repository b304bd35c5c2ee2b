package growingon.buying;

import java.util.List;

/** Values candidates on the draws that a plan uses, none of which was chosen on. */
final class PlanDraws {
  private final Engine engine;
  private final int draws;

  /**
   * The draws of a plan.
   *
   * @param draws how many; 0 for the plan's line alone
   */
  PlanDraws(Engine engine, int draws) {
    this.engine = engine;
    this.draws = draws;
  }

  /** How many draws; 0 for the plan's line alone. */
  int draws() {
    return draws;
  }

  Sample[] on(List<Candidate> candidates) {
    return on(candidates, draws);
  }

  /** On the first of the draws. */
  Sample[] on(List<Candidate> candidates, int most) {
    if (draws == 0) {
      return candidates.stream()
          .map(engine::line)
          .map(line -> new Sample(new double[] {line.value()}, new double[] {line.lowestCash()}))
          .toArray(Sample[]::new);
    }
    return engine.on(candidates.get(0), candidates, 0, Math.min(draws, most));
  }

  /** What one candidate gains over another. */
  Spread gain(Candidate one, Candidate over) {
    Sample[] both = on(List.of(one, over));
    return Spread.of(both[0].over(both[1]));
  }
}
