package growingon.nursery.lot;

import growingon.nursery.number.Check;

/** How thick the trunks of a lot are, in mm just above the root flare. */
public sealed interface Trunks {
  /** Mean trunk, mm. */
  double meanMm();

  /** Coefficient of variation, 0 for all alike. */
  double spread();

  /** The same, every trunk thicker by a factor. */
  Trunks times(double factor);

  /** The same, taken as if they had been measured. */
  default Trunks takenAsKnown() {
    return this;
  }

  /**
   * Lognormal with a mean and a coefficient of variation.
   *
   * @param meanMm mean, mm
   * @param spread coefficient of variation, 0 for all alike
   */
  record Measured(double meanMm, double spread) implements Trunks {
    public Measured {
      Check.positive(meanMm, "mean trunk");
      Check.notNegative(spread, "trunk spread");
    }

    @Override
    public Trunks times(double factor) {
      return new Measured(meanMm * factor, spread);
    }
  }

  /**
   * What is usual of a class of plants, as nobody measured them: lognormal, and the mean itself is
   * not known.
   *
   * @param of the class of plants, as in "pot 3 litre"
   * @param meanMm mean, mm
   * @param spread coefficient of variation, 0 for all alike
   */
  record Usual(String of, double meanMm, double spread) implements Trunks {
    public Usual {
      Check.named(of, "the class of plants that a usual trunk is of");
      Check.positive(meanMm, "mean trunk");
      Check.notNegative(spread, "trunk spread");
    }

    @Override
    public Trunks times(double factor) {
      return new Usual(of, meanMm * factor, spread);
    }

    @Override
    public Trunks takenAsKnown() {
      return new Measured(meanMm, spread);
    }
  }

  /**
   * A size class: evenly spread between two trunks.
   *
   * @param fromMm lower end, mm
   * @param toMm upper end, mm
   */
  record SizeClass(double fromMm, double toMm) implements Trunks {
    public SizeClass {
      Check.positive(fromMm, "trunk from");
      Check.that(toMm >= fromMm, "a size class runs upwards", toMm);
    }

    @Override
    public double meanMm() {
      return (fromMm + toMm) / 2;
    }

    @Override
    public double spread() {
      return (toMm - fromMm) / Math.sqrt(12) / meanMm();
    }

    @Override
    public Trunks times(double factor) {
      return new SizeClass(fromMm * factor, toMm * factor);
    }
  }
}
