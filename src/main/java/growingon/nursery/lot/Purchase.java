package growingon.nursery.lot;

import growingon.nursery.number.Check;

/**
 * What a lot bought within the plan costs, in plan currency, without VAT; paid in the month of
 * arrival.
 *
 * @param unitPrice price of one plant at the quantity bought
 * @param carriage for the whole order
 * @param importCharges for the whole order
 * @param currency in which it is bought; another than the plan's was turned by the exchange rate
 * @param lossSure how sure its loss is, 0 to 1 (for chances)
 * @param fails chance that the whole lot fails, 0 to 1 (for chances)
 */
public record Purchase(
    double unitPrice,
    double carriage,
    double importCharges,
    String currency,
    double lossSure,
    double fails) {
  public Purchase {
    Check.notNegative(unitPrice, "unit price");
    Check.notNegative(carriage, "carriage");
    Check.notNegative(importCharges, "import charges");
    Check.named(currency, "the currency of a purchase");
    Check.share(lossSure, "how sure the loss is");
    Check.share(fails, "the chance of failure");
  }

  /** Cost landed of so many plants. */
  public double landed(int quantity) {
    return unitPrice * quantity + carriage + importCharges;
  }
}
