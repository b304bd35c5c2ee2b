package growingon.write.chart;

import growingon.report.model.Chart;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import growingon.write.chart.look.Sample;
import growingon.write.chart.plot.Body;
import growingon.write.chart.plot.PanelsBody;
import growingon.write.chart.plot.PlotBody;
import growingon.write.chart.plot.RowsBody;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/** Draws a chart: its head, and below it a plot, panels or rows, as its kind asks for. */
public final class ChartPainter {
  /** Pixels of a picture's width, for up to 24 cm of paper. */
  public static final int WIDTH = 1600;

  private final Format format;
  private final Body body;
  private final Head head;

  /** Lays a chart out, once for all drawings of a format. */
  public ChartPainter(Chart chart, Format format) {
    this.format = format;
    this.body = body(chart, format);
    this.head = new Head(chart, format, body.key());
  }

  private static Body body(Chart chart, Format format) {
    if (!hasFigures(chart)) {
      return new NoFigures(format);
    }
    return switch (chart.kind()) {
      case PANELS, BAR_PANELS -> new PanelsBody(chart, format);
      case SWINGS, BRIDGE -> new RowsBody(chart, format);
      case STACKED_BARS, BARS, LINES, HISTOGRAM -> new PlotBody(chart, format);
    };
  }

  private static boolean hasFigures(Chart chart) {
    return chart.series().stream()
        .flatMap(each -> each.values().stream())
        .anyMatch(Double::isFinite);
  }

  /** A picture of the wide format, {@link #WIDTH} pixels wide. */
  public static BufferedImage paint(Chart chart) {
    return new ChartPainter(chart, Format.WIDE).paint();
  }

  /** A picture {@link #WIDTH} pixels wide. */
  public BufferedImage paint() {
    return paint(WIDTH);
  }

  public static BufferedImage paint(Chart chart, Format format, int width) {
    return new ChartPainter(chart, format).paint(width);
  }

  private BufferedImage paint(int width) {
    double scale = (double) width / format.width();
    int height = (int) Math.round(scale * height());
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g2 = image.createGraphics();
    try {
      g2.setPaint(Color.WHITE);
      g2.fillRect(0, 0, width, height);
      g2.scale(scale, scale);
      draw(g2);
    } finally {
      g2.dispose();
    }
    return image;
  }

  /** Height of its picture in pixels. */
  public static int height(Chart chart) {
    return (int) Math.round((double) WIDTH / Format.WIDE.width() * height(chart, Format.WIDE));
  }

  /** Height of a drawing in whole units of its format. */
  public static int height(Chart chart, Format format) {
    return new ChartPainter(chart, format).height();
  }

  /** Height of the drawing in whole units of its format. */
  int height() {
    return (int) Math.ceil(head.height() + body.height(head.height()));
  }

  /** Draws from the upper left corner of whatever is drawn on, a unit of its format a dot. */
  void draw(Graphics2D g2) {
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g2.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    double top = head.height();
    g2.setPaint(Color.WHITE);
    g2.fill(new Rectangle2D.Double(0, 0, format.width(), height()));
    head.draw(g2);
    body.draw(g2, new Rectangle2D.Double(0, top, format.width(), height() - top));
  }

  /** Says that there is nothing to draw. */
  private record NoFigures(Format format) implements Body {
    @Override
    public List<Sample> key() {
      return List.of();
    }

    @Override
    public double height(double head) {
      return 3.0 * format.text().getSize();
    }

    @Override
    public void draw(Graphics2D g2, Rectangle2D where) {
      Lettering.draw(
          g2,
          List.of("No figures."),
          format.text(),
          Palette.QUIET,
          format.margin(),
          where.getY() + format.margin());
    }
  }
}
