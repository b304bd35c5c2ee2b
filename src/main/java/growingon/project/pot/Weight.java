package growingon.project.pot;

/**
 * Weight of one plant with its parts, kg.
 *
 * @param mixKg mix, wet, kg: its litres in the pot × wet kg a litre × (1 + firming) / (1 −
 *     shrinkage)
 * @param ballKg ball lifted from the ground, kg: its litres × {@link #LIFTED_KG_PER_LITRE}
 * @param potKg empty pot, kg
 * @param woodKg wood, kg: see {@link #woodKg(double, double)}
 */
public record Weight(double mixKg, double ballKg, double potKg, double woodKg) {
  /** Wet field soil with roots, kg a litre (from memory). */
  public static final double LIFTED_KG_PER_LITRE = 1.6;

  public static final Weight NONE = new Weight(0, 0, 0, 0);

  /**
   * Weight of the wood, kg: π/4 d² × height at 1 kg a litre, a stem as thick all the way up; green
   * wood weighs about as much as water (from memory).
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
