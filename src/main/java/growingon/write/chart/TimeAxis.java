package growingon.write.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
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

  private TimeAxis(List<String> categories, Font font, boolean atEdges) {
    this.categories = categories;
    this.atEdges = atEdges;
    setRange(0, Math.max(1, categories.size()));
    setTickLabelFont(font);
    setTickLabelPaint(Palette.INK);
    setAxisLinePaint(Palette.INK);
    setTickMarkPaint(Palette.INK);
    setTickLabelInsets(new RectangleInsets(0.45 * font.getSize(), 2, 2, 2)); // below the value nil
  }

  static TimeAxis of(List<String> categories, Font font) {
    return new TimeAxis(categories, font, false);
  }

  /** One whose categories are named at their lower edges. */
  static TimeAxis atEdges(List<String> categories, Font font) {
    return new TimeAxis(categories, font, true);
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
    Font font = getTickLabelFont();
    double room = dataArea.getWidth() / getRange().getLength();
    List<AxisMarks.Mark> marks =
        atEdges
            ? AxisMarks.edges(categories, room, label -> Lettering.width(label, font))
            : AxisMarks.of(categories, room, label -> Lettering.width(label, font));
    return marks.stream().map(TimeAxis::tick).toList();
  }

  private static NumberTick tick(AxisMarks.Mark mark) {
    return new NumberTick(mark.at(), mark.label(), TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0);
  }
}
