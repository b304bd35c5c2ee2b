package growingon.load.table.supply;

/**
 * The top of a round pot of which only the litres are known, interpolated along the cube root of
 * the litres. From 1.15 to 11.97 litres: measures of five pots of a grower's pot guide (top 130 to
 * 280 mm) with the volumes of their frustums. Smaller and larger pots: common practice, no source.
 */
public final class PotTops {
  private static final double[][] LITRES_AND_TOP_MM = {
    {0.1, 60}, {0.25, 80}, {0.5, 100}, {1.15, 130}, {2.17, 170}, {3.05, 190}, {5.42, 225},
    {11.97, 280}, {15, 300}, {25, 360}, {35, 400}, {50, 460}, {100, 580}, {250, 800}
  };

  private PotTops() {}

  /** Top diameter in mm; beyond the ends of the table pots of the same proportions. */
  public static double topMm(double litres) {
    int last = LITRES_AND_TOP_MM.length - 1;
    if (litres <= LITRES_AND_TOP_MM[0][0]) {
      return likeness(litres, LITRES_AND_TOP_MM[0]);
    }
    for (int i = 1; i <= last; i++) {
      if (litres <= LITRES_AND_TOP_MM[i][0]) {
        return between(litres, LITRES_AND_TOP_MM[i - 1], LITRES_AND_TOP_MM[i]);
      }
    }
    return likeness(litres, LITRES_AND_TOP_MM[last]);
  }

  private static double likeness(double litres, double[] pot) {
    return pot[1] * Math.cbrt(litres / pot[0]);
  }

  private static double between(double litres, double[] smaller, double[] larger) {
    double low = Math.cbrt(smaller[0]);
    double part = (Math.cbrt(litres) - low) / (Math.cbrt(larger[0]) - low);
    return Math.rint(smaller[1] + part * (larger[1] - smaller[1]));
  }
}
