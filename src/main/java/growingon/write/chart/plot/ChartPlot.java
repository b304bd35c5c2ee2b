package growingon.write.chart.plot;

import growingon.nursery.number.Writing;
import growingon.write.chart.look.Hatch;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPolygonAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.SeriesRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;
import org.jfree.data.xy.DefaultXYDataset;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Bands, blocks and curves over an axis of categories, drawn into a rectangle. */
final class ChartPlot {
  private static final double HEADROOM = 0.06;
  private static final double MARK_SIZE = 0.38;

  /** With more bars than this their rims would hide what they fill. */
  private static final int RIMMED = 24;

  private final XYPlot plot = new XYPlot();
  private final TimeAxis axis;
  private final Writing writing;
  private final Font font;
  private Range range;
  private int layers;

  /** What is drawn, from back to front. */
  record Content(List<Band> bands, List<Block> blocks, List<Curve> curves) {}

  ChartPlot(TimeAxis axis, Content content, Font font, Writing writing) {
    this.writing = writing;
    this.axis = axis;
    this.font = font;
    this.range = range(content);
    plot.setDomainAxis(axis);
    plot.setRangeAxis(valueAxis());
    paintFrame();
    content.bands().forEach(band -> add(intervals(band), bandRenderer(band)));
    List<Block> apart = content.blocks().stream().filter(each -> !each.touches()).toList();
    XYBarRenderer bars = blockRenderer(apart, axis.count());
    outlines(content.blocks(), bars);
    add(new BlockDataset(apart), bars);
    List<Curve> halos =
        content.blocks().isEmpty()
            ? List.of()
            : content.curves().stream().filter(Curve::isBold).map(Curve::halo).toList();
    add(dataset(halos), curveRenderer(halos));
    add(dataset(content.curves()), curveRenderer(content.curves()));
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
    plot.setSeriesRenderingOrder(SeriesRenderingOrder.FORWARD);
  }

  /** Lays it on its side: a row for each category, the first at the top. */
  void turn() {
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    axis.setInverted(true);
    axis.setAxisLineVisible(false);
  }

  /** Leaves room for letters beyond the ends of the value axis, as shares of its whole length. */
  void widen(double before, double after) {
    double length = range.getLength() / (1 - before - after);
    range =
        new Range(range.getLowerBound() - before * length, range.getUpperBound() + after * length);
    plot.getRangeAxis().setRange(range);
  }

  private void add(XYDataset dataset, XYItemRenderer renderer) {
    plot.setDataset(layers, dataset);
    plot.setRenderer(layers, renderer);
    layers++;
  }

  /** Blocks that touch, from the top of the stack down, and what lies beyond a limit in front. */
  private static void outlines(List<Block> blocks, XYBarRenderer renderer) {
    for (int i = blocks.size() - 1; i >= 0; i--) {
      outline(blocks.get(i), renderer, blocks.get(i).paint() != Hatch.OVER);
    }
    blocks.forEach(each -> outline(each, renderer, each.paint() == Hatch.OVER));
  }

  private static void outline(Block block, XYBarRenderer renderer, boolean draws) {
    if (draws && block.touches()) {
      block
          .outlines()
          .forEach(
              corners ->
                  renderer.addAnnotation(
                      new XYPolygonAnnotation(corners, null, null, block.paint()),
                      Layer.BACKGROUND));
    }
  }

  private static DeviationRenderer bandRenderer(Band band) {
    DeviationRenderer renderer = new DeviationRenderer(false, false);
    renderer.setAlpha(1);
    renderer.setSeriesFillPaint(0, Palette.pale(band.high().colour()));
    return renderer;
  }

  private static YIntervalSeriesCollection intervals(Band band) {
    YIntervalSeries series = new YIntervalSeries(0);
    for (int i = 0; i < band.low().values().size(); i++) {
      double low = band.low().values().get(i);
      double high = band.high().values().get(i);
      if (Double.isFinite(low) && Double.isFinite(high)) {
        series.add(i + 0.5, high, low, high);
      }
    }
    YIntervalSeriesCollection collection = new YIntervalSeriesCollection();
    collection.addSeries(series);
    return collection;
  }

  /** Width of the numbers along the value axis, of whichever there are where it is so high. */
  double labelRoom(Graphics2D g2, double width, double height) {
    return DoubleStream.of(height, 0.8 * height, 0.6 * height, 0.4 * height)
        .map(
            each ->
                plot.getRangeAxis()
                    .reserveSpace(
                        g2,
                        plot,
                        new Rectangle2D.Double(0, 0, width, each),
                        plot.getRangeAxisEdge(),
                        new AxisSpace())
                    .getLeft())
        .max()
        .orElse(0);
  }

  /**
   * Half the width of the widest number along the value axis: so far it may reach beyond its end.
   */
  double halfOfANumber() {
    double low = Lettering.width(thousands().format(Math.rint(range.getLowerBound())), font);
    double high = Lettering.width(thousands().format(Math.rint(range.getUpperBound())), font);
    return Math.max(low, high) / 2;
  }

  /** Gives the numbers along the value axis so much width. */
  void setLabelRoom(double width) {
    AxisSpace space = new AxisSpace();
    space.setLeft(width);
    plot.setFixedRangeAxisSpace(space);
  }

  /** Draws it and says where the area within the axes lies. */
  Rectangle2D draw(Graphics2D g2, Rectangle2D where, RectangleInsets insets) {
    plot.setInsets(insets);
    JFreeChart chart = new JFreeChart(null, font, plot, false);
    chart.setBackgroundPaint(Color.WHITE);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    ChartRenderingInfo info = new ChartRenderingInfo(null);
    chart.draw(g2, where, info);
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    return info.getPlotInfo().getDataArea();
  }

  /** Where a value lies along its axis within the area that {@link #draw} gave. */
  double along(double value, Rectangle2D area) {
    return plot.getRangeAxis().valueToJava2D(value, area, plot.getRangeAxisEdge());
  }

  /** From the lowest to the highest value, zero always within, some air beyond. */
  private static Range range(Content content) {
    double[] values =
        Stream.concat(
                content.blocks().stream().flatMap(each -> Stream.of(each.low(), each.high())),
                content.curves().stream().map(Curve::y))
            .flatMapToDouble(DoubleStream::of)
            .filter(Double::isFinite)
            .toArray();
    double high = DoubleStream.of(values).reduce(0, Math::max);
    double low = DoubleStream.of(values).reduce(0, Math::min);
    double air = (high - low) * HEADROOM;
    return high == low
        ? new Range(0, 1)
        : new Range(low < 0 ? low - air : 0, high > 0 ? high + air : 0);
  }

  private NumberAxis valueAxis() {
    NumberAxis axis = new NumberAxis();
    axis.setRange(range);
    axis.setStandardTickUnits(new NumberTickUnitSource(false, thousands()));
    axis.setTickLabelFont(font);
    axis.setTickLabelPaint(Palette.INK);
    double air = font.getSize() * 0.25;
    axis.setTickLabelInsets(new RectangleInsets(air, air, air, air));
    axis.setAxisLineVisible(false);
    axis.setTickMarksVisible(false);
    return axis;
  }

  private DecimalFormat thousands() {
    DecimalFormatSymbols marks = DecimalFormatSymbols.getInstance(Locale.ENGLISH);
    marks.setGroupingSeparator(writing.digits().thousands());
    marks.setDecimalSeparator(writing.digits().decimal());
    return new DecimalFormat("#,##0.####", marks);
  }

  private void paintFrame() {
    float hair = font.getSize() / 18f;
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(Palette.RULE);
    plot.setRangeGridlineStroke(new BasicStroke(hair));
    plot.setRangeZeroBaselineVisible(range.getLowerBound() < 0);
    plot.setRangeZeroBaselinePaint(Palette.INK);
    plot.setRangeZeroBaselineStroke(new BasicStroke(hair * 1.2f));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
  }

  private XYBarRenderer blockRenderer(List<Block> blocks, int categories) {
    BlockRenderer renderer = new BlockRenderer();
    renderer.setDrawBarOutline(categories <= RIMMED);
    for (int i = 0; i < blocks.size(); i++) {
      renderer.setSeriesPaint(i, blocks.get(i).paint());
      if (blocks.get(i).paint() instanceof Color colour) {
        renderer.setSeriesOutlinePaint(i, Palette.rim(colour));
      }
    }
    renderer.setDefaultOutlinePaint(Palette.rim(Palette.OVER));
    renderer.setDefaultOutlineStroke(new BasicStroke(font.getSize() / 22f));
    renderer.setAutoPopulateSeriesOutlinePaint(false);
    renderer.setAutoPopulateSeriesOutlineStroke(false);
    return renderer;
  }

  private static DefaultXYDataset dataset(List<Curve> curves) {
    DefaultXYDataset dataset = new DefaultXYDataset();
    for (int i = 0; i < curves.size(); i++) {
      dataset.addSeries(i, new double[][] {curves.get(i).x(), curves.get(i).y()});
    }
    return dataset;
  }

  private XYLineAndShapeRenderer curveRenderer(List<Curve> curves) {
    CurveRenderer renderer = new CurveRenderer(curves);
    double size = MARK_SIZE * font.getSize();
    for (int i = 0; i < curves.size(); i++) {
      renderer.setSeriesPaint(i, curves.get(i).colour());
      renderer.setSeriesStroke(i, curves.get(i).stroke());
      renderer.setSeriesShape(i, new Ellipse2D.Double(-size / 2, -size / 2, size, size));
    }
    return renderer;
  }

  /** Rectangles without smoothed edges, so that neighbours meet without a seam. */
  @SuppressWarnings("serial") // never serialized
  private static final class BlockRenderer extends XYBarRenderer {
    BlockRenderer() {
      setUseYInterval(true);
      setShadowVisible(false);
      setBarPainter(new StandardXYBarPainter());
    }

    @Override
    public XYItemRendererState initialise(
        Graphics2D g2, Rectangle2D area, XYPlot plot, XYDataset dataset, PlotRenderingInfo info) {
      g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
      return super.initialise(g2, area, plot, dataset, info);
    }
  }

  /** Smooth lines; a point between two gaps is shown by its mark. */
  @SuppressWarnings("serial") // never serialized
  private static final class CurveRenderer extends XYLineAndShapeRenderer {
    private final List<Curve> curves;

    CurveRenderer(List<Curve> curves) {
      this.curves = curves;
      setDrawSeriesLineAsPath(true);
    }

    @Override
    public boolean getItemShapeVisible(int series, int item) {
      Curve curve = curves.get(series);
      return curve.marks() || curve.alone(item);
    }

    @Override
    public XYItemRendererState initialise(
        Graphics2D g2, Rectangle2D area, XYPlot plot, XYDataset dataset, PlotRenderingInfo info) {
      g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      return super.initialise(g2, area, plot, dataset, info);
    }
  }
}
