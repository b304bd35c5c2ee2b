package growingon.review.kept;

import java.util.List;
import java.util.Optional;

/**
 * Between what nine in ten and one in ten of a kept plan's draws lie, by month; not a number where
 * too few draws had such a figure.
 *
 * @param p10 one draw in ten lay below
 * @param p90 nine draws in ten lay below
 * @param outside share of the draws that lay outside
 */
public record KeptSpan(List<Double> p10, List<Double> p90, List<Double> outside) {
  /** A month of it. */
  public record At(double p10, double p90, double outside) {
    /** Draws are kept to about seven digits. */
    private static final double ROUNDING = 1e-6;

    /** Whether a figure lies from P10 to P90. */
    public boolean holds(double figure) {
      double rounding = ROUNDING * Math.max(1, Math.abs(figure));
      return figure >= p10 - rounding && figure <= p90 + rounding;
    }

    /** The same of a figure that is so many times as large. */
    public At times(double factor) {
      return new At(p10 * factor, p90 * factor, outside);
    }
  }

  public KeptSpan {
    p10 = List.copyOf(p10);
    p90 = List.copyOf(p90);
    outside = List.copyOf(outside);
  }

  /** At the end of a month; empty beyond the plan, or where too few draws had such a figure. */
  Optional<At> at(int month) {
    return month >= 0 && month < p10.size() && Double.isFinite(p10.get(month))
        ? Optional.of(new At(p10.get(month), p90.get(month), outside.get(month)))
        : Optional.empty();
  }
}
