package growingon.growth;

import growingon.nursery.species.Curve;

/**
 * The flow map of an autonomous growth law d' = f(d): where a trunk stands after a time, exactly.
 * For every law {@code advance(advance(d, s), t) = advance(d, s + t)}; a trunk at or above the
 * law's final size stays as it is.
 */
public interface Flow {
  /**
   * Trunk after some growth.
   *
   * @param mm trunk now, mm, more than 0
   * @param years growth years, 0 or more
   * @return trunk then, mm
   */
  double advance(double mm, double years);

  /**
   * Where a trunk stands on the scale on which the law is simplest; worked out once for a trunk
   * that is advanced by one time after another.
   *
   * @param mm trunk, mm, more than 0
   */
  double coordinate(double mm);

  /** The same of several trunks; the very array where each is its own coordinate. */
  default double[] coordinates(double[] mm) {
    double[] coordinates = new double[mm.length];
    for (int i = 0; i < mm.length; i++) {
      coordinates[i] = coordinate(mm[i]);
    }
    return coordinates;
  }

  /**
   * Trunk after some growth, as {@link #advance(double, double)} gives it.
   *
   * @param mm trunk now, mm, more than 0
   * @param coordinate its {@link #coordinate}
   * @param years growth years, 0 or more
   * @return trunk then, mm
   */
  double advance(double mm, double coordinate, double years);

  /**
   * Growth years until a trunk reaches a size; the inverse of {@link #advance}.
   *
   * @param mm trunk now, mm, more than 0
   * @param targetMm size to reach, mm
   * @return growth years; 0 if it is there already, infinite if it never gets there
   */
  default double yearsTo(double mm, double targetMm) {
    return yearsTo(mm, coordinate(mm), targetMm, coordinate(targetMm));
  }

  /**
   * Growth years until a trunk reaches a size, as {@link #yearsTo(double, double)} gives them.
   *
   * @param mm trunk now, mm, more than 0
   * @param coordinate its {@link #coordinate}
   * @param targetMm size to reach, mm
   * @param targetCoordinate the coordinate of that size
   */
  double yearsTo(double mm, double coordinate, double targetMm, double targetCoordinate);

  /** The flow map of a law. */
  static Flow of(Curve curve) {
    if (curve instanceof Curve.Steady law) {
      return new SteadyFlow(law.gMmAYear(), law.mostMm());
    }
    return RelaxingFlow.of(curve);
  }
}
