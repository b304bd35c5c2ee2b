package growingon.report.figures;

import growingon.report.text.Phrases;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Draws of a gain in classes of one round width; nil is the edge of a class.
 *
 * @param first number of the lowest class: it begins at {@code first × step}
 * @param step width of a class
 * @param draws draws in each class
 */
public record GainClasses(int first, double step, double[] draws) {
  private static final int MOST = 16;
  private static final double[] ROUND = {1, 2, 5, 10};

  /**
   * The classes of all gains, and an empty one after them.
   *
   * @param gains rising, at least one
   */
  public static GainClasses of(double[] gains) {
    double step = step(gains);
    int first = (int) Math.floor(gains[0] / step);
    int classes = (int) Math.floor(gains[gains.length - 1] / step) - first + 2;
    double[] draws = new double[classes];
    for (double gain : gains) {
      draws[(int) Math.floor(gain / step) - first]++;
    }
    return new GainClasses(first, step, draws);
  }

  /** A round width of class, 1, 2 or 5 times a power of ten, that gives at most MOST of them. */
  private static double step(double[] gains) {
    double span = Math.max(1, gains[gains.length - 1] - gains[0]);
    double step = Math.pow(10, Math.floor(Math.log10(span / MOST)));
    for (double factor : ROUND) {
      if (span / (step * factor) <= MOST) {
        return Math.max(1, step * factor);
      }
    }
    throw new IllegalStateException("no class holds " + span);
  }

  /** Lower edges of the classes. */
  public List<String> edges(Phrases say) {
    return IntStream.range(0, draws.length).mapToObj(i -> say.whole((first + i) * step)).toList();
  }

  /** Draws of 100 in each class on one side of nil; NaN on the other. */
  public List<Double> shares(boolean paying) {
    double all = IntStream.range(0, draws.length).mapToDouble(i -> draws[i]).sum();
    return IntStream.range(0, draws.length)
        .mapToObj(i -> first + i >= 0 == paying ? 100 * draws[i] / all : (Double) Double.NaN)
        .toList();
  }

  /** Where a gain lies, in classes from the lowest edge. */
  public double at(double gain) {
    return gain / step - first;
  }
}
