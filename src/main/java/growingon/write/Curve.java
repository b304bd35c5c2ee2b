package growingon.write;

import growingon.report.Chart.Series;
import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/** A line of a chart, in the units of the axes; a NaN breaks it. */
record Curve(Color colour, BasicStroke stroke, boolean marks, double[] x, double[] y) {
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
    double[] x = new double[2 * values.length];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = (i + 1) / 2;
      y[i] = values[i / 2];
    }
    return new Curve(colour, stroke, false, x, y);
  }

  /** A white line under this one, so that it stands out from blocks of any colour. */
  Curve halo() {
    return new Curve(Color.WHITE, new BasicStroke(stroke.getLineWidth() + 3), false, x, y);
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
