package growingon.chance.luck;

import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.project.lot.Luck;

/** The luck of each draw of a plan, by the draw's number: the same as {@code Chances} draws on. */
public final class Draws {
  private final long seed;
  private final Settings settings;
  private final Spreads spreads = new Spreads();
  private final NameNumbers names = new NameNumbers();

  /** The draws of a plan. */
  public Draws(Scenario scenario) {
    this.seed = scenario.plan().seed();
    this.settings = scenario.nursery().settings();
  }

  /** The luck of a draw, for one thread at a time. */
  public Luck luck(int draw) {
    return new DrawnLuck(new Keyed(seed, draw), settings, spreads, names);
  }
}
