package growingon.write.chart.look;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** How wide texts are, and where they break; the same for every picture of a chart. */
public final class Lettering {
  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final double LINE = 1.28;

  private Lettering() {}

  public static double width(String text, Font font) {
    return text.isEmpty() ? 0 : font.getStringBounds(text, CONTEXT).getWidth();
  }

  /** Width of the widest text, 0 of none. */
  public static double widest(List<String> texts, Font font) {
    return texts.stream().mapToDouble(each -> width(each, font)).max().orElse(0);
  }

  /** Height of a line with the air below it. */
  public static double line(Font font) {
    return font.getSize() * LINE;
  }

  /**
   * A text in lines; a word that is wider than a line is broken.
   *
   * @param width of a line
   * @param most lines; what does not fit in them ends with an ellipsis
   */
  public static List<String> lines(String text, Font font, double width, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty() && lines.size() < most - 1) {
      int end = end(rest, font, width);
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    if (!rest.isEmpty()) {
      lines.add(shortened(rest, font, width));
    }
    return lines;
  }

  /** Where a line ends: before the word that no longer fits, or within it if it is the first. */
  private static int end(String text, Font font, double width) {
    if (width(text, font) <= width) {
      return text.length();
    }
    int fitting = fitting(text, font, width, "");
    int space = text.lastIndexOf(' ', fitting);
    return space > 0 ? space : Math.max(1, fitting);
  }

  /** How many letters fit, at least one; the more letters, the wider. */
  private static int fitting(String text, Font font, double width, String after) {
    int fits = 1;
    int tooMany = text.length() + 1;
    while (tooMany - fits > 1) {
      int middle = (fits + tooMany) / 2;
      boolean within = width(text.substring(0, middle).strip() + after, font) <= width;
      fits = within ? middle : fits;
      tooMany = within ? tooMany : middle;
    }
    return fits;
  }

  /** A text cut so that it takes no more than a width. */
  public static String shortened(String text, Font font, double width) {
    return width(text, font) <= width
        ? text
        : text.substring(0, fitting(text, font, width, "…")).strip() + "…";
  }

  /** Draws lines below each other, the first with its top at y; gives the bottom of the last. */
  public static double draw(
      Graphics2D g2, List<String> lines, Font font, Color colour, double x, double y) {
    g2.setFont(font);
    g2.setPaint(colour);
    double at = y;
    for (String each : lines) {
      g2.drawString(each, (float) x, (float) (at + font.getSize()));
      at += line(font);
    }
    return at;
  }
}
