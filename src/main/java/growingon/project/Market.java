package growingon.project;

import growingon.nursery.market.Quality;
import growingon.nursery.market.QualityRule;
import growingon.nursery.number.Negligible;
import growingon.project.history.Missed;
import growingon.project.lot.Luck;
import growingon.project.slice.Grading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Sells what is ready to what is wanted, month by month: rows of a species before rows of any
 * species, dearer first, then row order; within a row firsts before seconds, oldest arrival first;
 * of lots that arrived together the same share of every lot, slice and stream, so that it does not
 * matter how a batch is split into lots.
 */
final class Market {
  private static final Quality[] QUALITIES = Quality.values();

  private final Programme programme;
  private final Luck luck;
  private final LotState[] lots;
  private final double[] priceShares;
  private final List<Missed> missed = new ArrayList<>();
  private final DemandRow[] rows;
  private final double[] unitsFactor;
  private final double[] priceFactor;
  private final long[] readyCells;
  private final double[] ready;
  private final boolean[] asks;
  private final int[] lotsWithFacts;
  private final KnownSales known;
  private final Stall atOnce = new AtOnce();
  private int season = Integer.MIN_VALUE;
  private int month;
  private final long[][] batchCells;

  /** Where plants that are ready are offered: what is sold leaves at once, or is only agreed on. */
  interface Stall {
    /** Plants of a lot that are ready as a grade. */
    double ready(int lot, Quality quality, int grade);

    /** A share of them, so many plants, is sold to a row. */
    void sell(int lot, DemandRow row, Quality quality, double share, double units);
  }

  Market(Programme programme, Luck luck, LotState[] lots) {
    this.programme = programme;
    this.luck = luck;
    this.lots = lots;
    this.priceShares = priceShares(programme.nursery().qualities());
    this.rows = programme.rows();
    this.unitsFactor = new double[rows.length];
    this.priceFactor = new double[rows.length];
    this.readyCells = new long[lots.length];
    this.ready = new double[lots.length];
    this.known = new KnownSales(programme, lots);
    this.lotsWithFacts =
        IntStream.range(0, lots.length).filter(lot -> lots[lot].hasFacts()).toArray();
    this.asks = programme.asks();
    this.batchCells = batchCells(rows);
  }

  /** The market of another programme of the same nursery and plan on the same luck. */
  Market(Market same, Programme programme, LotState[] lots) {
    this.programme = programme;
    this.luck = same.luck;
    this.lots = lots;
    this.priceShares = same.priceShares;
    this.rows = programme.rows();
    this.unitsFactor = same.unitsFactor;
    this.priceFactor = same.priceFactor;
    this.readyCells = new long[lots.length];
    this.ready = new double[lots.length];
    this.known = same.known;
    this.lotsWithFacts = same.lotsWithFacts;
    this.asks = same.asks;
    this.batchCells = batchCells(rows);
  }

  private static double[] priceShares(Map<Quality, QualityRule> qualities) {
    double[] shares = new double[QUALITIES.length];
    for (Quality quality : QUALITIES) {
      shares[quality.ordinal()] = qualities.get(quality).priceShare();
    }
    return shares;
  }

  /** The first month from a month on in which anything may be sold; the last if there is none. */
  int nextSale(int from) {
    int next = from;
    while (next < asks.length - 1 && !asks[next] && lotsWithFacts.length == 0) {
      next++;
    }
    return next;
  }

  /**
   * Grades a lot for the sales of a month, several lots at once if need be. A lot of which
   * something is known waits for what it is known to have sold.
   */
  void prepare(int lot, int forMonth) {
    if (!lots[lot].hasFacts()) {
      grade(lot, forMonth);
    }
  }

  /** Cells in which a lot has plants, once it was prepared. */
  long readyCells(int lot) {
    return readyCells[lot];
  }

  /** The cells of a lot that another market has prepared. */
  void takeOver(int lot, long cells) {
    readyCells[lot] = cells;
  }

  /** Begins the sales of a month: whom it sells to in its season, and at which prices. */
  void begin(int now) {
    month = now;
    int year = programme.calendar().seasonYear(month);
    if (year != season) {
      season = year;
      beginSeason();
    }
  }

  /** Begins the sales of a month in which another market of the same luck has begun them. */
  void follow(int now) {
    month = now;
  }

  /** Sells in a month for which every lot was prepared. */
  void sell(int now) {
    begin(now);
    double[] met = known.sell(month);
    for (int lot : lotsWithFacts) {
      grade(lot, month);
    }
    sell(met, atOnce);
  }

  /** Offers at a stall what the lots have ready; nothing is known of any of them. */
  void sellAt(Stall stall) {
    sell(known.nothing(), stall);
  }

  /**
   * Agrees on what is sold beside another programme: the same to a row of a grade that no other
   * lots than shared ones offer.
   *
   * @param first what was agreed on there
   * @param placeHere index here of a lot there
   * @param otherCells cells in which lots are ready that the two do not share
   */
  void sellBeside(Agreement first, int[] placeHere, long otherCells, Agreement agreed) {
    noteReady();
    int at = 0;
    for (int i = 0; i < rows.length; i++) {
      DemandRow row = rows[i];
      int begin = at;
      at = first.endOf(row, at);
      if ((otherCells & Grading.cells(row.grade())) == 0) {
        for (int sale = begin; sale < at; sale++) {
          agreed.sellAs(first, sale, placeHere[first.lot(sale)], row);
        }
      } else {
        double wanted = wanted(row);
        if (!Negligible.is(wanted)) {
          meet(i, wanted, agreed);
        }
      }
    }
  }

  /** Room for the cells of every batch of every row; rows that are met from the same share it. */
  private static long[][] batchCells(DemandRow[] rows) {
    long[][] cells = new long[rows.length][];
    for (int row = 0; row < rows.length; row++) {
      int same = firstWithBatchesOf(rows, row);
      cells[row] = same < row ? cells[same] : new long[rows[row].batches().length];
    }
    return cells;
  }

  private static int firstWithBatchesOf(DemandRow[] rows, int of) {
    int row = 0;
    while (rows[row].batches() != rows[of].batches()) {
      row++;
    }
    return row;
  }

  /** Notes for every batch in which cells any of its lots has plants. */
  private void noteReady() {
    for (int row = 0; row < rows.length; row++) {
      if (firstWithBatchesOf(rows, row) == row) {
        int[][] batches = rows[row].batches();
        for (int batch = 0; batch < batches.length; batch++) {
          batchCells[row][batch] = cells(batches[batch]);
        }
      }
    }
  }

  private long cells(int[] batch) {
    long cells = 0;
    for (int lot : batch) {
      cells |= readyCells[lot];
    }
    return cells;
  }

  private void sell(double[] met, Stall stall) {
    noteReady();
    for (int i = 0; i < rows.length; i++) {
      DemandRow row = rows[i];
      double wanted = wanted(row) - met[row.index()];
      if (Negligible.is(wanted)) {
        continue;
      }
      double left = meet(i, wanted, stall);
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
  private void grade(int lot, int forMonth) {
    LotState state = lots[lot];
    boolean may = asks[forMonth] && forMonth >= state.start && state.maySell(forMonth);
    readyCells[lot] = may ? state.gradeForSale(forMonth) : 0;
  }

  private double wanted(DemandRow row) {
    double units = row.units()[month];
    return units > 0 ? units * unitsFactor[row.index()] : 0;
  }

  private double meet(int index, double wanted, Stall stall) {
    DemandRow row = rows[index];
    int[][] batches = row.batches();
    double left = wanted;
    for (Quality quality : QUALITIES) {
      long cell = Grading.cellBit(quality, row.grade());
      for (int batch = 0; batch < batches.length; batch++) {
        if ((batchCells[index][batch] & cell) != 0) {
          left -= sellFrom(batches[batch], row, quality, left, stall);
          if (Negligible.is(left)) {
            return 0;
          }
        }
      }
    }
    return left;
  }

  /** Sells the same share of every lot of a batch; gives how many plants. */
  private double sellFrom(int[] batch, DemandRow row, Quality quality, double wanted, Stall stall) {
    long cell = Grading.cellBit(quality, row.grade());
    double inAll = 0;
    for (int lot : batch) {
      ready[lot] = (readyCells[lot] & cell) == 0 ? 0 : stall.ready(lot, quality, row.grade());
      inAll += ready[lot];
    }
    if (inAll == 0) {
      return 0;
    }
    double share = Math.min(1, wanted / inAll);
    for (int lot : batch) {
      if (ready[lot] > 0) {
        stall.sell(lot, row, quality, share, share * ready[lot]);
      }
    }
    return Math.min(wanted, inAll);
  }

  /** What is sold leaves at once. */
  private final class AtOnce implements Stall {
    @Override
    public double ready(int lot, Quality quality, int grade) {
      return lots[lot].plants.offered(quality, grade);
    }

    @Override
    public void sell(int lot, DemandRow row, Quality quality, double share, double units) {
      deliver(lots[lot], row, quality, share, units);
    }
  }

  /** Lets a share of the plants of a lot, so many, leave for a row. */
  void deliver(LotState lot, DemandRow row, Quality quality, double share, double units) {
    double money = units * row.demand().price();
    if (row.demand().morePerMm() > 0) {
      double mm = lot.plants.mmAboveLeast(quality, row.grade());
      money += share * mm * row.demand().morePerMm();
    }
    lot.plants.sell(quality, row.grade(), share);
    money *= priceShares[quality.ordinal()] * priceFactor[row.index()];
    lot.sold(month, row.index(), row.grade(), quality, units, money);
  }

  /** Demand that could not be met. */
  List<Missed> missed() {
    return missed;
  }
}
