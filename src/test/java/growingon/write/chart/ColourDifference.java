package growingon.write.chart;

/**
 * How far apart two colours look: CIEDE2000, after Sharma, Wu and Dalal, "The CIEDE2000
 * Color-Difference Formula: Implementation Notes, Supplementary Test Data, and Mathematical
 * Observations" (2005), all weights 1; from memory, checked by their test data.
 */
public final class ColourDifference {
  private static final double TWENTY_FIVE_TO_THE_SEVENTH = Math.pow(25, 7);

  private ColourDifference() {}

  /** CIELAB of linear sRGB (IEC 61966-2-1), white D65. */
  static double[] lab(double[] rgb) {
    double x = 0.4124564 * rgb[0] + 0.3575761 * rgb[1] + 0.1804375 * rgb[2];
    double y = 0.2126729 * rgb[0] + 0.7151522 * rgb[1] + 0.0721750 * rgb[2];
    double z = 0.0193339 * rgb[0] + 0.1191920 * rgb[1] + 0.9503041 * rgb[2];
    double fx = root(x / 0.95047);
    double fy = root(y);
    double fz = root(z / 1.08883);
    return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
  }

  private static double root(double share) {
    return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
  }

  public static double ciede2000(double[] one, double[] other) {
    double meanChroma = (Math.hypot(one[1], one[2]) + Math.hypot(other[1], other[2])) / 2;
    double stretch = 1 + 0.5 * (1 - weight(meanChroma));
    double c1 = Math.hypot(stretch * one[1], one[2]);
    double c2 = Math.hypot(stretch * other[1], other[2]);
    double h1 = hue(stretch * one[1], one[2]);
    double h2 = hue(stretch * other[1], other[2]);
    boolean grey = c1 * c2 == 0;
    double turn =
        grey ? 0 : h2 - h1 > 180 ? h2 - h1 - 360 : h2 - h1 < -180 ? h2 - h1 + 360 : h2 - h1;
    double lightness = (one[0] + other[0]) / 2;
    double chroma = (c1 + c2) / 2;
    double hue = grey ? h1 + h2 : meanHue(h1, h2);
    double t =
        1
            - 0.17 * cos(hue - 30)
            + 0.24 * cos(2 * hue)
            + 0.32 * cos(3 * hue + 6)
            - 0.20 * cos(4 * hue - 63);
    double fromFifty = (lightness - 50) * (lightness - 50);
    double dl = (other[0] - one[0]) / (1 + 0.015 * fromFifty / Math.sqrt(20 + fromFifty));
    double dc = (c2 - c1) / (1 + 0.045 * chroma);
    double dh =
        2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(turn / 2)) / (1 + 0.015 * chroma * t);
    double blue = 30 * Math.exp(-Math.pow((hue - 275) / 25, 2));
    double rotation = -2 * weight(chroma) * Math.sin(Math.toRadians(2 * blue));
    return Math.sqrt(dl * dl + dc * dc + dh * dh + rotation * dc * dh);
  }

  private static double weight(double chroma) {
    double seventh = Math.pow(chroma, 7);
    return Math.sqrt(seventh / (seventh + TWENTY_FIVE_TO_THE_SEVENTH));
  }

  private static double hue(double a, double b) {
    double degrees = a == 0 && b == 0 ? 0 : Math.toDegrees(Math.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double meanHue(double one, double other) {
    double sum = one + other;
    if (Math.abs(one - other) <= 180) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
