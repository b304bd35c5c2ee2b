package growingon.write;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * The colours of every chart: the eight of Okabe and Ito (2008), which readers with any common kind
 * of colour blindness tell apart, then the same in a lighter tint and in a darker shade.
 */
final class Palette {
  static final Color INK = new Color(0x22, 0x28, 0x26);
  static final Color QUIET = new Color(0x5F, 0x68, 0x65);
  static final Color RULE = new Color(0xDD, 0xE2, 0xE0);
  static final Color OVER = new Color(0xD5, 0x5E, 0x00);
  static final Color LIMIT = Color.BLACK;

  private static final Color[] OKABE_ITO = {
    new Color(0x00, 0x72, 0xB2),
    new Color(0xE6, 0x9F, 0x00),
    new Color(0x00, 0x9E, 0x73),
    new Color(0xCC, 0x79, 0xA7),
    new Color(0x56, 0xB4, 0xE9),
    new Color(0xF0, 0xE4, 0x42),
    OVER,
    Color.BLACK
  };
  private static final float[][] DASHES = {
    null, {14, 7}, {5, 5}, {14, 6, 4, 6}, {22, 6}, {8, 5, 3, 5, 3, 5}
  };

  private Palette() {}

  /** Colour of an index; indices beyond the last start again. */
  static Color of(int index) {
    int place = Math.floorMod(index, 3 * OKABE_ITO.length);
    Color pure = OKABE_ITO[place % OKABE_ITO.length];
    return switch (place / OKABE_ITO.length) {
      case 0 -> pure;
      case 1 -> mix(pure, Color.WHITE, 0.5);
      default -> mix(pure, Color.BLACK, 0.4);
    };
  }

  /** So pale that lines and letters of the colour itself stand out from it. */
  static Color pale(int index) {
    return mix(of(index), Color.WHITE, 0.75);
  }

  /** Stroke of the edge of a band. */
  static BasicStroke edgeStroke(float width) {
    return dashed(width, new float[] {3, 4});
  }

  /** Stroke of the n-th line, so that lines differ in a black print too. */
  static BasicStroke stroke(int line, float width) {
    float[] dash = DASHES[Math.floorMod(line, DASHES.length)];
    return dash == null
        ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
        : dashed(width, dash);
  }

  /** Stroke of a limit. */
  static BasicStroke limitStroke(float width) {
    return dashed(width, new float[] {10, 5});
  }

  private static BasicStroke dashed(float width, float[] dash) {
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
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
