package growingon.write;

import growingon.report.Chart;
import growingon.report.Chart.Role;
import growingon.report.Chart.Series;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Draws a row for each category, with a bar from a common line to the value at the low end and one
 * to the value at the high end. The two stand one below the other, so that both show where they
 * point the same way.
 */
final class SwingPainter {
  private static final int ROW = 78;
  private static final int AXIS = 90;
  private static final double LEFT = 0.1;
  private static final double RIGHT = 0.9;

  private SwingPainter() {}

  /** Height in pixels: as the rows need, within what fits a page. */
  static int height(Chart chart) {
    int wanted = ChartPainter.HEAD + AXIS + ROW * chart.categories().size();
    return Math.max(400, Math.min(1100, wanted));
  }

  static void paint(Graphics2D g2, Chart chart, Rectangle2D where) {
    double[] line =
        first(chart, Role.LINE)
            .map(ChartPainter::values)
            .orElseGet(() -> new double[chart.categories().size()]);
    List<Block> blocks = new ArrayList<>();
    List<EndLabels.Label> names = new ArrayList<>();
    first(chart, Role.LOW).ifPresent(low -> add(low, line, LEFT, 0.5, blocks, names));
    first(chart, Role.HIGH).ifPresent(high -> add(high, line, 0.5, RIGHT, blocks, names));
    List<Curve> curves = new ArrayList<>();
    first(chart, Role.LINE)
        .ifPresent(
            each -> {
              Curve curve = Curve.level(line, Palette.of(each.colour()), Palette.limitStroke(4));
              curves.add(curve);
              names.add(new EndLabels.Label(each.name(), curve.colour(), curve.stroke(), 0, 0));
            });
    ChartPlot plot = ChartPlot.across(chart.categories(), blocks, curves, ChartPainter.TEXT);
    plot.draw(g2, where, new RectangleInsets(8, ChartPainter.MARGIN, 16, ChartPainter.MARGIN + 36));
    PanelPainter.key(g2, chart, names);
  }

  private static void add(
      Series series,
      double[] line,
      double left,
      double right,
      List<Block> blocks,
      List<EndLabels.Label> names) {
    Block block =
        new Block(
            Palette.of(series.colour()), left, right, line.clone(), ChartPainter.values(series));
    blocks.add(block);
    names.add(new EndLabels.Label(series.name(), block.paint(), null, 0, 0));
  }

  private static Optional<Series> first(Chart chart, Role role) {
    return ChartPainter.with(chart.series(), role).stream().findFirst();
  }
}
