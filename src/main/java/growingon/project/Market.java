package growingon.project;

import growingon.nursery.Negligible;
import growingon.nursery.Quality;
import growingon.nursery.QualityRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Sells what is ready to what is wanted, month by month (design section 6.5): rows of a species
 * before rows of any species, dearer first, then row order; within a row firsts before seconds,
 * oldest arrival first; of lots that arrived together the same share of every lot, slice and
 * stream, so that it does not matter how a batch is split into lots.
 */
final class Market {
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
  private final boolean[] asks;
  private final int[] lotsWithFacts;
  private final KnownSales known;
  private int season = Integer.MIN_VALUE;
  private long readySomewhere;

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
    this.lotsWithFacts =
        IntStream.range(0, lots.size()).filter(lot -> lots.get(lot).hasFacts()).toArray();
    this.asks = new boolean[programme.horizon().months()];
    for (DemandRow row : rows) {
      for (int month = 0; month < asks.length; month++) {
        asks[month] |= row.units()[month] > 0;
      }
    }
  }

  /** The first month from a month on in which anything may be sold; the last if there is none. */
  int nextSale(int from) {
    int month = from;
    while (month < asks.length - 1 && !asks[month] && lotsWithFacts.length == 0) {
      month++;
    }
    return month;
  }

  /**
   * Grades a lot for the sales of a month, several lots at once if need be. A lot of which
   * something is known waits for what it is known to have sold.
   */
  void prepare(int lot, int month) {
    if (!lots[lot].hasFacts()) {
      grade(lot, month);
    }
  }

  /** Sells in a month for which every lot was prepared. */
  void sell(int month) {
    int year = programme.calendar().seasonYear(month);
    if (year != season) {
      season = year;
      beginSeason();
    }
    double[] met = known.sell(month);
    for (int lot : lotsWithFacts) {
      grade(lot, month);
    }
    readySomewhere = 0;
    for (long ready : readyCells) {
      readySomewhere |= ready;
    }
    for (DemandRow row : rows) {
      double wanted = wanted(row, month) - met[row.index()];
      if (Negligible.is(wanted)) {
        continue;
      }
      double left = meet(row, month, wanted);
      if (!Negligible.is(left) && Double.isFinite(left)) {
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

  /** Grades a lot if it may sell, and notes in which grades and qualities it has plants. */
  private void grade(int lot, int month) {
    boolean may = asks[month] && month >= lots[lot].plan.start && lots[lot].maySell(month);
    readyCells[lot] = may ? lots[lot].gradeForSale(month) : 0;
  }

  private double wanted(DemandRow row, int month) {
    double units = row.units()[month];
    return units > 0 ? units * unitsFactor[row.index()] : 0;
  }

  private double meet(DemandRow row, int month, double wanted) {
    double left = wanted;
    for (Quality quality : QUALITIES) {
      long cell = Grading.cellBit(quality, row.grade());
      if ((readySomewhere & cell) == 0) {
        continue;
      }
      for (int[] batch : row.batches()) {
        left -= sellFrom(batch, row, quality, month, left);
        if (Negligible.is(left)) {
          return 0;
        }
      }
    }
    return left;
  }

  /** Sells the same share of every lot of a batch; gives how many plants. */
  private double sellFrom(int[] batch, DemandRow row, Quality quality, int month, double wanted) {
    long cell = Grading.cellBit(quality, row.grade());
    double inAll = 0;
    for (int lot : batch) {
      ready[lot] = (readyCells[lot] & cell) == 0 ? 0 : ready(lots[lot], quality, row.grade());
      inAll += ready[lot];
    }
    if (inAll == 0) {
      return 0;
    }
    double share = Math.min(1, wanted / inAll);
    for (int lot : batch) {
      if (ready[lot] > 0) {
        sell(lots[lot], row, quality, month, share, share * ready[lot]);
      }
    }
    return Math.min(wanted, inAll);
  }

  /** Plants of a lot that are ready. */
  private static double ready(LotState lot, Quality quality, int grade) {
    double ready = lot.plants.ready(quality, grade);
    return Negligible.is(ready) ? 0 : ready;
  }

  private void sell(
      LotState lot, DemandRow row, Quality quality, int month, double share, double units) {
    double money = units * row.demand().price();
    if (row.demand().morePerMm() > 0) {
      double mm = lot.plants.mmAboveLeast(quality, row.grade());
      money += share * mm * row.demand().morePerMm();
    }
    lot.plants.sell(quality, row.grade(), share);
    money *= qualities.get(quality).priceShare() * priceFactor[row.index()];
    lot.sold(month, row.index(), row.grade(), quality, units, money);
  }

  List<Missed> missed() {
    return missed;
  }
}
