package growingon.report;

import growingon.money.ListPrices;
import growingon.nursery.Horizon;
import growingon.nursery.Quality;
import growingon.project.LotHistory;
import growingon.project.Projection;
import growingon.project.Sale;
import growingon.project.SeasonStock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * What each season sells, and what stands ready and unsold at its end, by species or by lot, with
 * grade and quality. Plants are rounded within a season, sold and unsold apart, so that every table
 * made from this shows the same season totals.
 */
final class Trade {
  private static final int QUALITIES = Quality.values().length;

  private final Horizon horizon;
  private final int groups;
  private final int grades;
  private final List<Cell> cells;

  /** One season, species or lot, grade and quality. */
  static final class Cell {
    private final int season;
    private final LotHistory lot;
    private final int grade;
    private final Quality quality;
    private double sold;
    private double receipts;
    private double unsold;
    private int firstSold = Integer.MAX_VALUE;
    private Plants wholeSold;
    private Plants wholeUnsold;

    Cell(int season, LotHistory lot, int grade, Quality quality) {
      this.season = season;
      this.lot = lot;
      this.grade = grade;
      this.quality = quality;
    }

    int season() {
      return season;
    }

    /** The first lot of the species, or the lot. */
    LotHistory lot() {
      return lot;
    }

    String grade() {
      return lot.grades().get(grade).name();
    }

    Quality quality() {
      return quality;
    }

    Plants sold() {
      return wholeSold;
    }

    /** Ready at the season's end and not sold. */
    Plants unsold() {
      return wholeUnsold;
    }

    double receipts() {
      return receipts;
    }

    /** Mean price; NaN where none is sold. */
    double meanPrice() {
      return receipts / sold;
    }

    /** First month of a sale; the greatest number if none is sold. */
    int firstSold() {
      return firstSold;
    }

    private boolean isOfSeasonOf(Cell other) {
      return season == other.season;
    }

    /** Whether only the quality differs. */
    private boolean isOnOneLineWith(Cell other) {
      return season == other.season && lot == other.lot && grade == other.grade;
    }
  }

  /**
   * Adds up a projection.
   *
   * @param lots for each lot of the projection the lot that its group goes by
   * @param group for each lot the place of its group in the order of groups
   */
  private Trade(Projection projection, List<LotHistory> lots, int[] group) {
    this.horizon = projection.horizon();
    this.groups = Arrays.stream(group).max().orElse(-1) + 1;
    this.grades = projection.lots().stream().mapToInt(lot -> lot.grades().size()).max().orElse(0);
    Cell[] all = new Cell[horizon.seasons() * groups * grades * QUALITIES];
    for (int i = 0; i < group.length; i++) {
      add(projection.lots().get(i), lots.get(i), group[i], all);
    }
    this.cells = Arrays.stream(all).filter(Objects::nonNull).toList();
    bySeason().forEach(Trade::round);
  }

  static Trade bySpecies(Projection projection) {
    List<String> names = new ArrayList<>(projection.scenario().nursery().species().keySet());
    Map<String, LotHistory> first = new HashMap<>();
    projection.lots().forEach(lot -> first.putIfAbsent(lot.lot().species(), lot));
    return new Trade(
        projection,
        projection.lots().stream().map(lot -> first.get(lot.lot().species())).toList(),
        projection.lots().stream().mapToInt(lot -> names.indexOf(lot.lot().species())).toArray());
  }

  static Trade byLot(Projection projection) {
    int[] each = new int[projection.lots().size()];
    Arrays.setAll(each, i -> i);
    return new Trade(projection, projection.lots(), each);
  }

  private void add(LotHistory lot, LotHistory groupLot, int group, Cell[] all) {
    for (Sale sale : lot.sales()) {
      int season = horizon.season(sale.month());
      Cell cell = cell(all, season, group, groupLot, sale.grade(), sale.quality());
      cell.sold += sale.units();
      cell.receipts += sale.money();
      cell.firstSold = Math.min(cell.firstSold, sale.month());
    }
    for (SeasonStock stock : lot.seasons()) {
      for (Quality quality : Quality.values()) {
        double[] ready = stock.ready()[quality.ordinal()];
        for (int grade = 0; grade < ready.length; grade++) {
          if (ready[grade] > 0) {
            cell(all, stock.season(), group, groupLot, grade, quality).unsold += ready[grade];
          }
        }
      }
    }
  }

  private Cell cell(Cell[] all, int season, int group, LotHistory lot, int grade, Quality quality) {
    int index = ((season * groups + group) * grades + grade) * QUALITIES + quality.ordinal();
    if (all[index] == null) {
      all[index] = new Cell(season, lot, grade, quality);
    }
    return all[index];
  }

  private static void round(List<Cell> season) {
    List<Plants> sold = WholePlants.round(season.stream().mapToDouble(c -> c.sold).toArray());
    List<Plants> unsold = WholePlants.round(season.stream().mapToDouble(c -> c.unsold).toArray());
    for (int i = 0; i < season.size(); i++) {
      season.get(i).wholeSold = sold.get(i);
      season.get(i).wholeUnsold = unsold.get(i);
    }
  }

  /** Cells in order of season, species or lot, grade, quality. */
  List<Cell> cells() {
    return cells;
  }

  /** Cells of each season that has any, in order. */
  List<List<Cell>> bySeason() {
    return runs(Cell::isOfSeasonOf);
  }

  /** Cells of each season, species or lot, and grade, in order. */
  List<List<Cell>> byGrade() {
    return runs(Cell::isOnOneLineWith);
  }

  /** Runs of neighbours that belong together. */
  private List<List<Cell>> runs(BiPredicate<Cell, Cell> together) {
    List<List<Cell>> runs = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= cells.size(); i++) {
      if (i == cells.size() || !together.test(cells.get(from), cells.get(i))) {
        runs.add(cells.subList(from, i));
        from = i;
      }
    }
    return runs;
  }

  /** Sum of plants, exact and as shown. */
  static Plants sum(List<Cell> cells, Function<Cell, Plants> what) {
    double exact = 0;
    long whole = 0;
    for (Cell cell : cells) {
      exact += what.apply(cell).exact();
      whole += what.apply(cell).whole();
    }
    return Plants.of(exact, whole);
  }

  /** Sold and ready unsold plants of the cells. */
  static Plants saleable(List<Cell> cells) {
    return sum(cells, cell -> plus(cell.sold(), cell.unsold()));
  }

  /** Sold and ready unsold plants of the cells of one quality. */
  static Plants saleable(List<Cell> cells, Quality quality) {
    return sum(
        cells, cell -> cell.quality() == quality ? plus(cell.sold(), cell.unsold()) : Plants.NONE);
  }

  private static Plants plus(Plants a, Plants b) {
    return Plants.of(a.exact() + b.exact(), a.whole() + b.whole());
  }

  /** List prices by species and grade, looked up once each. */
  static Function<Cell, Double> listPrices(Projection projection) {
    ListPrices prices = new ListPrices(projection.scenario().nursery());
    Map<List<String>, Double> known = new HashMap<>();
    return cell ->
        known.computeIfAbsent(
            List.of(cell.lot().lot().species(), cell.grade()),
            any -> prices.of(cell.lot().lot(), cell.grade()).orElse(Double.NaN));
  }
}
