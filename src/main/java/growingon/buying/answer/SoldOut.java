package growingon.buying.answer;

import growingon.nursery.Scenario;
import growingon.nursery.market.Demand;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Missed;
import growingon.project.history.Sale;
import growingon.project.lot.LotHistory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which demand is met so nearly that more of it might be worth something. */
final class SoldOut {
  private static final double NEARLY_ALL = 0.95;

  private final Scenario scenario;
  private final List<Demand> demand;
  private final double[][] sold;
  private final double[][] missed;

  private SoldOut(Scenario scenario) {
    this.scenario = scenario;
    this.demand = scenario.nursery().demand();
    Horizon horizon = scenario.horizon();
    this.sold = new double[demand.size()][horizon.seasons()];
    this.missed = new double[demand.size()][horizon.seasons()];
    Projection projection = Projector.project(scenario);
    for (LotHistory lot : projection.lots()) {
      for (Sale sale : lot.sales()) {
        sold[sale.row()][horizon.season(sale.month())] += sale.units();
      }
    }
    for (Missed each : projection.missed()) {
      missed[each.row()][horizon.season(each.month())] += each.units();
    }
  }

  /**
   * Demand rows of which nearly all that is wanted is sold in some season of the plan's line, with
   * what the best such season brings; plan currency.
   */
  static Map<Integer, Double> rows(Scenario scenario) {
    SoldOut soldOut = new SoldOut(scenario);
    Map<Integer, Double> rows = new LinkedHashMap<>();
    for (int row = 0; row < soldOut.demand.size(); row++) {
      double most = soldOut.most(row);
      if (most > 0 && soldOut.demand.get(row).units().isPresent()) {
        rows.put(row, most);
      }
    }
    return rows;
  }

  private double most(int row) {
    double most = 0;
    for (int season = 0; season < scenario.horizon().seasons(); season++) {
      double wanted = sold[row][season] + missed[row][season];
      boolean nearlyAll = sold[row][season] >= NEARLY_ALL * wanted;
      most = nearlyAll ? Math.max(most, sold[row][season] * demand.get(row).price()) : most;
    }
    return most;
  }
}
