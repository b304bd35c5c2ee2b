package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import java.util.List;
import java.util.function.Predicate;

/** The filled cells of a list by their columns. */
record ColumnCells(List<SheetRow> body) {
  ColumnCells {
    body = List.copyOf(body);
  }

  List<SheetCell> of(int column) {
    return body.stream().flatMap(row -> row.cell(column).stream()).toList();
  }

  /** Whether a column has cells, and all of them are so. */
  boolean all(int column, Predicate<SheetCell> test) {
    List<SheetCell> cells = of(column);
    return !cells.isEmpty() && cells.stream().allMatch(test);
  }

  boolean most(int column, Predicate<SheetCell> test) {
    List<SheetCell> cells = of(column);
    return cells.stream().filter(test).count() * 2 > cells.size();
  }
}
