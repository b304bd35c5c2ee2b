package growingon.project.history;

/**
 * Demand of a month that could not be met.
 *
 * @param month offset from the first month
 * @param row index of the demand row
 * @param units plants short
 */
public record Missed(int month, int row, double units) {}
