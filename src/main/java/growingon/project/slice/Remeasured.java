package growingon.project.slice;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Trunks moved to a measured mean and spread by an affine map of their logarithms, which keeps each
 * slice's rank: d → c dᵇ with b ≥ 0. Mean and spread are those of the plants the slices stand for,
 * and are met exactly; measured as they are, trunks stay as they are.
 */
final class Remeasured {
  private static final double SAME = 1e-13;
  private static final double STEEPEST = 4096;
  private static final double THICKEST_LOG = 50;

  private final double[] logs;
  private final double[] weights;
  private final boolean alike;
  private final double mostLog;
  private final double[] scratch;
  private final Map<Double, Double> spreads = new HashMap<>();

  /**
   * Trunks to be moved.
   *
   * @param trunks of each slice, mm
   * @param weights plants each slice stands for
   * @param scores standard normal scores of the slices, by which they are told apart where all
   *     trunks are alike
   */
  Remeasured(double[] trunks, double[] weights, double[] scores) {
    this.weights = weights;
    this.logs = new double[trunks.length];
    double middle = Math.log(trunks[0]);
    boolean same = true;
    for (int i = 0; i < trunks.length; i++) {
      logs[i] = Math.log(trunks[i]);
      same &= Math.abs(logs[i] - middle) < SAME;
    }
    if (same) {
      System.arraycopy(scores, 0, logs, 0, scores.length);
    }
    this.alike = same;
    this.mostLog = mostLog();
    this.scratch = new double[logs.length];
  }

  private double mostLog() {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logs.length; i++) {
      most = weights[i] > 0 ? Math.max(most, logs[i]) : most;
    }
    return most;
  }

  /**
   * The trunks after measuring.
   *
   * @param mean measured mean, mm
   * @param spread measured spread as a share of the mean; empty to keep the spread there is
   */
  double[] to(double mean, OptionalDouble spread) {
    double now = alike ? 0 : 1;
    double[] moved = new double[logs.length];
    scale(spread.isPresent() ? steepness(spread.getAsDouble(), now) : now, moved);
    double factor = mean / mean(moved, weights);
    for (int i = 0; i < moved.length; i++) {
      moved[i] *= factor;
    }
    return moved;
  }

  /** The b that gives a spread; the one there is where no b can, as all plants are in one slice. */
  private double steepness(double spread, double now) {
    if (Math.abs(spreadAt(now) - spread) <= SAME) {
      return now;
    }
    double steep = 1;
    while (spreadAt(steep) < spread) {
      steep *= 2;
      if (steep > STEEPEST) {
        return now;
      }
    }
    return new BrentSolver(1e-15, 1e-15, 1e-16)
        .solve(500, each -> spreadAt(each) - spread, 0, steep);
  }

  /** Spread at a steepness; the search for one asks for the ends of its range again. */
  private double spreadAt(double steepness) {
    return spreads.computeIfAbsent(
        steepness,
        asked -> {
          scale(asked, scratch);
          return spread(scratch, weights);
        });
  }

  /**
   * Trunks at a steepness of 0 or more, the thickest with plants as 1. Slices without plants count
   * for nothing; thicker ones among them keep to numbers that can be reckoned with.
   */
  private void scale(double steepness, double[] to) {
    double most = steepness * mostLog;
    for (int i = 0; i < to.length; i++) {
      to[i] = Math.exp(Math.min(THICKEST_LOG, steepness * logs[i] - most));
    }
  }

  /** Spread of values as a share of their mean. */
  static double spread(double[] values, double[] weights) {
    double mean = mean(values, weights);
    double plants = 0;
    double squares = 0;
    for (int i = 0; i < values.length; i++) {
      plants += weights[i];
      squares += weights[i] * ((values[i] - mean) * (values[i] - mean));
    }
    return Math.sqrt(squares / plants) / mean;
  }

  private static double mean(double[] values, double[] weights) {
    double plants = 0;
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      plants += weights[i];
      sum += weights[i] * values[i];
    }
    return sum / plants;
  }
}
