package growingon.project.slice;

import growingon.growth.Flow;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.Grade;
import growingon.nursery.species.Curve;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The trunks and vigour with which slices start, and when they reach the grades of a ladder. Lots
 * of which the same is stated share them, so that what many lots of a size class read stays near;
 * the arrays are never changed.
 */
final class StartingTrunks {
  private final Map<Curve, ListedCrossings.Order> crossings = new ConcurrentHashMap<>();
  private final Map<Curve, double[]> coordinates = new ConcurrentHashMap<>();
  private final double[] leastTrunks;
  final Grade[] grades;
  final GradeTable[] tables;
  final double[] trunks;
  final double[] vigour;
  final double mostVigour;

  /**
   * What they follow from.
   *
   * @param trunks trunks as stated
   * @param vigourSpread coefficient of variation of vigour
   * @param grades grades of the ladder, lowest first
   */
  record Stated(Trunks trunks, double vigourSpread, List<Grade> grades) {}

  StartingTrunks(Stated stated, Lattice lattice) {
    this.grades = stated.grades().toArray(new Grade[0]);
    this.leastTrunks = stated.grades().stream().mapToDouble(Grade::leastTrunkMm).toArray();
    this.tables = lattice.tables(stated.grades());
    this.trunks = new double[lattice.slices()];
    this.vigour = lattice.vigours(stated.vigourSpread());
    this.mostVigour = max(vigour);
    for (int i = 0; i < trunks.length; i++) {
      trunks[i] = trunk(stated.trunks(), i, lattice);
    }
  }

  private static double trunk(Trunks stated, int slice, Lattice lattice) {
    if (stated instanceof Trunks.SizeClass evenly) {
      double share = lattice.trunkCoordinate(slice);
      return evenly.fromMm() + share * (evenly.toMm() - evenly.fromMm());
    }
    return Lattice.lognormal(stated.meanMm(), stated.spread(), lattice.trunkScore(slice));
  }

  /** The greatest of some numbers; 0 of none. */
  static double max(double[] values) {
    double most = values.length == 0 ? 0 : values[0];
    for (double each : values) {
      most = Math.max(most, each);
    }
    return most;
  }

  /** For a law, when the slices are thick enough for one grade more; for one run. */
  Crossings crossings(Curve curve) {
    return new ListedCrossings(
        crossings.computeIfAbsent(
            curve, law -> new ListedCrossings.Order(clocks(law), grades.length)));
  }

  /** For a law, where each slice's trunk stands on its scale. */
  double[] coordinates(Curve curve) {
    return coordinates.computeIfAbsent(curve, law -> Flow.of(law).coordinates(trunks));
  }

  /** Growth clocks at which each slice is thick enough for each grade. */
  private double[] clocks(Curve law) {
    Flow flow = Flow.of(law);
    double[] now = coordinates(law);
    double[] then = gradeCoordinates(flow);
    double[] table = new double[trunks.length * grades.length];
    for (int slice = 0; slice < trunks.length; slice++) {
      for (int grade = 0; grade < grades.length; grade++) {
        double years = flow.yearsTo(trunks[slice], now[slice], leastTrunks[grade], then[grade]);
        table[slice * grades.length + grade] = years / vigour[slice];
      }
    }
    return table;
  }

  /** Where the least trunk of each grade stands on the scale of a law. */
  double[] gradeCoordinates(Flow flow) {
    return flow.coordinates(leastTrunks);
  }
}
