package growingon.write.chart.look;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A name with what it looks like in the chart.
 *
 * @param paint null for a name alone
 * @param stroke how its line is drawn; null for something filled
 */
public record Sample(String name, Paint paint, BasicStroke stroke) {
  private static final double WIDTH = 1.3;
  private static final double SQUARE = 0.8;
  private static final double GAP = 0.4;

  public static Sample filled(String name, Paint paint) {
    return new Sample(name, paint, null);
  }

  public static Sample word(String name) {
    return new Sample(name, null, null);
  }

  /** Width before the name. */
  public double indent(Font font) {
    return paint == null ? 0 : font.getSize() * ((stroke == null ? SQUARE : WIDTH) + GAP);
  }

  /** Draws it with its name in lines, the first with its top at y. */
  public void draw(Graphics2D g2, List<String> lines, Font font, double x, double y) {
    if (paint != null) {
      picture(g2, font.getSize(), x, y + font.getSize() * 0.64);
    }
    Lettering.draw(g2, lines, font, Palette.INK, x + indent(font), y);
  }

  private void picture(Graphics2D g2, double size, double x, double middle) {
    g2.setPaint(paint);
    if (stroke == null) {
      double side = SQUARE * size;
      Rectangle2D square = new Rectangle2D.Double(x, middle - side / 2, side, side);
      g2.fill(square);
      g2.setPaint(Palette.QUIET);
      g2.setStroke(new BasicStroke((float) (size / 22)));
      g2.draw(square);
    } else {
      Stroke before = g2.getStroke();
      g2.setStroke(stroke);
      g2.draw(new Line2D.Double(x, middle, x + WIDTH * size, middle));
      g2.setStroke(before);
    }
  }
}
