package growingon.write;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** The axis along the bottom: category i lies between i and i + 1. */
@SuppressWarnings("serial") // never serialized
final class TimeAxis extends NumberAxis {
  private final List<String> categories;

  TimeAxis(List<String> categories, Font font) {
    this.categories = categories;
    setRange(0, Math.max(1, categories.size()));
    setTickLabelFont(font);
    setTickLabelPaint(Palette.INK);
    setAxisLinePaint(Palette.INK);
    setTickMarkPaint(Palette.INK);
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    FontMetrics metrics = g2.getFontMetrics(getTickLabelFont());
    double room = dataArea.getWidth() / getRange().getLength();
    return AxisMarks.of(categories, room, metrics::stringWidth).stream()
        .map(TimeAxis::tick)
        .toList();
  }

  private static NumberTick tick(AxisMarks.Mark mark) {
    return new NumberTick(mark.at(), mark.label(), TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0);
  }
}
