package growingon.project;

import growingon.nursery.Quality;
import growingon.nursery.QualityRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Sells what is ready to what is wanted, month by month (design section 6.5): rows of a species
 * before rows of any species, dearer first, then row order; within a row firsts before seconds,
 * oldest arrival first; of lots that arrived together the same share of every lot, slice and
 * stream, so that it does not matter how a batch is split into lots.
 */
final class Market {
  private static final double NEGLIGIBLE = 1e-9;
  private static final Quality[] QUALITIES = Quality.values();

  private final Programme programme;
  private final Luck luck;
  private final LotState[] lots;
  private final Map<Quality, QualityRule> qualities;
  private final List<Missed> missed = new ArrayList<>();
  private final DemandRow[] rows;
  private final double[] unitsFactor;
  private final double[] priceFactor;
  private final long[] readyCells;
  private final double[] ready;
  private int season = Integer.MIN_VALUE;
  private long readySomewhere;
  private final KnownSales known;

  Market(Programme programme, Luck luck, List<LotState> lots) {
    this.programme = programme;
    this.luck = luck;
    this.lots = lots.toArray(new LotState[0]);
    this.qualities = programme.nursery().qualities();
    this.rows = programme.rows().toArray(new DemandRow[0]);
    this.unitsFactor = new double[rows.length];
    this.priceFactor = new double[rows.length];
    this.readyCells = new long[lots.size()];
    this.ready = new double[lots.size()];
    this.known = new KnownSales(programme, lots);
  }

  void sell(int month) {
    int year = programme.calendar().seasonYear(month);
    if (year != season) {
      season = year;
      beginSeason();
    }
    double[] met = known.sell(month);
    boolean graded = false;
    for (DemandRow row : rows) {
      double wanted = wanted(row, month) - met[row.index()];
      if (wanted <= 0) {
        continue;
      }
      if (!graded) {
        grade(month);
        graded = true;
      }
      double left = meet(row, month, wanted);
      if (left > NEGLIGIBLE && Double.isFinite(left)) {
        missed.add(new Missed(month, row.index(), left));
      }
    }
  }

  private void beginSeason() {
    for (DemandRow row : rows) {
      unitsFactor[row.index()] = luck.units(row.demand(), season);
      priceFactor[row.index()] = luck.price(row.demand(), season);
    }
  }

  /** Grades every lot that may sell, and notes in which grades and qualities it has plants. */
  private void grade(int month) {
    readySomewhere = 0;
    for (int lot = 0; lot < lots.length; lot++) {
      boolean may = month >= lots[lot].plan.start && lots[lot].maySell(month);
      readyCells[lot] = may ? lots[lot].gradeForSale(month) : 0;
      readySomewhere |= readyCells[lot];
    }
  }

  private double wanted(DemandRow row, int month) {
    double units = row.units()[month];
    return units > 0 ? units * unitsFactor[row.index()] : 0;
  }

  private double meet(DemandRow row, int month, double wanted) {
    double left = wanted;
    for (Quality quality : QUALITIES) {
      long cell = Growing.cellBit(quality, row.grade());
      if ((readySomewhere & cell) == 0) {
        continue;
      }
      for (int[] batch : row.batches()) {
        left -= sellFrom(batch, row, quality, month, left);
        if (left <= 0) {
          return 0;
        }
      }
    }
    return left;
  }

  /** Sells the same share of every lot of a batch; gives how many plants. */
  private double sellFrom(int[] batch, DemandRow row, Quality quality, int month, double wanted) {
    long cell = Growing.cellBit(quality, row.grade());
    double inAll = 0;
    for (int lot : batch) {
      ready[lot] = (readyCells[lot] & cell) == 0 ? 0 : lots[lot].plants.ready(quality, row.grade());
      inAll += ready[lot];
    }
    if (inAll <= NEGLIGIBLE) {
      return 0;
    }
    double share = Math.min(1, wanted / inAll);
    for (int lot : batch) {
      if (ready[lot] > 0) {
        sell(lots[lot], row, quality, month, share, share * ready[lot]);
      }
    }
    return share * inAll;
  }

  private void sell(
      LotState lot, DemandRow row, Quality quality, int month, double share, double units) {
    double money = units * row.demand().price() * qualities.get(quality).priceShare();
    if (row.demand().morePerMm() > 0) {
      double mm = lot.plants.mmAboveLeast(quality, row.grade());
      money += share * mm * row.demand().morePerMm();
    }
    lot.plants.sell(quality, row.grade(), share);
    money *= priceFactor[row.index()];
    lot.sold(month, row.index(), row.grade(), quality, units, money);
  }

  List<Missed> missed() {
    return missed;
  }
}
