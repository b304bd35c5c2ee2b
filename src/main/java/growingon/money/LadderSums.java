package growingon.money;

import growingon.project.need.Stores.Movement;
import java.util.List;

/**
 * What the lots of a grade ladder cause in one run, apart from all that the lots of a nursery
 * share: whole packs, places that cost money used or not, and hours that are paid. Arrays by month;
 * read, never changed.
 *
 * @param flows cash that they cause, plan currency
 * @param sales what they are sold for, plan currency
 * @param hours hours worked on them
 * @param space square metres needed, [place in the order of the table; last, without one][month];
 *     empty where they need none
 * @param movements pots, substrate and materials used and come back
 * @param horizonValue value of what is unsold at the end, as far as the plan counts it
 */
public record LadderSums(
    double[] flows,
    double[] sales,
    double[] hours,
    double[][] space,
    List<Movement> movements,
    double horizonValue) {
  static final double[] NONE = {};

  public LadderSums {
    movements = List.copyOf(movements);
  }
}
