package growingon.review.book;

import growingon.money.CostKind;
import growingon.money.Ledger;
import growingon.project.lot.LotHistory;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a lot takes and brings: hours of work, plants sold ({@code units}) and money, each [month]
 * from the plan's first; money in plan currency.
 */
public final class LotMoney {
  public final double[] hours;
  public final double[] units;
  public final double[] sales;
  private final Map<CostKind, double[]> costs = new EnumMap<>(CostKind.class);

  private LotMoney(int months) {
    this.hours = new double[months];
    this.units = new double[months];
    this.sales = new double[months];
    for (CostKind kind : CostKind.values()) {
      costs.put(kind, new double[months]);
    }
  }

  /** By the ledger of its account. */
  public static LotMoney of(Ledger ledger) {
    LotMoney money = new LotMoney(ledger.months());
    for (int month = 0; month < ledger.months(); month++) {
      money.hours[month] = ledger.hours(month);
      money.units[month] = ledger.plantsSold(month);
      money.sales[month] = ledger.sales(month);
      for (CostKind kind : CostKind.values()) {
        money.add(kind, month, ledger.cost(kind, month));
      }
    }
    return money;
  }

  private void add(CostKind kind, int month, double amount) {
    costs.get(kind)[month] += amount;
  }

  /** What the daybook says takes the place of what was reckoned, up to its last month. */
  void correct(Spending said, int through, double hourlyRate, LotHistory history) {
    said.cameBack().forEach(back -> units[back.month()] -= back.plants());
    for (JobKind kind : JobKind.values()) {
      if (said.saysHours(kind)) {
        correctHours(said, kind, through, hourlyRate, JobKind.expected(history, months()));
      }
    }
    for (int month = 0; month <= through; month++) {
      sales[month] += said.receipts(month);
      for (CostKind kind : CostKind.values()) {
        if (kind != CostKind.LABOUR && said.says(kind)) {
          costs.get(kind)[month] = said.cost(kind, month);
        }
      }
    }
  }

  private void correctHours(
      Spending said, JobKind kind, int through, double hourlyRate, double[][] expected) {
    for (int month = 0; month <= through; month++) {
      double more = said.hours(kind, month) - expected[kind.ordinal()][month];
      hours[month] += more;
      add(CostKind.LABOUR, month, more * hourlyRate);
    }
  }

  /** Cost to date comes along with plants, or goes with them where it is negative. */
  void transfer(int month, double amount) {
    add(CostKind.OTHER, month, amount);
  }

  public double cost(CostKind kind, int month) {
    return costs.get(kind)[month];
  }

  double costs(int month) {
    double sum = 0;
    for (double[] each : costs.values()) {
      sum += each[month];
    }
    return sum;
  }

  /** Sales less costs of a month, plan currency. */
  public double result(int month) {
    return sales[month] - costs(month);
  }

  /** Number of months that are booked, from the plan's first. */
  public int months() {
    return hours.length;
  }

  /** Sum of an array from its first month to a month, both counted; 0 for a month before. */
  public static double upTo(double[] values, int month) {
    double sum = 0;
    for (int i = 0; i <= Math.min(month, values.length - 1); i++) {
      sum += values[i];
    }
    return sum;
  }

  /** Cost of a kind up to a month, that month counted, plan currency; 0 for a month before. */
  public double costUpTo(CostKind kind, int month) {
    return upTo(costs.get(kind), month);
  }

  /** All costs up to a month, that month counted, plan currency; 0 for a month before. */
  public double costsUpTo(int month) {
    double sum = 0;
    for (double[] each : costs.values()) {
      sum += upTo(each, month);
    }
    return sum;
  }
}
