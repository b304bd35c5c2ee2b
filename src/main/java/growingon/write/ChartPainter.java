package growingon.write;

import growingon.report.Chart;
import growingon.report.Chart.ChartKind;
import growingon.report.Chart.Role;
import growingon.report.Chart.Series;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.ui.RectangleInsets;

/** Draws a chart as a picture of 1600 by 900 pixels (more for many panels), for 24 cm of paper. */
final class ChartPainter {
  static final int WIDTH = 1600;
  static final int HEIGHT = 900;
  static final int MARGIN = 24;
  static final int HEAD = 148;
  static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 34);
  static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 23);
  static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 18);

  private static final float LINE_WIDTH = 4;
  private static final int WIDEST_BAR = 90;
  private static final int MARKS_UP_TO = 24;

  private ChartPainter() {}

  static BufferedImage paint(Chart chart) {
    int height = height(chart);
    BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g2 = image.createGraphics();
    try {
      draw(g2, chart);
    } finally {
      g2.dispose();
    }
    return image;
  }

  /** Draws a chart from the upper left corner of whatever is drawn on. */
  static void draw(Graphics2D g2, Chart chart) {
    int height = height(chart);
    prepare(g2, height);
    head(g2, chart);
    body(g2, chart, new Rectangle2D.Double(0, HEAD, WIDTH, height - HEAD));
  }

  /** Height of its picture in pixels. */
  static int height(Chart chart) {
    return switch (chart.kind()) {
      case PANELS -> PanelPainter.height(chart);
      case SWINGS -> SwingPainter.height(chart);
      default -> HEIGHT;
    };
  }

  private static void prepare(Graphics2D g2, int height) {
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g2.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g2.setPaint(Color.WHITE);
    g2.fillRect(0, 0, WIDTH, height);
  }

  private static void head(Graphics2D g2, Chart chart) {
    text(g2, chart.title(), TITLE, Palette.INK, 50);
    text(g2, chart.subtitle(), TEXT, Palette.QUIET, 88);
    text(g2, chart.unit(), TEXT, Palette.INK, 134);
  }

  private static void text(Graphics2D g2, String text, Font font, Color colour, int y) {
    g2.setFont(font);
    g2.setPaint(colour);
    g2.drawString(EndLabels.shorten(text, g2.getFontMetrics(), WIDTH - 2 * MARGIN), MARGIN, y);
  }

  private static void body(Graphics2D g2, Chart chart, Rectangle2D where) {
    if (!hasFigures(chart)) {
      text(g2, "No figures.", TEXT, Palette.QUIET, HEAD + 60);
    } else if (chart.kind() == ChartKind.PANELS) {
      PanelPainter.paint(g2, chart, where);
    } else if (chart.kind() == ChartKind.SWINGS) {
      SwingPainter.paint(g2, chart, where);
    } else {
      single(g2, chart, where);
    }
  }

  private static boolean hasFigures(Chart chart) {
    return chart.series().stream()
        .flatMap(each -> each.values().stream())
        .anyMatch(Double::isFinite);
  }

  private static void single(Graphics2D g2, Chart chart, Rectangle2D where) {
    List<Series> filled =
        chart.kind() == ChartKind.LINES ? List.of() : with(chart.series(), Role.VALUE);
    List<Block> blocks = blocks(chart, filled);
    List<Series> lined = lined(chart, filled);
    List<Curve> curves = curves(lined, chart);
    List<Band> bands = chart.kind() == ChartKind.LINES ? Band.of(chart.series()) : List.of();
    ChartPlot plot =
        chart.kind() == ChartKind.HISTOGRAM
            ? ChartPlot.atEdges(chart.categories(), blocks, TEXT)
            : new ChartPlot(chart.categories(), blocks, bands, curves, TEXT);
    boolean named = chart.series().size() > 1;
    List<String> names =
        named ? chart.series().stream().map(each -> name(each, chart)).toList() : List.of();
    FontMetrics metrics = g2.getFontMetrics(TEXT);
    int right = MARGIN + Math.max(36, EndLabels.width(names, metrics));
    int left = chart.kind() == ChartKind.HISTOGRAM ? 2 * MARGIN : MARGIN - 8;
    Rectangle2D area = plot.draw(g2, where, new RectangleInsets(8, left, 16, right));
    if (named) {
      labels(g2, area, plot, filled, blocks, lined, curves, chart);
    }
  }

  private static List<Block> blocks(Chart chart, List<Series> filled) {
    int categories = chart.categories().size();
    double bar = Math.min(0.38, WIDEST_BAR / (1200.0 / categories));
    return switch (chart.kind()) {
      case STACKED_AREAS -> Block.stacked(filled, categories, categories == 1 ? bar : 0.5);
      case BARS -> Block.clustered(filled, categories, Math.max(bar, filled.size() > 1 ? 0.4 : 0));
      case HISTOGRAM -> Block.stacked(filled, categories, 0.48);
      case BRIDGE -> Block.bridge(filled, categories, bar);
      default -> Block.stacked(filled, categories, bar);
    };
  }

  /** What is drawn as a line; the lower edge of a stroke on bars is drawn with its upper one. */
  private static List<Series> lined(Chart chart, List<Series> filled) {
    boolean strokes = chart.kind() != ChartKind.LINES;
    return chart.kind() == ChartKind.HISTOGRAM
        ? List.of()
        : chart.series().stream()
            .filter(each -> !filled.contains(each))
            .filter(each -> !(strokes && each.role() == Role.LOW))
            .toList();
  }

  private static List<Curve> curves(List<Series> lined, Chart chart) {
    List<Curve> curves = new ArrayList<>();
    int lines = 0;
    for (Series each : lined) {
      if (each.role() == Role.LIMIT) {
        curves.add(Curve.level(values(each), Palette.LIMIT, Palette.limitStroke(LINE_WIDTH)));
      } else if (!Band.isEdge(each)) {
        boolean marks = each.values().size() <= MARKS_UP_TO;
        curves.add(Curve.through(each, Palette.stroke(lines++, LINE_WIDTH), marks));
      } else {
        curves.add(edge(each, chart));
      }
    }
    return curves;
  }

  private static Curve edge(Series edge, Chart chart) {
    return strokeOf(edge, chart)
        .map(band -> Curve.strokes(band.low(), edge, Palette.stroke(0, LINE_WIDTH)))
        .orElseGet(() -> Curve.through(edge, Palette.edgeStroke(LINE_WIDTH - 1), false));
  }

  /** The band that is drawn as a stroke on each bar, if the series is its upper edge. */
  private static Optional<Band> strokeOf(Series edge, Chart chart) {
    return chart.kind() == ChartKind.LINES
        ? Optional.empty()
        : Band.of(chart.series()).stream().filter(each -> each.high() == edge).findFirst();
  }

  private static void labels(
      Graphics2D g2,
      Rectangle2D area,
      ChartPlot plot,
      List<Series> filled,
      List<Block> blocks,
      List<Series> lined,
      List<Curve> curves,
      Chart chart) {
    boolean bars = chart.kind() == ChartKind.BARS || chart.kind() == ChartKind.BRIDGE;
    List<EndLabels.Label> labels = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      Block block = blocks.get(i);
      double at = bars ? area.getMinY() : plot.heightOf(block.middleAtEnd(), area);
      labels.add(bars ? i : 0, label(filled.get(i), block, at));
    }
    for (int i = 0; i < curves.size(); i++) {
      Curve curve = curves.get(i);
      labels.add(
          new EndLabels.Label(
              name(lined.get(i), chart),
              curve.colour(),
              curve.stroke(),
              plot.heightOf(curve.atEnd(), area),
              Double.MAX_VALUE));
    }
    EndLabels.draw(g2, area, labels, TEXT);
  }

  /** A stroke on a bar bears the names of both its ends. */
  private static String name(Series lined, Chart chart) {
    return strokeOf(lined, chart)
        .map(band -> band.low().name() + " to " + band.high().name())
        .orElse(lined.name());
  }

  private static EndLabels.Label label(Series series, Block block, double at) {
    return new EndLabels.Label(series.name(), block.paint(), null, at, block.tallest());
  }

  static List<Series> with(List<Series> series, Role role) {
    return series.stream().filter(each -> each.role() == role).toList();
  }

  static double[] values(Series series) {
    return series.values().stream().mapToDouble(Double::doubleValue).toArray();
  }
}
