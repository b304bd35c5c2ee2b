package growingon.money;

import growingon.nursery.lot.Lot;
import growingon.nursery.number.Negligible;

/**
 * What one lot takes and brings over the plan, plan currency, all amounts positive.
 *
 * @param lot the lot
 * @param spentBefore cost to date of its plants, spent before the plan; never in cash
 * @param ledger what it takes and brings within the plan
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
    Ledger ledger,
    double started,
    double lost,
    double sold,
    double standing,
    double kept,
    double unsoldAtList) {
  /** Costs of a kind within the plan. */
  public double cost(CostKind kind) {
    return ledger.cost(kind);
  }

  /** Hours of work, care and selling among them. */
  public double hours() {
    return ledger.hours();
  }

  /** Square metre months in places. */
  public double m2Months() {
    return ledger.m2Months();
  }

  /** Receipts. */
  public double sales() {
    return ledger.sales();
  }

  /** Costs within the plan. */
  public double costs() {
    return ledger.costs();
  }

  /** Sales less the costs within the plan. */
  public double result() {
    return sales() - costs();
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
    return Negligible.is(number) ? Double.NaN : (costs() + spentBefore) / number;
  }

  /** An account of a lot with no plants yet. */
  public static Builder of(Lot lot, Ledger ledger) {
    Builder builder = new Builder();
    builder.lot = lot;
    builder.ledger = ledger;
    return builder;
  }

  /** Its parts by name; what is not said has its usual value. */
  public static final class Builder {
    private Lot lot;
    private double spentBefore = 0;
    private Ledger ledger;
    private double started = 0;
    private double lost = 0;
    private double sold = 0;
    private double standing = 0;
    private double kept = 0;
    private double unsoldAtList = 0;

    private Builder() {}

    public Builder spentBefore(double value) {
      this.spentBefore = value;
      return this;
    }

    public Builder started(double value) {
      this.started = value;
      return this;
    }

    public Builder lost(double value) {
      this.lost = value;
      return this;
    }

    public Builder sold(double value) {
      this.sold = value;
      return this;
    }

    public Builder standing(double value) {
      this.standing = value;
      return this;
    }

    public Builder kept(double value) {
      this.kept = value;
      return this;
    }

    public Builder unsoldAtList(double value) {
      this.unsoldAtList = value;
      return this;
    }

    public LotAccount build() {
      return new LotAccount(
          lot, spentBefore, ledger, started, lost, sold, standing, kept, unsoldAtList);
    }
  }
}
