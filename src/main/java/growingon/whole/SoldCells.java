package growingon.whole;

import growingon.nursery.market.Quality;
import growingon.nursery.time.Horizon;
import growingon.project.history.Sale;
import growingon.project.lot.LotHistory;
import java.util.ArrayList;
import java.util.List;

/** The sales of one lot by cell: demand row, grade and quality. A tick is a month with sales. */
final class SoldCells {
  /** A cell with what it buys at each tick. */
  private static final class Cell {
    final int row;
    final int grade;
    final Quality quality;
    final double[] units;
    Branch branch;

    Cell(Sale sale, int months) {
      this.row = sale.row();
      this.grade = sale.grade();
      this.quality = sale.quality();
      this.units = new double[months];
    }

    boolean buys(Sale sale) {
      return row == sale.row() && grade == sale.grade() && quality == sale.quality();
    }
  }

  /** A cell at a tick. */
  private static final class Line {
    final int tick;
    final Cell cell;
    double money;

    Line(int tick, Cell cell) {
      this.tick = tick;
      this.cell = cell;
    }

    int whole() {
      return cell.branch.at(tick);
    }
  }

  private final int rows;
  private final int[] months;
  private final int[] seasons;
  private final List<Cell> cells = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final Branch all;
  private final int[] rowPlaces;

  /**
   * Cells of a lot.
   *
   * @param rows how many demand rows there are; plants that none of them wants are sold to a last
   */
  SoldCells(LotHistory lot, Horizon horizon, int rows) {
    this.rows = rows;
    this.months = lot.sales().stream().mapToInt(Sale::month).distinct().toArray();
    this.seasons = new int[months.length];
    for (int tick = 0; tick < seasons.length; tick++) {
      seasons[tick] = horizon.season(months[tick]);
    }
    int tick = 0;
    for (Sale sale : lot.sales()) {
      tick += months[tick] < sale.month() ? 1 : 0;
      add(sale, tick);
    }
    this.rowPlaces = cells.stream().mapToInt(this::place).distinct().toArray();
    List<Branch> ofRows = new ArrayList<>();
    for (int row : rowPlaces) {
      ofRows.add(ofRow(row));
    }
    this.all = Branch.of(ofRows, months.length);
  }

  private void add(Sale sale, int tick) {
    Cell cell = null;
    for (Cell each : cells) {
      cell = each.buys(sale) ? each : cell;
    }
    if (cell == null) {
      cell = new Cell(sale, months.length);
      cells.add(cell);
    }
    if (cell.units[tick] == 0) {
      lines.add(new Line(tick, cell));
    }
    cell.units[tick] += sale.units();
    line(tick, cell).money += sale.money();
  }

  private Line line(int tick, Cell cell) {
    int last = lines.size() - 1;
    while (lines.get(last).tick != tick || lines.get(last).cell != cell) {
      last--;
    }
    return lines.get(last);
  }

  private Branch ofRow(int row) {
    List<Branch> qualities = new ArrayList<>();
    for (Cell cell : cells) {
      if (place(cell) == row) {
        cell.branch = Branch.ofQuality(cell.quality, cell.units);
        qualities.add(cell.branch);
      }
    }
    return Branch.ofRow(row, qualities, months.length);
  }

  private int place(Cell cell) {
    return cell.row < 0 ? rows : cell.row;
  }

  /** Places of the rows that buy from it, in tables of all rows. */
  int[] rows() {
    return rowPlaces;
  }

  /** All that is sold. */
  Branch all() {
    return all;
  }

  /** How many months have sales. */
  int ticks() {
    return months.length;
  }

  /** Takes a wish. */
  interface Wishes {
    /** So many plants up to a tick, and how much it counts. */
    void add(int tick, double plants, double weight);
  }

  /** Tells what a branch had best have, at the last ticks before the ends of seasons. */
  void tell(Branch branch, LeftOver others, Wishes to) {
    for (int tick = 0; tick < months.length; tick++) {
      int next = tick + 1 < months.length ? seasons[tick + 1] : others.seasons();
      for (int season = seasons[tick]; season < next; season++) {
        to.add(tick, branch.wish(tick, others, season), branch.weight(others, season));
      }
    }
  }

  /** How many plants more than expected a branch had best have by the end of a tick's season. */
  double more(Branch branch, int tick, LeftOver others) {
    return branch.wish(tick, others, seasons[tick]) - branch.sum(tick);
  }

  /** Adds the whole plants less the expected ones to what is left over of its rows. */
  void addTo(LeftOver others, int sign) {
    for (Line line : lines) {
      double off = sign * (line.whole() - line.cell.units[line.tick]);
      for (int season = seasons[line.tick]; season < others.seasons(); season++) {
        others.sold(season)[place(line.cell)] += off;
        others.ofQuality(season)[line.cell.quality.ordinal()] += off;
      }
    }
  }

  /**
   * The sales with their whole plants. The money of a sale of less than a plant goes to the sale
   * with which its plant is counted: of that season, grade and quality if there is one, else of
   * that season, else the lot's next, else its last. It stays where it is if the lot sells none.
   */
  List<WholeSale> sales() {
    double[] receipts = new double[lines.size()];
    for (int i = 0; i < receipts.length; i++) {
      int with = lines.get(i).whole() > 0 ? i : countedWith(i);
      receipts[with < 0 ? i : with] += lines.get(i).money;
    }
    List<WholeSale> sales = new ArrayList<>(receipts.length);
    for (int i = 0; i < receipts.length; i++) {
      sales.add(sale(lines.get(i), receipts[i]));
    }
    return sales;
  }

  private WholeSale sale(Line line, double receipts) {
    return new WholeSale(
        months[line.tick],
        line.cell.row,
        line.cell.grade,
        line.cell.quality,
        line.cell.units[line.tick],
        line.money,
        line.whole(),
        receipts);
  }

  /** Index of the sale with which one of less than a plant is counted; −1 if there is none. */
  private int countedWith(int part) {
    int best = -1;
    int nearest = Integer.MAX_VALUE;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).whole() > 0 && far(part, i) < nearest) {
        nearest = far(part, i);
        best = i;
      }
    }
    return best;
  }

  private int far(int from, int to) {
    int earlier = to < from ? 1 : 0;
    int apart = lines.size() * (2 * unlike(lines.get(from), lines.get(to)) + earlier);
    return apart + Math.abs(to - from);
  }

  private int unlike(Line a, Line b) {
    if (seasons[a.tick] != seasons[b.tick]) {
      return 2;
    }
    return a.cell.grade == b.cell.grade && a.cell.quality == b.cell.quality ? 0 : 1;
  }
}
