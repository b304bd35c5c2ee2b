package growingon.chance.luck;

import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.special.Erf;

/**
 * Random numbers by key: each is a function of (seed, draw, what, whose, year) alone, never of the
 * order in which it is asked for. So one thread gives what many give, and adding a lot changes no
 * other lot's luck. The mixing is that of SplitMix64 (Steele, Lea and Flood 2014, from memory).
 */
public final class Keyed {
  /** What a random number is for. */
  enum What {
    GROWTH_OF_ALL,
    GROWTH_OF_SPECIES,
    LOSS_OF_ALL,
    LOSS_OF_SPECIES,
    CONSIGNMENT,
    FAILURE,
    FIRSTS,
    SECONDS,
    THIRDS,
    UNITS,
    PRICE,
    MINUTES,
    EXCHANGE,
    DEATHS,
    GROWTH_OF_LOT,
    SPEED_OF_ALL,
    SPEED_OF_SPECIES,
    SPEED_IN_CONDITION,
    LOSSES_OF_ALL,
    FIRST_YEAR_LOSS_OF_SPECIES,
    LATER_LOSS_OF_SPECIES,
    PRICES,
    DEMAND,
    TRUNKS_OF_ALL,
    TRUNKS_OF_CLASS
  }

  /** Below this expected number a binomial is found by adding probabilities up from none. */
  private static final double FEW = 40;

  private final long key;

  public Keyed(long seed, int draw) {
    this.key = mix(mix(seed) + draw);
  }

  private static long mix(long value) {
    long z = value + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** Evenly spread, above 0 and below 1. */
  double uniform(What what, long whose, long year) {
    return uniform(of(what, whose), year);
  }

  /** What {@link #uniform(long, long)} is asked with for the years of one what and whose. */
  long of(What what, long whose) {
    return mix(mix(key + what.ordinal()) + whose);
  }

  /** Evenly spread, above 0 and below 1, of a year. */
  static double uniform(long of, long year) {
    return ((mix(of + year) >>> 11) + 0.5) * 0x1.0p-53;
  }

  /** Standard normal. */
  double normal(What what, long whose, long year) {
    return normalQuantile(uniform(what, whose, year));
  }

  /**
   * The standard normal score that a share of all stays below: √2 erf⁻¹(2p − 1).
   *
   * @param probability above 0 and below 1; at 0 and 1 the score is infinite
   */
  public static double normalQuantile(double probability) {
    return Math.sqrt(2) * Erf.erfInv(2 * probability - 1);
  }

  /** Lognormal with mean 1 and a coefficient of variation, from a standard normal score. */
  public static double lognormal(double spread, double score) {
    if (spread == 0) {
      return 1;
    }
    double variance = Math.log1p(spread * spread);
    return Math.exp(Math.sqrt(variance) * score - variance / 2);
  }

  /** Gamma with a shape and scale 1; 0 for shape 0. */
  double gamma(double shape, What what, long whose) {
    return shape == 0
        ? 0
        : new GammaDistribution(shape, 1).inverseCumulativeProbability(uniform(what, whose, 0));
  }

  /** Binomial: how many of a number come to pass, each with a probability. */
  double binomial(int number, double probability, What what, long whose, long year) {
    return binomial(number, probability, of(what, whose), year);
  }

  /** The same of a year of what {@link #of} gives. */
  static double binomial(int number, double probability, long of, long year) {
    if (number == 0 || probability <= 0) {
      return 0;
    }
    if (probability >= 1) {
      return number;
    }
    // The chance of none, (1 − p)ⁿ, is at least 1 − np (Bernoulli): most months need no more.
    double left = uniform(of, year);
    if (number * probability > FEW) {
      return new BinomialDistribution(number, probability).inverseCumulativeProbability(left);
    }
    if (left <= 1 - number * probability) {
      return 0;
    }
    double odds = probability / (1 - probability);
    double chance = Math.pow(1 - probability, number);
    int count = 0;
    while (left > chance && count < number) {
      left -= chance;
      chance *= odds * (number - count) / (count + 1);
      count++;
    }
    return count;
  }
}
