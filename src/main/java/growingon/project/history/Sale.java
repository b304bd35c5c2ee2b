package growingon.project.history;

import growingon.nursery.market.Quality;

/**
 * Plants of a lot sold in a month.
 *
 * @param month offset from the first month
 * @param row index of the demand row in the nursery's demand
 * @param grade index of the grade on the lot's ladder
 * @param quality their quality
 * @param units plants
 * @param money plan currency
 */
public record Sale(int month, int row, int grade, Quality quality, double units, double money) {}
