package growingon.review.kept;

/**
 * Quantiles of a lot, or of all lots together, at the end of each month.
 *
 * @param living plants alive
 * @param trunkMm mean trunk of the living, mm; of all lots together there is none
 * @param unitsSold plants sold up to then
 * @param sales money of sales up to then
 * @param hours hours worked up to then
 * @param result sales less all costs up to then
 */
public record KeptChances(
    KeptQuantiles living,
    KeptQuantiles trunkMm,
    KeptQuantiles unitsSold,
    KeptQuantiles sales,
    KeptQuantiles hours,
    KeptQuantiles result) {
  /** No draws. */
  public static final KeptChances NONE =
      new KeptChances(
          KeptQuantiles.NONE,
          KeptQuantiles.NONE,
          KeptQuantiles.NONE,
          KeptQuantiles.NONE,
          KeptQuantiles.NONE,
          KeptQuantiles.NONE);
}
