package growingon.fit.growth;

import growingon.fit.evidence.Interval;
import growingon.fit.growth.Expectations.Slopes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The intervals as one normal law: r = H ln f + Z u + errors. The effects u of seasons are unknowns
 * with a prior of their own, which gives the same estimate as a matrix of all intervals by all, but
 * needs a block a lot only. Rows are whitened by the Cholesky factor of each block.
 *
 * <p>r [interval] is measured less expected, mm; H [interval][kind] is mm for a unit of ln f, the
 * logarithm of a kind's speed against what was assumed; Z [interval][season] is mm for a unit of a
 * season's effect, a logarithm too. ln f has the prior N(0, s0²) of its kind, u the spread between
 * years of its species, two species of one season correlated by ½. The most likely ln f is that of
 * the normal equations of generalised least squares with these priors, as any textbook of linear
 * mixed models has them (Henderson's equations, from memory).
 */
public final class IntervalLaw {
  /** Standard deviations from the middle to P10 and to P90. */
  public static final double TO_P90 = 1.2816;

  /** How far two species of the nursery are alike in a season: the planner's own luck. */
  private static final double ALIKE = 0.5;

  private final int kinds;
  private final List<Season> seasons;
  private final double[][] rows;
  private final double[] residuals;
  private final double[][] gram;
  private final double[] projected;
  private final double[] omegas;
  private final RealMatrix seasonPrior;
  private final double logDeterminant;
  private final double[] priorDeviations;

  /** A season of a species. */
  record Season(String species, int season) {}

  private IntervalLaw(
      int kinds,
      List<Season> seasons,
      double[][] rows,
      double[] residuals,
      double[] omegas,
      double logDeterminant,
      double[] priorDeviations) {
    this.kinds = kinds;
    this.seasons = seasons;
    this.rows = rows;
    this.residuals = residuals;
    this.omegas = omegas;
    this.logDeterminant = logDeterminant;
    this.priorDeviations = priorDeviations;
    this.gram = gram(rows, kinds + seasons.size());
    this.projected = project(rows, residuals, kinds + seasons.size());
    this.seasonPrior = seasonPrior(seasons);
  }

  /**
   * The law of some intervals.
   *
   * @param intervals what was measured, [interval]
   * @param residuals [interval] measured less expected, mm; they stay as they are
   * @param slopes what the engine expects of each interval at the speeds now, mm, and mm for a unit
   *     of the logarithm of each speed
   * @param errors how far intervals are off by themselves and together, mm²
   * @param priorDeviations [kind] s0, without unit
   */
  static IntervalLaw of(
      List<Interval> intervals,
      double[] residuals,
      Slopes slopes,
      Errors errors,
      double[] priorDeviations) {
    List<Season> seasons = seasons(intervals, errors);
    int kinds = priorDeviations.length;
    double[][] rows = new double[intervals.size()][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = row(intervals.get(i), i, slopes, kinds, seasons);
    }
    double[] white = residuals.clone();
    double logDeterminant = 0;
    for (List<Integer> block : blocks(intervals)) {
      logDeterminant += whiten(block, intervals, slopes, errors, rows, white);
    }
    double[] omegas =
        seasons.stream().mapToDouble(season -> errors.season(season.species())).toArray();
    return new IntervalLaw(kinds, seasons, rows, white, omegas, logDeterminant, priorDeviations);
  }

  private static List<Season> seasons(List<Interval> intervals, Errors errors) {
    TreeMap<Integer, TreeSet<String>> byYear = new TreeMap<>();
    for (Interval interval : intervals) {
      if (errors.season(interval.species()) > 0) {
        interval
            .bySeason()
            .keySet()
            .forEach(
                year ->
                    byYear.computeIfAbsent(year, each -> new TreeSet<>()).add(interval.species()));
      }
    }
    List<Season> seasons = new ArrayList<>();
    byYear.forEach((year, species) -> species.forEach(name -> seasons.add(new Season(name, year))));
    return seasons;
  }

  private static double[] row(
      Interval interval, int index, Slopes slopes, int kinds, List<Season> seasons) {
    double[] row = new double[kinds + seasons.size()];
    System.arraycopy(slopes.byKind()[index], 0, row, 0, kinds);
    for (int s = 0; s < seasons.size(); s++) {
      Season season = seasons.get(s);
      if (season.species().equals(interval.species())) {
        double years = interval.bySeason().getOrDefault(season.season(), 0.0);
        row[kinds + s] = slopes.all(index) * years / interval.clock();
      }
    }
    return row;
  }

  /** Intervals that share the luck of a lot, or a measurement. */
  private static List<List<Integer>> blocks(List<Interval> intervals) {
    Map<String, List<Integer>> blocks = new LinkedHashMap<>();
    for (int i = 0; i < intervals.size(); i++) {
      blocks.computeIfAbsent(intervals.get(i).root(), each -> new ArrayList<>()).add(i);
    }
    return List.copyOf(blocks.values());
  }

  private static double whiten(
      List<Integer> block,
      List<Interval> intervals,
      Slopes slopes,
      Errors errors,
      double[][] rows,
      double[] residuals) {
    int size = block.size();
    double[][] variance = new double[size][size];
    for (int a = 0; a < size; a++) {
      for (int b = 0; b <= a; b++) {
        int i = block.get(a);
        int j = block.get(b);
        double value = errors.covariance(intervals.get(i), intervals.get(j), i, j, slopes);
        variance[a][b] = value;
        variance[b][a] = value;
      }
    }
    RealMatrix l =
        new CholeskyDecomposition(new Array2DRowRealMatrix(variance, false), 1e-9, 0).getL();
    double logDeterminant = 0;
    for (int a = 0; a < size; a++) {
      int i = block.get(a);
      for (int b = 0; b < a; b++) {
        subtract(rows[i], rows[block.get(b)], l.getEntry(a, b));
        residuals[i] -= l.getEntry(a, b) * residuals[block.get(b)];
      }
      double pivot = l.getEntry(a, a);
      for (int column = 0; column < rows[i].length; column++) {
        rows[i][column] /= pivot;
      }
      residuals[i] /= pivot;
      logDeterminant += 2 * Math.log(pivot);
    }
    return logDeterminant;
  }

  private static void subtract(double[] from, double[] what, double factor) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= factor * what[i];
    }
  }

  private static double[][] gram(double[][] rows, int columns) {
    double[][] gram = new double[columns][columns];
    for (double[] row : rows) {
      for (int i = 0; i < columns; i++) {
        if (row[i] != 0) {
          for (int j = 0; j < columns; j++) {
            gram[i][j] += row[i] * row[j];
          }
        }
      }
    }
    return gram;
  }

  private static double[] project(double[][] rows, double[] residuals, int columns) {
    double[] projected = new double[columns];
    for (int row = 0; row < rows.length; row++) {
      for (int i = 0; i < columns; i++) {
        projected[i] += rows[row][i] * residuals[row];
      }
    }
    return projected;
  }

  /** Inverse correlations of the seasons' effects: ½ between two species of one season. */
  private static RealMatrix seasonPrior(List<Season> seasons) {
    int size = seasons.size();
    RealMatrix prior = new Array2DRowRealMatrix(Math.max(1, size), Math.max(1, size));
    for (int i = 0; i < size; i++) {
      int year = seasons.get(i).season();
      long species = seasons.stream().filter(each -> each.season() == year).count();
      // The inverse of ½ (1 + 1 1'), n by n: 2 (1 − 1 1'/(n + 1)).
      double shared = -1 / ALIKE / (species + 1);
      for (int j = 0; j < size; j++) {
        if (seasons.get(j).season() == year) {
          prior.setEntry(i, j, shared + (i == j ? 1 / ALIKE : 0));
        }
      }
    }
    return prior;
  }

  private double scale(int column, double years) {
    return column < kinds ? 1 : omegas[column - kinds] * years;
  }

  /** Information on speeds and seasons' effects together, where all year spreads are times so. */
  private RealMatrix information(double years) {
    int size = gram.length;
    RealMatrix information = new Array2DRowRealMatrix(size, size);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        double prior = 0;
        if (i < kinds && i == j) {
          prior = 1 / (priorDeviations[i] * priorDeviations[i]);
        } else if (i >= kinds && j >= kinds) {
          prior = seasonPrior.getEntry(i - kinds, j - kinds);
        }
        information.setEntry(i, j, gram[i][j] * scale(i, years) * scale(j, years) + prior);
      }
    }
    return information;
  }

  private static CholeskyDecomposition decomposed(RealMatrix matrix) {
    return new CholeskyDecomposition(matrix, 1e-9, 0);
  }

  /**
   * The step of the logarithms of the speeds towards their most likely values.
   *
   * @param logs [kind] where they are now
   * @return [kind] what is to be added to them
   */
  double[] step(double[] logs) {
    RealVector right = new ArrayRealVector(gram.length);
    for (int i = 0; i < gram.length; i++) {
      double prior = i < kinds ? logs[i] / (priorDeviations[i] * priorDeviations[i]) : 0;
      right.setEntry(i, projected[i] * scale(i, 1) - prior);
    }
    return decomposed(information(1)).getSolver().solve(right).getSubVector(0, kinds).toArray();
  }

  /**
   * Covariance, before φ, of the logarithms of the speeds and behind them of the seasons' effects,
   * each of these over the spread between years of its species: [kind, then season] by the same.
   */
  RealMatrix covariance() {
    return decomposed(information(1)).getSolver().getInverse();
  }

  /** r0' (V + s0² H H')⁻¹ r0 with r0 = r + H ln f: how far all is off what was assumed. */
  double surprise(double[] logs, double years) {
    double[] right = new double[gram.length];
    double sum = 0;
    for (int row = 0; row < rows.length; row++) {
      double residual = residuals[row];
      for (int k = 0; k < kinds; k++) {
        residual += rows[row][k] * logs[k];
      }
      sum += residual * residual;
      for (int i = 0; i < right.length; i++) {
        right[i] += rows[row][i] * scale(i, years) * residual;
      }
    }
    if (right.length == 0) {
      return sum;
    }
    RealVector vector = new ArrayRealVector(right, false);
    RealVector solved = decomposed(information(years)).getSolver().solve(vector);
    return sum - vector.dotProduct(solved);
  }

  /** Logarithm of the density of r0 where all year spreads are times so, but for a constant. */
  double logDensity(double[] logs, double years) {
    double priors = 0;
    for (double deviation : priorDeviations) {
      priors += 2 * Math.log(deviation);
    }
    RealMatrix l = decomposed(information(years)).getL();
    double determinant = logDeterminant + priors;
    for (int i = 0; i < gram.length; i++) {
      determinant += 2 * Math.log(l.getEntry(i, i));
    }
    return -0.5 * (determinant + surprise(logs, years));
  }

  /**
   * A season's growth against others.
   *
   * @param season the year that it is counted by
   * @param log logarithm of the factor on growth
   * @param deviation of that logarithm
   */
  public record SeasonEffect(String species, int season, double log, double deviation) {}

  /** Effects of the seasons by the residuals left. */
  public List<SeasonEffect> seasonEffects() {
    int size = seasons.size();
    if (size == 0) {
      return List.of();
    }
    RealMatrix all = information(1);
    RealMatrix own = all.getSubMatrix(kinds, kinds + size - 1, kinds, kinds + size - 1);
    RealVector right = new ArrayRealVector(size);
    for (int s = 0; s < size; s++) {
      right.setEntry(s, projected[kinds + s] * omegas[s]);
    }
    RealMatrix inverse = decomposed(own).getSolver().getInverse();
    RealVector effects = inverse.operate(right);
    List<SeasonEffect> list = new ArrayList<>();
    for (int s = 0; s < size; s++) {
      list.add(
          new SeasonEffect(
              seasons.get(s).species(),
              seasons.get(s).season(),
              effects.getEntry(s) * omegas[s],
              Math.sqrt(inverse.getEntry(s, s)) * omegas[s]));
    }
    return list;
  }
}
