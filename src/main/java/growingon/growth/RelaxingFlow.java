package growingon.growth;

import growingon.nursery.species.Curve;
import growingon.nursery.species.Curve.Law;
import growingon.nursery.species.Curve.Parameter;
import java.util.Map;

/**
 * A law that relaxes towards a final size D: on its own {@link Scale} the distance to D shrinks as
 * e^(−rate t), as the equations of {@link Law} do: levelling (monomolecular), logistic, Gompertz,
 * Chapman–Richards and theta-logistic; see e.g. Zeide, "Analysis of growth equations", Forest
 * Science 39 (1993), from memory.
 *
 * @param finalMm D, mm
 * @param rate a growth year
 * @param scale the scale of the law
 * @param shape exponent p or q; 1 where the law has none
 */
record RelaxingFlow(double finalMm, double rate, Scale scale, double shape) implements Flow {
  private static final double NO_SHAPE = 1;

  /** The flow map of a law that has a final size. */
  static Flow of(Curve curve) {
    Law law = curve.law();
    Map<Parameter, Double> values = curve.values();
    return new RelaxingFlow(
        values.get(Parameter.FINAL_MM),
        values.get(law.rate()),
        Scale.of(law),
        law.shape().map(values::get).orElse(NO_SHAPE));
  }

  @Override
  public double advance(double mm, double years) {
    return advance(mm, coordinate(mm), years);
  }

  @Override
  public double coordinate(double mm) {
    return mm >= finalMm ? 0 : scale.distance(mm / finalMm, shape);
  }

  @Override
  public double advance(double mm, double coordinate, double years) {
    if (mm >= finalMm || years == 0) {
      return mm;
    }
    double distance = coordinate * Math.exp(-rate * years);
    return Math.max(mm, finalMm * scale.part(distance, shape));
  }

  @Override
  public double yearsTo(double mm, double coordinate, double targetMm, double targetCoordinate) {
    if (mm >= targetMm) {
      return 0;
    }
    if (targetMm >= finalMm || rate == 0) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.log(coordinate / targetCoordinate) / rate;
  }
}
