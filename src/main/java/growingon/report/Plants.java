package growingon.report;

/**
 * A number of plants: expected, and rounded to whole plants so that a column adds up.
 *
 * @param exact expected number, full precision; written to figures.json
 * @param whole as shown
 */
public record Plants(double exact, long whole) {}
