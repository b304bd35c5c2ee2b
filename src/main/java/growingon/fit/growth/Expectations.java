package growingon.fit.growth;

import growingon.fit.evidence.Interval;
import growingon.fit.past.Past;
import growingon.nursery.species.Species;
import growingon.project.history.BeforeCount;
import growingon.project.slice.Cohorts;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What the engine expects of the intervals: the mean trunk just before the second measurement of
 * all plants from the first one on, after the sales and losses that really were.
 */
public final class Expectations {
  /** Slopes are taken over this step of the logarithm of the speed. */
  private static final double STEP = 0.1;

  /** Slopes are taken over this share of the first trunk. */
  private static final double THICKER = 0.01;

  private final Past past;
  private final List<Interval> intervals;
  private final List<Kind> kinds;
  private final Map<String, Species> assumed;

  /**
   * Expectations of some intervals.
   *
   * @param kinds kinds whose speed is fitted
   * @param assumed species as assumed, with the spreads that are believed by now
   */
  public Expectations(
      Past past, List<Interval> intervals, List<Kind> kinds, Map<String, Species> assumed) {
    this.past = past;
    this.intervals = intervals;
    this.kinds = kinds;
    this.assumed = assumed;
  }

  /**
   * Expectations and their slopes.
   *
   * @param means μ of each interval, mm
   * @param byKind slope of μ by the logarithm of the speed of each kind: [interval][kind]
   * @param byFirst slope of μ by the first measurement
   */
  public record Slopes(double[] means, double[][] byKind, double[] byFirst) {
    /** The same slopes where other means are expected. */
    Slopes at(double[] others) {
      return new Slopes(others, byKind, byFirst);
    }

    /** Slope by the logarithm of all speeds together. */
    double all(int interval) {
      double sum = 0;
      for (double each : byKind[interval]) {
        sum += each;
      }
      return sum;
    }
  }

  /** What one run of the engine is asked. */
  private record Asked(Speeds speeds, double thicker) {}

  /** Trunks in mm that the engine expects at some speeds, and how they change with each. */
  public Slopes at(Speeds speeds) {
    // Kinds of one species that no interval has both of may be moved in one run.
    List<String> conditions =
        List.copyOf(new TreeSet<>(kinds.stream().map(Kind::condition).toList()));
    int runs = 2 + 2 * conditions.size();
    double[][] means = new double[runs][];
    IntStream.range(0, runs)
        .parallel()
        .forEach(run -> means[run] = means(asked(run, conditions, speeds)));
    double[][] byKind = new double[intervals.size()][kinds.size()];
    double[] byFirst = new double[intervals.size()];
    for (int i = 0; i < intervals.size(); i++) {
      byFirst[i] = (means[1][i] - means[0][i]) / (THICKER * intervals.get(i).first().meanMm());
      for (int k = 0; k < kinds.size(); k++) {
        if (kinds.get(k).species().equals(intervals.get(i).species())) {
          int condition = conditions.indexOf(kinds.get(k).condition());
          byKind[i][k] = (means[2 + 2 * condition][i] - means[3 + 2 * condition][i]) / (2 * STEP);
        }
      }
    }
    return new Slopes(means[0], byKind, byFirst);
  }

  private Asked asked(int run, List<String> conditions, Speeds speeds) {
    if (run < 2) {
      return new Asked(speeds, run == 0 ? 1 : 1 + THICKER);
    }
    String condition = conditions.get((run - 2) / 2);
    double step = run % 2 == 0 ? STEP : -STEP;
    return new Asked(speeds.moved(kind -> kind.condition().equals(condition), kinds, step), 1);
  }

  /** μ of each interval, mm. */
  public double[] means(Speeds speeds) {
    return means(new Asked(speeds, 1));
  }

  private double[] means(Asked asked) {
    Map<String, Species> species = asked.speeds().of(assumed);
    Map<String, Map<Integer, BeforeCount>> counts =
        intervals.stream().allMatch(Interval::isTagged)
            ? Map.of()
            : past.runs().counts(species, asked.thicker());
    Cohorts cohorts = new Cohorts(COHORT);
    return intervals.stream()
        .mapToDouble(each -> mean(each, species, counts, cohorts, asked.thicker()))
        .toArray();
  }

  /** Representative plants of a group of tagged ones. */
  private static final int COHORT = 64;

  private static double mean(
      Interval interval,
      Map<String, Species> species,
      Map<String, Map<Integer, BeforeCount>> counts,
      Cohorts cohorts,
      double thicker) {
    if (!interval.isTagged()) {
      return counts.get(interval.subject()).get(interval.to()).meanTrunkMm();
    }
    Species grown = species.get(interval.species());
    return cohorts.meanAfter(
        interval.first().meanMm() * thicker,
        interval.first().spread(),
        grown,
        interval.grownBy(grown.growth()));
  }
}
