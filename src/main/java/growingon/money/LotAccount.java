package growingon.money;

import growingon.nursery.Lot;

/**
 * What one lot takes and brings over the plan, plan currency, all amounts positive.
 *
 * @param lot the lot
 * @param spentBefore cost to date of its plants, spent before the plan; never in cash
 * @param plants price of the plants bought
 * @param carriage carriage and import charges
 * @param pots pots used at their unit price
 * @param substrate components used at their unit price
 * @param materials materials used at their unit price
 * @param hours hours of work, care among them
 * @param labour all hours at the hourly rate
 * @param care cost of care by area
 * @param m2Months square metre months in places
 * @param placeCharge what those cost
 * @param sales receipts
 * @param started plants at the start
 * @param lost plants that died or were culled
 * @param sold plants sold
 * @param standing plants standing at the end, kept ones among them
 * @param kept kept plants standing at the end
 * @param unsoldAtList list price of the plants unsold at the end that have a grade, kept ones apart
 */
public record LotAccount(
    Lot lot,
    double spentBefore,
    double plants,
    double carriage,
    double pots,
    double substrate,
    double materials,
    double hours,
    double labour,
    double care,
    double m2Months,
    double placeCharge,
    double sales,
    double started,
    double lost,
    double sold,
    double standing,
    double kept,
    double unsoldAtList) {
  /** Costs within the plan. */
  public double costs() {
    return plants + carriage + pots + substrate + materials + labour + care + placeCharge;
  }

  /** Sales less the costs within the plan. */
  public double result() {
    return sales - costs();
  }

  /** Sales less all costs, those before the plan too. */
  public double resultWithSpentBefore() {
    return result() - spentBefore;
  }

  /** All costs, before and within the plan, for each plant started; NaN for none. */
  public double costPerStarted() {
    return perPlant(started);
  }

  /** All costs for each plant that neither died nor was culled; NaN for none. */
  public double costPerAlive() {
    return perPlant(started - lost);
  }

  /** All costs for each plant sold; NaN for none. */
  public double costPerSold() {
    return perPlant(sold);
  }

  private double perPlant(double number) {
    return number > 1e-9 ? (costs() + spentBefore) / number : Double.NaN;
  }
}
