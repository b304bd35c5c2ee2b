package growingon.review.bought;

import growingon.review.kept.KeptSale;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a lot earns over the whole plan, taken apart: its sales are plants living × share sold ×
 * shares of qualities × shares of grades within a quality × price.
 *
 * @param cost all costs but hours, less what came in besides sales, plan currency
 * @param hours cost of hours
 * @param living plants that live to be sold or to stand at the end
 * @param sold plants sold
 * @param cells what is sold of each quality and grade
 */
record Trading(double cost, double hours, double living, double sold, Map<Cell, Sold> cells) {
  /** A quality and a grade, by name. */
  record Cell(String quality, String grade) {}

  /**
   * What is sold of a cell.
   *
   * @param units plants
   * @param money plan currency
   */
  record Sold(double units, double money) {
    Sold plus(Sold other) {
      return new Sold(units + other.units, money + other.money);
    }
  }

  Trading {
    // In the order in which they came up: sums over them are then the same in every run.
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }

  /** Of sales taken together by cell. */
  static Trading of(double cost, double hours, double living, Iterable<KeptSale> sales) {
    Map<Cell, Sold> cells = new LinkedHashMap<>();
    double sold = 0;
    for (KeptSale sale : sales) {
      Cell cell = new Cell(sale.quality(), sale.grade());
      cells.merge(cell, new Sold(sale.units(), sale.money()), Sold::plus);
      sold += sale.units();
    }
    return new Trading(cost, hours, living, sold, cells);
  }

  double money() {
    return cells.values().stream().mapToDouble(Sold::money).sum();
  }

  double result() {
    return money() - cost - hours;
  }

  double shareSold() {
    return living > 0 ? sold / living : 0;
  }

  private Sold of(Cell cell) {
    return cells.getOrDefault(cell, new Sold(0, 0));
  }

  double units(String quality) {
    double units = 0;
    for (Map.Entry<Cell, Sold> each : cells.entrySet()) {
      units += each.getKey().quality().equals(quality) ? each.getValue().units() : 0;
    }
    return units;
  }

  /** Share of a quality in what is sold. */
  double qualityShare(String quality) {
    return sold > 0 ? units(quality) / sold : 0;
  }

  /** Share of a cell in what is sold of its quality. */
  double gradeShare(Cell cell) {
    double units = units(cell.quality());
    return units > 0 ? of(cell).units() / units : 0;
  }

  /** Whether anything is sold of a cell, so that it has a price. */
  boolean prices(Cell cell) {
    return of(cell).units() > 0;
  }

  double price(Cell cell) {
    return of(cell).money() / of(cell).units();
  }

  /** Qualities of two together, and cells of two together, in the order of their names. */
  static Set<Cell> cells(Trading one, Trading other) {
    Set<Cell> all =
        new TreeSet<>(java.util.Comparator.comparing(Cell::quality).thenComparing(Cell::grade));
    all.addAll(one.cells.keySet());
    all.addAll(other.cells.keySet());
    return all;
  }
}
