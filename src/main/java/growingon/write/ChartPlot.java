package growingon.write;

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
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;
import org.jfree.data.xy.DefaultXYDataset;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Bands, blocks and curves over an axis of categories, drawn into a rectangle. */
final class ChartPlot {
  private static final double HEADROOM = 0.06;
  private static final double MARK_SIZE = 11;

  private final XYPlot plot;
  private final Font font;
  private final Range range;
  private int layers;

  ChartPlot(List<String> categories, List<Block> blocks, List<Curve> curves, Font font) {
    this(categories, blocks, List.of(), curves, font);
  }

  /** One with bands shaded below everything else. */
  ChartPlot(
      List<String> categories,
      List<Block> blocks,
      List<Band> bands,
      List<Curve> curves,
      Font font) {
    this(new TimeAxis(categories, font, false), categories.size(), blocks, bands, curves, font);
  }

  private ChartPlot(
      TimeAxis axis,
      int categories,
      List<Block> blocks,
      List<Band> bands,
      List<Curve> curves,
      Font font) {
    this.font = font;
    this.range = range(blocks, curves);
    this.plot = new XYPlot();
    plot.setDomainAxis(axis);
    plot.setRangeAxis(valueAxis());
    paintFrame();
    bands.forEach(band -> add(intervals(band), bandRenderer(band)));
    add(new BlockDataset(blocks), blockRenderer(blocks, categories));
    List<Curve> halos =
        blocks.isEmpty()
            ? List.of()
            : curves.stream().filter(Curve::isBold).map(Curve::halo).toList();
    add(dataset(halos), curveRenderer(halos));
    add(dataset(curves), curveRenderer(curves));
    plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
  }

  /** One whose categories are named at their lower edges. */
  static ChartPlot atEdges(List<String> categories, List<Block> blocks, Font font) {
    TimeAxis axis = new TimeAxis(categories, font, true);
    return new ChartPlot(axis, categories.size(), blocks, List.of(), List.of(), font);
  }

  /** One that lies on its side: a row for each category, the first at the top. */
  static ChartPlot across(
      List<String> categories, List<Block> blocks, List<Curve> curves, Font font) {
    ChartPlot lying = new ChartPlot(categories, blocks, curves, font);
    lying.plot.setOrientation(PlotOrientation.HORIZONTAL);
    lying.plot.getDomainAxis().setInverted(true);
    return lying;
  }

  private void add(XYDataset dataset, XYItemRenderer renderer) {
    plot.setDataset(layers, dataset);
    plot.setRenderer(layers, renderer);
    layers++;
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

  /** Height of a value within the area that {@link #draw} gave. */
  double heightOf(double value, Rectangle2D area) {
    return plot.getRangeAxis().valueToJava2D(value, area, plot.getRangeAxisEdge());
  }

  /** From the lowest to the highest value, zero always within, some air beyond. */
  private static Range range(List<Block> blocks, List<Curve> curves) {
    double[] values =
        Stream.concat(
                blocks.stream().flatMap(each -> Stream.of(each.low(), each.high())),
                curves.stream().map(Curve::y))
            .flatMapToDouble(DoubleStream::of)
            .filter(Double::isFinite)
            .toArray();
    double high = DoubleStream.of(values).reduce(0, Math::max);
    double low = DoubleStream.of(values).reduce(0, Math::min);
    double air = (high - low) * HEADROOM;
    return high == low ? new Range(0, 1) : new Range(low < 0 ? low - air : 0, high + air);
  }

  private NumberAxis valueAxis() {
    NumberAxis axis = new NumberAxis();
    axis.setRange(range);
    axis.setStandardTickUnits(new NumberTickUnitSource(false, thousands()));
    axis.setTickLabelFont(font);
    axis.setTickLabelPaint(Palette.INK);
    axis.setTickLabelInsets(new RectangleInsets(font.getSize() * 0.6, 4, font.getSize() * 0.6, 6));
    axis.setAxisLineVisible(false);
    axis.setTickMarksVisible(false);
    return axis;
  }

  private static DecimalFormat thousands() {
    return new DecimalFormat("#,##0.####", DecimalFormatSymbols.getInstance(Locale.ENGLISH));
  }

  private void paintFrame() {
    plot.setBackgroundPaint(Color.WHITE);
    plot.setOutlineVisible(false);
    plot.setDomainGridlinesVisible(false);
    plot.setRangeGridlinePaint(Palette.RULE);
    plot.setRangeGridlineStroke(new BasicStroke(1.5f));
    plot.setRangeZeroBaselineVisible(range.getLowerBound() < 0);
    plot.setRangeZeroBaselinePaint(Palette.INK);
    plot.setRangeZeroBaselineStroke(new BasicStroke(2));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
  }

  private static XYBarRenderer blockRenderer(List<Block> blocks, int categories) {
    BlockRenderer renderer = new BlockRenderer();
    for (int i = 0; i < blocks.size(); i++) {
      renderer.setSeriesPaint(i, blocks.get(i).paint());
    }
    boolean apart = blocks.stream().anyMatch(each -> each.right() - each.left() < 0.99);
    renderer.setDrawBarOutline(apart && categories <= 40);
    renderer.setDefaultOutlinePaint(Color.WHITE);
    renderer.setDefaultOutlineStroke(new BasicStroke(1));
    return renderer;
  }

  private static DefaultXYDataset dataset(List<Curve> curves) {
    DefaultXYDataset dataset = new DefaultXYDataset();
    for (int i = 0; i < curves.size(); i++) {
      dataset.addSeries(i, new double[][] {curves.get(i).x(), curves.get(i).y()});
    }
    return dataset;
  }

  private static XYLineAndShapeRenderer curveRenderer(List<Curve> curves) {
    CurveRenderer renderer = new CurveRenderer(curves);
    for (int i = 0; i < curves.size(); i++) {
      renderer.setSeriesPaint(i, curves.get(i).colour());
      renderer.setSeriesStroke(i, curves.get(i).stroke());
      renderer.setSeriesShape(
          i, new Ellipse2D.Double(-MARK_SIZE / 2, -MARK_SIZE / 2, MARK_SIZE, MARK_SIZE));
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
