package growingon.fit.past;

import java.util.List;

/** The unit to which trunks were read: the largest of these that divides all of a file. */
final class MeasuringUnit {
  /** No trunk is read more finely, mm. */
  static final double FINEST = 0.1;

  private static final double[] UNITS = {5, 1, 0.5};
  private static final double ROUNDING = 1e-6;

  private MeasuringUnit() {}

  /** The unit of some values, in their own unit. */
  static double of(List<Double> values) {
    for (double unit : UNITS) {
      if (values.stream().allMatch(value -> isWhole(value / unit))) {
        return unit;
      }
    }
    return FINEST;
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) < ROUNDING;
  }
}
