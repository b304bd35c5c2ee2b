package growingon.write.chart.plot;

import growingon.nursery.number.Writing;
import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Palette;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/**
 * The axis of the categories along the bottom: category i lies between i and i + 1. Where a chart
 * lies on its side it has no labels: rows are named beside or above their bars.
 */
@SuppressWarnings("serial") // never serialized
final class TimeAxis extends NumberAxis {
  private final List<String> categories;
  private final boolean atEdges;
  private final transient Writing writing;

  private TimeAxis(List<String> categories, Font font, boolean atEdges, Writing writing) {
    this.writing = writing;
    this.categories = categories;
    this.atEdges = atEdges;
    setRange(0, Math.max(1, categories.size()));
    setTickLabelFont(font);
    setTickLabelPaint(Palette.INK);
    setAxisLinePaint(Palette.INK);
    setTickMarkPaint(Palette.INK);
    setTickLabelInsets(new RectangleInsets(0.45 * font.getSize(), 2, 2, 2)); // below the value nil
  }

  static TimeAxis of(List<String> categories, Font font, Writing writing) {
    return new TimeAxis(categories, font, false, writing);
  }

  /** One whose categories are named at their lower edges. */
  static TimeAxis atEdges(List<String> categories, Font font, Writing writing) {
    return new TimeAxis(categories, font, true, writing);
  }

  int count() {
    return categories.size();
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    if (edge == RectangleEdge.LEFT) {
      return List.of();
    }
    return marks(dataArea).stream().map(TimeAxis::tick).toList();
  }

  private List<AxisMarks.Mark> marks(Rectangle2D dataArea) {
    Font font = getTickLabelFont();
    double room = dataArea.getWidth() / getRange().getLength();
    return atEdges
        ? AxisMarks.edges(categories, room, label -> Lettering.width(label, font))
        : AxisMarks.of(categories, room, label -> Lettering.width(label, font), writing);
  }

  private static NumberTick tick(AxisMarks.Mark mark) {
    return new NumberTick(mark.at(), mark.line(0), TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0);
  }

  /** Room for the second lines of labels too. */
  @Override
  protected double findMaximumTickLabelHeight(
      @SuppressWarnings("rawtypes") List ticks,
      Graphics2D g2,
      Rectangle2D drawArea,
      boolean vertical) {
    double line = super.findMaximumTickLabelHeight(ticks, g2, drawArea, vertical);
    boolean second = marks(drawArea).stream().anyMatch(mark -> !mark.line(1).isEmpty());
    return line + (second ? lineHeight() : 0);
  }

  @Override
  protected AxisState drawTickMarksAndLabels(
      Graphics2D g2,
      double cursor,
      Rectangle2D plotArea,
      Rectangle2D dataArea,
      RectangleEdge edge) {
    AxisState state = super.drawTickMarksAndLabels(g2, cursor, plotArea, dataArea, edge);
    if (edge == RectangleEdge.BOTTOM) {
      float y = (float) (cursor + getTickLabelInsets().getTop() + lineHeight());
      List<AxisMarks.Mark> broken =
          marks(dataArea).stream().filter(mark -> !mark.line(1).isEmpty()).toList();
      for (AxisMarks.Mark mark : broken) {
        float x = (float) valueToJava2D(mark.at(), dataArea, edge);
        TextUtils.drawAlignedString(mark.line(1), g2, x, y, TextAnchor.TOP_CENTER);
      }
    }
    return state;
  }

  private double lineHeight() {
    return 1.15 * getTickLabelFont().getSize();
  }
}
