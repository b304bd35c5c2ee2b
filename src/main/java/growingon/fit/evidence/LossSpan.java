package growingon.fit.evidence;

import java.util.List;
import java.util.Optional;

/**
 * A lot between two successive counts of its plants, or up to its end. Months are offsets from the
 * first month of the past.
 *
 * @param lot the lot
 * @param species its species
 * @param from month of the first count
 * @param to month of the second one
 * @param gone plants gone without a line; negative where there are more than before
 * @param sold plants sold in between
 * @param months what died in each month after the first count, the second one's counted in
 * @param refused why it is not used, if it is not
 */
public record LossSpan(
    String lot,
    String species,
    int from,
    int to,
    double gone,
    double sold,
    List<MonthLoss> months,
    Optional<String> refused) {

  /**
   * A month of it.
   *
   * @param month offset
   * @param firstYear whether it lies in the lot's first year
   * @param season year in which its season starts
   * @param plants plants alive at its beginning
   * @param share share of a year's loss that falls in it
   * @param deaths plants that died of background losses
   * @param written those of them that a line dates
   */
  public record MonthLoss(
      int month,
      boolean firstYear,
      int season,
      double plants,
      double share,
      double deaths,
      double written) {
    /** Exposure to a yearly loss q: plants × (1 − (1 − q)^share)/q. */
    public double exposure(double loss) {
      return plants * (1 - Math.pow(1 - loss, share)) / loss;
    }
  }

  /** Whether a loss is learnt from it. */
  public boolean isUsed() {
    return refused.isEmpty();
  }

  double deaths() {
    return months.stream().mapToDouble(MonthLoss::deaths).sum();
  }
}
