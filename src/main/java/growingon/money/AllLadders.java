package growingon.money;

import growingon.nursery.Scenario;
import growingon.nursery.Settings;
import growingon.nursery.market.OtherCash;
import growingon.nursery.place.Place;
import growingon.nursery.time.Horizon;
import growingon.project.need.Stores;
import growingon.project.need.Supplies;
import java.util.List;

/**
 * Adds the ladders of a plan up: what {@link Tally} gives of all lots at once, but for the last
 * digits, since sums are taken in another order. Used by one thread at a time.
 */
public final class AllLadders {
  private final Settings settings;
  private final Stores stores;
  private final int places;
  private final double[] fixedFlows;
  private final double[] fixedHours;

  /**
   * A plan added up.
   *
   * @param flows net cash by month, plan currency
   * @param sales sales by month, plan currency
   * @param hours hours of work by month
   * @param space square metres needed, [place in the order of the table][month]
   * @param horizonValue value of what is unsold at the end
   */
  public record Sum(
      double[] flows, double[] sales, double[] hours, double[][] space, double horizonValue) {
    /** Present value, what is unsold at the end counted in. */
    public double presentValue(double yearRate) {
      double[] valued = flows.clone();
      valued[valued.length - 1] += horizonValue;
      return Finance.presentValue(valued, yearRate);
    }

    /** Cash at the end of each month. */
    public double[] balances(double opening) {
      double[] balances = new double[flows.length];
      double balance = opening;
      for (int month = 0; month < balances.length; month++) {
        balance += flows[month];
        balances[month] = balance;
      }
      return balances;
    }
  }

  /** Of a scenario's nursery and plan, whatever its lots. */
  public AllLadders(Scenario scenario) {
    this.settings = scenario.nursery().settings();
    Horizon horizon = scenario.horizon();
    this.stores = new Stores(scenario.nursery(), horizon.months());
    this.places = scenario.nursery().places().size();
    this.fixedFlows = new double[horizon.months()];
    this.fixedHours = new double[horizon.months()];
    for (int month = 0; month < fixedFlows.length; month++) {
      for (Place place : scenario.nursery().places().values()) {
        fixedFlows[month] -= place.monthlyCost(horizon.month(month));
      }
      for (OtherCash row : scenario.nursery().otherCash()) {
        if (row.lot().isEmpty() && row.isDue(month, horizon)) {
          fixedFlows[month] += row.amount();
          fixedHours[month] += row.hours();
        }
      }
    }
  }

  /** The sum of ladders, always in the order given. */
  public Sum of(List<LadderSums> ladders) {
    double[] flows = fixedFlows.clone();
    double[] hours = fixedHours.clone();
    double[] sales = new double[flows.length];
    double[][] space = new double[places][flows.length];
    double horizonValue = 0;
    stores.clear();
    for (LadderSums ladder : ladders) {
      add(ladder.flows(), flows);
      add(ladder.hours(), hours);
      add(ladder.sales(), sales);
      for (int place = 0; place < places; place++) {
        add(ladder.space()[place], space[place]);
      }
      stores.add(ladder.movements());
      horizonValue += ladder.horizonValue();
    }
    stores.buy();
    for (Supplies.Item item : stores.items()) {
      for (int month = 0; month < flows.length; month++) {
        flows[month] -= item.cost(month);
      }
    }
    double paid = settings.hourlyRate() * settings.paidShare();
    for (int month = 0; month < flows.length; month++) {
      flows[month] -= hours[month] * paid;
    }
    return new Sum(flows, sales, hours, space, horizonValue);
  }

  private static void add(double[] from, double[] to) {
    for (int month = 0; month < from.length; month++) {
      to[month] += from[month];
    }
  }
}
