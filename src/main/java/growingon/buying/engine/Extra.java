package growingon.buying.engine;

import growingon.money.Finance;
import growingon.nursery.Scenario;
import growingon.nursery.market.ExtraCosts;
import growingon.nursery.place.Place;
import growingon.project.need.HoursUse;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * What room and hours over what there is cost, where more can be had at a cost: over what there is
 * or, where the nursery as given needs more already, over that.
 */
public final class Extra {
  private static final double NOT_TO_BE_HAD = 0;

  private final double[][] room;
  private final double[] hours;
  private final double[] squareMetre;
  private final double hour;
  private final double rate;

  private Extra(Scenario scenario, Outcome given) {
    ExtraCosts costs = scenario.nursery().settings().extraCosts();
    int months = scenario.horizon().months();
    this.room = new double[given.space().length][months];
    this.squareMetre = new double[room.length];
    this.rate = scenario.nursery().settings().discountRate();
    int index = 0;
    for (Place place : scenario.nursery().places().values()) {
      squareMetre[index] = costs.squareMetre(place).orElse(NOT_TO_BE_HAD);
      for (int month = 0; month < months; month++) {
        double there = place.capacityM2(scenario.horizon().month(month));
        room[index][month] = Math.max(there, given.space()[index][month]);
      }
      index++;
    }
    double[] available =
        HoursUse.available(scenario.nursery().settings(), scenario.horizon())
            .orElseGet(() -> endless(months));
    this.hour = costs.hour().orElse(NOT_TO_BE_HAD);
    this.hours = new double[months];
    for (int month = 0; month < months; month++) {
      hours[month] = Math.max(available[month], given.hours()[month]);
    }
  }

  private static double[] endless(int months) {
    double[] hours = new double[months];
    Arrays.fill(hours, Double.POSITIVE_INFINITY);
    return hours;
  }

  /** Whether anything more can be had at a cost. */
  public static boolean isToBeHad(Scenario scenario) {
    ExtraCosts costs = scenario.nursery().settings().extraCosts();
    return costs.hour().isPresent()
        || scenario.nursery().places().values().stream()
            .map(costs::squareMetre)
            .anyMatch(OptionalDouble::isPresent);
  }

  /**
   * The costs of a nursery and plan.
   *
   * @param given the plan's line as given
   */
  static Extra of(Scenario scenario, Outcome given) {
    return new Extra(scenario, given);
  }

  /**
   * Present value of what is over.
   *
   * @param space square metres needed, [place][month]
   * @param needed hours needed by month
   */
  double cost(double[][] space, double[] needed) {
    double[] cost = new double[hours.length];
    for (int month = 0; month < cost.length; month++) {
      cost[month] = hour > 0 ? hour * Math.max(0, needed[month] - hours[month]) : 0;
      for (int place = 0; place < room.length; place++) {
        cost[month] += squareMetre[place] * Math.max(0, space[place][month] - room[place][month]);
      }
    }
    return Finance.presentValue(cost, rate);
  }
}
