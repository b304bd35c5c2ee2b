package growingon.project.slice;

import java.util.Comparator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * All crossings of a law in the order in which they come, worked out once for all runs of a lot;
 * each run has its own place in it.
 */
final class ListedCrossings extends Crossings {
  private final Order order;
  private int at;

  ListedCrossings(Order order) {
    this.order = order;
  }

  private ListedCrossings(ListedCrossings same) {
    this.order = same.order;
    this.at = same.at;
  }

  @Override
  double soonest() {
    return order.clocks[at];
  }

  @Override
  Crossings goingOn(GrowthClock clock) {
    return new ListedCrossings(this);
  }

  @Override
  void tell(double clock, Told to) {
    int next = at;
    while (order.clocks[next] <= clock) {
      to.thicker(order.slices[next++]);
    }
    at = next;
  }

  /** Slices in the order in which they reach grades, and the growth clock of each; never last. */
  static final class Order {
    private final int[] slices;
    private final double[] clocks;

    /**
     * The order of a law's crossings.
     *
     * @param clocks growth clocks at which each slice is thick enough for each grade: the grades of
     *     the first slice, lowest first, then those of the second and so on; infinite for never
     * @param grades number of grades
     */
    Order(double[] clocks, int grades) {
      int[] sorted =
          IntStream.range(0, clocks.length)
              .filter(i -> clocks[i] < Double.POSITIVE_INFINITY)
              .boxed()
              .sorted(Comparator.comparingDouble(i -> clocks[i]))
              .mapToInt(Integer::intValue)
              .toArray();
      this.slices = IntStream.of(sorted).map(i -> i / grades).toArray();
      this.clocks =
          DoubleStream.concat(
                  IntStream.of(sorted).mapToDouble(i -> clocks[i]),
                  DoubleStream.of(Double.POSITIVE_INFINITY))
              .toArray();
    }
  }
}
