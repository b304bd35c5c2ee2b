package growingon.growth;

/**
 * A trunk that was measured twice.
 *
 * @param fromMm trunk the first time, mm
 * @param toMm trunk the second time, mm
 * @param years growth years between
 * @param deviationMm standard deviation of the second trunk about a law, mm, more than 0
 */
public record TwoTrunks(double fromMm, double toMm, double years, double deviationMm) {
  public TwoTrunks {
    if (!(fromMm >= 0 && toMm >= 0 && years > 0 && deviationMm > 0)) {
      throw new IllegalArgumentException(
          "a growth needs trunks, a time and a deviation, but found %s, %s, %s, %s"
              .formatted(fromMm, toMm, years, deviationMm));
    }
  }
}
