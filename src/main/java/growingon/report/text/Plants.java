package growingon.report.text;

import java.util.stream.DoubleStream;

/**
 * A number of plants: as expected, and in whole plants, so that everything that is printed adds up.
 *
 * @param exact expected number, full precision; written to figures.json
 * @param whole as shown
 */
public record Plants(double exact, long whole) {
  /** No plants, of which a table has more than of anything else. */
  public static final Plants NONE = new Plants(0, 0);

  /** So many plants. */
  public static Plants of(double exact, long whole) {
    return exact == 0 && whole == 0 ? NONE : new Plants(exact, whole);
  }

  /** One number by itself, of something that is not counted in plants of lots. */
  public static Plants nearest(double exact) {
    return of(exact, Math.round(exact));
  }

  /** The sum of numbers that stand in rows of a table, each by itself. */
  public static Plants together(DoubleStream rows) {
    return rows.mapToObj(Plants::nearest).reduce(NONE, Plants::plus);
  }

  public Plants plus(Plants other) {
    return plus(other.exact, other.whole);
  }

  public Plants plus(double moreExact, long moreWhole) {
    return of(exact + moreExact, whole + moreWhole);
  }

  public Plants minus(Plants other) {
    return plus(-other.exact, -other.whole);
  }
}
