package growingon.report;

/**
 * A number of plants: as expected, and in whole plants, so that everything that is printed adds up.
 *
 * @param exact expected number, full precision; written to figures.json
 * @param whole as shown
 */
public record Plants(double exact, long whole) {
  /** No plants, of which a table has more than of anything else. */
  static final Plants NONE = new Plants(0, 0);

  /** So many plants. */
  static Plants of(double exact, long whole) {
    return exact == 0 && whole == 0 ? NONE : new Plants(exact, whole);
  }

  /** One number by itself, of something that is not counted in plants of lots. */
  static Plants nearest(double exact) {
    return of(exact, Math.round(exact));
  }

  Plants plus(Plants other) {
    return plus(other.exact, other.whole);
  }

  Plants plus(double moreExact, long moreWhole) {
    return of(exact + moreExact, whole + moreWhole);
  }

  Plants minus(Plants other) {
    return plus(-other.exact, -other.whole);
  }
}
