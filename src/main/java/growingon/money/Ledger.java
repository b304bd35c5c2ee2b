package growingon.money;

import growingon.nursery.time.Horizon;
import growingon.project.lot.LotHistory;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What one lot takes and brings, by kind and month, from the plan's first month. Accounts, cash,
 * the stock's value and a review read it.
 */
public final class Ledger extends Booking {
  private final Map<CostKind, double[]> costs = new EnumMap<>(CostKind.class);
  private final double[] sales;
  private final double[] plantsSold;
  private final double[] hours;
  private final double[] sellingLabour;
  private double m2Months;

  private Ledger(Tariff tariff) {
    super(tariff);
    for (CostKind kind : CostKind.values()) {
      costs.put(kind, new double[tariff.months()]);
    }
    this.sales = new double[tariff.months()];
    this.plantsSold = new double[tariff.months()];
    this.hours = new double[tariff.months()];
    this.sellingLabour = new double[tariff.months()];
  }

  /** Books the history of a lot. */
  static Ledger of(LotHistory history, Tariff tariff, Horizon horizon) {
    Ledger ledger = new Ledger(tariff);
    ledger.buy(history.lot(), history.part(), horizon.offset(history.lot().arrived()), 1);
    history.retell(ledger);
    return ledger;
  }

  @Override
  public void cost(CostKind kind, int month, double amount) {
    costs.get(kind)[month] += amount;
  }

  @Override
  public void hours(int month, double worked) {
    hours[month] += worked;
  }

  @Override
  protected void sellingLabour(int month, double amount) {
    sellingLabour[month] += amount;
  }

  @Override
  public void receipts(int month, double plants, double money) {
    sales[month] += money;
    plantsSold[month] += plants;
  }

  @Override
  protected void takesSpace(int month, Optional<String> place, double m2) {
    m2Months += place.isEmpty() ? 0 : m2;
  }

  /** Number of months. */
  public int months() {
    return sales.length;
  }

  /** Cost of a kind in a month. */
  public double cost(CostKind kind, int month) {
    return costs.get(kind)[month];
  }

  /** Cost of a kind over the whole plan. */
  public double cost(CostKind kind) {
    return sum(costs.get(kind));
  }

  /** Cost of some kinds over the whole plan. */
  double cost(Predicate<CostKind> which) {
    double sum = 0;
    for (CostKind kind : CostKind.values()) {
      sum += which.test(kind) ? cost(kind) : 0;
    }
    return sum;
  }

  /** All costs over the whole plan. */
  public double costs() {
    return cost(kind -> true);
  }

  /**
   * What the plants that stand have cost in a month: all but what selling others took, in money and
   * hours.
   */
  double costOfStanding(int month) {
    double sum = -sellingLabour[month];
    for (CostKind kind : CostKind.values()) {
      sum += kind == CostKind.SELLING ? 0 : cost(kind, month);
    }
    return sum;
  }

  /** Receipts in a month. */
  public double sales(int month) {
    return sales[month];
  }

  /** Receipts over the whole plan. */
  public double sales() {
    return sum(sales);
  }

  /** Plants sold in a month. */
  public double plantsSold(int month) {
    return plantsSold[month];
  }

  /** Hours of work in a month, care and selling among them. */
  public double hours(int month) {
    return hours[month];
  }

  /** Hours of work over the whole plan. */
  public double hours() {
    return sum(hours);
  }

  /** Square metre months in places. */
  public double m2Months() {
    return m2Months;
  }

  private static double sum(double[] values) {
    return Arrays.stream(values).sum();
  }
}
