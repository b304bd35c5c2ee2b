package growingon.project;

import growingon.growth.Flow;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.nursery.species.Curve;
import growingon.project.slice.Lattice;
import growingon.project.slice.Stream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * How the representative plants of a lot start: their trunks and vigour, when they reach the
 * grades, and how many plants each stands for. The same for every run of a lot, so it is worked out
 * once; its arrays are shared and never changed.
 */
final class GrowthStart {
  private final LotPlan plan;
  private final Lattice lattice;
  private final Map<Quality, QualityRule> qualities;
  private final Map<Curve, ListedCrossings.Order> crossings = new ConcurrentHashMap<>();
  private final Map<Curve, double[]> coordinates = new ConcurrentHashMap<>();
  private final Streams expectedStreams;
  final Grade[] grades;
  final double[] trunks;
  final double[] vigour;
  final double mostVigour;

  GrowthStart(LotPlan plan, Lattice lattice, Map<Quality, QualityRule> qualities) {
    this.plan = plan;
    this.lattice = lattice;
    this.qualities = qualities;
    this.grades = plan.grades().toArray(new Grade[0]);
    this.trunks = new double[lattice.slices()];
    this.vigour = lattice.vigours(plan.species.vigourSpread());
    this.mostVigour = max(vigour);
    for (int i = 0; i < trunks.length; i++) {
      trunks[i] = trunk(plan.lot.trunks(), i);
    }
    this.expectedStreams = layOut(plan.lot.quality()).sortedAs(lattice::shared);
  }

  /** The greatest of some numbers; 0 of none. */
  static double max(double[] values) {
    double most = values.length == 0 ? 0 : values[0];
    for (double each : values) {
      most = Math.max(most, each);
    }
    return most;
  }

  private double trunk(Trunks stated, int slice) {
    if (stated instanceof Trunks.SizeClass evenly) {
      double share = lattice.trunkCoordinate(slice);
      return evenly.fromMm() + share * (evenly.toMm() - evenly.fromMm());
    }
    return Lattice.lognormal(stated.meanMm(), stated.spread(), lattice.trunkScore(slice));
  }

  /** For a law, when the slices are thick enough for one grade more; for one run. */
  Crossings crossings(Curve curve) {
    return new ListedCrossings(
        crossings.computeIfAbsent(
            curve, law -> new ListedCrossings.Order(clocks(law), grades.length)));
  }

  /** For a law, where each slice's trunk stands on its scale. */
  double[] coordinates(Curve curve) {
    return coordinates.computeIfAbsent(
        curve, law -> DoubleStream.of(trunks).map(Flow.of(law)::coordinate).toArray());
  }

  /** Growth clocks at which each slice is thick enough for each grade. */
  private double[] clocks(Curve law) {
    Flow flow = Flow.of(law);
    double[] now = coordinates(law);
    double[] then = gradeCoordinates(flow);
    double[] table = new double[trunks.length * grades.length];
    for (int slice = 0; slice < trunks.length; slice++) {
      for (int grade = 0; grade < grades.length; grade++) {
        double least = grades[grade].leastTrunkMm();
        double years = flow.yearsTo(trunks[slice], now[slice], least, then[grade]);
        table[slice * grades.length + grade] = years / vigour[slice];
      }
    }
    return table;
  }

  /** Where the least trunk of each grade stands on the scale of a law. */
  double[] gradeCoordinates(Flow flow) {
    return Arrays.stream(grades).mapToDouble(Grade::leastTrunkMm).map(flow::coordinate).toArray();
  }

  /** Fresh streams for a run in which the lot sorts as stated. */
  Streams streams(QualityShares shares) {
    return shares.equals(plan.lot.quality()) ? expectedStreams.copy() : layOut(shares);
  }

  private Streams layOut(QualityShares shares) {
    double[] cuts = {0, shares.first(), Math.min(1, shares.first() + shares.second()), 1};
    double perSlice = (double) (plan.lot.quantity() - plan.lot.kept()) / trunks.length;
    List<Stream> streams = new ArrayList<>();
    for (Quality quality : Quality.values()) {
      double from = cuts[quality.ordinal()];
      double to = cuts[quality.ordinal() + 1];
      for (boolean held : new boolean[] {false, true}) {
        double share = held ? plan.heldShare : 1 - plan.heldShare;
        if (to > from && share > 0) {
          double[] weights = parts(from, to, held, share);
          for (int i = 0; i < weights.length; i++) {
            weights[i] *= perSlice;
          }
          streams.add(stream(quality, held ? plan.holdFrom : 0, weights));
        }
      }
    }
    return streams(streams);
  }

  /** Streams as they are listed, firsts before seconds. */
  Streams streams(List<Stream> listed) {
    return Streams.of(listed, trunks.length, grades.length);
  }

  /** What part of each slice is of a quality and is held, or is free. */
  private double[] parts(double from, double to, boolean held, double share) {
    double[] parts = new double[trunks.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = lattice.shareBelow(to, i) - lattice.shareBelow(from, i);
    }
    if (!plan.holdsBest) {
      for (int i = 0; i < parts.length; i++) {
        parts[i] *= share;
      }
      return parts;
    }
    double left = share * DoubleStream.of(parts).sum();
    for (int n = 0; n < parts.length; n++) {
      // Slices are numbered from the thinnest trunk to the thickest.
      int slice = held ? parts.length - 1 - n : n;
      parts[slice] = Math.max(0, Math.min(parts[slice], left));
      left -= parts[slice];
    }
    return parts;
  }

  /** A stream of plants of a quality that are sold from a grade upwards. */
  Stream stream(Quality quality, int sellsFrom, double[] weights) {
    boolean mayGrade = quality != Quality.THIRD || qualities.get(quality).priceShare() > 0;
    return new Stream(quality, mayGrade, sellsFrom, weights);
  }

  /** Standard normal scores of the slices' trunks. */
  double[] trunkScores() {
    return IntStream.range(0, trunks.length).mapToDouble(lattice::trunkScore).toArray();
  }
}
