package growingon.fit.loss;

import growingon.fit.evidence.LossSpan;
import growingon.fit.evidence.LossSpans;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * A yearly loss by the deaths of some units: seasons for later losses, lots for first-year ones.
 * Units differ more than plants that die one by one do, which their spread tells. All losses are
 * parts of one a year.
 *
 * <p>A beta law with plants' worth for its parameters (conjugate to binomial deaths), in which a
 * unit i counts the less the more units differ:
 *
 * <pre>
 * a = q0 n0 + Σ x_i / (d_i φ)        b = (1 − q0) n0 + Σ (e_i − x_i) / (d_i φ)        q = a / (a + b)
 * d_i = 1 + (e_i − 1) ρ,   ρ = min(0.9, q v / (1 − q))       (the beta-binomial's design effect)
 * φ = max(1, (5 + Σ (x_i − e_i q)² / (e_i q (1 − q) d_i)) / (5 + number of units))
 * </pre>
 *
 * in rounds until q stays. q0 is what was assumed, n0 how many plants' worth that is, e_i a unit's
 * exposure, x_i its deaths, v the square of the spread between units. P10 and P90 are those of
 * Beta(a, b); the weight of the records is 1 − n0 / (a + b).
 */
public final class Losses {
  private static final int MOST_ROUNDS = 200;
  private static final double CLOSE = 1e-12;

  /** Units that unexplained spread is held against (own choice). */
  private static final double STEADYING = 5;

  /** First-year losses of lots differ besides by so much (own choice). */
  private static final double BETWEEN_LOTS = 0.7;

  private static final double MOST_OF_ONE = 0.9;

  private Losses() {}

  /**
   * A season or a lot.
   *
   * @param name its name
   * @param exposure e, plant-years
   * @param deaths x
   */
  public record Unit(String name, double exposure, double deaths) {}

  /**
   * A loss as learnt.
   *
   * @param old q0
   * @param loss the new one
   * @param p10 one in ten it is less
   * @param p90 one in ten it is more
   * @param weight weight of the records, 0 to 1
   * @param plants how many plants' worth it is now, a + b
   * @param phi by how much its units differ more than they should
   * @param units the units
   */
  public record Learnt(
      double old,
      double loss,
      double p10,
      double p90,
      double weight,
      double plants,
      double phi,
      List<Unit> units) {
    /** The same, which may also be as much as by another reading of the records. */
    Learnt upTo(Learnt other) {
      return between(p10, Math.max(p90, other.p90));
    }

    /** The same, which may also be as little as by another reading of the records. */
    Learnt downTo(Learnt other) {
      return between(Math.min(p10, other.p10), p90);
    }

    /** With a wider range, which is what fewer plants would have told. */
    private Learnt between(double low, double high) {
      double times = (high - low) / (p90 - p10);
      double prior = plants * (1 - weight);
      double fewer = Math.max(prior, plants / (times * times));
      return new Learnt(old, loss, low, high, 1 - prior / fewer, fewer, phi, units);
    }
  }

  /** v of later losses: the square of the spread between seasons. */
  public static double ofSeasons(double lossSpread) {
    return lossSpread * lossSpread;
  }

  /** v of first-year losses: lots differ besides. */
  public static double ofLots(double lossSpread) {
    return lossSpread * lossSpread + BETWEEN_LOTS * BETWEEN_LOTS;
  }

  /**
   * Learns a loss, by the formulas above.
   *
   * @param assumed q0, a part of one a year; of nil the least that {@link LossSpans} takes
   * @param sure n0, how many plants' worth that is; more than 0
   * @param variance v, of a unit's loss as a share of its square; see {@link #ofSeasons} and {@link
   *     #ofLots}
   * @param units seasons or lots; without any nothing is learnt
   */
  public static Learnt learn(double assumed, double sure, double variance, List<Unit> units) {
    double old = LossSpans.atLeast(assumed);
    double loss = old;
    double phi = 1;
    double a = old * sure;
    double b = (1 - old) * sure;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      phi = phi(loss, variance, units);
      a = old * sure;
      b = (1 - old) * sure;
      for (Unit unit : units) {
        double divisor = more(unit, loss, variance) * phi;
        a += unit.deaths() / divisor;
        b += Math.max(0, unit.exposure() - unit.deaths()) / divisor;
      }
      double next = a / (a + b);
      boolean same = Math.abs(next - loss) < CLOSE;
      loss = next;
      if (same) {
        break;
      }
    }
    BetaDistribution range = new BetaDistribution(a, b);
    return new Learnt(
        assumed,
        loss,
        range.inverseCumulativeProbability(0.1),
        range.inverseCumulativeProbability(0.9),
        Math.max(0, 1 - sure / (a + b)),
        a + b,
        phi,
        List.copyOf(units));
  }

  /** d: by how much a unit's deaths vary more than those of plants that die one by one. */
  private static double more(Unit unit, double loss, double variance) {
    double alike = Math.min(MOST_OF_ONE, loss * variance / (1 - loss));
    return 1 + Math.max(0, unit.exposure() - 1) * alike;
  }

  private static double phi(double loss, double variance, List<Unit> units) {
    double sum = STEADYING;
    int number = 0;
    for (Unit unit : units) {
      double expected = unit.exposure() * loss;
      if (expected > 0) {
        double off = unit.deaths() - expected;
        sum += off * off / (expected * (1 - loss) * more(unit, loss, variance));
        number++;
      }
    }
    return Math.max(1, sum / (STEADYING + number));
  }

  /** What is taken of plants that are gone and of which no line says how. */
  public enum Gone {
    /** They died, unless there are too many of them: then the span tells nothing. */
    DIED_IF_LIKELY,
    /** They died, however many. */
    DIED,
    /** They were sold, unless there are too many of them: then the span tells nothing. */
    SOLD_IF_LIKELY
  }

  /** Units of the later loss of a species: its seasons. */
  public static List<Unit> later(List<LossSpan> spans, String species, double loss, Gone gone) {
    TreeMap<Integer, double[]> seasons = new TreeMap<>();
    for (LossSpan span : inOrder(spans, species, gone)) {
      for (LossSpan.MonthLoss month : span.months()) {
        if (!month.firstYear()) {
          add(seasons.computeIfAbsent(month.season(), each -> new double[2]), month, loss, gone);
        }
      }
    }
    List<Unit> units = new ArrayList<>();
    seasons.forEach((season, sums) -> add(units, Integer.toString(season), sums));
    return units;
  }

  /** Units of the first-year loss of a species: its lots. */
  public static List<Unit> firstYear(List<LossSpan> spans, String species, double loss, Gone gone) {
    TreeMap<String, double[]> lots = new TreeMap<>();
    for (LossSpan span : inOrder(spans, species, gone)) {
      for (LossSpan.MonthLoss month : span.months()) {
        if (month.firstYear()) {
          add(lots.computeIfAbsent(span.lot(), each -> new double[2]), month, loss, gone);
        }
      }
    }
    List<Unit> units = new ArrayList<>();
    lots.forEach((lot, sums) -> add(units, lot, sums));
    return units;
  }

  private static List<LossSpan> inOrder(List<LossSpan> spans, String species, Gone gone) {
    return spans.stream()
        .filter(span -> span.isUsed() || gone == Gone.DIED)
        .filter(span -> span.species().equals(species))
        .sorted(Comparator.comparing(LossSpan::lot).thenComparing(LossSpan::from))
        .toList();
  }

  private static void add(double[] sums, LossSpan.MonthLoss month, double loss, Gone gone) {
    sums[0] += month.exposure(LossSpans.atLeast(loss));
    sums[1] += gone == Gone.SOLD_IF_LIKELY ? month.written() : month.deaths();
  }

  private static void add(List<Unit> units, String name, double[] sums) {
    if (sums[0] > 0) {
      units.add(new Unit(name, sums[0], sums[1]));
    }
  }
}
