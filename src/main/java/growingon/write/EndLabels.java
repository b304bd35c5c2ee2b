package growingon.write;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The names of the series at the right end of a chart, each as near as it fits to where its band or
 * line ends, with a sample of its colour.
 */
final class EndLabels {
  private static final int SAMPLE = 30;
  private static final int GAP = 10;
  private static final int WIDEST = 330;

  /**
   * One name.
   *
   * @param stroke how its line is drawn; null for a filled block
   * @param at height in pixels where it would best stand
   * @param size how large the series grows: if not all names fit, the largest stay
   */
  record Label(String name, Paint paint, BasicStroke stroke, double at, double size) {}

  private EndLabels() {}

  /** Pixels that the labels take. */
  static int width(List<String> names, FontMetrics metrics) {
    int widest = names.stream().mapToInt(metrics::stringWidth).max().orElse(0);
    return names.isEmpty() ? 0 : GAP + SAMPLE + GAP + Math.min(WIDEST, widest) + 4;
  }

  static void draw(Graphics2D g2, Rectangle2D area, List<Label> labels, Font font) {
    double line = font.getSize() * 1.3;
    int fitting = (int) ((area.getHeight() + line) / line);
    List<Label> kept = largest(labels, labels.size() > fitting ? fitting - 1 : labels.size());
    if (kept.size() < labels.size()) {
      String rest = "and " + (labels.size() - kept.size()) + " smaller";
      kept.add(new Label(rest, null, null, area.getMaxY(), 0));
    }
    kept.sort(Comparator.comparingDouble(Label::at));
    double[] heights =
        spread(
            kept.stream().mapToDouble(Label::at).toArray(), line, area.getMinY(), area.getMaxY());
    g2.setFont(font);
    for (int i = 0; i < heights.length; i++) {
      draw(g2, kept.get(i), area.getMaxX() + GAP, heights[i]);
    }
  }

  /** The largest ones, in their first order. */
  private static List<Label> largest(List<Label> labels, int count) {
    Set<Label> large =
        new HashSet<>(
            labels.stream()
                .sorted(Comparator.comparingDouble(Label::size).reversed())
                .limit(count)
                .toList());
    return new ArrayList<>(labels.stream().filter(large::contains).limit(count).toList());
  }

  /** Moves heights, given in rising order, apart by at least a line, and within top and bottom. */
  static double[] spread(double[] wished, double line, double top, double bottom) {
    double[] heights = wished.clone();
    double least = top;
    for (int i = 0; i < heights.length; i++) {
      heights[i] = Math.max(heights[i], least);
      least = heights[i] + line;
    }
    double most = bottom;
    for (int i = heights.length - 1; i >= 0; i--) {
      heights[i] = Math.min(heights[i], most);
      most = heights[i] - line;
    }
    return heights;
  }

  private static void draw(Graphics2D g2, Label label, double x, double y) {
    sample(g2, label.paint(), label.stroke(), x, y);
    g2.setPaint(Palette.INK);
    FontMetrics metrics = g2.getFontMetrics();
    String name = shorten(label.name(), metrics, WIDEST);
    g2.drawString(name, (float) (x + SAMPLE + GAP), (float) (y + metrics.getAscent() / 2.0 - 2));
  }

  /** A small square, or a piece of the line. */
  static void sample(Graphics2D g2, Paint paint, BasicStroke stroke, double x, double y) {
    if (paint == null) {
      return;
    }
    g2.setPaint(paint);
    if (stroke == null) {
      g2.fill(new Rectangle2D.Double(x + SAMPLE - 20, y - 9, 18, 18));
    } else {
      Stroke before = g2.getStroke();
      g2.setStroke(stroke);
      g2.draw(new Line2D.Double(x, y, x + SAMPLE, y));
      g2.setStroke(before);
    }
  }

  /** A text cut so that it takes no more than so many pixels. */
  static String shorten(String text, FontMetrics metrics, int widest) {
    if (metrics.stringWidth(text) <= widest) {
      return text;
    }
    int end = text.length() - 1;
    while (end > 1 && metrics.stringWidth(text.substring(0, end).strip() + "…") > widest) {
      end--;
    }
    return text.substring(0, end).strip() + "…";
  }
}
