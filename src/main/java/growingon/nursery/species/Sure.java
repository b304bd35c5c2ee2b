package growingon.nursery.species;

import growingon.nursery.number.Check;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How sure the growth and the losses of a species are: a share of 0.01 to 1 for each, where p means
 * as sure as 10 p/(1 − p) plants of one's own would make it, and 1 that it is taken as known.
 *
 * @param growth for each growing condition in which the species has growth
 * @param firstYearLoss of the loss in the first year
 * @param laterLoss of the loss a year after that
 */
public record Sure(Map<String, Double> growth, double firstYearLoss, double laterLoss) {
  /** Where nothing is said: a good guess. */
  public static final double USUAL = 0.8;

  /** Standard deviations from the middle to P10 and to P90 of a normal distribution. */
  private static final double TO_P90 = 1.2816;

  private static final double LEAST = 0.01;

  public Sure {
    growth = Map.copyOf(growth);
    growth.values().forEach(each -> check(each, "how sure growth is"));
    check(firstYearLoss, "how sure the first-year loss is");
    check(laterLoss, "how sure the later loss is");
  }

  /** Refuses a share below 0.01 or above 1, as an IllegalArgumentException. */
  public static void check(double sure, String what) {
    Check.that(sure >= LEAST && sure <= 1, what + " must lie between 0.01 and 1", sure);
  }

  /** Everything taken as known. */
  public static Sure known(Collection<String> conditions) {
    return new Sure(conditions.stream().collect(Collectors.toMap(each -> each, each -> 1.0)), 1, 1);
  }

  /** Whether everything is taken as known. */
  public boolean isKnown() {
    return firstYearLoss == 1
        && laterLoss == 1
        && growth.values().stream().allMatch(each -> each == 1);
  }

  /** How sure the growth in a condition is; the species has growth there. */
  public double growthIn(String condition) {
    return Check.known(growth, condition, "growing condition");
  }

  /**
   * Standard deviation s of the logarithm of the factor on growth: ½ √((1 − p)/p). Own choice: with
   * it a mean of n = 10 p/(1 − p) plants has the variance 2.5/n.
   */
  public static double spread(double sure) {
    return Math.sqrt((1 - sure) / sure) / 2;
  }

  /** The inverse of {@link #spread}: 1/(1 + 4 s²). */
  public static double ofVariance(double variance) {
    return 1 / (1 + 4 * variance);
  }

  /**
   * How many plants of one's own a degree of sureness is worth: 10 p/(1 − p), without end for 1.
   */
  public static double plants(double sure) {
    return 10 * sure / (1 - sure);
  }

  /** The inverse of {@link #plants}. */
  public static double ofPlants(double plants) {
    return plants / (plants + 10);
  }

  /** The same with another sureness of growth in one condition. */
  public Sure withGrowth(String condition, double sure) {
    Map<String, Double> other = new LinkedHashMap<>(growth);
    other.put(condition, sure);
    return new Sure(other, firstYearLoss, laterLoss);
  }

  /** Factor from the middle to P90, and from P10 to the middle, of growth that is so sure. */
  public static double factor(double sure) {
    return Math.exp(TO_P90 * spread(sure));
  }
}
