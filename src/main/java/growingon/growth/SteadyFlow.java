package growingon.growth;

/**
 * d' = g up to a greatest trunk: d + g t.
 *
 * @param g mm a growth year
 * @param mostMm trunk at which growth stops
 */
record SteadyFlow(double g, double mostMm) implements Flow {
  @Override
  public double advance(double mm, double years) {
    return mm >= mostMm ? mm : Math.min(mostMm, mm + g * years);
  }

  @Override
  public double coordinate(double mm) {
    return mm;
  }

  @Override
  public double[] coordinates(double[] mm) {
    return mm;
  }

  @Override
  public double advance(double mm, double coordinate, double years) {
    return advance(mm, years);
  }

  @Override
  public double yearsTo(double mm, double coordinate, double targetMm, double targetCoordinate) {
    if (mm >= targetMm) {
      return 0;
    }
    return targetMm > mostMm || g == 0 ? Double.POSITIVE_INFINITY : (targetMm - mm) / g;
  }
}
