package growingon.review.book;

/**
 * What the lines of the daybook say of plants and sales, added up. A book has two: of one a lot
 * that is split off takes its share along, so that it is what the projection knows of the lot; the
 * other stays with the lot that the lines name. The difference is what a figure by shares lacks to
 * be a figure as booked.
 */
public final class Tally {
  /** What is added up. */
  public enum Of {
    ARRIVED,
    SPLIT_IN,
    RETURNED,
    FOUND,
    DIED,
    CULLED,
    SOLD,
    USED,
    SPLIT_OUT,
    LOST,
    /** Money of sales, less what was paid back. */
    MONEY
  }

  private final double[] sums = new double[Of.values().length];

  void add(Of of, double more) {
    sums[of.ordinal()] += more;
  }

  double get(Of of) {
    return sums[of.ordinal()];
  }

  /** Becomes a share of another. */
  void copy(Tally from, double share) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] = from.sums[i] * share;
    }
  }
}
