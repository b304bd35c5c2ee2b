package growingon.whole;

import growingon.nursery.market.Demand;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.history.Missed;
import growingon.project.history.Sale;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.List;

/**
 * Whole plants due to each demand row up to the end of each season, so that wanted = sold + missed
 * in every season, and what a row wants shows as it is typed. The last row is that of sales that no
 * row wants.
 */
final class Due {
  private static final double HALF = 0.5;

  private final Horizon horizon;
  private final List<Demand> demand;
  private final double[][] sold;
  private final double[][] missing;
  private final long[][] due;
  private final long[][] missed;

  Due(Projection projection) {
    this.horizon = projection.horizon();
    this.demand = projection.scenario().nursery().demand();
    int rows = demand.size() + 1;
    this.sold = new double[rows][horizon.seasons()];
    this.missing = new double[rows][horizon.seasons()];
    this.due = new long[rows][horizon.seasons()];
    this.missed = new long[rows][horizon.seasons()];
    for (LotHistory lot : projection.lots()) {
      for (Sale sale : lot.sales()) {
        add(sold[place(sale.row())], sale.month(), sale.units());
      }
    }
    for (Missed each : projection.missed()) {
      add(missing[each.row()], each.month(), each.units());
    }
    for (int row = 0; row < rows; row++) {
      round(row);
    }
  }

  /** Place of a row in tables of all rows. */
  private int place(int row) {
    return row < 0 ? demand.size() : row;
  }

  private void add(double[] sums, int month, double plants) {
    for (int season = horizon.season(month); season < sums.length; season++) {
      sums[season] += plants;
    }
  }

  /**
   * Missed plants and those wanted are rounded, and those due are what is left, as far as they are
   * those that are sold, rounded down or up.
   */
  private void round(int row) {
    boolean isLimited = row < demand.size() && demand.get(row).units().isPresent();
    long missedBefore = 0;
    long dueBefore = 0;
    for (int season = 0; season < due[row].length; season++) {
      double all = sold[row][season] + missing[row][season];
      long wanted = (long) Math.floor(all + HALF + Ticks.ROUNDING);
      long nearest = wanted - (long) Math.ceil(missing[row][season] - HALF - Ticks.ROUNDING);
      long most = Ticks.ceil(sold[row][season]);
      long least = Math.max(dueBefore, Ticks.floor(sold[row][season]));
      due[row][season] = isLimited ? Math.max(least, Math.min(most, nearest)) : wanted;
      missed[row][season] = isLimited ? Math.max(missedBefore, wanted - due[row][season]) : 0;
      dueBefore = due[row][season];
      missedBefore = missed[row][season];
    }
  }

  /** [season][row] plants expected to be sold up to a season's end, less those due. */
  double[][] soldOverDue() {
    double[][] over = new double[horizon.seasons()][sold.length];
    for (int season = 0; season < over.length; season++) {
      for (int row = 0; row < sold.length; row++) {
        over[season][row] = sold[row][season] - due[row][season];
      }
    }
    return over;
  }

  /**
   * [season][row] whether one plant more or less would show: where a row misses nothing, a plant
   * less would be missed, and one more is not wanted.
   */
  boolean[][] strict() {
    boolean[][] strict = new boolean[horizon.seasons()][sold.length];
    for (int season = 0; season < strict.length; season++) {
      for (int row = 0; row < demand.size(); row++) {
        strict[season][row] =
            demand.get(row).units().isPresent() && inSeason(missing[row], season) < 1;
      }
    }
    return strict;
  }

  /**
   * Every row in every season in which it sells or misses something, by season, then row.
   *
   * @param leftOver what is sold over what is due: nothing, unless there was no way to share it out
   */
  List<WholeDemand> met(LeftOver leftOver) {
    List<WholeDemand> met = new ArrayList<>();
    for (int season = 0; season < horizon.seasons(); season++) {
      for (int row = 0; row < demand.size(); row++) {
        double units = inSeason(sold[row], season);
        double missing = inSeason(this.missing[row], season);
        if (units > 0 || missing > 0) {
          met.add(met(row, season, units, missing, over(leftOver, row, season)));
        }
      }
    }
    return met;
  }

  private WholeDemand met(int row, int season, double units, double missing, long over) {
    long sold = inSeason(due[row], season) + over;
    boolean isLimited = demand.get(row).units().isPresent();
    long left = isLimited ? Math.max(0, inSeason(missed[row], season) - over) : 0;
    return new WholeDemand(season, row, demand.get(row), units, missing, (int) sold, (int) left);
  }

  private static long over(LeftOver leftOver, int row, int season) {
    double before = season == 0 ? 0 : leftOver.sold(season - 1)[row];
    return Math.round(leftOver.sold(season)[row] - before);
  }

  private static double inSeason(double[] sums, int season) {
    return sums[season] - (season == 0 ? 0 : sums[season - 1]);
  }

  private static long inSeason(long[] sums, int season) {
    return sums[season] - (season == 0 ? 0 : sums[season - 1]);
  }
}
