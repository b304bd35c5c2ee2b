package growingon.load.own.sheet;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A row with at least one filled cell.
 *
 * @param number as the spreadsheet counts, from 1
 * @param hidden whether it is hidden
 * @param cells filled cells by column, 0 = A
 */
public record SheetRow(int number, boolean hidden, SortedMap<Integer, SheetCell> cells) {
  public SheetRow {
    cells = Collections.unmodifiableSortedMap(new TreeMap<>(cells));
  }

  public Optional<SheetCell> cell(int column) {
    return Optional.ofNullable(cells.get(column));
  }

  public String text(int column) {
    return cell(column).map(SheetCell::text).orElse("");
  }

  /** Only the columns from one up to, not including, another. */
  public SheetRow between(int from, int to) {
    return new SheetRow(number, hidden, cells.subMap(from, to));
  }
}
