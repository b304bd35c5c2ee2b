package growingon.buying.answer;

import growingon.nursery.Scenario;
import growingon.nursery.market.Demand;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Missed;
import growingon.project.history.Sale;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Which demand is met so nearly that more of it might be worth something. */
final class SoldOut {
  private static final double NEARLY_ALL = 0.95;

  private final Scenario scenario;
  private final List<Demand> demand;
  private final double[][] sold;
  private final double[][] missed;

  SoldOut(Scenario scenario) {
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
   * A season in which nearly all that is wanted of a row is sold.
   *
   * @param brings what the plants sold bring at list price; plan currency
   */
  record Season(int row, int season, double brings) {}

  /** Of each row that is nearly sold out in some season the one of these that brings most. */
  List<Season> seasons() {
    List<Season> seasons = new ArrayList<>();
    for (int row = 0; row < demand.size(); row++) {
      if (demand.get(row).units().isPresent()) {
        best(row).ifPresent(seasons::add);
      }
    }
    return seasons;
  }

  private Optional<Season> best(int row) {
    return IntStream.range(0, scenario.horizon().seasons())
        .filter(season -> isNearlySoldOut(row, season))
        .mapToObj(season -> new Season(row, season, sold(row, season) * demand.get(row).price()))
        .max(Comparator.comparingDouble(Season::brings));
  }

  private boolean isNearlySoldOut(int row, int season) {
    double wanted = sold[row][season] + missed[row][season];
    return sold[row][season] > 0 && sold[row][season] >= NEARLY_ALL * wanted;
  }

  /** Plants of a row sold in a season. */
  double sold(int row, int season) {
    return sold[row][season];
  }
}
