package growingon.nursery.time;

import growingon.nursery.number.Check;
import java.util.Arrays;

/** Twelve shares that sum to 1, January first: how a year's growth, loss or sales fall. */
public final class MonthShares {
  /** A twelfth in every month. */
  public static final MonthShares EVEN = of(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);

  private final double[] shares;

  private MonthShares(double[] shares) {
    this.shares = shares;
  }

  /**
   * Shares in proportion to the twelve weights.
   *
   * @param weights twelve numbers of 0 or more, not all 0, January first
   */
  public static MonthShares of(double... weights) {
    Check.that(weights.length == 12, "month shares need twelve numbers", weights.length);
    double sum = 0;
    for (double weight : weights) {
      Check.notNegative(weight, "a month share");
      sum += weight;
    }
    Check.positive(sum, "the sum of month shares");
    double[] shares = new double[12];
    for (int month = 0; month < 12; month++) {
      shares[month] = weights[month] / sum;
    }
    return new MonthShares(shares);
  }

  /** Share of a month, 0 = January to 11 = December. */
  public double get(int month) {
    return shares[month];
  }

  /** The same year on the other half of the world: moved by six months. */
  public MonthShares mirrored() {
    double[] moved = new double[12];
    for (int month = 0; month < 12; month++) {
      moved[month] = shares[(month + 6) % 12];
    }
    return new MonthShares(moved);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MonthShares that && Arrays.equals(shares, that.shares);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(shares);
  }

  @Override
  public String toString() {
    return Arrays.toString(shares);
  }
}
