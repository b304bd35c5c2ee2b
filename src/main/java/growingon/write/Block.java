package growingon.write;

import growingon.report.Chart.Series;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The rectangles of one series: category i is drawn from {@code i + left} to {@code i + right} and
 * from {@code low[i]} to {@code high[i]}, in the units of the axes; NaN where there is none.
 */
record Block(Paint paint, double left, double right, double[] low, double[] high) {
  /** A hair more than a category, so that rounding leaves no seam between neighbours. */
  private static final double HAIR = 1e-4;

  /** Series stacked on each other: what is above zero upwards, what is below zero downwards. */
  static List<Block> stacked(List<Series> series, int categories, double half) {
    double[] up = new double[categories];
    double[] down = new double[categories];
    List<Block> blocks = new ArrayList<>();
    for (Series each : series) {
      Block block = empty(Palette.of(each.colour()), categories, 0.5 - half, 0.5 + half + HAIR);
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
  static List<Block> bridge(List<Series> series, int categories, double half) {
    double[] ends = new double[categories];
    List<Block> blocks = new ArrayList<>();
    for (Series each : series) {
      blocks.add(empty(Palette.of(each.colour()), categories, 0.5 - half, 0.5 + half));
    }
    for (int i = 0; i < categories; i++) {
      double end = i == 0 ? 0 : ends[i - 1];
      for (int s = 0; s < series.size(); s++) {
        double value = series.get(s).values().get(i);
        if (!Double.isNaN(value)) {
          double start = s == 0 ? 0 : end;
          end = start + value;
          blocks.get(s).low[i] = start;
          blocks.get(s).high[i] = end;
        }
      }
      ends[i] = end;
    }
    return blocks;
  }

  /** The part of each block below a limit, and as last one everything above it. */
  static List<Block> cutAt(List<Block> blocks, double[] limit, Paint over) {
    List<Block> parts = new ArrayList<>();
    Block above = empty(over, limit.length, 0, 1 + HAIR);
    for (Block block : blocks) {
      Block below = empty(block.paint(), limit.length, 0, 1 + HAIR);
      for (int i = 0; i < limit.length; i++) {
        double cap = Double.isNaN(limit[i]) ? Double.POSITIVE_INFINITY : limit[i];
        below.low[i] = Math.min(block.low[i], cap);
        below.high[i] = Math.min(block.high[i], cap);
        if (block.high[i] > cap) {
          above.low[i] = cap;
          above.high[i] = block.high[i];
        }
      }
      parts.add(below);
    }
    parts.add(above);
    return parts;
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
}
