package growingon.report;

/**
 * A number of plants: expected, and rounded to whole plants so that a column adds up.
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
}
