package growingon.fit.growth;

import growingon.fit.evidence.Interval;
import growingon.fit.growth.Expectations.Slopes;
import growingon.fit.past.Past;
import growingon.fit.past.Why;
import growingon.fit.verdict.Verdicts;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.hipparchus.linear.RealMatrix;

/** Growth speeds by Gauss and Newton's method: the most likely ones, with prior and errors. */
public final class SpeedFit {
  private static final double LONGEST_STEP = 0.5;
  private static final double CLOSE = 1e-6;
  private static final int MOST_ROUNDS = 30;

  /**
   * Where what is expected has jumps, steps do not come to rest; a third of a per cent is then
   * close enough, far less than any range is wide (own choice).
   */
  private static final double CLOSE_ENOUGH = 0.003;

  private static final int ROUNDS_FOR_CLOSE = 12;
  private static final int ROUNDS_FOR_CLOSE_OF_MANY = 8;
  private static final int ROUNDS_OF_SLOPES = 2;
  private static final int MANY = 600;

  /** Speeds beyond these are no growth of a tree, but a slip of units (own choice). */
  static final double SLOWEST = 0.2;

  static final double FASTEST = 5;

  /** Counts that unexplained spread is held against (own choice). */
  private static final double STEADYING = 10;

  private static final double SLIPS_AFTER = 6;

  /** What is taken as known moves by no more than this. */
  private static final double KNOWN = 1e-6;

  private final Past past;
  private final Map<String, Species> assumed;
  private final Errors errors;

  public SpeedFit(Past past, Map<String, Species> assumed) {
    this.past = past;
    this.assumed = assumed;
    this.errors = new Errors(assumed, past.scenario().nursery().settings());
  }

  /**
   * Speeds as fitted; arrays by kind, in the order of {@code kinds}.
   *
   * @param kinds kinds fitted: a species in a growing condition
   * @param logs [kind] natural logarithm of the factor on the speed assumed
   * @param variances [kind] of these logarithms, φ among them
   * @param priorDeviations [kind] s0, of the same logarithms before any record
   * @param phi by how much the variances were widened
   * @param settled whether the steps came to rest
   * @param used the intervals
   * @param slopes at the speeds fitted
   * @param law the law at the speeds fitted
   */
  public record Fitted(
      List<Kind> kinds,
      double[] logs,
      double[] variances,
      double[] priorDeviations,
      double phi,
      boolean settled,
      List<Interval> used,
      Slopes slopes,
      IntervalLaw law) {
    /** Weight of the records in a kind's speed, 0 to 1: 1 − variance / s0². */
    double weight(int kind) {
      double prior = priorDeviations[kind] * priorDeviations[kind];
      return Math.max(0, 1 - variances[kind] / prior);
    }

    /** Whether a kind has too little weight only because counts lie so far off each other. */
    boolean scatters(int kind) {
      double prior = priorDeviations[kind] * priorDeviations[kind];
      return !Verdicts.isEnough(weight(kind))
          && Verdicts.isEnough(1 - variances[kind] / phi / prior);
    }

    public Speeds speeds() {
      return SpeedFit.speeds(kinds, logs);
    }
  }

  /** Kinds that some interval tells of. */
  public List<Kind> kinds(List<Interval> intervals) {
    TreeSet<Kind> kinds = new TreeSet<>();
    for (Interval interval : intervals) {
      for (String condition : interval.byCondition().keySet()) {
        kinds.add(new Kind(interval.species(), condition));
      }
    }
    return List.copyOf(kinds);
  }

  private double prior(Kind kind) {
    double sure = past.records().prior(kind.species()).growthSure(kind.condition());
    return Math.max(KNOWN, Sure.spread(sure));
  }

  private static Speeds speeds(List<Kind> kinds, double[] logs) {
    Map<Kind, Double> map = new java.util.HashMap<>();
    for (int k = 0; k < logs.length; k++) {
      map.put(kinds.get(k), logs[k]);
    }
    return new Speeds(map);
  }

  /**
   * Intervals with their standard deviation and expectation at the first assumptions.
   *
   * @param expected [interval] mean trunk expected at its end, mm; NaN where it is not used
   * @param deviations [interval] standard deviation of measured less expected, mm; NaN where it is
   *     not used
   */
  public record AtFirst(List<Interval> intervals, double[] expected, double[] deviations) {}

  /** Refuses what lies more than six standard deviations off the first assumptions. */
  public AtFirst withoutSlips(List<Interval> all) {
    List<Interval> checked = new ArrayList<>(all);
    List<Integer> indexes =
        IntStream.range(0, all.size()).filter(i -> all.get(i).isUsed()).boxed().toList();
    List<Interval> used = indexes.stream().map(all::get).toList();
    List<Kind> kinds = kinds(used);
    Slopes slopes = new Expectations(past, used, kinds, assumed).at(Speeds.AS_ASSUMED);
    double[] expected = new double[all.size()];
    double[] deviations = new double[all.size()];
    Arrays.fill(expected, Double.NaN);
    Arrays.fill(deviations, Double.NaN);
    for (int i = 0; i < used.size(); i++) {
      Interval interval = used.get(i);
      double variance =
          errors.covariance(interval, interval, i, i, slopes)
              + errors.seasons(interval, interval, i, i, slopes);
      double prior = 0;
      for (int k = 0; k < kinds.size(); k++) {
        double ofKind = slopes.byKind()[i][k] * prior(kinds.get(k));
        prior += ofKind * ofKind;
      }
      int index = indexes.get(i);
      expected[index] = slopes.means()[i];
      deviations[index] = Math.sqrt(variance);
      double off = Math.abs(interval.second().meanMm() - slopes.means()[i]);
      if (off > SLIPS_AFTER * Math.sqrt(variance + prior)) {
        checked.set(index, interval.refusedFor(Why.slip(row(interval))));
      }
    }
    return new AtFirst(List.copyOf(checked), expected, deviations);
  }

  private static String row(Interval interval) {
    return interval.second().rows().isEmpty()
        ? interval.subject()
        : interval.second().rows().get(0).column("").toString();
  }

  /** Fits the speeds of the kinds that some intervals tell of. */
  public Fitted fit(List<Interval> used) {
    return fit(used, Speeds.AS_ASSUMED, CLOSE);
  }

  /** The same from speeds that are nearly right, as closely as a range needs it. */
  public Fitted fitNear(List<Interval> used, Speeds near) {
    return fit(used, near, CLOSE_ENOUGH);
  }

  private Fitted fit(List<Interval> used, Speeds from, double close) {
    List<Kind> kinds = kinds(used);
    double[] priors = kinds.stream().mapToDouble(this::prior).toArray();
    Expectations expectations = new Expectations(past, used, kinds, assumed);
    double[] logs =
        kinds.stream().mapToDouble(kind -> from.logs().getOrDefault(kind, 0.0)).toArray();
    boolean settled = kinds.isEmpty();
    Damping damping = new Damping(kinds.size());
    Slopes slopes = expectations.at(speeds(kinds, logs));
    boolean areSlopesNew = true;
    boolean isOfMany = used.size() > MANY;
    int closely = isOfMany ? ROUNDS_FOR_CLOSE_OF_MANY : ROUNDS_FOR_CLOSE;
    for (int round = 0; round < MOST_ROUNDS && !settled; round++) {
      double moved = move(logs, damping.damped(law(used, slopes, priors).step(logs)));
      boolean rests = moved < (round < closely ? close : CLOSE_ENOUGH);
      settled = rests && areSlopesNew;
      // Slopes cost most of the runs; where jumps keep steps from resting they change no more.
      areSlopesNew = rests || round < ROUNDS_OF_SLOPES || !isOfMany;
      Speeds now = speeds(kinds, logs);
      slopes = areSlopesNew ? expectations.at(now) : slopes.at(expectations.means(now));
    }
    IntervalLaw law = law(used, slopes, priors);
    double phi = Math.max(1, (STEADYING + law.surprise(logs, 1)) / (STEADYING + used.size()));
    RealMatrix covariance = kinds.isEmpty() ? null : law.covariance();
    double[] variances = new double[kinds.size()];
    for (int k = 0; k < variances.length; k++) {
      variances[k] = covariance.getEntry(k, k) * phi;
    }
    return new Fitted(kinds, logs, variances, priors, phi, settled, used, slopes, law);
  }

  /**
   * Shortens the steps of a kind each time they turn round. What the engine expects has small
   * jumps, where the speed decides whether a plant was thick enough when plants of its grade were
   * sold; full steps would go to and fro over one.
   */
  private static final class Damping {
    private final double[] factors;
    private final double[] before;

    Damping(int kinds) {
      factors = new double[kinds];
      Arrays.fill(factors, 1);
      before = new double[kinds];
    }

    double[] damped(double[] step) {
      double[] damped = new double[step.length];
      for (int k = 0; k < step.length; k++) {
        factors[k] *= step[k] * before[k] < 0 ? 0.5 : 1;
        before[k] = step[k];
        damped[k] = factors[k] * step[k];
      }
      return damped;
    }
  }

  private IntervalLaw law(List<Interval> used, Slopes slopes, double[] priors) {
    double[] residuals = new double[used.size()];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = used.get(i).second().meanMm() - slopes.means()[i];
    }
    return IntervalLaw.of(used, residuals, slopes, errors, priors);
  }

  /** Moves by a step that is not too long, within bounds; gives how far. */
  private static double move(double[] logs, double[] step) {
    double longest = Arrays.stream(step).map(Math::abs).max().orElse(0);
    double factor = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
    double moved = 0;
    for (int k = 0; k < logs.length; k++) {
      double to = logs[k] + factor * step[k];
      double held = Math.max(Math.log(SLOWEST), Math.min(Math.log(FASTEST), to));
      moved = Math.max(moved, Math.abs(held - logs[k]));
      logs[k] = held;
    }
    return moved;
  }

  static boolean isAtABound(double log) {
    return log <= Math.log(SLOWEST) + CLOSE || log >= Math.log(FASTEST) - CLOSE;
  }
}
