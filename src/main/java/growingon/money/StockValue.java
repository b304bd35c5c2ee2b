package growingon.money;

import growingon.nursery.lot.Lot;
import growingon.nursery.number.Negligible;
import growingon.project.history.YearEnd;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a lot is worth at the end of a business year, plan currency, without VAT. Costs are those of
 * the lot's account up to then, carried by the plants alive: losses stay with them, a plant sold
 * takes its share away. Kept plants are not for sale and left out.
 *
 * @param month offset of the year's last month
 * @param lot the lot
 * @param priced plants that have a list price
 * @param pricedCost their cost to date
 * @param list their list price less what selling costs
 * @param unpriced plants without one: no grade yet, or a grade or quality without a price
 * @param unpricedCost their cost to date
 */
public record StockValue(
    int month,
    Lot lot,
    double priced,
    double pricedCost,
    double list,
    double unpriced,
    double unpricedCost) {
  /** The lower of cost to date and list price less selling cost, of plants with a list price. */
  public double lower() {
    return Math.min(pricedCost, list);
  }

  /** The lower of the two, and plants without a list price at their cost. */
  public double value() {
    return lower() + unpricedCost;
  }

  /** Every lot with plants for sale at every year's end, by month and then in order of the lots. */
  public static List<StockValue> of(Accounts accounts) {
    List<StockValue> values = new ArrayList<>();
    ListPrices prices = new ListPrices(accounts.projection().scenario().nursery());
    for (int i = 0; i < accounts.lots().size(); i++) {
      LotHistory lot = accounts.projection().lots().get(i);
      double[] cost = costPerPlant(lot, accounts.lots().get(i).ledger());
      double[][] net = prices.net(lot.lot());
      for (YearEnd end : lot.yearEnds()) {
        EndStock stock = EndStock.of(end.standing(), net, cost[end.month()], 0);
        values.add(of(end.month(), lot.lot(), stock));
      }
    }
    values.removeIf(each -> Negligible.is(each.priced + each.unpriced));
    values.sort(Comparator.comparingInt(StockValue::month));
    return values;
  }

  private static StockValue of(int month, Lot lot, EndStock stock) {
    return new StockValue(
        month,
        lot,
        stock.priced(),
        stock.pricedCost(),
        stock.list(),
        stock.unpriced(),
        stock.unpricedCost());
  }

  /**
   * Cost to date of a plant alive at the end of each month; 0 where none is. Losses stay with the
   * living, a plant sold takes its share away.
   */
  static double[] costPerPlant(LotHistory lot, Ledger ledger) {
    double[] each = new double[lot.months()];
    double pool = lot.lot().unitCost() * lot.quantity();
    for (int month = 0; month < each.length; month++) {
      double standing = lot.standing(month);
      double before = standing + lot.sold(month);
      pool += ledger.costOfStanding(month);
      pool = month < lot.start() ? pool : keptShare(standing, before) * pool;
      each[month] = standing > 0 ? pool / standing : 0;
    }
    return each;
  }

  /** Share of the cost to date that plants alive carry on where some were sold. */
  static double keptShare(double standing, double before) {
    return before > 0 ? standing / before : 0;
  }
}
