package growingon.write.chart.look;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * The colours of every chart: the eight of Okabe and Ito (Color Universal Design, 2008), a light
 * grey, a dark blue, and for what is stacked five steps of viridis (S. van der Walt and N. Smith,
 * 2015, given to the public under CC0): its entries 0, 70, 121, 179 and 243 of 256, chosen so that
 * any two of them differ to eyes of every kind. PaletteTest measures that.
 */
public final class Palette {
  public static final Color INK = new Color(0x22, 0x28, 0x26);
  public static final Color QUIET = new Color(0x5F, 0x68, 0x65);
  public static final Color RULE = new Color(0xDD, 0xE2, 0xE0);
  public static final Color OVER = new Color(0xD5, 0x5E, 0x00);

  /** What lies over a limit, as words: dark enough to be read. */
  public static final Color OVER_INK = new Color(0x9A, 0x3F, 0x00);

  /** Behind letters, so that what they stand on does not cross them. */
  public static final Color VEIL = new Color(255, 255, 255, 210);

  public static final Color LIMIT = Color.BLACK;

  /** How many colours there are. */
  static final int SIZE = 15;

  private static final Color[] COLOURS = {
    new Color(0x00, 0x72, 0xB2),
    new Color(0xE6, 0x9F, 0x00),
    new Color(0x00, 0x9E, 0x73),
    new Color(0xCC, 0x79, 0xA7),
    new Color(0x56, 0xB4, 0xE9),
    new Color(0xF0, 0xE4, 0x42),
    OVER,
    Color.BLACK,
    new Color(0xCD, 0xD2, 0xCF),
    new Color(0x00, 0x44, 0x6B),
    new Color(0x44, 0x01, 0x54),
    new Color(0x38, 0x59, 0x8C),
    new Color(0x23, 0x8A, 0x8D),
    new Color(0x44, 0xBF, 0x70),
    new Color(0xDF, 0xE3, 0x18)
  };
  private static final float[][] DASHES = {
    null, {3.2f, 1.6f}, {1.1f, 1.1f}, {3.2f, 1.4f, 0.9f, 1.4f}, {5, 1.4f}, {1.8f, 1.1f, 0.7f, 1.1f}
  };

  private static final int LIGHT = 3 * 180;

  private Palette() {}

  /** Colour of an index; indices beyond the last start again. */
  public static Color of(int index) {
    return COLOURS[Math.floorMod(index, SIZE)];
  }

  /** So pale that lines and letters stand out from it, but not so pale as not to be seen itself. */
  public static Color pale(int index) {
    Color colour = of(index);
    boolean isLight = colour.getRed() + colour.getGreen() + colour.getBlue() > LIGHT;
    return mix(colour, Color.WHITE, isLight ? 0.35 : 0.75);
  }

  /** A darker rim of a filled shape, so that light ones show on white too. */
  public static Color rim(Color colour) {
    return mix(colour, Color.BLACK, 0.35);
  }

  /** Stroke of the edge of a band. */
  public static BasicStroke edgeStroke(double width) {
    return dashed(width, new float[] {1, 1.3f});
  }

  /** Stroke of the n-th line, so that lines differ in a black print too. */
  public static BasicStroke stroke(int line, double width) {
    float[] dash = DASHES[Math.floorMod(line, DASHES.length)];
    return dash == null
        ? new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
        : dashed(width, dash);
  }

  /** Stroke of a limit. */
  public static BasicStroke limitStroke(double width) {
    return dashed(width, new float[] {2.6f, 1.4f});
  }

  /** A dash is given in widths of the line. */
  private static BasicStroke dashed(double width, float[] dash) {
    float[] lengths = new float[dash.length];
    for (int i = 0; i < dash.length; i++) {
      lengths[i] = (float) (dash[i] * width);
    }
    return new BasicStroke(
        (float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
  }

  private static Color mix(Color colour, Color other, double share) {
    return new Color(
        mix(colour.getRed(), other.getRed(), share),
        mix(colour.getGreen(), other.getGreen(), share),
        mix(colour.getBlue(), other.getBlue(), share));
  }

  private static int mix(int from, int to, double share) {
    return (int) Math.round(from + (to - from) * share);
  }
}
