package growingon.review.kept;

/**
 * Plants of a lot sold in a month of a kept plan.
 *
 * @param month months after the plan's first, 0 for the first
 * @param grade name of the grade
 * @param quality first, second or third
 * @param units plants
 * @param money plan currency
 */
public record KeptSale(int month, String grade, String quality, double units, double money) {}
