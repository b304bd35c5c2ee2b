package growingon.report.figures;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Inputs;
import growingon.problem.Problem;
import growingon.report.text.Phrases;
import growingon.whole.WholePlan;
import java.util.List;
import java.util.Optional;

/**
 * What every sheet is made from.
 *
 * @param inputs what was read
 * @param accounts the plan's accounts, with its projection
 * @param whole its whole plants, from which all that is printed adds up
 * @param seasons its totals by season and grade
 * @param join what the lots bought within the plan gain, joined to the plan's present value
 * @param chances how sure the plan is, where draws were made
 * @param problems everything found while reading and projecting
 */
public record Context(
    Inputs inputs,
    Accounts accounts,
    WholePlan whole,
    SeasonFigures seasons,
    ValueJoin join,
    Optional<Chances> chances,
    List<Problem> problems) {
  /** Months that the book to act on looks ahead. */
  public static final int NEXT_MONTHS = 12;

  public Context(
      Inputs inputs,
      Accounts accounts,
      ValueJoin join,
      Optional<Chances> chances,
      List<Problem> problems) {
    this(inputs, accounts, WholePlan.of(accounts.projection()), join, chances, problems);
  }

  private Context(
      Inputs inputs,
      Accounts accounts,
      WholePlan whole,
      ValueJoin join,
      Optional<Chances> chances,
      List<Problem> problems) {
    this(inputs, accounts, whole, new SeasonFigures(accounts, whole), join, chances, problems);
  }

  /** What each lot bought within the plan is worth. */
  public List<BoughtLot> bought() {
    return join.bought();
  }

  /** How amounts and months are said. */
  public Phrases say() {
    return Phrases.of(inputs.scenario());
  }
}
