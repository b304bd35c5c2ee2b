package growingon.write.chart.look;

import java.awt.Font;

/**
 * The two sizes that a chart is laid out for. All lengths of a drawing are units of its format; a
 * picture is that drawing at any scale.
 */
public enum Format {
  /** For paper and wide screens: no letter is under 7 points where the picture is 14 cm wide. */
  WIDE(1200, 675, 30, 22, 18),
  /** For a telephone, a unit a pixel of its page: what is beside the plot in the other is above. */
  NARROW(360, 340, 17, 13, 12);

  private final int width;
  private final int height;
  private final Font title;
  private final Font text;
  private final Font dense;

  Format(int width, int height, int title, int text, int dense) {
    this.width = width;
    this.height = height;
    this.title = new Font(Font.SANS_SERIF, Font.BOLD, title);
    this.text = new Font(Font.SANS_SERIF, Font.PLAIN, text);
    this.dense = new Font(Font.SANS_SERIF, Font.PLAIN, dense);
  }

  public int width() {
    return width;
  }

  /** Height of a chart that needs no more. */
  public int height() {
    return height;
  }

  public Font title() {
    return title;
  }

  public Font text() {
    return text;
  }

  /** For charts of so many panels that they are printed on a page of their own. */
  public Font dense() {
    return dense;
  }

  /** Width left free on either side. */
  public double margin() {
    return text.getSize() * 0.8;
  }

  public boolean isNarrow() {
    return this == NARROW;
  }
}
