package growingon.money.bought;

import growingon.money.EndWorth;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The most that can be paid for a lot, landed, all else as it is: the price at which its mean gain
 * is nil. Every plant is paid for in the month of arrival, so a price takes as much from the gain
 * as it is more, discounted; where the stock is valued at the end, a part of it comes back.
 */
public final class Ceiling {
  private static final double CENT = 0.01;

  private final double paid;
  private final double end;
  private final List<EndWorth> endWorths;

  /**
   * A ceiling.
   *
   * @param paid what one unit of currency paid on arrival is worth in the first month
   * @param end what one at the end of the plan is worth then
   * @param endWorths what is left of the lot in each run
   */
  public Ceiling(double paid, double end, List<EndWorth> endWorths) {
    this.paid = paid;
    this.end = end;
    this.endWorths = endWorths;
  }

  /**
   * The most for the whole lot.
   *
   * @param landed what it costs now
   * @param meanGain mean gain of the runs at that
   * @return empty if it does not pay even for a cent
   */
  public OptionalDouble most(double landed, double meanGain) {
    if (gain(meanGain, CENT - landed) < 0) {
      return OptionalDouble.empty();
    }
    double more = meanGain / paid;
    double wide = Math.max(CENT, Math.abs(more));
    double low = Math.max(-landed, -wide);
    while (gain(meanGain, low) < 0) {
      low = Math.max(-landed, 2 * low - wide);
    }
    double high = wide;
    while (gain(meanGain, high) > 0) {
      high *= 2;
    }
    boolean exact = Math.abs(gain(meanGain, more)) <= 1e-9 * Math.max(1, Math.abs(meanGain));
    return OptionalDouble.of(
        landed
            + (exact
                ? more
                : new BrentSolver(1e-12, 1e-9).solve(500, x -> gain(meanGain, x), low, high)));
  }

  private double gain(double meanGain, double morePaid) {
    double worth = 0;
    for (EndWorth each : endWorths) {
      worth += each.changeOfWorth(morePaid);
    }
    return meanGain - morePaid * paid + (endWorths.isEmpty() ? 0 : end * worth / endWorths.size());
  }
}
