package growingon.write.chart.look;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Samples one after the other, in as many rows as they need. */
public final class Key {
  private static final int MOST_LINES = 3;

  private final Font font;
  private final List<Spot> spots = new ArrayList<>();
  private double height;

  /** A sample, its name in lines, and where it stands. */
  private record Spot(Sample sample, List<String> lines, double x, double y) {}

  /**
   * A key.
   *
   * @param width that it may take
   */
  public Key(List<Sample> samples, Font font, double width) {
    this.font = font;
    double x = 0;
    double y = 0;
    for (Sample each : samples) {
      double indent = each.indent(font);
      List<String> lines = Lettering.lines(each.name(), font, width - indent, MOST_LINES);
      double taken = indent + Lettering.widest(lines, font);
      if (x > 0 && x + taken > width) {
        x = 0;
        y = height;
      }
      spots.add(new Spot(each, lines, x, y));
      height = Math.max(height, y + lines.size() * Lettering.line(font));
      x += taken + font.getSize();
    }
  }

  public double height() {
    return height;
  }

  public void draw(Graphics2D g2, double x, double y) {
    spots.forEach(each -> each.sample().draw(g2, each.lines(), font, x + each.x(), y + each.y()));
  }
}
