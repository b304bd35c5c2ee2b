package growingon.write;

import growingon.report.Chart;
import growingon.report.Chart.Role;
import growingon.report.Chart.Series;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.TexturePaint;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.ui.RectangleInsets;

/** Draws small panels, one a group, each with its own height, all over the same months. */
final class PanelPainter {
  private static final int MOST = 30;
  private static final int TITLE_HEIGHT = 30;
  private static final Font PANEL_TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 21);
  private static final Paint HATCHED = hatched();

  private PanelPainter() {}

  /** Height in pixels: as others for up to nine panels, then a little more. */
  static int height(Chart chart) {
    return groups(chart).size() <= 9 ? ChartPainter.HEIGHT : 1100;
  }

  static void paint(Graphics2D g2, Chart chart, Rectangle2D where) {
    Map<String, List<Series>> groups = groups(chart);
    int panels = Math.min(MOST, groups.size());
    int across = across(panels);
    int down = (panels + across - 1) / across;
    double width = (where.getWidth() - 2 * ChartPainter.MARGIN) / across;
    double height = (where.getHeight() - ChartPainter.MARGIN) / down;
    int place = 0;
    boolean over = false;
    for (Map.Entry<String, List<Series>> group : groups.entrySet()) {
      if (place < panels) {
        double x = where.getX() + ChartPainter.MARGIN + place % across * width;
        double y = where.getY() + place / across * height;
        over |= panel(g2, chart, group, new Rectangle2D.Double(x, y, width - 14, height - 6));
      }
      place++;
    }
    key(g2, chart, groups.size(), over);
  }

  private static Map<String, List<Series>> groups(Chart chart) {
    Map<String, List<Series>> groups = new LinkedHashMap<>();
    chart
        .series()
        .forEach(each -> groups.computeIfAbsent(each.group(), g -> new ArrayList<>()).add(each));
    return groups;
  }

  private static int across(int panels) {
    return panels <= 1 ? 1 : panels <= 4 ? 2 : panels <= 9 ? 3 : panels <= 16 ? 4 : 5;
  }

  /** Draws a panel and says whether anything in it lies over its limit. */
  private static boolean panel(
      Graphics2D g2, Chart chart, Map.Entry<String, List<Series>> group, Rectangle2D where) {
    int categories = chart.categories().size();
    List<Series> limits = ChartPainter.with(group.getValue(), Role.LIMIT);
    List<Block> blocks =
        Block.stacked(ChartPainter.with(group.getValue(), Role.VALUE), categories, 0.5);
    if (!limits.isEmpty()) {
      blocks = Block.cutAt(blocks, ChartPainter.values(limits.get(0)), HATCHED);
    }
    boolean over = blocks.stream().anyMatch(each -> each.paint() == HATCHED && each.tallest() > 0);
    title(g2, group.getKey(), over, where);
    ChartPlot plot =
        new ChartPlot(chart.categories(), blocks, curves(group.getValue()), ChartPainter.SMALL);
    Rectangle2D below =
        new Rectangle2D.Double(
            where.getX(),
            where.getY() + TITLE_HEIGHT,
            where.getWidth(),
            where.getHeight() - TITLE_HEIGHT);
    plot.draw(g2, below, new RectangleInsets(4, 0, 4, 24));
    return over;
  }

  private static List<Curve> curves(List<Series> series) {
    List<Curve> curves = new ArrayList<>();
    for (Series each : series) {
      if (each.role() == Role.LIMIT) {
        double[] values = ChartPainter.values(each);
        curves.add(Curve.level(values, Palette.LIMIT, Palette.limitStroke(2.5f)));
      } else if (each.role() == Role.LINE) {
        curves.add(Curve.through(each, Palette.stroke(0, 3), false));
      } else if (Band.isEdge(each)) {
        Color colour = Palette.of(each.colour());
        curves.add(Curve.level(ChartPainter.values(each), colour, edgeStroke(each)));
      }
    }
    return curves;
  }

  /** The upper edge drawn through, the lower one dotted. */
  private static BasicStroke edgeStroke(Series edge) {
    return edge.role() == Role.HIGH ? Palette.stroke(0, 2) : Palette.edgeStroke(2);
  }

  private static void title(Graphics2D g2, String name, boolean over, Rectangle2D where) {
    g2.setFont(PANEL_TITLE);
    String mark = over ? "  ▲ over" : "";
    int room = (int) where.getWidth() - 24 - g2.getFontMetrics().stringWidth(mark);
    String text = EndLabels.shorten(name, g2.getFontMetrics(), room);
    float x = (float) where.getX();
    float y = (float) where.getY() + 22;
    g2.setPaint(Palette.INK);
    g2.drawString(text, x, y);
    g2.setPaint(Palette.OVER);
    g2.drawString(mark, x + g2.getFontMetrics().stringWidth(text), y);
  }

  /** What the colours and the line mean, right of the unit. */
  private static void key(Graphics2D g2, Chart chart, int groups, boolean over) {
    Map<String, EndLabels.Label> labels = new LinkedHashMap<>();
    for (Series each : chart.series()) {
      labels.putIfAbsent(each.name(), sample(each));
    }
    if (over) {
      labels.put("over", new EndLabels.Label("over the limit", HATCHED, null, 0, 0));
    }
    if (groups > MOST) {
      String some = MOST + " of " + groups + " shown";
      labels.put(some, new EndLabels.Label(some, null, null, 0, 0));
    }
    key(g2, chart, labels.values());
  }

  /** Names with samples, right of the unit. */
  static void key(Graphics2D g2, Chart chart, Collection<EndLabels.Label> labels) {
    g2.setFont(ChartPainter.TEXT);
    double x = ChartPainter.MARGIN + g2.getFontMetrics().stringWidth(chart.unit()) + 20;
    for (EndLabels.Label each : labels) {
      x = keyEntry(g2, each, x);
    }
  }

  private static EndLabels.Label sample(Series series) {
    return switch (series.role()) {
      case VALUE -> new EndLabels.Label(series.name(), Palette.of(series.colour()), null, 0, 0);
      case LINE ->
          new EndLabels.Label(
              series.name(), Palette.of(series.colour()), Palette.stroke(0, 3), 0, 0);
      case LOW, HIGH ->
          new EndLabels.Label(series.name(), Palette.of(series.colour()), edgeStroke(series), 0, 0);
      case LIMIT ->
          new EndLabels.Label(series.name(), Palette.LIMIT, Palette.limitStroke(2.5f), 0, 0);
    };
  }

  private static double keyEntry(Graphics2D g2, EndLabels.Label entry, double x) {
    String name = EndLabels.shorten(entry.name(), g2.getFontMetrics(), 300);
    double end = x + 38 + g2.getFontMetrics().stringWidth(name);
    if (end > ChartPainter.WIDTH - ChartPainter.MARGIN) {
      return x;
    }
    EndLabels.sample(g2, entry.paint(), entry.stroke(), x, 126);
    g2.setPaint(Palette.INK);
    g2.drawString(name, (float) x + 38, 134);
    return end + 24;
  }

  /** Vermilion with dark lines across, so that it stands out in a black print too. */
  private static Paint hatched() {
    BufferedImage tile = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
    Graphics2D g2 = tile.createGraphics();
    g2.setPaint(Palette.OVER);
    g2.fillRect(0, 0, 8, 8);
    g2.setPaint(new Color(0x6B, 0x2C, 0x00));
    g2.setStroke(new BasicStroke(1.6f));
    g2.drawLine(0, 8, 8, 0);
    g2.dispose();
    return new TexturePaint(tile, new Rectangle2D.Double(0, 0, 8, 8));
  }
}
