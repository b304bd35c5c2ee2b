package growingon.money;

import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Purchase;
import growingon.project.HoursUse;
import growingon.project.LotHistory;
import growingon.project.Projection;
import growingon.project.Sale;
import growingon.project.SpaceUse;
import growingon.project.Stood;
import growingon.project.Supplies;
import growingon.project.Use;
import growingon.project.Work;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
    Supplies supplies = Supplies.of(projection);
    HoursUse hours = HoursUse.of(projection);
    CashFlow cash = CashFlow.of(projection, supplies, hours);
    ListPrices prices = new ListPrices(projection.scenario().nursery());
    List<LotAccount> lots =
        projection.lots().stream().map(lot -> account(lot, projection, supplies, prices)).toList();
    double paidShare = projection.scenario().nursery().settings().paidShare();
    return new Accounts(
        projection,
        SpaceUse.of(projection),
        supplies,
        hours,
        cash,
        lots,
        Reconciliation.of(cash, lots, paidShare));
  }

  private static LotAccount account(
      LotHistory history, Projection projection, Supplies supplies, ListPrices prices) {
    Lot lot = history.lot();
    Nursery nursery = projection.scenario().nursery();
    Map<Use.Kind, Double> used = used(history, supplies);
    double hours = history.works().stream().mapToDouble(Work::hours).sum();
    double care = 0;
    double lost = history.diedBefore();
    double m2Months = 0;
    double charge = 0;
    double sold = 0;
    for (int month = 0; month < history.months(); month++) {
      care += history.careCost(month);
      hours += history.careHours(month);
      lost += history.died(month) + history.culled(month);
      sold += history.sold(month);
      Stood stood = history.stood(month);
      if (stood != null && !stood.place().isEmpty()) {
        m2Months += stood.m2();
        charge +=
            stood.m2()
                * nursery
                    .places()
                    .get(stood.place())
                    .chargePerM2(projection.horizon().month(month));
      }
    }
    return new LotAccount(
        lot,
        lot.unitCost() * history.quantity(),
        lot.purchase().map(Purchase::unitPrice).orElse(0.0) * history.quantity(),
        lot.purchase().map(each -> each.carriage() + each.importCharges()).orElse(0.0)
            * history.part(),
        used.getOrDefault(Use.Kind.POT, 0.0),
        used.getOrDefault(Use.Kind.COMPONENT, 0.0),
        used.getOrDefault(Use.Kind.MATERIAL, 0.0),
        hours,
        hours * nursery.settings().hourlyRate(),
        care,
        m2Months,
        charge,
        history.sales().stream().mapToDouble(Sale::money).sum(),
        history.quantity(),
        lost,
        sold,
        history.standing(history.months() - 1),
        history.keptAtEnd(),
        prices.unsold(history));
  }

  private static Map<Use.Kind, Double> used(LotHistory history, Supplies supplies) {
    Map<Use.Kind, Double> used = new EnumMap<>(Use.Kind.class);
    for (Use use : history.uses()) {
      double cost = use.amount() * supplies.item(use.kind(), use.item()).unitPrice();
      used.merge(use.kind(), cost, Double::sum);
    }
    return used;
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

  /** Monthly flows with the horizon value of unsold plants in the last month. */
  public double[] flowsWithHorizonValue() {
    double[] flows = cash.flows();
    flows[flows.length - 1] += projection.scenario().plan().horizonValueShare() * unsoldAtList();
    return flows;
  }

  /** Net present value of the plan, horizon value included. */
  public double presentValue() {
    double rate = projection.scenario().nursery().settings().discountRate();
    return Finance.presentValue(flowsWithHorizonValue(), rate);
  }
}
