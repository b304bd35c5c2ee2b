package growingon.review.kept;

import java.util.List;
import java.util.Optional;

/**
 * Quantiles of a figure by month; every list empty where there were no draws.
 *
 * @param p10 one draw in ten lay below
 * @param p50 half of the draws lay below
 * @param p90 nine draws in ten lay below
 */
public record KeptQuantiles(List<Double> p10, List<Double> p50, List<Double> p90) {
  /** No draws. */
  public static final KeptQuantiles NONE = new KeptQuantiles(List.of(), List.of(), List.of());

  public KeptQuantiles {
    p10 = List.copyOf(p10);
    p50 = List.copyOf(p50);
    p90 = List.copyOf(p90);
  }

  /** At the end of a month; empty where there were no draws. */
  Optional<Range> at(int month) {
    return month >= 0 && month < p50.size()
        ? Optional.of(new Range(p10.get(month), p50.get(month), p90.get(month)))
        : Optional.empty();
  }
}
