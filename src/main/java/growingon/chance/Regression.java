package growingon.chance;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/** Ordinary least squares of a figure on scores, with a constant. */
final class Regression {
  private final double[] slopes;
  private final double[] errors;

  /**
   * A regression.
   *
   * @param scores [draw][score]
   * @param figure by draw; more draws than scores and one
   */
  Regression(double[][] scores, double[] figure) {
    int draws = figure.length;
    int number = scores[0].length;
    RealMatrix x = new Array2DRowRealMatrix(draws, number + 1);
    for (int draw = 0; draw < draws; draw++) {
      x.setEntry(draw, 0, 1);
      for (int score = 0; score < number; score++) {
        x.setEntry(draw, score + 1, scores[draw][score]);
      }
    }
    RealVector y = new ArrayRealVector(figure, false);
    RealMatrix inverse =
        new CholeskyDecomposition(x.transposeMultiply(x), 1e-8, 1e-12).getSolver().getInverse();
    RealVector fitted = inverse.operate(x.preMultiply(y));
    double left = y.subtract(x.operate(fitted)).getNorm();
    double variance = left * left / (draws - number - 1);
    this.slopes = fitted.getSubVector(1, number).toArray();
    this.errors = new double[number];
    for (int score = 0; score < number; score++) {
      errors[score] = Math.sqrt(variance * inverse.getEntry(score + 1, score + 1));
    }
  }

  double[] slopes() {
    return slopes;
  }

  /** Standard error of each slope. */
  double[] errors() {
    return errors;
  }
}
