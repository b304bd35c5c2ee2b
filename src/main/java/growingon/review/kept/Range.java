package growingon.review.kept;

/**
 * What a plan's own draws said of a figure.
 *
 * @param p10 one draw in ten lay below
 * @param p50 half of the draws lay below
 * @param p90 nine draws in ten lay below
 */
public record Range(double p10, double p50, double p90) {
  /** Draws are kept to about seven digits. */
  private static final double ROUNDING = 1e-6;

  /** Whether a figure lies from P10 to P90. */
  public boolean holds(double figure) {
    double rounding = ROUNDING * Math.max(1, Math.abs(figure));
    return figure >= p10 - rounding && figure <= p90 + rounding;
  }

  /** The same of a figure that is so much more. */
  public Range plus(double more) {
    return new Range(p10 + more, p50 + more, p90 + more);
  }

  /** The same of a part of the plants. */
  public Range times(double part) {
    return new Range(p10 * part, p50 * part, p90 * part);
  }
}
