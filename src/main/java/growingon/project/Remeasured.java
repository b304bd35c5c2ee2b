package growingon.project;

import java.util.Arrays;
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
  }

  /**
   * The trunks after measuring.
   *
   * @param mean measured mean, mm
   * @param spread measured spread as a share of the mean; empty to keep the spread there is
   */
  double[] to(double mean, OptionalDouble spread) {
    double now = alike ? 0 : 1;
    double[] moved = scaled(spread.isPresent() ? steepness(spread.getAsDouble(), now) : now);
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

  private double spreadAt(double steepness) {
    return spread(scaled(steepness), weights);
  }

  /**
   * Trunks at a steepness, the thickest with plants as 1. Slices without plants count for nothing;
   * thicker ones among them keep to numbers that can be reckoned with.
   */
  private double[] scaled(double steepness) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < logs.length; i++) {
      most = weights[i] > 0 ? Math.max(most, steepness * logs[i]) : most;
    }
    double[] scaled = new double[logs.length];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = Math.exp(Math.min(THICKEST_LOG, steepness * logs[i] - most));
    }
    return scaled;
  }

  /** Spread of values as a share of their mean. */
  static double spread(double[] values, double[] weights) {
    double mean = mean(values, weights);
    double[] squares = Arrays.stream(values).map(each -> (each - mean) * (each - mean)).toArray();
    return Math.sqrt(mean(squares, weights)) / mean;
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
