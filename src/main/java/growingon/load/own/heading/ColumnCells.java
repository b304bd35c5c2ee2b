package growingon.load.own.heading;

import growingon.load.own.sheet.SheetCell;
import growingon.load.own.sheet.SheetRow;
import growingon.load.own.text.MoneyText;
import java.util.List;
import java.util.Set;
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

  /** Three numbers of a row. */
  @FunctionalInterface
  interface Three {
    boolean test(double one, double other, double third);
  }

  /** Whether three columns have numbers in some row, and in nine of ten of these they are so. */
  boolean all(List<Integer> columns, Three test) {
    int rows = 0;
    int so = 0;
    for (SheetRow row : body) {
      List<Double> numbers =
          columns.stream()
              .flatMap(column -> row.cell(column).stream())
              .flatMap(cell -> MoneyText.of(cell).value().stream())
              .map(MoneyText::amount)
              .toList();
      if (numbers.size() == columns.size() && numbers.get(0) > 0) {
        rows++;
        so += test.test(numbers.get(0), numbers.get(1), numbers.get(2)) ? 1 : 0;
      }
    }
    return rows > 1 && so * 10 >= rows * 9;
  }

  boolean most(int column, Predicate<SheetCell> test) {
    List<SheetCell> cells = of(column);
    return cells.stream().filter(test).count() * 2 > cells.size();
  }

  /** Whether no two cells of a column are the same. */
  boolean allDiffer(int column) {
    List<String> texts = of(column).stream().map(SheetCell::text).toList();
    return Set.copyOf(texts).size() == texts.size();
  }
}
