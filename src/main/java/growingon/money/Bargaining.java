package growingon.money;

import growingon.nursery.Lot;
import growingon.nursery.QualityShares;
import growingon.nursery.Scenario;
import growingon.project.Luck;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Finds the price, the usable plants and the selling price at which a bought lot neither gains nor
 * loses, on the real model.
 */
final class Bargaining {
  private final Scenario scenario;
  private final Lot lot;
  private final Tally with;
  private final Tally without;
  private final Tally changed;
  private final double value;
  private final double rate;

  /**
   * Bargaining for a lot.
   *
   * @param with the plan, run without luck
   * @param without the plan without the lot, run without luck
   * @param value present value of what it gains
   */
  Bargaining(Lot lot, Tally with, Tally without, GradeNumbers grades, double value) {
    this.scenario = with.programme().scenario();
    this.lot = lot;
    this.with = with;
    this.without = without;
    this.changed = new Tally(with.programme(), grades);
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
    double[] sales = new double[with.sales().length];
    for (int month = 0; month < sales.length; month++) {
      sales[month] = with.sales()[month] - without.sales()[month];
    }
    sales[sales.length - 1] += with.horizonValue() - without.horizonValue();
    double added = Finance.presentValue(sales, rate);
    return added > 0 ? OptionalDouble.of((added - value) / added) : OptionalDouble.empty();
  }

  private double averagePrice() {
    int index = scenario.lots().indexOf(lot);
    return with.lotSales()[index] / with.lotUnits()[index];
  }

  private OptionalInt fewestUsable() {
    double usable = 100 * (lot.quality().first() + lot.quality().second());
    return new FewestThatPay(this::valueWithUsable, usable, value).find();
  }

  private double valueWithUsable(int inHundred) {
    changed.run(new Usable(lot, inHundred / 100.0));
    return Finance.presentValue(changed.gainOver(without), rate);
  }

  /** No luck but for a lot's share of usable plants; firsts and seconds keep their proportion. */
  private record Usable(Lot lot, double share) implements Luck {
    @Override
    public QualityShares quality(Lot each) {
      QualityShares now = each.quality();
      if (!each.name().equals(lot.name())) {
        return now;
      }
      double usable = now.first() + now.second();
      double firsts = usable == 0 ? 1 : now.first() / usable;
      return new QualityShares(share * firsts, share * (1 - firsts), now.sorted(), now.sure());
    }
  }
}
