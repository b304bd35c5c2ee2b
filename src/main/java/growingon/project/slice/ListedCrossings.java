package growingon.project.slice;

import java.util.Arrays;

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
      double[] sorted =
          Arrays.stream(clocks).filter(each -> each < Double.POSITIVE_INFINITY).sorted().toArray();
      this.slices = new int[sorted.length];
      int[] put = new int[sorted.length];
      for (int i = 0; i < clocks.length; i++) {
        if (clocks[i] < Double.POSITIVE_INFINITY) {
          int first = first(clocks[i], sorted);
          slices[first + put[first]++] = i / grades;
        }
      }
      this.clocks = Arrays.copyOf(sorted, sorted.length + 1);
      this.clocks[sorted.length] = Double.POSITIVE_INFINITY;
    }

    /** Where the first of a number stands in numbers that go up. */
    private static int first(double number, double[] sorted) {
      int from = 0;
      int until = sorted.length;
      while (from < until) {
        int middle = (from + until) >>> 1;
        if (sorted[middle] < number) {
          from = middle + 1;
        } else {
          until = middle;
        }
      }
      return from;
    }
  }
}
