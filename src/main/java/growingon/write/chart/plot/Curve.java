package growingon.write.chart.plot;

import growingon.report.model.Chart.Series;
import growingon.write.chart.look.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import java.util.stream.DoubleStream;

/** A line of a chart, in the units of the axes; a NaN breaks it. */
record Curve(Color colour, BasicStroke stroke, boolean marks, double[] x, double[] y) {
  /** How far the strokes of two bands stand apart, in categories. */
  private static final double BESIDE = 0.18;

  /** A line through the middle of each category. */
  static Curve through(Series series, BasicStroke stroke, boolean marks) {
    List<Double> values = series.values();
    double[] x = new double[values.size()];
    double[] y = new double[values.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = i + 0.5;
      y[i] = values.get(i);
    }
    return new Curve(Palette.of(series.colour()), stroke, marks, x, y);
  }

  /** A line that is level over the whole width of each category, as a limit is. */
  static Curve level(double[] values, Color colour, BasicStroke stroke) {
    DoubleStream.Builder x = DoubleStream.builder();
    DoubleStream.Builder y = DoubleStream.builder();
    for (int i = 0; i < values.length; i++) {
      if (i == 0 || values[i] != values[i - 1]) {
        x.add(i);
        y.add(values[i]);
      }
      if (i == values.length - 1 || values[i] != values[i + 1]) {
        x.add(i + 1);
        y.add(values[i]);
      }
    }
    return new Curve(colour, stroke, false, x.build().toArray(), y.build().toArray());
  }

  /**
   * An upright stroke with short ends in each category, from low to high.
   *
   * @param before strokes of other bands in the category, beside which it stands
   */
  static Curve strokes(Series low, Series high, BasicStroke stroke, int before) {
    int categories = low.values().size();
    double[] x = new double[9 * categories];
    double[] y = new double[x.length];
    for (int i = 0; i < categories; i++) {
      double bottom = low.values().get(i);
      double top = high.values().get(i);
      double[] xs = {0.43, 0.57, Double.NaN, 0.5, 0.5, Double.NaN, 0.43, 0.57, Double.NaN};
      double[] ys = {bottom, bottom, Double.NaN, bottom, top, Double.NaN, top, top, Double.NaN};
      for (int k = 0; k < 9; k++) {
        x[9 * i + k] = i + xs[k] + before * BESIDE;
        y[9 * i + k] = ys[k];
      }
    }
    return new Curve(Palette.of(high.colour()), stroke, false, x, y);
  }

  /** Short lines of a bridge from each row to the next, at the value where the one ended. */
  static Curve links(double[] ends, double left, double right, Color colour, BasicStroke stroke) {
    int count = Math.max(0, ends.length - 1);
    double[] x = new double[3 * count];
    double[] y = new double[3 * count];
    for (int i = 0; i < count; i++) {
      double[] xs = {i + right, i + 1 + left, Double.NaN};
      double[] ys = {ends[i], ends[i], Double.NaN};
      System.arraycopy(xs, 0, x, 3 * i, 3);
      System.arraycopy(ys, 0, y, 3 * i, 3);
    }
    return new Curve(colour, stroke, false, x, y);
  }

  /** Whether it needs a white line below it to stand out; thin ones would hide with it too much. */
  boolean isBold() {
    return stroke.getLineWidth() > 1.8;
  }

  /** A white line under this one, so that it stands out from blocks of any colour. */
  Curve halo() {
    return new Curve(Color.WHITE, new BasicStroke(stroke.getLineWidth() + 2.2f), false, x, y);
  }

  /** Height at the last point that has one, NaN if none has. */
  double atEnd() {
    for (int i = y.length - 1; i >= 0; i--) {
      if (!Double.isNaN(y[i])) {
        return y[i];
      }
    }
    return Double.NaN;
  }

  /** Whether a point stands between two gaps, where a line alone would not show it. */
  boolean alone(int i) {
    return (i == 0 || Double.isNaN(y[i - 1])) && (i == y.length - 1 || Double.isNaN(y[i + 1]));
  }
}
