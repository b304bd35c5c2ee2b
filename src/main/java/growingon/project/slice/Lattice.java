package growingon.project.slice;

import com.google.common.cache.CacheBuilder;
import com.google.common.cache.CacheLoader;
import com.google.common.cache.LoadingCache;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.Grade;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.ArithmeticUtils;

/**
 * K representative plants on a lattice: slice i has the coordinates u_j(i) = ((i a_j mod K) + ½)/K
 * for trunk, vigour and quality. For K = 64, a = (1, 19, 27), whose pairwise correlations are at
 * most 0.042; for another K the multipliers are the coprime pair with the lowest largest pairwise
 * discrepancy, ties by correlation, then by size. A rank-1 lattice rule with points at the middles
 * of their cells; multipliers are our own search.
 */
public final class Lattice {
  private static final LoadingCache<Integer, Lattice> KNOWN =
      CacheBuilder.newBuilder().weakValues().build(CacheLoader.from(Lattice::made));

  private final int slices;
  private final int vigourStep;
  private final int qualityStep;
  private final double[] scores;
  private final Map<Double, double[]> vigours = new ConcurrentHashMap<>();
  private final Map<Sorting, Sorting> sortings = new ConcurrentHashMap<>();
  private final Map<List<Grade>, GradeTable[]> tables = new ConcurrentHashMap<>();
  private final Map<StartingTrunks.Stated, StartingTrunks> starts = new ConcurrentHashMap<>();

  private Lattice(int slices, int vigourStep, int qualityStep) {
    this.slices = slices;
    this.scores = new double[slices];
    this.vigourStep = vigourStep;
    this.qualityStep = qualityStep;
  }

  /**
   * The lattice of K slices, K at least 16. Everybody has the same one as long as anybody has it,
   * so that what follows from what is stated of a lot is worked out once for all programmes.
   */
  public static Lattice of(int slices) {
    return KNOWN.getUnchecked(slices);
  }

  private static Lattice made(int slices) {
    Lattice lattice = slices == 64 ? new Lattice(64, 19, 27) : search(slices);
    return lattice.withScores();
  }

  public int slices() {
    return slices;
  }

  double trunkCoordinate(int slice) {
    return (slice + 0.5) / slices;
  }

  /** Standard normal quantile of a slice's trunk coordinate. */
  public double trunkScore(int slice) {
    return scores[slice];
  }

  /** Standard normal quantile of a slice's vigour coordinate. */
  double vigourScore(int slice) {
    return scores[slice * vigourStep % slices];
  }

  /** Lognormal vigour of every slice, with mean 1; shared by all lots of a spread. */
  double[] vigours(double spread) {
    return vigours.computeIfAbsent(
        spread,
        each ->
            IntStream.range(0, slices)
                .mapToDouble(slice -> lognormal(1, each, vigourScore(slice)))
                .toArray());
  }

  /** How slices start, shared by all lots of which the same is stated. */
  public StartingTrunks starting(Trunks stated, double vigourSpread, List<Grade> grades) {
    return starts.computeIfAbsent(
        new StartingTrunks.Stated(stated, vigourSpread, grades),
        each -> new StartingTrunks(each, this));
  }

  /** As which grades trunks sell, shared by all lots of a ladder. */
  GradeTable[] tables(List<Grade> ladder) {
    return tables.computeIfAbsent(ladder, GradeTable::of);
  }

  /** A sorting shared by all lots that sort alike, so that a run has fewer to look at. */
  public Sorting shared(Sorting sorting) {
    return sortings.computeIfAbsent(sorting, each -> each);
  }

  /**
   * Share of a slice whose quality coordinate lies below a cut: clip(K q − (i a_3 mod K), 0, 1).
   */
  public double shareBelow(double cut, int slice) {
    return Math.max(0, Math.min(1, slices * cut - slice * qualityStep % slices));
  }

  /** Lognormal quantile with a mean and coefficient of variation, from a standard normal one. */
  static double lognormal(double mean, double spread, double score) {
    double variance = Math.log1p(spread * spread);
    return spread == 0 ? mean : mean * Math.exp(Math.sqrt(variance) * score - variance / 2);
  }

  private Lattice withScores() {
    NormalDistribution normal = new NormalDistribution();
    for (int i = 0; i < slices; i++) {
      scores[i] = normal.inverseCumulativeProbability(trunkCoordinate(i));
    }
    return this;
  }

  private static Lattice search(int slices) {
    double[] discrepancy = new double[slices];
    double[] correlation = new double[slices];
    for (int a = 1; a < slices; a++) {
      if (coprime(a, slices)) {
        discrepancy[a] = discrepancy(a, slices);
        correlation[a] = correlation(a, slices);
      }
    }
    int[] inverse = inverses(slices);
    Lattice best = null;
    double bestDiscrepancy = Double.POSITIVE_INFINITY;
    double bestCorrelation = Double.POSITIVE_INFINITY;
    for (int a = 2; a < slices; a++) {
      for (int b = a + 1; b < slices; b++) {
        if (inverse[a] == 0 || inverse[b] == 0) {
          continue;
        }
        // b/a modulo K is the multiplier that links the two coordinates with each other.
        int between = (int) ((long) b * inverse[a] % slices);
        double worst = Math.max(discrepancy[a], Math.max(discrepancy[b], discrepancy[between]));
        double tie = Math.max(correlation[a], Math.max(correlation[b], correlation[between]));
        if (worst < bestDiscrepancy - 1e-12
            || (worst < bestDiscrepancy + 1e-12 && tie < bestCorrelation - 1e-12)) {
          best = new Lattice(slices, a, b);
          bestDiscrepancy = worst;
          bestCorrelation = tie;
        }
      }
    }
    return best;
  }

  private static boolean coprime(int a, int b) {
    return ArithmeticUtils.gcd(a, b) == 1;
  }

  /** For each multiplier its inverse modulo K; 0 for one that shares a divisor with K. */
  private static int[] inverses(int slices) {
    int[] inverse = new int[slices];
    for (int a = 1; a < slices; a++) {
      if (coprime(a, slices)) {
        inverse[a] = BigInteger.valueOf(a).modInverse(BigInteger.valueOf(slices)).intValueExact();
      }
    }
    return inverse;
  }

  /** Largest gap between count share and area over all boxes with corners on the grid. */
  private static double discrepancy(int a, int slices) {
    int[] counts = new int[slices + 1];
    double worst = 0;
    for (int i = 0; i < slices; i++) {
      int y = (int) ((long) i * a % slices);
      for (int top = y + 1; top <= slices; top++) {
        counts[top]++;
      }
      for (int top = 1; top <= slices; top++) {
        double area = (i + 1.0) * top / slices / slices;
        worst = Math.max(worst, Math.abs((double) counts[top] / slices - area));
      }
    }
    return worst;
  }

  private static double correlation(int a, int slices) {
    double middle = (slices - 1) / 2.0;
    double product = 0;
    double square = 0;
    for (int i = 0; i < slices; i++) {
      product += (i - middle) * ((long) i * a % slices - middle);
      square += (i - middle) * (i - middle);
    }
    return Math.abs(product / square);
  }
}
