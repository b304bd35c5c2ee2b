package growingon.money.bought;

import growingon.money.Finance;
import growingon.money.GradeNumbers;
import growingon.money.Tally;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.species.Species;
import growingon.project.lot.Luck;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;

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
    return new BoughtLot.Bargain(
        mostLandedEach(), fewestUsable(), leastPriceShare(), averagePrice());
  }

  private OptionalDouble mostLandedEach() {
    int index = scenario.lots().indexOf(lot);
    double landed = lot.purchase().get().landed(lot.quantity());
    Ceiling ceiling =
        new Ceiling(
            discount(scenario.horizon().offset(lot.arrived())),
            discount(scenario.horizon().months() - 1),
            List.of(with.endWorth(index)));
    OptionalDouble most = ceiling.most(landed, value);
    return most.isPresent()
        ? OptionalDouble.of(most.getAsDouble() / lot.quantity())
        : OptionalDouble.empty();
  }

  private double discount(int month) {
    double[] one = new double[month + 1];
    one[month] = 1;
    return Finance.presentValue(one, rate);
  }

  /**
   * The order of sales stays, so the value moves with a factor on all selling prices: by the sales
   * it adds, less what selling costs, and by what unsold plants are worth.
   */
  private OptionalDouble leastPriceShare() {
    double[] sales = with.netSales();
    double[] before = without.netSales();
    for (int month = 0; month < sales.length; month++) {
      sales[month] -= before[month];
    }
    double added = Finance.presentValue(sales, rate);
    double end = discount(sales.length - 1);
    DoubleUnaryOperator atPrices =
        factor -> factor * added + end * (with.horizonValue(factor) - without.horizonValue(factor));
    double rest = value - atPrices.applyAsDouble(1);
    boolean valuesStock = scenario.plan().horizonValue().isStockValue();
    double all = atPrices.applyAsDouble(1);
    if (!valuesStock) {
      return all > 0 ? OptionalDouble.of(-rest / all) : OptionalDouble.empty();
    }
    return added > 0
        ? root(factor -> rest + atPrices.applyAsDouble(factor))
        : OptionalDouble.empty();
  }

  private static OptionalDouble root(DoubleUnaryOperator rising) {
    double high = 1;
    while (rising.applyAsDouble(high) < 0) {
      high *= 2;
    }
    return rising.applyAsDouble(0) >= 0
        ? OptionalDouble.of(0)
        : OptionalDouble.of(
            new BrentSolver(1e-12, 1e-12).solve(500, rising::applyAsDouble, 0, high));
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
    public OfLot of(Lot each, Species species) {
      return each.name().equals(lot.name()) ? this::quality : Luck.NONE.of(each, species);
    }

    private QualityShares quality() {
      QualityShares now = lot.quality();
      double usable = now.first() + now.second();
      double firsts = usable == 0 ? 1 : now.first() / usable;
      return new QualityShares(share * firsts, share * (1 - firsts), now.sorted(), now.sure());
    }
  }
}
