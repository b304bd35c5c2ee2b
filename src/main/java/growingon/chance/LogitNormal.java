package growingon.chance;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A share between 0 and 1 whose logit is normal, made to have a stated mean and standard deviation:
 * 1/(1 + e^−(centre + width z)). Mean and deviation are integrated by Gauss–Hermite quadrature and
 * met by root finding.
 *
 * @param centre of the logit
 * @param width standard deviation of the logit
 */
record LogitNormal(double centre, double width) {
  private static final GaussIntegrator HERMITE = new GaussIntegratorFactory().hermite(40);
  private static final double WIDEST = 12;

  /**
   * The one with a mean and standard deviation.
   *
   * @param mean above 0 and below 1
   * @param deviation above 0; more than the mean allows is taken as the most that it allows here
   */
  static LogitNormal of(double mean, double deviation) {
    BrentSolver solver = new BrentSolver(1e-10);
    double most = deviation(mean, WIDEST);
    double width =
        deviation >= most
            ? WIDEST
            : solver.solve(200, w -> deviation(mean, w) - deviation, 1e-9, WIDEST);
    return new LogitNormal(centre(mean, width), width);
  }

  private static double centre(double mean, double width) {
    double middle = Math.log(mean / (1 - mean));
    double reach = width * width + 5;
    return new BrentSolver(1e-12)
        .solve(300, c -> moment(c, width, 1) - mean, middle - reach, middle + reach);
  }

  private static double deviation(double mean, double width) {
    double centre = centre(mean, width);
    return Math.sqrt(Math.max(0, moment(centre, width, 2) - mean * mean));
  }

  private static double moment(double centre, double width, int power) {
    double sum =
        HERMITE.integrate(x -> Math.pow(logistic(centre + width * Math.sqrt(2) * x), power));
    return sum / Math.sqrt(Math.PI);
  }

  /** The share at a standard normal score. */
  double at(double score) {
    return logistic(centre + width * score);
  }

  private static double logistic(double logit) {
    return 1 / (1 + Math.exp(-logit));
  }
}
