package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.project.Projection;
import growingon.project.history.SeasonStock;
import growingon.project.lot.LotHistory;
import growingon.project.need.HoursUse;
import growingon.project.need.SpaceUse;
import growingon.project.need.Supplies;
import java.util.List;
import java.util.OptionalInt;

/**
 * The accounts of a projection.
 *
 * @param projection what was projected
 * @param space space and load by place and month
 * @param supplies running stock of pots, components and materials
 * @param hours hours by month
 * @param cash cash by month
 * @param lots an account for each lot, in the order of the projection
 * @param reconciliation from the lots to the nursery's cash
 */
public record Accounts(
    Projection projection,
    SpaceUse space,
    Supplies supplies,
    HoursUse hours,
    CashFlow cash,
    List<LotAccount> lots,
    Reconciliation reconciliation) {
  private static final double HALF_A_CENT = 0.005;

  public Accounts {
    lots = List.copyOf(lots);
    double turnover = 0;
    for (CashItem item : CashItem.values()) {
      turnover += Math.abs(cash.total(item));
    }
    if (!(Math.abs(reconciliation.difference()) <= HALF_A_CENT + 1e-12 * turnover)) {
      throw new IllegalStateException(
          "the lots' accounts and the nursery's cash differ by " + reconciliation.difference());
    }
  }

  /** Books a projection. */
  public static Accounts of(Projection projection) {
    Scenario scenario = projection.scenario();
    Nursery nursery = scenario.nursery();
    Supplies supplies = Supplies.of(projection);
    HoursUse hours = HoursUse.of(projection);
    Tariff tariff = new Tariff(nursery, projection.horizon());
    ListPrices prices = new ListPrices(nursery);
    List<LotAccount> lots =
        projection.lots().stream()
            .map(lot -> account(lot, Ledger.of(lot, tariff, projection.horizon()), prices))
            .toList();
    List<Ledger> ledgers = lots.stream().map(LotAccount::ledger).toList();
    CashFlow cash = CashFlow.of(scenario, ledgers, supplies, hours);
    return new Accounts(
        projection,
        SpaceUse.of(projection),
        supplies,
        hours,
        cash,
        lots,
        Reconciliation.of(cash, lots, nursery.settings()));
  }

  private static LotAccount account(LotHistory history, Ledger ledger, ListPrices prices) {
    Lot lot = history.lot();
    double lost = history.diedBefore();
    double sold = 0;
    for (int month = 0; month < history.months(); month++) {
      lost += history.died(month) + history.culled(month);
      sold += history.sold(month);
    }
    return LotAccount.of(lot, ledger)
        .spentBefore(lot.unitCost() * history.quantity())
        .started(history.quantity())
        .lost(lost)
        .sold(sold)
        .standing(history.standing(history.months() - 1))
        .kept(history.keptAtEnd())
        .unsoldAtList(prices.unsold(history))
        .build();
  }

  /** The account of a lot. */
  public LotAccount lot(String name) {
    return lots.stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no lot " + name));
  }

  /** Index of the highest grade of a lot's ladder that has a list price; empty if none has. */
  public OptionalInt topPricedGrade(Lot lot) {
    int grade = new ListPrices(projection.scenario().nursery()).topPriced(lot);
    return grade < 0 ? OptionalInt.empty() : OptionalInt.of(grade);
  }

  /** List price of all plants unsold at the end that have a grade, kept ones apart. */
  public double unsoldAtList() {
    return lots.stream().mapToDouble(LotAccount::unsoldAtList).sum();
  }

  /** What the unsold plants are worth at the end, as the plan says. */
  public double horizonValue() {
    Scenario scenario = projection.scenario();
    ListPrices prices = new ListPrices(scenario.nursery());
    double sum = 0;
    for (int i = 0; i < lots.size(); i++) {
      LotHistory history = projection.lots().get(i);
      if (!history.seasons().isEmpty()) {
        SeasonStock end = history.seasons().get(history.seasons().size() - 1);
        double[] cost = StockValue.costPerPlant(history, lots.get(i).ledger());
        sum +=
            EndStock.of(end.standing(), prices.net(history.lot()), cost[cost.length - 1], 0)
                .worth(scenario.plan().horizonValue());
      }
    }
    return sum;
  }

  /** Monthly flows with the horizon value of unsold plants in the last month. */
  public double[] flowsWithHorizonValue() {
    double[] flows = cash.flows();
    flows[flows.length - 1] += horizonValue();
    return flows;
  }

  /** Net present value of the plan, horizon value included. */
  public double presentValue() {
    double rate = projection.scenario().nursery().settings().discountRate();
    return Finance.presentValue(flowsWithHorizonValue(), rate);
  }
}
