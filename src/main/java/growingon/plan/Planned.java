package growingon.plan;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.Reckoned;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.project.Programme;
import growingon.project.Projector;
import growingon.project.lot.Luck;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A plan worked out.
 *
 * @param inputs what was read
 * @param accounts its accounts, with its projection
 * @param join what the lots bought within it gain, joined to its present value; {@link
 *     ValueJoin#NOTHING_BOUGHT} where they are not weighed
 * @param chances how sure it is, where draws were made
 */
public record Planned(Inputs inputs, Accounts accounts, ValueJoin join, Optional<Chances> chances) {
  /**
   * How a plan is drawn.
   *
   * @param worth whether luck and not knowing are told apart however long it takes
   * @param threads how many threads draw; their number changes nothing but the time
   * @param progress told what is being done
   */
  public record Drawing(boolean worth, int threads, Consumer<String> progress) {}

  /** What each lot bought within it is worth. */
  public List<BoughtLot> bought() {
    return join.bought();
  }

  /** Projects and books a plan; what is bought is not weighed, and nothing is drawn. */
  public static Planned booked(Inputs inputs) {
    Accounts accounts = Accounts.of(Projector.project(inputs.scenario()));
    return new Planned(inputs, accounts, ValueJoin.NOTHING_BOUGHT, Optional.empty());
  }

  /** Present value of a plan without luck: of its cash flows, and of what stands at its end. */
  public static double worth(Scenario scenario) {
    Tally sums = new Tally(Programme.of(scenario), new GradeNumbers(scenario.nursery()));
    sums.run(Luck.NONE);
    return sums.presentValue(scenario.plan().seasons() - 1);
  }

  /** Projects and books a plan and weighs what is bought; nothing is drawn. */
  public static Planned weighed(Inputs inputs) {
    Reckoned reckoned = Reckoned.of(inputs.scenario());
    return new Planned(inputs, reckoned.accounts(), reckoned.join(), Optional.empty());
  }

  /** The same, and draws it as often as it says, which may be never. */
  public static Planned drawn(Inputs inputs, Drawing how) {
    how.progress().accept("Projecting " + inputs.scenario().lots().size() + " lots");
    Planned line = weighed(inputs);
    int draws = inputs.scenario().plan().draws();
    return draws == 0 ? line : line.with(line.draw(how, draws));
  }

  private Chances draw(Drawing how, int draws) {
    how.progress().accept("Drawing " + draws + " seasons' luck");
    return Chances.draw(
        accounts,
        bought(),
        how.worth(),
        how.threads(),
        done ->
            how.progress()
                .accept("Drawing luck, " + 100 * done / draws + " % of " + draws + " draws"));
  }

  /** The same plan with its draws. */
  public Planned with(Chances drawn) {
    return new Planned(inputs, accounts, join, Optional.of(drawn));
  }
}
