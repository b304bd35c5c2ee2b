package growingon.money;

import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;

/**
 * The plants for sale of a lot at a moment, by what they cost and would fetch; kept plants are left
 * out. Plan currency without VAT.
 *
 * @param priced plants that have a list price
 * @param unpriced plants without one: no grade yet, or a grade or quality without a price
 * @param list list price of the priced, less what selling costs
 * @param costEach cost to date of a plant
 * @param paidEach share of the price paid for the whole lot that a plant still carries
 */
record EndStock(double priced, double unpriced, double list, double costEach, double paidEach) {
  /** Nothing stands. */
  static final EndStock NOTHING = new EndStock(0, 0, 0, 0, 0);

  /**
   * Sorts plants by whether they have a price.
   *
   * @param standing plants
   * @param prices list prices less selling cost, [quality][0 = no grade, then grades from the
   *     lowest]; 0 for none
   */
  static EndStock of(GradedPlants standing, double[][] prices, double costEach, double paidEach) {
    double priced = 0;
    double unpriced = 0;
    double list = 0;
    for (Quality quality : Quality.values()) {
      for (int grade = GradedPlants.NO_GRADE; grade < standing.grades(); grade++) {
        double plants = standing.of(quality, grade);
        double price = prices[quality.ordinal()][grade + 1];
        priced += price > 0 ? plants : 0;
        unpriced += price > 0 ? 0 : plants;
        list += plants * price;
      }
    }
    return new EndStock(priced, unpriced, list, costEach, paidEach);
  }

  double pricedCost() {
    return priced * costEach;
  }

  double unpricedCost() {
    return unpriced * costEach;
  }

  /** The lower of cost and list price less selling cost; plants without a list price at cost. */
  double lowerOfCostAndList() {
    return Math.min(pricedCost(), list) + unpricedCost();
  }

  /** What they are worth at the end of a plan. */
  double worth(HorizonValue value) {
    return value.isStockValue() ? lowerOfCostAndList() : value.shareOfList() * list;
  }

  /** The same at other list prices. */
  EndStock atPrices(double factor) {
    return new EndStock(priced, unpriced, factor * list, costEach, paidEach);
  }

  /** What they would be worth had the lot cost so much more when it was bought. */
  double worth(HorizonValue value, double morePaid) {
    return new EndStock(priced, unpriced, list, costEach + morePaid * paidEach, paidEach)
        .worth(value);
  }
}
