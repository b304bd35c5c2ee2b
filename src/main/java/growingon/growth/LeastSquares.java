package growingon.growth;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * Parameters of a model by weighted least squares: the minimum over them of Σ (w (seen − model))²,
 * by Levenberg and Marquardt. Slopes are central differences.
 */
final class LeastSquares {
  /** About the third root of the least step between numbers, where such slopes are best. */
  private static final double STEP = 6e-6;

  private static final double LEAST_SCALE = 1e-3;
  private static final double TOLERANCE = 1e-13;
  private static final int MOST_ROUNDS = 2000;

  /** What a model says of every value that was seen. */
  @FunctionalInterface
  interface Model {
    double[] at(double[] parameters);
  }

  /**
   * A minimum.
   *
   * @param parameters where it lies
   * @param squares Σ (w (seen − model))² there
   * @param errors standard errors of the parameters, from the residuals left; infinite where there
   *     are no more values than parameters
   */
  record Result(double[] parameters, double squares, double[] errors) {}

  private final Model model;
  private final double[] seen;
  private final double[] weights;

  /** A model held against values, with the weight of each. */
  LeastSquares(Model model, double[] seen, double[] weights) {
    this.model = model;
    this.seen = seen;
    this.weights = weights;
  }

  /** Sum of the weighted squares at some parameters. */
  double squares(double[] parameters) {
    double[] said = model.at(parameters);
    double sum = 0;
    for (int i = 0; i < seen.length; i++) {
      double off = weights[i] * (seen[i] - said[i]);
      sum += off * off;
    }
    return sum;
  }

  /** The minimum that is reached from a start; empty where none is found. */
  Optional<Result> from(double[] start) {
    return from(start, UnaryOperator.identity());
  }

  /**
   * The minimum that is reached from a start; empty where none is found.
   *
   * @param within brings parameters back to where the model can be asked
   */
  Optional<Result> from(double[] start, UnaryOperator<double[]> within) {
    try {
      Optimum optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(TOLERANCE)
              .withParameterRelativeTolerance(TOLERANCE)
              .withOrthoTolerance(TOLERANCE)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .target(times(weights, seen))
                      .model((MultivariateJacobianFunction) this::valueAndSlopes)
                      .parameterValidator(at -> new ArrayRealVector(within.apply(at.toArray())))
                      .lazyEvaluation(false)
                      .maxEvaluations(MOST_ROUNDS)
                      .maxIterations(MOST_ROUNDS)
                      .build());
      return Optional.of(result(optimum));
    } catch (MathIllegalStateException noMinimum) {
      return Optional.empty();
    }
  }

  private Result result(Optimum optimum) {
    double[] parameters = optimum.getPoint().toArray();
    double squares = squares(parameters);
    int free = seen.length - parameters.length;
    double[] errors = new double[parameters.length];
    RealMatrix slopes = slopes(parameters);
    double variance = free > 0 ? squares / free : Double.POSITIVE_INFINITY;
    RealMatrix information = slopes.transposeMultiply(slopes);
    RealMatrix inverse = new SingularValueDecomposition(information).getSolver().getInverse();
    for (int i = 0; i < errors.length; i++) {
      errors[i] = Math.sqrt(variance * inverse.getEntry(i, i));
    }
    return new Result(parameters, squares, errors);
  }

  private Pair<RealVector, RealMatrix> valueAndSlopes(RealVector at) {
    double[] parameters = at.toArray();
    RealVector value = new ArrayRealVector(times(weights, model.at(parameters)), false);
    return new Pair<>(value, slopes(parameters));
  }

  private RealMatrix slopes(double[] parameters) {
    RealMatrix slopes = new Array2DRowRealMatrix(seen.length, parameters.length);
    for (int i = 0; i < parameters.length; i++) {
      double step = STEP * Math.max(LEAST_SCALE, Math.abs(parameters[i]));
      double[] up = moved(parameters, i, step);
      double[] down = moved(parameters, i, -step);
      double between = up[i] - down[i];
      double[] above = model.at(up);
      double[] below = model.at(down);
      for (int row = 0; row < seen.length; row++) {
        slopes.setEntry(row, i, weights[row] * (above[row] - below[row]) / between);
      }
    }
    return slopes;
  }

  private static double[] moved(double[] parameters, int index, double step) {
    double[] moved = parameters.clone();
    moved[index] += step;
    return moved;
  }

  private static double[] times(double[] weights, double[] values) {
    double[] product = new double[values.length];
    for (int i = 0; i < product.length; i++) {
      product[i] = weights[i] * values[i];
    }
    return product;
  }
}
