package growingon.project;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * All crossings of a law in the order in which they come, worked out once for all runs of a lot;
 * each run has its own place in it.
 */
final class ListedCrossings implements Crossings {
  private final Order order;
  private int at;
  private double soonest;

  ListedCrossings(Order order) {
    this.order = order;
    this.soonest = order.clock(0);
  }

  private ListedCrossings(ListedCrossings same) {
    this.order = same.order;
    this.at = same.at;
    this.soonest = same.soonest;
  }

  @Override
  public Crossings goingOn(GrowthClock clock) {
    return new ListedCrossings(this);
  }

  @Override
  public int next(double clock) {
    if (!(soonest <= clock)) {
      return NONE;
    }
    int slice = order.slices[at++];
    soonest = order.clock(at);
    return slice;
  }

  /** Slices in the order in which they reach grades, and the growth clock of each. */
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
      this.clocks = IntStream.of(sorted).mapToDouble(i -> clocks[i]).toArray();
    }

    private double clock(int index) {
      return index < clocks.length ? clocks[index] : Double.POSITIVE_INFINITY;
    }
  }
}
