package growingon.money;

import growingon.nursery.Lot;
import growingon.nursery.Scenario;
import growingon.project.Programme;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a lot bought within the plan is worth to the whole nursery: the plan with it against the
 * plan without it, so that what it crowds out counts.
 *
 * @param lot the lot
 * @param landed its cost landed, plan currency
 * @param flows net flows with it less those without it, horizon value included, by month
 * @param presentValue their present value
 * @param ratesOfReturn yearly, every root; empty for none
 * @param payback first month from which its cumulative flows stay at or above nil
 * @param overflows where and when it makes places overflow, or overflow more
 * @param hoursShort hours short because of it, by month
 * @param bargain how far price, plants and selling price may move
 */
public record BoughtLot(
    Lot lot,
    double landed,
    double[] flows,
    double presentValue,
    List<Double> ratesOfReturn,
    OptionalInt payback,
    List<Overflow> overflows,
    double[] hoursShort,
    Bargain bargain) {
  /**
   * Square metres by which a place overflows because of the lot.
   *
   * @param place the place, empty for lots without one
   * @param month month offset
   * @param m2 square metres more over capacity than without the lot
   */
  public record Overflow(String place, int month, double m2) {}

  /**
   * The values at which the lot neither gains nor loses.
   *
   * @param mostEach the most that can be paid for a plant, plan currency, all else as planned;
   *     empty if it does not pay as a gift
   * @param fewestUsable the fewest firsts and seconds in 100 at which it pays; empty if it does not
   *     pay with 100
   * @param leastPriceShare the share of all selling prices at which it just pays; empty if it sells
   *     nothing
   * @param averagePrice mean price its plants fetch as planned; NaN if it sells nothing
   */
  public record Bargain(
      OptionalDouble mostEach,
      OptionalInt fewestUsable,
      OptionalDouble leastPriceShare,
      double averagePrice) {
    /** The least mean price its plants must fetch; empty if it sells nothing. */
    public OptionalDouble leastPrice() {
      return leastPriceShare.isPresent()
          ? OptionalDouble.of(leastPriceShare.getAsDouble() * averagePrice)
          : OptionalDouble.empty();
    }
  }

  public BoughtLot {
    ratesOfReturn = List.copyOf(ratesOfReturn);
    overflows = List.copyOf(overflows);
  }

  /** Weighs every lot bought within the plan, in the order of the scenario, on all processors. */
  public static List<BoughtLot> weigh(Scenario scenario) {
    return weigh(Programme.of(scenario));
  }

  /** The same of a scenario that is made ready already. */
  static List<BoughtLot> weigh(Programme programme) {
    List<Lot> bought =
        programme.scenario().lots().stream()
            .filter(lot -> lot.purchase().isPresent() && lot.quantity() > 0)
            .toList();
    if (bought.isEmpty()) {
      return List.of();
    }
    Weighing weighing = new Weighing(programme);
    return bought.parallelStream().map(weighing::weigh).toList();
  }
}
