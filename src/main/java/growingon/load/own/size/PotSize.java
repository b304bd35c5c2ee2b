package growingon.load.own.size;

/**
 * A pot that a list names.
 *
 * @param name what it is called in the plan: by its litres, width or box
 * @param litres that it holds
 */
public record PotSize(String name, double litres) {
  /** A square pot 9 cm wide at the top holds about half a litre; common practice, no source. */
  private static final double SQUARE_LITRES = 0.5 / (9 * 9 * 9);

  /** A round pot 15 cm wide holds about 1.9 litres; common practice, no source. */
  private static final double ROUND_LITRES = 0.000_55;

  private static final double PLUG_LITRES = 0.1;

  /** Litres of the trade's container classes 1 to 25: middles (ANSI Z60.1, from memory). */
  private static final double[][] CLASSES = {
    {1, 3.3}, {2, 6.5}, {3, 11.2}, {5, 16.6}, {7, 25.6}, {10, 38.7}, {15, 53}, {20, 79}, {25, 103.5}
  };

  private static final double LITRES_A_GALLON = 3.785_411_784;

  public static PotSize ofLitres(double litres) {
    return new PotSize(plain(litres) + " litre", litres);
  }

  public static PotSize square(double cm) {
    return new PotSize("P" + plain(cm), round(SQUARE_LITRES * cm * cm * cm));
  }

  public static PotSize roundOf(double cm) {
    return new PotSize(plain(cm) + " cm pot", round(ROUND_LITRES * cm * cm * cm));
  }

  static PotSize box(double length, double width, double height) {
    String name = "box " + plain(length) + "x" + plain(width) + "x" + plain(height);
    return new PotSize(name, round(length * width * height / 1000));
  }

  /**
   * A box of which only the sides are stated, half as deep as its shorter side; a dish a fifth.
   * Common practice, no source.
   */
  public static PotSize sides(double length, double width, boolean shallow) {
    return box(length, width, Math.rint(Math.min(length, width) / (shallow ? 5 : 2)));
  }

  static PotSize plug() {
    return new PotSize("plug", PLUG_LITRES);
  }

  /** A container class, by its number or gallons. */
  public static PotSize containerClass(double number) {
    for (double[] each : CLASSES) {
      if (each[0] == number) {
        return ofLitres(each[1]);
      }
    }
    return ofLitres(round(number * LITRES_A_GALLON));
  }

  /** Width at the top, mm: a pot as wide as it is high. Common practice, no source. */
  public double topMm() {
    return 128 * Math.cbrt(litres);
  }

  private static double round(double litres) {
    double step = litres < 10 ? 100 : 10;
    return Math.max(0.01, Math.rint(litres * step) / step);
  }

  public static String plain(double value) {
    return java.math.BigDecimal.valueOf(Math.rint(value * 1e6) / 1e6)
        .stripTrailingZeros()
        .toPlainString();
  }
}
