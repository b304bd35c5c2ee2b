package growingon.write.chart.plot;

import growingon.report.model.Chart.Series;
import growingon.write.chart.look.Hatch;
import growingon.write.chart.look.Palette;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The rectangles of one series: category i is drawn from {@code i + left} to {@code i + right} and
 * from {@code low[i]} to {@code high[i]}, in the units of the axes; NaN where there is none.
 */
record Block(Paint paint, double left, double right, double[] low, double[] high) {
  /** Series stacked on each other: what is above zero upwards, what is below zero downwards. */
  static List<Block> stacked(List<Series> series, int categories, double half) {
    double[] up = new double[categories];
    double[] down = new double[categories];
    List<Block> blocks = new ArrayList<>();
    for (Series each : series) {
      Block block = empty(Palette.of(each.colour()), categories, 0.5 - half, 0.5 + half);
      for (int i = 0; i < categories; i++) {
        double value = each.values().get(i);
        block.put(i, value >= 0 ? up : down, value);
      }
      blocks.add(block);
    }
    return blocks;
  }

  /** Series side by side within each category. */
  static List<Block> clustered(List<Series> series, int categories, double half) {
    List<Block> blocks = new ArrayList<>();
    double width = 2 * half / Math.max(1, series.size());
    for (int s = 0; s < series.size(); s++) {
      double left = 0.5 - half + s * width;
      Series each = series.get(s);
      double[] high = each.values().stream().mapToDouble(Double::doubleValue).toArray();
      blocks.add(
          new Block(
              Palette.of(each.colour()), left, left + width * 0.94, new double[categories], high));
    }
    return blocks;
  }

  /**
   * A bridge: a value of the first series stands on zero, one of another series begins where the
   * category before ended.
   */
  static List<Block> bridge(List<Series> series, int categories, double left, double right) {
    double[] ends = bridgeEnds(series, categories);
    List<Block> blocks = new ArrayList<>();
    for (int s = 0; s < series.size(); s++) {
      Block block = empty(Palette.of(series.get(s).colour()), categories, left, right);
      for (int i = 0; i < categories; i++) {
        double value = series.get(s).values().get(i);
        if (!Double.isNaN(value)) {
          block.low[i] = s == 0 ? 0 : ends[i] - value;
          block.high[i] = ends[i];
        }
      }
      blocks.add(block);
    }
    return blocks;
  }

  /** Where a bridge has come to after each category. */
  static double[] bridgeEnds(List<Series> series, int categories) {
    double[] ends = new double[categories];
    for (int i = 0; i < categories; i++) {
      ends[i] = i == 0 ? 0 : ends[i - 1];
      for (int s = 0; s < series.size(); s++) {
        double value = series.get(s).values().get(i);
        if (!Double.isNaN(value)) {
          ends[i] = s == 0 ? value : ends[i] + value;
        }
      }
    }
    return ends;
  }

  /** What of stacked blocks lies above a limit. */
  static Block beyond(List<Block> stacked, double[] limit) {
    double left = stacked.isEmpty() ? 0 : stacked.get(0).left;
    double right = stacked.isEmpty() ? 1 : stacked.get(0).right;
    Block above = empty(Hatch.OVER, limit.length, left, right);
    for (int i = 0; i < limit.length; i++) {
      double top = top(stacked, i);
      if (top > limit[i]) {
        above.low[i] = limit[i];
        above.high[i] = top;
      }
    }
    return above;
  }

  private static double top(List<Block> stacked, int category) {
    double top = Double.NaN;
    for (Block each : stacked) {
      double high = each.high[category];
      top = Double.isNaN(top) || high > top ? high : top;
    }
    return top;
  }

  private static Block empty(Paint paint, int categories, double left, double right) {
    double[] none = new double[categories];
    Arrays.fill(none, Double.NaN);
    return new Block(paint, left, right, none, none.clone());
  }

  private void put(int i, double[] top, double value) {
    if (!Double.isNaN(value)) {
      low[i] = top[i];
      top[i] += value;
      high[i] = top[i];
    }
  }

  /** Whether its rectangles touch each other, as those of months in a small panel. */
  boolean touches() {
    return right - left >= 1;
  }

  boolean isEmpty() {
    return tallest() == 0;
  }

  /** Height of the middle of the last category that has one, NaN if none has. */
  double middleAtEnd() {
    for (int i = low.length - 1; i >= 0; i--) {
      if (!Double.isNaN(high[i])) {
        return (low[i] + high[i]) / 2;
      }
    }
    return Double.NaN;
  }

  /** Height of the tallest rectangle. */
  double tallest() {
    double most = 0;
    for (int i = 0; i < low.length; i++) {
      double height = Math.abs(high[i] - low[i]);
      most = height > most ? height : most;
    }
    return most;
  }

  /**
   * Rectangles that touch, as outlines without a seam: one for each run of categories without a
   * gap, as x and y of its corners in turn. Each stands on zero unless it lies beyond a limit:
   * drawn from the top of a stack down, each hides the foot of the one before, and no background
   * shows between them.
   */
  List<double[]> outlines() {
    List<double[]> outlines = new ArrayList<>();
    int first = 0;
    while (first < high.length) {
      int last = first;
      while (last < high.length && !Double.isNaN(high[last])) {
        last++;
      }
      if (last > first) {
        outlines.add(outline(first, last));
      }
      first = last + 1;
    }
    return outlines;
  }

  private double[] outline(int first, int last) {
    DoubleStream.Builder corners = DoubleStream.builder();
    for (int i = first; i < last; i++) {
      add(corners, i == first || high[i] != high[i - 1], i, high[i]);
      add(corners, i == last - 1 || high[i] != high[i + 1], i + 1, high[i]);
    }
    for (int i = last - 1; i >= first; i--) {
      add(corners, i == last - 1 || foot(i) != foot(i + 1), i + 1, foot(i));
      add(corners, i == first || foot(i) != foot(i - 1), i, foot(i));
    }
    return corners.build().toArray();
  }

  private double foot(int category) {
    return paint instanceof Hatch ? low[category] : 0;
  }

  private static void add(DoubleStream.Builder corners, boolean turns, double x, double y) {
    if (turns) {
      corners.add(x).add(y);
    }
  }
}
