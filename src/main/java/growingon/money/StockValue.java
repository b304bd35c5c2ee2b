package growingon.money;

import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Place;
import growingon.nursery.Quality;
import growingon.project.LotHistory;
import growingon.project.Stood;
import growingon.project.Supplies;
import growingon.project.Use;
import growingon.project.Work;
import growingon.project.YearEnd;
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
    for (LotHistory lot : accounts.projection().lots()) {
      double[] cost = costPerPlant(lot, accounts);
      lot.yearEnds().forEach(end -> values.add(at(end, lot, cost[end.month()], accounts, prices)));
    }
    values.removeIf(each -> each.priced + each.unpriced < 1e-9);
    values.sort(Comparator.comparingInt(StockValue::month));
    return values;
  }

  private static StockValue at(
      YearEnd end, LotHistory lot, double cost, Accounts accounts, ListPrices prices) {
    Nursery nursery = accounts.projection().scenario().nursery();
    double kept = 1 - nursery.settings().sellingCostShare();
    double priced = 0;
    double unpriced = 0;
    double list = 0;
    for (Quality quality : Quality.values()) {
      double[] standing = end.standing()[quality.ordinal()];
      unpriced += standing[0];
      for (int grade = 1; grade < standing.length; grade++) {
        double price =
            prices.of(lot.lot(), lot.grades().get(grade - 1).name()).orElse(0)
                * nursery.qualities().get(quality).priceShare();
        priced += price > 0 ? standing[grade] : 0;
        unpriced += price > 0 ? 0 : standing[grade];
        list += standing[grade] * price * kept;
      }
    }
    return new StockValue(
        end.month(), lot.lot(), priced, priced * cost, list, unpriced, unpriced * cost);
  }

  /** Cost to date of a plant alive at the end of each month; 0 where none is. */
  private static double[] costPerPlant(LotHistory lot, Accounts accounts) {
    double[] spent = spent(lot, accounts);
    double[] each = new double[lot.months()];
    double pool = lot.lot().unitCost() * lot.quantity();
    for (int month = lot.start(); month < each.length; month++) {
      double standing = lot.standing(month);
      double before = standing + lot.sold(month);
      pool += spent[month];
      pool = before > 0 ? pool * standing / before : 0;
      each[month] = standing > 0 ? pool / standing : 0;
    }
    return each;
  }

  /** What the account of the lot is charged in each month. */
  private static double[] spent(LotHistory lot, Accounts accounts) {
    Nursery nursery = accounts.projection().scenario().nursery();
    Horizon horizon = accounts.projection().horizon();
    Supplies supplies = accounts.supplies();
    double[] spent = new double[lot.months()];
    spent[lot.start()] +=
        lot.lot().purchase().map(purchase -> purchase.landed(lot.lot().quantity())).orElse(0.0)
            * lot.part();
    for (Use use : lot.uses()) {
      spent[use.month()] += use.amount() * supplies.item(use.kind(), use.item()).unitPrice();
    }
    for (Work work : lot.works()) {
      spent[work.month()] += work.hours() * nursery.settings().hourlyRate();
    }
    for (int month = 0; month < spent.length; month++) {
      spent[month] += lot.careCost(month) + lot.careHours(month) * nursery.settings().hourlyRate();
      Stood stood = lot.stood(month);
      if (stood != null && !stood.place().isEmpty()) {
        Place place = nursery.places().get(stood.place());
        spent[month] += place.chargePerM2(horizon.month(month)) * stood.m2();
      }
    }
    return spent;
  }
}
