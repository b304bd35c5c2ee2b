package growingon.report.figures;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Inputs;
import growingon.plan.Planned;
import growingon.problem.Problem;
import growingon.report.text.Phrases;
import growingon.whole.WholePlan;
import java.util.List;
import java.util.Optional;

/**
 * What every sheet is made from.
 *
 * @param plan the plan worked out
 * @param whole its whole plants, from which all that is printed adds up
 * @param seasons its totals by season and grade
 * @param problems everything found while reading and projecting
 */
public record Context(
    Planned plan, WholePlan whole, SeasonFigures seasons, List<Problem> problems) {
  /** Months that the book to act on looks ahead. */
  public static final int NEXT_MONTHS = 12;

  public Context(Planned plan, List<Problem> problems) {
    this(plan, WholePlan.of(plan.accounts().projection()), problems);
  }

  private Context(Planned plan, WholePlan whole, List<Problem> problems) {
    this(plan, whole, new SeasonFigures(plan.accounts(), whole), problems);
  }

  /** What was read. */
  public Inputs inputs() {
    return plan.inputs();
  }

  /** The plan's accounts, with its projection. */
  public Accounts accounts() {
    return plan.accounts();
  }

  /** What the lots bought within the plan gain, joined to the plan's present value. */
  public ValueJoin join() {
    return plan.join();
  }

  /** What each lot bought within the plan is worth. */
  public List<BoughtLot> bought() {
    return plan.bought();
  }

  /** How sure the plan is, where draws were made. */
  public Optional<Chances> chances() {
    return plan.chances();
  }

  /** How amounts and months are said. */
  public Phrases say() {
    return Phrases.of(inputs().scenario());
  }
}
