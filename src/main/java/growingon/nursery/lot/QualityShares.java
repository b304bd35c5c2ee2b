package growingon.nursery.lot;

import growingon.nursery.number.Check;

/**
 * How a lot sorts into qualities; thirds are the rest.
 *
 * @param first share of firsts
 * @param second share of seconds
 * @param sorted whether the qualities are known already
 * @param sure how sure the shares are, 0 to 1; 1 for certain (for chances)
 */
public record QualityShares(double first, double second, boolean sorted, double sure) {
  /** All firsts, sorted. */
  public static final QualityShares ALL_FIRSTS = new QualityShares(1, 0, true, 1);

  public QualityShares {
    Check.share(first, "share of firsts");
    Check.share(second, "share of seconds");
    Check.that(first + second <= 1 + 1e-9, "firsts and seconds are at most all", first + second);
    Check.share(sure, "how sure the quality is");
  }

  /** Share of thirds. */
  public double third() {
    return Math.max(0, 1 - first - second);
  }
}
