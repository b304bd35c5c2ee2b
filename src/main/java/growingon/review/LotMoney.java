package growingon.review;

import growingon.money.Accounts;
import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.project.LotHistory;
import growingon.project.Sale;
import growingon.project.Stood;
import growingon.project.Use;
import growingon.project.Work;
import java.util.EnumMap;
import java.util.Map;

/** What a lot takes and brings, by month; plan currency, arrays from the plan's first month. */
final class LotMoney {
  final double[] hours;
  final double[] units;
  final double[] sales;
  private final Map<CostKind, double[]> costs = new EnumMap<>(CostKind.class);

  private LotMoney(int months) {
    this.hours = new double[months];
    this.units = new double[months];
    this.sales = new double[months];
    for (CostKind kind : CostKind.values()) {
      costs.put(kind, new double[months]);
    }
  }

  /** By a projection. */
  static LotMoney of(LotHistory history, Accounts accounts) {
    LotMoney money = new LotMoney(history.months());
    Nursery nursery = accounts.projection().scenario().nursery();
    money.bookPurchase(history, accounts.projection().horizon());
    for (Use use : history.uses()) {
      double price = accounts.supplies().item(use.kind(), use.item()).unitPrice();
      money.add(kind(use.kind()), use.month(), use.amount() * price);
    }
    for (Work work : history.works()) {
      money.hours[work.month()] += work.hours();
      money.add(CostKind.LABOUR, work.month(), work.hours() * nursery.settings().hourlyRate());
    }
    for (Sale sale : history.sales()) {
      money.units[sale.month()] += sale.units();
      money.sales[sale.month()] += sale.money();
    }
    money.bookPlace(history, nursery, accounts.projection().horizon());
    return money;
  }

  private static CostKind kind(Use.Kind kind) {
    return switch (kind) {
      case POT -> CostKind.POTS;
      case COMPONENT -> CostKind.SUBSTRATE;
      case MATERIAL -> CostKind.MATERIALS;
    };
  }

  private void bookPurchase(LotHistory history, Horizon horizon) {
    Lot lot = history.lot();
    if (lot.purchase().isEmpty()) {
      return;
    }
    int month = horizon.offset(lot.arrived());
    add(CostKind.PLANTS, month, lot.purchase().get().unitPrice() * history.quantity());
    double carriage = lot.purchase().get().carriage() + lot.purchase().get().importCharges();
    add(CostKind.CARRIAGE, month, carriage * history.part());
  }

  private void bookPlace(LotHistory history, Nursery nursery, Horizon horizon) {
    for (int month = 0; month < hours.length; month++) {
      hours[month] += history.careHours(month);
      add(CostKind.LABOUR, month, history.careHours(month) * nursery.settings().hourlyRate());
      add(CostKind.CARE, month, history.careCost(month));
      Stood stood = history.stood(month);
      if (stood != null && !stood.place().isEmpty()) {
        double charge = nursery.places().get(stood.place()).chargePerM2(horizon.month(month));
        add(CostKind.PLACE, month, charge * stood.m2());
      }
    }
  }

  private void add(CostKind kind, int month, double amount) {
    costs.get(kind)[month] += amount;
  }

  /** What the daybook says takes the place of what was reckoned, up to its last month. */
  void correct(Spending said, int through, double hourlyRate) {
    for (int month = 0; month <= through; month++) {
      sales[month] += said.receipts(month);
      if (said.saysHours()) {
        hours[month] = said.hours(month);
        costs.get(CostKind.LABOUR)[month] = hours[month] * hourlyRate;
      }
      for (CostKind kind : CostKind.values()) {
        if (kind != CostKind.LABOUR && said.says(kind)) {
          costs.get(kind)[month] = said.cost(kind, month);
        }
      }
    }
  }

  /** Cost to date comes along with plants, or goes with them where it is negative. */
  void transfer(int month, double amount) {
    add(CostKind.OTHER, month, amount);
  }

  double cost(CostKind kind, int month) {
    return costs.get(kind)[month];
  }

  double costs(int month) {
    double sum = 0;
    for (double[] each : costs.values()) {
      sum += each[month];
    }
    return sum;
  }

  double result(int month) {
    return sales[month] - costs(month);
  }

  int months() {
    return hours.length;
  }

  /** Sum of an array from its first month to a month, both counted; 0 for a month before. */
  static double upTo(double[] values, int month) {
    double sum = 0;
    for (int i = 0; i <= Math.min(month, values.length - 1); i++) {
      sum += values[i];
    }
    return sum;
  }

  double costUpTo(CostKind kind, int month) {
    return upTo(costs.get(kind), month);
  }

  double costsUpTo(int month) {
    double sum = 0;
    for (double[] each : costs.values()) {
      sum += upTo(each, month);
    }
    return sum;
  }
}
