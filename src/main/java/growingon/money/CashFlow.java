package growingon.money;

import growingon.nursery.Nursery;
import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.market.OtherCash;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.need.HoursUse;
import growingon.project.need.Supplies;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Cash of the whole nursery by month: receipts positive, payments negative. */
public final class CashFlow {
  private final Map<CashItem, double[]> items = new EnumMap<>(CashItem.class);
  private final double opening;
  private final int months;

  private CashFlow(int months, double opening) {
    this.months = months;
    this.opening = opening;
    for (CashItem item : CashItem.values()) {
      items.put(item, new double[months]);
    }
  }

  /** Books the lots' ledgers, the packs bought, the hours, the places and other cash. */
  static CashFlow of(Scenario scenario, List<Ledger> lots, Supplies supplies, HoursUse hours) {
    Nursery nursery = scenario.nursery();
    Settings settings = nursery.settings();
    CashFlow cash = new CashFlow(scenario.horizon().months(), settings.openingCash());
    lots.forEach(cash::bookLot);
    supplies.items().forEach(cash::bookPacks);
    for (int month = 0; month < cash.months; month++) {
      cash.book(
          CashItem.HOURS,
          month,
          -hours.needed(month) * settings.hourlyRate() * settings.paidShare());
      for (Place place : nursery.places().values()) {
        cash.book(CashItem.PLACES, month, -place.monthlyCost(scenario.horizon().month(month)));
      }
    }
    nursery.otherCash().stream()
        .filter(row -> row.lot().isEmpty())
        .forEach(row -> cash.bookOther(row, scenario.horizon()));
    return cash;
  }

  private void book(CashItem item, int month, double amount) {
    items.get(item)[month] += amount;
  }

  private void bookLot(Ledger lot) {
    for (int month = 0; month < months; month++) {
      book(CashItem.SALES, month, lot.sales(month));
      for (CostKind kind : CostKind.values()) {
        if (kind.isCash()) {
          book(kind.item(), month, -lot.cost(kind, month));
        }
      }
    }
  }

  private void bookPacks(Supplies.Item item) {
    CashItem line = Booking.kindOf(item.kind()).item();
    for (int month = 0; month < months; month++) {
      book(line, month, -item.cost(month));
    }
  }

  private void bookOther(OtherCash other, Horizon horizon) {
    for (int month = 0; month < months; month++) {
      if (other.isDue(month, horizon)) {
        book(CashItem.OTHER, month, other.amount());
      }
    }
  }

  /** Number of months. */
  public int months() {
    return months;
  }

  /** Cash before the first month. */
  public double opening() {
    return opening;
  }

  /** One line in a month. */
  public double get(CashItem item, int month) {
    return items.get(item)[month];
  }

  /** One line over the whole plan. */
  public double total(CashItem item) {
    double sum = 0;
    for (double amount : items.get(item)) {
      sum += amount;
    }
    return sum;
  }

  /** All lines of a month together. */
  public double net(int month) {
    double sum = 0;
    for (double[] amounts : items.values()) {
      sum += amounts[month];
    }
    return sum;
  }

  /** Net flows by month. */
  public double[] flows() {
    double[] flows = new double[months];
    for (int month = 0; month < months; month++) {
      flows[month] = net(month);
    }
    return flows;
  }

  /** Cash at the end of each month. */
  public double[] balances() {
    double[] balances = flows();
    double sum = opening;
    for (int month = 0; month < months; month++) {
      sum += balances[month];
      balances[month] = sum;
    }
    return balances;
  }

  /** The month with the lowest cash at its end; the first of several. */
  public int lowestMonth() {
    double[] balances = balances();
    int lowest = 0;
    for (int month = 1; month < months; month++) {
      if (balances[month] < balances[lowest]) {
        lowest = month;
      }
    }
    return lowest;
  }
}
