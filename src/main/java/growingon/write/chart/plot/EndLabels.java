package growingon.write.chart.plot;

import growingon.write.chart.look.Lettering;
import growingon.write.chart.look.Sample;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The names of the series at the right end of a chart, each as near as it fits to where its band or
 * line ends, with a sample of its colour.
 *
 * @param widest width that a label may take, its sample counted
 */
record EndLabels(Font font, double widest) {
  private static final double GAP = 0.5;
  private static final int MOST_LINES = 3;

  /**
   * One name.
   *
   * @param at height where its middle would best stand
   * @param size how large the series grows: if not all names fit, the largest stay
   */
  private record Label(Sample sample, double at, double size) {}

  /** Width that the labels take, with the gap before them. */
  double width(List<Sample> samples) {
    double taken = 0;
    for (Sample each : samples) {
      taken = Math.max(taken, each.indent(font) + Lettering.widest(lines(each), font));
    }
    return samples.isEmpty() ? 0 : GAP * font.getSize() + Math.min(widest, taken);
  }

  private List<String> lines(Sample sample) {
    return Lettering.lines(sample.name(), font, widest - sample.indent(font), MOST_LINES);
  }

  private double height(Label label) {
    return Math.max(1, lines(label.sample()).size()) * Lettering.line(font);
  }

  /** Draws the names of a plot right of its area; what has no value has no place there. */
  void draw(Graphics2D g2, ChartPlot plot, Rectangle2D area, List<Layers.Named> named) {
    draw(
        g2,
        area,
        named.stream()
            .filter(each -> Double.isFinite(each.at()))
            .map(each -> new Label(each.sample(), plot.along(each.at(), area), each.size()))
            .toList());
  }

  private void draw(Graphics2D g2, Rectangle2D area, List<Label> labels) {
    List<Label> kept = fitting(labels, area.getHeight() + Lettering.line(font));
    if (kept.size() < labels.size()) {
      String rest = "and %d smaller".formatted(labels.size() - kept.size());
      kept.add(new Label(Sample.word(rest), area.getMaxY(), 0));
    }
    kept.sort(Comparator.comparingDouble(Label::at));
    double half = Lettering.line(font) / 2;
    double[] middles =
        spread(
            kept.stream().mapToDouble(Label::at).toArray(),
            kept.stream().mapToDouble(this::height).toArray(),
            area.getMinY() - half,
            area.getMaxY() + half);
    for (int i = 0; i < middles.length; i++) {
      Label each = kept.get(i);
      double top = middles[i] - height(each) / 2;
      each.sample()
          .draw(g2, lines(each.sample()), font, area.getMaxX() + GAP * font.getSize(), top);
    }
  }

  /** The largest ones that fit with a line for the rest, in their first order. */
  private List<Label> fitting(List<Label> labels, double room) {
    if (labels.stream().mapToDouble(this::height).sum() <= room) {
      return new ArrayList<>(labels);
    }
    List<Label> sorted =
        labels.stream().sorted(Comparator.comparingDouble(Label::size).reversed()).toList();
    Set<Label> kept = new HashSet<>();
    double left = room - Lettering.line(font);
    for (Label each : sorted) {
      left -= height(each);
      if (left < 0) {
        break;
      }
      kept.add(each);
    }
    return new ArrayList<>(labels.stream().filter(kept::contains).toList());
  }

  /**
   * Moves middles, given in rising order, apart so that things of such heights do not overlap, and
   * within top and bottom.
   */
  static double[] spread(double[] wished, double[] heights, double top, double bottom) {
    double[] middles = wished.clone();
    double least = top;
    for (int i = 0; i < middles.length; i++) {
      middles[i] = Math.max(middles[i], least + heights[i] / 2);
      least = middles[i] + heights[i] / 2;
    }
    double most = bottom;
    for (int i = middles.length - 1; i >= 0; i--) {
      middles[i] = Math.min(middles[i], most - heights[i] / 2);
      most = middles[i] - heights[i] / 2;
    }
    return middles;
  }
}
