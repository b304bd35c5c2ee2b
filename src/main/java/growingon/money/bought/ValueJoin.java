package growingon.money.bought;

import growingon.nursery.Scenario;
import growingon.project.Programme;
import java.util.List;

/**
 * What the lots bought gain, joined to the present value of the plan: the gain of each is the plan
 * with it less the plan without it, so what no lot causes is in none of them. Plan currency, in
 * today's money.
 *
 * @param bought what each lot bought within the plan is worth, in the order of the scenario
 * @param standing what the lots that stand at the start bring, with what they use
 * @param places cost of the places, used or not
 * @param otherCash other cash that no lot causes, with its hours
 * @param presentValue present value of the plan
 */
public record ValueJoin(
    List<BoughtLot> bought, double standing, double places, double otherCash, double presentValue) {
  /** Of a plan of which nobody is to see what the lots bought gain. */
  public static final ValueJoin NOTHING_BOUGHT = new ValueJoin(List.of(), 0, 0, 0, 0);

  public ValueJoin {
    bought = List.copyOf(bought);
  }

  /** Weighs the lots bought within a plan, each against the plan without it. */
  public static ValueJoin of(Scenario scenario) {
    return new Weighing(Programme.of(scenario)).weigh();
  }

  /** Sum of the gains of the lots bought. */
  public double gains() {
    return bought.stream().mapToDouble(BoughtLot::presentValue).sum();
  }

  /**
   * What the lots bought gain together beyond their gains one by one: they share packs, and sell to
   * the same demand. Negative where they take sales from each other.
   */
  public double together() {
    return presentValue - gains() - standing - places - otherCash;
  }

  /** Costs of no lot, which the lots must still earn; positive. */
  public double costsOfNoLot() {
    return -(places + otherCash);
  }
}
