package growingon.report.figures;

import growingon.money.ListPrices;
import growingon.nursery.market.Quality;
import growingon.nursery.time.Horizon;
import growingon.project.Projection;
import growingon.project.lot.LotHistory;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import growingon.whole.WholeLot;
import growingon.whole.WholeSale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * What each season sells, and what stands ready and unsold at its end, by species or by lot, with
 * grade and quality, so that every table made from this shows the same season totals.
 */
public final class Trade {
  private static final int QUALITIES = Quality.values().length;

  private final Horizon horizon;
  private final int groups;
  private final int grades;
  private final List<Cell> cells;

  /** One season, species or lot, grade and quality. */
  public static final class Cell {
    private final int season;
    private final LotHistory lot;
    private final int grade;
    private final Quality quality;
    private Plants sold = Plants.NONE;
    private Shown receipts = Shown.NOTHING;
    private Plants unsold = Plants.NONE;
    private int firstSold = Integer.MAX_VALUE;

    Cell(int season, LotHistory lot, int grade, Quality quality) {
      this.season = season;
      this.lot = lot;
      this.grade = grade;
      this.quality = quality;
    }

    public int season() {
      return season;
    }

    /** The first lot of the species, or the lot. */
    public LotHistory lot() {
      return lot;
    }

    public String grade() {
      return lot.grades().get(grade).name();
    }

    public Quality quality() {
      return quality;
    }

    public Plants sold() {
      return sold;
    }

    /** Ready at the season's end and not sold. */
    public Plants unsold() {
      return unsold;
    }

    public Shown receipts() {
      return receipts;
    }

    /** Mean price of the plants expected to be sold; NaN where none is. */
    public double meanPrice() {
      return receipts.exact() / sold.exact();
    }

    /** First month of a sale of a whole plant; the greatest number if none is sold. */
    public int firstSold() {
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
   * Adds up whole plants.
   *
   * @param lots for each lot of the plan the lot that its group goes by
   * @param group for each lot the place of its group in the order of groups
   * @param shown money of a sale as it is shown
   */
  private Trade(
      Context context, List<LotHistory> lots, int[] group, ToDoubleFunction<WholeSale> shown) {
    Projection projection = context.accounts().projection();
    this.horizon = projection.horizon();
    this.groups = Arrays.stream(group).max().orElse(-1) + 1;
    this.grades = projection.lots().stream().mapToInt(lot -> lot.grades().size()).max().orElse(0);
    Cell[] all = new Cell[horizon.seasons() * groups * grades * QUALITIES];
    for (int i = 0; i < group.length; i++) {
      add(context.whole().lots().get(i), lots.get(i), group[i], all, shown);
    }
    this.cells = Arrays.stream(all).filter(Objects::nonNull).toList();
  }

  /**
   * Lets every line without a whole plant give its money to that which has the plant: of its season
   * and species, else of its season, else of its species. Nothing is given where none is sold.
   */
  private void giveMoneyToPlants() {
    for (Cell cell : cells) {
      if (cell.sold.whole() == 0 && cell.receipts.shown() != 0) {
        cells.stream()
            .filter(other -> other.sold.whole() > 0)
            .min(Comparator.comparingInt(other -> unlike(cell, other)))
            .ifPresent(other -> give(cell, other));
      }
    }
  }

  private static int unlike(Cell cell, Cell other) {
    int seasons = cell.season == other.season ? 0 : 8;
    int species = cell.lot == other.lot ? 0 : 4;
    int grades = cell.grade().equals(other.grade()) ? 0 : 2;
    return seasons + species + grades + (cell.quality == other.quality ? 0 : 1);
  }

  private static void give(Cell cell, Cell other) {
    double money = cell.receipts.shown();
    other.receipts = other.receipts.plus(0, money);
    cell.receipts = cell.receipts.plus(0, -money);
  }

  /** By species; seasons bring what they bring in cash. */
  public static Trade bySpecies(Context context) {
    Projection projection = context.accounts().projection();
    List<String> names = new ArrayList<>(projection.scenario().nursery().species().keySet());
    Map<String, LotHistory> first = new HashMap<>();
    projection.lots().forEach(lot -> first.putIfAbsent(lot.lot().species(), lot));
    Trade trade =
        new Trade(
            context,
            projection.lots().stream().map(lot -> first.get(lot.lot().species())).toList(),
            projection.lots().stream()
                .mapToInt(lot -> names.indexOf(lot.lot().species()))
                .toArray(),
            WholeSale::money);
    trade.giveMoneyToPlants();
    return trade;
  }

  /** By lot; lots bring what they bring in their accounts. */
  public static Trade byLot(Context context) {
    List<LotHistory> lots = context.accounts().projection().lots();
    int[] each = new int[lots.size()];
    Arrays.setAll(each, i -> i);
    return new Trade(context, lots, each, WholeSale::receipts);
  }

  private void add(
      WholeLot lot, LotHistory groupLot, int group, Cell[] all, ToDoubleFunction<WholeSale> shown) {
    for (WholeSale sale : lot.sales()) {
      int season = horizon.season(sale.month());
      Cell cell = cell(all, season, group, groupLot, sale.grade(), sale.quality());
      cell.sold = cell.sold.plus(sale.units(), sale.whole());
      cell.receipts = cell.receipts.plus(sale.money(), shown.applyAsDouble(sale));
      cell.firstSold = sale.whole() > 0 ? Math.min(cell.firstSold, sale.month()) : cell.firstSold;
    }
    for (int i = 0; i < lot.seasons().size(); i++) {
      add(new SeasonEnd(lot, i), groupLot, group, all);
    }
  }

  private void add(SeasonEnd standing, LotHistory groupLot, int group, Cell[] all) {
    for (Quality quality : Quality.values()) {
      for (int grade = 0; grade < standing.grades(); grade++) {
        Plants ready = standing.ready(quality, grade);
        if (ready.exact() > 0) {
          Cell cell = cell(all, standing.season(), group, groupLot, grade, quality);
          cell.unsold = cell.unsold.plus(ready);
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

  /** Cells in order of season, species or lot, grade, quality. */
  public List<Cell> cells() {
    return cells;
  }

  /** Cells of each season that has any, in order. */
  public List<List<Cell>> bySeason() {
    return runs(Cell::isOfSeasonOf);
  }

  /** Cells of each season, species or lot, and grade, in order. */
  public List<List<Cell>> byGrade() {
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

  /** Sum of plants. */
  public static Plants sum(List<Cell> cells, Function<Cell, Plants> what) {
    Plants sum = Plants.NONE;
    for (Cell cell : cells) {
      sum = sum.plus(what.apply(cell));
    }
    return sum;
  }

  /** Sold and ready unsold plants of the cells. */
  public static Plants saleable(List<Cell> cells) {
    return sum(cells, cell -> cell.sold().plus(cell.unsold()));
  }

  /** Sold and ready unsold plants of the cells of one quality. */
  public static Plants saleable(List<Cell> cells, Quality quality) {
    return sum(
        cells, cell -> cell.quality() == quality ? cell.sold().plus(cell.unsold()) : Plants.NONE);
  }

  /** List prices by species and grade, looked up once each. */
  public static Function<Cell, Double> listPrices(Projection projection) {
    ListPrices prices = new ListPrices(projection.scenario().nursery());
    Map<List<String>, Double> known = new HashMap<>();
    return cell ->
        known.computeIfAbsent(
            List.of(cell.lot().lot().species(), cell.grade()),
            any -> prices.of(cell.lot().lot(), cell.grade()).orElse(Double.NaN));
  }
}
