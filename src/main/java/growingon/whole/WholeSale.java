package growingon.whole;

import growingon.nursery.market.Quality;

/**
 * Plants of a lot sold in a month to one demand row, as one grade and quality.
 *
 * @param month offset from the first month
 * @param row index of the demand row; −1 where no row wants them
 * @param grade index of the grade on the lot's ladder
 * @param quality their quality
 * @param units plants expected
 * @param money what they bring, in its month, plan currency
 * @param whole whole plants
 * @param receipts what the whole plants bring: the money, and that of sales of less than a plant
 *     whose plant is counted here; nil where no whole plant is sold
 */
public record WholeSale(
    int month,
    int row,
    int grade,
    Quality quality,
    double units,
    double money,
    int whole,
    double receipts) {
  /** The same sale with more receipts. */
  WholeSale plus(double more) {
    return new WholeSale(month, row, grade, quality, units, money, whole, receipts + more);
  }
}
