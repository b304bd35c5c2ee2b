package growingon.chance.luck;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.integration.gauss.SymmetricGaussIntegrator;
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
  /**
   * The upper half of the points of Gauss–Hermite quadrature of order 40, with their weights; the
   * lower half mirrors it. They are those that {@link GaussIntegratorFactory#hermite} works out,
   * which takes a fifth of a second at every start.
   */
  private static final double[][] UPPER_HALF = {
    {0.1745372145975825, 0.33864327742558936},
    {0.5238747138322776, 0.265728251877377},
    {0.8740066123570884, 0.16337873271327102},
    {1.22548010904629, 0.07847460586540408},
    {1.5788698949316147, 0.029312565536172244},
    {1.9347914722822965, 0.008460888008258075},
    {2.293917141875085, 0.0018714968295979251},
    {2.6569959984428975, 3.1385359454132536E-4},
    {3.024879883901286, 3.936933981092414E-5},
    {3.39855826585963, 3.6315761506929426E-6},
    {3.779206753435225, 2.4111441636704547E-7},
    {4.168257066832504, 1.121236083227515E-8},
    {4.567502072844398, 3.5256207913651684E-10},
    {4.979260978545259, 7.156528052689804E-12},
    {5.40665424797013, 8.805707645215528E-14},
    {5.8540950560304035, 6.008358789490282E-16},
    {6.328255351220085, 1.9891810121163205E-18},
    {6.84023730524936, 2.567593365411297E-21},
    {7.411582531485481, 8.544056963772376E-25},
    {8.098761139250843, 2.591043713847586E-29},
  };

  static final GaussIntegrator HERMITE = hermite();
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

  private static GaussIntegrator hermite() {
    int half = UPPER_HALF.length;
    double[] points = new double[2 * half];
    double[] weights = new double[2 * half];
    for (int i = 0; i < half; i++) {
      points[half + i] = UPPER_HALF[i][0];
      points[half - 1 - i] = -UPPER_HALF[i][0];
      weights[half + i] = UPPER_HALF[i][1];
      weights[half - 1 - i] = UPPER_HALF[i][1];
    }
    return new SymmetricGaussIntegrator(points, weights);
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
