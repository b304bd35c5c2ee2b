package growingon.money;

import growingon.nursery.Demand;
import growingon.project.LotHistory;
import growingon.project.Missed;
import growingon.project.Projection;
import growingon.project.Sale;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a demand row was met in a season.
 *
 * @param season index of the season
 * @param row index of the demand row
 * @param demand the row
 * @param sold plants sold to it
 * @param receipts what they brought, plan currency
 * @param missed plants wanted that could not be sold; 0 where all that is ready sells
 */
public record DemandMet(
    int season, int row, Demand demand, double sold, double receipts, double missed) {
  /** Every row in every season in which it sold or missed something, by season, then row. */
  public static List<DemandMet> of(Projection projection) {
    List<Demand> demand = projection.scenario().nursery().demand();
    int seasons = projection.horizon().seasons();
    double[][] sold = new double[seasons][demand.size()];
    double[][] receipts = new double[seasons][demand.size()];
    double[][] missed = new double[seasons][demand.size()];
    for (LotHistory lot : projection.lots()) {
      for (Sale sale : lot.sales()) {
        int season = projection.horizon().season(sale.month());
        sold[season][sale.row()] += sale.units();
        receipts[season][sale.row()] += sale.money();
      }
    }
    for (Missed each : projection.missed()) {
      missed[projection.horizon().season(each.month())][each.row()] += each.units();
    }
    List<DemandMet> list = new ArrayList<>();
    for (int season = 0; season < seasons; season++) {
      for (int row = 0; row < demand.size(); row++) {
        if (sold[season][row] > 0 || missed[season][row] > 0) {
          list.add(
              new DemandMet(
                  season,
                  row,
                  demand.get(row),
                  sold[season][row],
                  receipts[season][row],
                  missed[season][row]));
        }
      }
    }
    return list;
  }

  /** Plants wanted in the months of the season that lie in the plan. */
  public double wanted() {
    return sold + missed;
  }

  /** What the missed plants would have brought as firsts at the row's price. */
  public double missedAtList() {
    return missed * demand.price();
  }
}
