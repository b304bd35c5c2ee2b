package growingon.money;

import growingon.nursery.Demand;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Purchase;
import growingon.nursery.QualityShares;
import growingon.nursery.Scenario;
import growingon.project.LotHistory;
import growingon.project.Projector;
import growingon.project.Sale;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Finds the price, the usable plants and the selling price at which a bought lot neither gains nor
 * loses, on the real model.
 */
final class Bargaining {
  private final Scenario scenario;
  private final Lot lot;
  private final Accounts with;
  private final Accounts without;
  private final double value;
  private final double rate;

  Bargaining(Scenario scenario, Lot lot, Accounts with, Accounts without, double value) {
    this.scenario = scenario;
    this.lot = lot;
    this.with = with;
    this.without = without;
    this.value = value;
    this.rate = scenario.nursery().settings().discountRate();
  }

  BoughtLot.Bargain bargain() {
    return new BoughtLot.Bargain(mostEach(), fewestUsable(), leastPriceShare(), averagePrice());
  }

  /** The value is linear in the unit price: all plants are paid for in the month of arrival. */
  private OptionalDouble mostEach() {
    int arrival = scenario.horizon().offset(lot.arrived());
    double paidForOne = lot.quantity() * discount(arrival);
    double most = lot.purchase().get().unitPrice() + value / paidForOne;
    return most >= 0 ? OptionalDouble.of(most) : OptionalDouble.empty();
  }

  private double discount(int month) {
    double[] one = new double[month + 1];
    one[month] = 1;
    return Finance.presentValue(one, rate);
  }

  /**
   * The value is linear in a factor on all selling prices, since the order of sales stays: it is
   * factor × value of the sales it adds, less value of the costs it adds.
   */
  private OptionalDouble leastPriceShare() {
    double[] sales = new double[with.cash().months()];
    for (int month = 0; month < sales.length; month++) {
      sales[month] =
          with.cash().get(CashItem.SALES, month) - without.cash().get(CashItem.SALES, month);
    }
    double share = scenario.plan().horizonValueShare();
    sales[sales.length - 1] += share * (with.unsoldAtList() - without.unsoldAtList());
    double added = Finance.presentValue(sales, rate);
    return added > 0 ? OptionalDouble.of((added - value) / added) : OptionalDouble.empty();
  }

  private double averagePrice() {
    LotHistory history = with.projection().lot(lot.name());
    double units = history.sales().stream().mapToDouble(Sale::units).sum();
    double money = history.sales().stream().mapToDouble(Sale::money).sum();
    return money / units;
  }

  /** Searches whole numbers of usable plants in 100 by halving. */
  private OptionalInt fewestUsable() {
    if (valueWithUsable(100) < 0) {
      return OptionalInt.empty();
    }
    int fails = -1;
    int pays = 100;
    while (pays - fails > 1) {
      int middle = (pays + fails) / 2;
      if (valueWithUsable(middle) >= 0) {
        pays = middle;
      } else {
        fails = middle;
      }
    }
    return OptionalInt.of(pays);
  }

  private double valueWithUsable(int inHundred) {
    Scenario changed = replaced(scenario, withUsable(lot, inHundred));
    Accounts changedWith = Accounts.of(Projector.project(changed));
    return Finance.presentValue(BoughtLot.difference(changedWith, without), rate);
  }

  /** The lot with so many firsts and seconds in 100, in the proportion it has now. */
  private static Lot withUsable(Lot lot, int inHundred) {
    QualityShares now = lot.quality();
    double usable = now.first() + now.second();
    double firsts = usable == 0 ? 1 : now.first() / usable;
    double share = inHundred / 100.0;
    return lot.withQuality(
        new QualityShares(share * firsts, share * (1 - firsts), now.sorted(), now.sure()));
  }

  /** Present value of the lot with so many usable plants in 100, by running the plan again. */
  static double valueWithUsable(Scenario scenario, Lot lot, int inHundred) {
    return value(replaced(scenario, withUsable(lot, inHundred)), lot);
  }

  /** Present value of the lot at another unit price, worked out by running the plan again. */
  static double valueAtPrice(Scenario scenario, Lot lot, double unitPrice) {
    Purchase now = lot.purchase().get();
    Purchase changed =
        new Purchase(
            unitPrice,
            now.carriage(),
            now.importCharges(),
            now.currency(),
            now.lossSure(),
            now.fails());
    return value(replaced(scenario, lot.withPurchase(Optional.of(changed))), lot);
  }

  /** Present value of the lot with all selling prices multiplied, by running the plan again. */
  static double valueAtPrices(Scenario scenario, Lot lot, double factor) {
    Nursery nursery = scenario.nursery();
    List<Demand> demand = nursery.demand().stream().map(row -> row.times(factor)).toList();
    Scenario changed = new Scenario(nursery.withDemand(demand), scenario.plan(), scenario.lots());
    return value(changed, lot);
  }

  private static double value(Scenario scenario, Lot lot) {
    Accounts with = Accounts.of(Projector.project(scenario));
    Accounts without = Accounts.of(Projector.project(scenario.without(lot.name())));
    return Finance.presentValue(
        BoughtLot.difference(with, without), scenario.nursery().settings().discountRate());
  }

  private static Scenario replaced(Scenario scenario, Lot changed) {
    return scenario.withLots(
        scenario.lots().stream()
            .map(each -> each.name().equals(changed.name()) ? changed : each)
            .toList());
  }
}
