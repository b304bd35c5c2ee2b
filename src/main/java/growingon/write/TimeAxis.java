package growingon.write;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * The axis of the categories: category i lies between i and i + 1. Along the bottom, or along the
 * left with the first at the top.
 */
@SuppressWarnings("serial") // never serialized
final class TimeAxis extends NumberAxis {
  private static final int LONGEST_ROW_NAME = 50;

  private final List<String> categories;
  private final boolean atEdges;

  /**
   * An axis.
   *
   * @param atEdges whether a category is named at its lower edge, not at its middle
   */
  TimeAxis(List<String> categories, Font font, boolean atEdges) {
    this.categories = categories;
    this.atEdges = atEdges;
    setRange(0, Math.max(1, categories.size()));
    setTickLabelFont(font);
    setTickLabelPaint(Palette.INK);
    setAxisLinePaint(Palette.INK);
    setTickMarkPaint(Palette.INK);
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    if (edge == RectangleEdge.LEFT) {
      return rows();
    }
    FontMetrics metrics = g2.getFontMetrics(getTickLabelFont());
    double room = dataArea.getWidth() / getRange().getLength();
    List<AxisMarks.Mark> marks =
        atEdges
            ? AxisMarks.edges(categories, room, metrics::stringWidth)
            : AxisMarks.of(categories, room, metrics::stringWidth);
    return marks.stream().map(TimeAxis::tick).toList();
  }

  private static NumberTick tick(AxisMarks.Mark mark) {
    return new NumberTick(mark.at(), mark.label(), TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0);
  }

  private List<NumberTick> rows() {
    return IntStream.range(0, categories.size())
        .mapToObj(
            row ->
                new NumberTick(
                    row + 0.5,
                    shorten(categories.get(row)),
                    TextAnchor.CENTER_RIGHT,
                    TextAnchor.CENTER_RIGHT,
                    0))
        .toList();
  }

  private static String shorten(String name) {
    return name.length() <= LONGEST_ROW_NAME
        ? name
        : name.substring(0, LONGEST_ROW_NAME - 1).strip() + "…";
  }
}
