package growingon.write.chart.plot;

import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.MarkKind;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Draws what a chart points out: upright lines with their labels above the plot, points with theirs
 * beside them. Above bars there is no room beside what lies beyond a limit, so that is labelled
 * above the plot too, with a line that leads there. A label that would cover another one is left
 * out; its point stays.
 */
final class MarkPainter {
  private static final double DOT = 0.5;
  private static final double GAP = 0.35;
  private static final double INSET = 0.15;

  /** So many points have their labels above the plot. */
  private static final int MOST_ABOVE = 3;

  /** Share of a picture's width that its plot has at least. */
  private static final double NARROWEST_PLOT = 0.6;

  private final Font font;
  private final List<Mark> above;
  private final List<Mark> points;

  /**
   * A painter.
   *
   * @param overBars whether what lies beyond a limit is labelled above the plot
   */
  MarkPainter(List<Mark> marks, Font font, boolean overBars) {
    this.font = font;
    this.above =
        Stream.concat(
                marks.stream().filter(each -> each.kind() == MarkKind.UPRIGHT),
                marks.stream()
                    .filter(each -> overBars && each.kind() == MarkKind.BEYOND)
                    .limit(MOST_ABOVE))
            .sorted(Comparator.comparingDouble(Mark::at))
            .toList();
    this.points =
        marks.stream()
            .filter(each -> each.kind() != MarkKind.UPRIGHT)
            .filter(each -> !overBars || !above.contains(each))
            .toList();
  }

  /** Height of the labels above a plot of which only the width of the picture is known. */
  double headroom(double pictureWidth, int categories) {
    List<Spot> spots = spots(0, NARROWEST_PLOT * pictureWidth, categories, 0, pictureWidth);
    int rows = spots.stream().mapToInt(each -> each.row() + 1).max().orElse(0);
    return rows * Lettering.line(font);
  }

  /** What is labelled above the plot, where its label begins and in which row, 0 lowest. */
  private record Spot(Mark mark, double x, double left, double width, int row) {}

  private List<Spot> spots(double from, double width, int categories, double least, double most) {
    List<Spot> spots = new ArrayList<>();
    List<Double> ends = new ArrayList<>();
    for (Mark each : above) {
      double x = from + each.at() / Math.max(1, categories) * width;
      double taken = Math.min(most - least, Lettering.width(each.label(), font));
      double left = Math.max(least, Math.min(x - taken / 2, most - taken));
      int row = 0;
      while (row < ends.size() && ends.get(row) > left) {
        row++;
      }
      double end = left + taken + font.getSize();
      if (row < ends.size()) {
        ends.set(row, end);
      } else {
        ends.add(end);
      }
      spots.add(new Spot(each, x, left, taken, row));
    }
    return spots;
  }

  /** Draws all of them over a plot. */
  void draw(Graphics2D g2, ChartPlot plot, Rectangle2D area, int categories, double right) {
    List<Spot> spots = spots(area.getX(), area.getWidth(), categories, area.getX(), right);
    spots.forEach(each -> line(g2, each, plot, area));
    spots.forEach(each -> label(g2, each, area));
    List<Rectangle2D> taken = new ArrayList<>();
    for (Mark each : points) {
      double x = area.getX() + each.at() / Math.max(1, categories) * area.getWidth();
      Point2D at = new Point2D.Double(x, plot.along(each.value(), area));
      point(g2, each, at, area, taken);
    }
  }

  private double bottom(Spot spot, Rectangle2D area) {
    return area.getMinY() - spot.row() * Lettering.line(font);
  }

  private void line(Graphics2D g2, Spot spot, ChartPlot plot, Rectangle2D area) {
    boolean upright = spot.mark().kind() == MarkKind.UPRIGHT;
    double foot = upright ? area.getMaxY() : plot.along(spot.mark().value(), area);
    Line2D line = new Line2D.Double(spot.x(), bottom(spot, area), spot.x(), foot);
    g2.setPaint(Color.WHITE);
    g2.setStroke(new BasicStroke(font.getSize() / 5f));
    g2.draw(line);
    g2.setPaint(ink(spot.mark()));
    g2.setStroke(new BasicStroke(font.getSize() / (upright ? 11f : 20f)));
    g2.draw(line);
    if (!upright) {
      double size = DOT * font.getSize();
      paint(g2, triangle(spot.x(), foot - size * 0.3, size), ink(spot.mark()));
    }
  }

  private void label(Graphics2D g2, Spot spot, Rectangle2D area) {
    Rectangle2D where =
        new Rectangle2D.Double(
            spot.left(),
            bottom(spot, area) - Lettering.line(font),
            spot.width(),
            Lettering.line(font));
    label(g2, spot.mark(), where, 0);
  }

  private static Color ink(Mark mark) {
    return mark.kind() == MarkKind.BEYOND ? Palette.OVER_INK : Palette.INK;
  }

  private void point(
      Graphics2D g2, Mark mark, Point2D at, Rectangle2D area, List<Rectangle2D> taken) {
    double size = DOT * font.getSize();
    if (mark.kind() == MarkKind.BEYOND) {
      Path2D triangle = triangle(at.getX(), at.getY() - size * 0.3, size);
      paint(g2, triangle, ink(mark));
      taken.add(triangle.getBounds2D());
    } else {
      double half = size / 2;
      paint(g2, new Ellipse2D.Double(at.getX() - half, at.getY() - half, size, size), ink(mark));
    }
    places(mark, at).stream()
        .filter(area::contains)
        .filter(each -> taken.stream().noneMatch(each::intersects))
        .findFirst()
        .ifPresent(
            each -> {
              taken.add(each);
              label(g2, mark, each, INSET * font.getSize());
            });
  }

  private void label(Graphics2D g2, Mark mark, Rectangle2D where, double inset) {
    g2.setPaint(Palette.VEIL);
    g2.fill(where);
    String text = Lettering.shortened(mark.label(), font, where.getWidth() - 2 * inset + 0.01);
    Lettering.draw(g2, List.of(text), font, ink(mark), where.getX() + inset, where.getY());
  }

  private void paint(Graphics2D g2, Shape shape, Color colour) {
    g2.setPaint(Color.WHITE);
    g2.setStroke(new BasicStroke(font.getSize() / 7f));
    g2.draw(shape);
    g2.setPaint(colour);
    g2.fill(shape);
  }

  /** Pointing down at what it marks. */
  private static Path2D triangle(double x, double y, double size) {
    Path2D path = new Path2D.Double();
    path.moveTo(x, y);
    path.lineTo(x - size * 0.6, y - size);
    path.lineTo(x + size * 0.6, y - size);
    path.closePath();
    return path;
  }

  /**
   * Where a label may stand, the best place first: above what lies beyond a limit, right of another
   * point, then all around.
   */
  private List<Rectangle2D> places(Mark mark, Point2D at) {
    double x = at.getX();
    double y = at.getY();
    double width = Lettering.width(mark.label(), font) + 2 * INSET * font.getSize();
    double height = Lettering.line(font);
    double gap = GAP * font.getSize();
    double above = y - height - gap * 2.4;
    double below = y + gap;
    List<Rectangle2D> places = new ArrayList<>();
    if (mark.kind() == MarkKind.BEYOND) {
      places.add(new Rectangle2D.Double(x - width / 2, above, width, height));
    }
    places.add(new Rectangle2D.Double(x + gap, above, width, height));
    places.add(new Rectangle2D.Double(x - gap - width, above, width, height));
    places.add(new Rectangle2D.Double(x + gap * 2, y - height / 2, width, height));
    places.add(new Rectangle2D.Double(x - gap * 2 - width, y - height / 2, width, height));
    places.add(new Rectangle2D.Double(x + gap, below, width, height));
    places.add(new Rectangle2D.Double(x - gap - width, below, width, height));
    return places;
  }
}
