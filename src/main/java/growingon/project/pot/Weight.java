package growingon.project.pot;

/**
 * Weight of one plant with its parts, kg.
 *
 * @param mixKg mix, wet
 * @param ballKg ball lifted from the ground
 * @param potKg empty pot
 * @param woodKg wood
 */
public record Weight(double mixKg, double ballKg, double potKg, double woodKg) {
  /** Wet field soil with roots, kg a litre (design section 6.7; from memory). */
  public static final double LIFTED_KG_PER_LITRE = 1.6;

  public static final Weight NONE = new Weight(0, 0, 0, 0);

  /**
   * Weight of the wood: π/4 d² × height at 1 kg a litre (design section 6.7; green wood weighs
   * about as much as water, from memory).
   *
   * @param squaredTrunkMm2 trunk squared, mm²
   * @param heightMm height left, mm
   */
  public static double woodKg(double squaredTrunkMm2, double heightMm) {
    return Math.PI / 4 * squaredTrunkMm2 * heightMm / 1e6;
  }

  /** All parts together. */
  public double kg() {
    return mixKg + ballKg + potKg + woodKg;
  }
}
