package growingon.write.chart.plot;

import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.write.chart.look.Format;
import growingon.write.chart.look.Sample;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.ui.RectangleInsets;

/** One plot, with its names at its right end, or in the head where there is no room beside it. */
public final class PlotBody implements Body {
  private static final double LABELS = 0.26;
  private static final double LOWEST = 0.55;

  private final Chart chart;
  private final Format format;
  private final Font font;
  private final Layers layers;
  private final MarkPainter marks;

  public PlotBody(Chart chart, Format format) {
    this.chart = chart;
    this.format = format;
    this.font = format.text();
    this.layers =
        new Layers(chart.series(), style(chart.kind()), chart.categories().size(), font.getSize());
    this.marks = new MarkPainter(chart.marks(), font, chart.kind() == ChartKind.STACKED_BARS);
  }

  private static Layers.Style style(ChartKind kind) {
    return switch (kind) {
      case LINES -> Layers.Style.LINES;
      case BARS -> Layers.Style.BESIDE;
      case HISTOGRAM -> Layers.Style.CLASSES;
      default -> Layers.Style.STACKED;
    };
  }

  private boolean isNamedInHead() {
    return format.isNarrow() || chart.kind() == ChartKind.HISTOGRAM;
  }

  @Override
  public List<Sample> key() {
    return isNamedInHead() && layers.needsNames() ? layers.key() : List.of();
  }

  @Override
  public double height(double head) {
    double headroom = marks.headroom(format.width(), chart.categories().size());
    return Math.max(LOWEST * format.height(), format.height() - head) + headroom / 2;
  }

  @Override
  public void draw(Graphics2D g2, Rectangle2D where) {
    boolean beside = !isNamedInHead() && layers.needsNames();
    EndLabels labels = new EndLabels(font, LABELS * format.width());
    List<Layers.Named> named = beside ? layers.named() : List.of();
    double taken = labels.width(named.stream().map(Layers.Named::sample).toList());
    int categories = chart.categories().size();
    boolean atEdges = chart.kind() == ChartKind.HISTOGRAM;
    ChartPlot plot =
        new ChartPlot(
            atEdges
                ? TimeAxis.atEdges(chart.categories(), font, chart.writing())
                : TimeAxis.of(chart.categories(), font, chart.writing()),
            layers.content(),
            font,
            chart.writing());
    double headroom = marks.headroom(format.width(), categories);
    double right = format.margin() + Math.max(font.getSize() * 1.2, taken);
    Rectangle2D area =
        plot.draw(
            g2,
            where,
            new RectangleInsets(
                headroom + font.getSize() / 3.0, format.margin() / 2, font.getSize() / 3.0, right));
    double end = named.isEmpty() ? format.width() - format.margin() : area.getMaxX();
    marks.draw(g2, plot, area, categories, end);
    labels.draw(g2, plot, area, named);
  }
}
