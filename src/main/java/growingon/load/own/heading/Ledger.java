package growingon.load.own.heading;

import growingon.load.own.sheet.SheetRow;
import java.util.List;
import java.util.OptionalInt;

/**
 * A list that says how many plants there were at the start, how many were sold and lost, and how
 * many are left.
 */
public final class Ledger {
  /** Rows that must add up, of so many that state all. */
  private static final int MOST = 4;

  private static final int OF = 5;
  private static final int FEWEST = 3;

  private Ledger() {}

  /**
   * What a row says is left by its other numbers: what was there and what came in less what went;
   * empty where it does not say the first.
   */
  public static OptionalInt left(HeadedCells cells, SheetRow row) {
    OptionalInt opening = cells.sum(row, "opening");
    return opening.isPresent()
        ? OptionalInt.of(Math.max(0, opening.getAsInt() - SoldOff.taken(cells, row)))
        : opening;
  }

  /** Whether the rows add up, so that one that does not is a slip. */
  static boolean addsUp(List<HeadingRead> heads, List<SheetRow> body) {
    HeadedCells cells = new HeadedCells(heads);
    List<SheetRow> full =
        body.stream()
            .filter(row -> left(cells, row).isPresent() && cells.count(row, "quantity").isPresent())
            .toList();
    long right =
        full.stream().filter(row -> left(cells, row).equals(cells.count(row, "quantity"))).count();
    return full.size() >= FEWEST && right * OF >= full.size() * MOST;
  }
}
