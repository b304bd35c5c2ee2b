package growingon.project.slice;

import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import java.util.Arrays;

/**
 * How far the plants of a lot have grown. Everything that speeds or slows a lot multiplies its
 * growth time, and only vigour differs between its slices, so a lot needs one clock: slice i stands
 * at flow(trunk0_i, vigour_i × clock). A month costs an addition, not K exponentials; trunks are
 * worked out where something asks for them.
 */
final class GrowthClock {
  private static final double NOT_YET = -1;

  private final StartingTrunks start;
  private final double[] vigour;
  private boolean isAsStated;
  private double[] trunkAtZero;
  private double[] coordinates;
  private double[] gradeCoordinates;
  private double now;
  private Curve curve;
  private Flow flow;
  private double[] trunks;
  private double begunAt = NOT_YET;
  private double trunksAt = NOT_YET;
  private double mostAtZero = NOT_YET;

  /** The clock of plants with such trunks; it begins before it goes. */
  GrowthClock(StartingTrunks start) {
    this.start = start;
    this.vigour = start.vigour;
  }

  /**
   * Begins a run with plants that have not grown yet.
   *
   * @param thicker factor on their trunks as they are stated
   */
  void begin(double thicker) {
    isAsStated = thicker == 1;
    curve = null;
    flow = null;
    restart(isAsStated ? start.trunks : thicker(thicker), null);
  }

  private double[] thicker(double factor) {
    double[] stated = start.trunks;
    double[] thicker = new double[stated.length];
    for (int i = 0; i < thicker.length; i++) {
      thicker[i] = stated[i] * factor;
    }
    return thicker;
  }

  /** The same so far, for a lot that goes on apart; what it starts from is never changed. */
  GrowthClock(GrowthClock same) {
    this.start = same.start;
    this.vigour = same.vigour;
    this.isAsStated = same.isAsStated;
    this.trunkAtZero = same.trunkAtZero;
    this.coordinates = same.coordinates;
    this.gradeCoordinates = same.gradeCoordinates;
    this.now = same.now;
    this.curve = same.curve;
    this.flow = same.flow;
  }

  /** Growth years of a plant of vigour 1 since the law began. */
  double now() {
    return now;
  }

  /** Advances the clock, in growth years of a plant of vigour 1. */
  void grow(double growthYears) {
    now += growthYears;
  }

  boolean goesBy(Curve law) {
    return law == curve || law.equals(curve);
  }

  /** Whether no law has been given yet. */
  boolean isNew() {
    return curve == null;
  }

  /** Whether they started with their trunks as stated, which all runs share. */
  boolean isAsStated() {
    return isAsStated;
  }

  /** Goes on by a law from where the trunks stand now. */
  void goBy(Curve law) {
    boolean fromStart = isNew() && isAsStated;
    double[] from = isNew() ? trunkAtZero : Arrays.copyOf(trunks(), vigour.length);
    curve = law;
    flow = Flow.of(law);
    restart(from, fromStart ? start.coordinates(law) : flow.coordinates(from));
  }

  /** The trunks were measured: they grow on from there by the same law. */
  void measured(double[] from) {
    restart(from, flow.coordinates(from));
  }

  private void restart(double[] from, double[] at) {
    trunkAtZero = from;
    coordinates = at;
    gradeCoordinates = null;
    now = 0;
    begunAt = NOT_YET;
    trunksAt = NOT_YET;
    mostAtZero = NOT_YET;
  }

  /** The crossings of the law that a lot starts with, which all its runs share. */
  Crossings listedCrossings() {
    return start.crossings(curve);
  }

  /** Clock at which a slice is thick enough for a grade; never for one that is not there. */
  double clockTo(int slice, int grade) {
    if (grade == start.grades.length) {
      return Double.POSITIVE_INFINITY;
    }
    if (gradeCoordinates == null) {
      gradeCoordinates = start.gradeCoordinates(flow);
    }
    double least = start.grades[grade].leastTrunkMm();
    return flow.yearsTo(trunkAtZero[slice], coordinates[slice], least, gradeCoordinates[grade])
        / vigour[slice];
  }

  /** Trunk of a slice now, mm; worked out once while the clock stands, as in winter. */
  double trunk(int slice) {
    if (begunAt != now) {
      begin();
    }
    if (Double.isNaN(trunks[slice])) {
      trunks[slice] = advanced(slice);
    }
    return trunks[slice];
  }

  private void begin() {
    if (trunks == null) {
      trunks = new double[vigour.length];
    }
    Arrays.fill(trunks, Double.NaN);
    begunAt = now;
  }

  private double advanced(int slice) {
    return flow.advance(trunkAtZero[slice], coordinates[slice], vigour[slice] * now);
  }

  /** Trunk of every slice now, mm; as given before any law. */
  double[] trunks() {
    if (isNew()) {
      return trunkAtZero;
    }
    if (trunksAt != now) {
      for (int i = 0; i < vigour.length; i++) {
        trunk(i);
      }
      trunksAt = now;
    }
    return trunks;
  }

  /** No trunk is thicker than this, mm: that of a thickest and strongest plant. */
  double trunkAtMost() {
    if (mostAtZero == NOT_YET) {
      mostAtZero = StartingTrunks.max(trunkAtZero);
    }
    return flow.advance(mostAtZero, start.mostVigour * now);
  }
}
