package growingon.fit.evidence;

import org.hipparchus.special.Gamma;

/** Deaths among plants whose loss differs from year to year. */
final class BetaBinomial {
  private BetaBinomial() {}

  /**
   * The least number of deaths that is not exceeded with a probability: Beta-binomial(n, p M, (1 −
   * p) M) with M = (1 − p)/(p × spread²) − 1.
   *
   * @param plants n
   * @param loss p, the share to be expected
   * @param spread coefficient of variation of the loss
   * @param sure the probability
   */
  static long quantile(long plants, double loss, double spread, double sure) {
    if (loss <= 0) {
      return 0;
    }
    if (loss >= 1) {
      return plants;
    }
    double concentration = (1 - loss) / (loss * Math.max(1e-6, spread * spread)) - 1;
    double sum = 0;
    for (long deaths = 0; deaths < plants; deaths++) {
      sum += Math.exp(logChance(deaths, plants, loss, Math.max(1e-3, concentration)));
      if (sum >= sure) {
        return deaths;
      }
    }
    return plants;
  }

  /**
   * Logarithm of the chance of so many deaths among so many plants.
   *
   * @param concentration M, the sum of the parameters of the Beta distribution
   */
  static double logChance(long deaths, long plants, double loss, double concentration) {
    double a = loss * concentration;
    double b = (1 - loss) * concentration;
    return logChoose(plants, deaths) + logBeta(deaths + a, plants - deaths + b) - logBeta(a, b);
  }

  private static double logChoose(long all, long some) {
    return Gamma.logGamma(all + 1.0)
        - Gamma.logGamma(some + 1.0)
        - Gamma.logGamma(all - some + 1.0);
  }

  private static double logBeta(double a, double b) {
    return Gamma.logGamma(a) + Gamma.logGamma(b) - Gamma.logGamma(a + b);
  }
}
