package growingon.write;

import com.fasterxml.jackson.core.io.NumberOutput;
import growingon.report.Plants;
import growingon.report.Table;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;

/** Numbers of cells, and how they are spelt in text files. */
final class Numbers {
  private static final double EXACT_WHOLE = 1e15;

  private Numbers() {}

  /** The number a cell shows in the workbook: plants whole; empty for text, months and gaps. */
  static OptionalDouble shown(Object cell) {
    if (cell instanceof Plants plants) {
      return OptionalDouble.of(plants.whole());
    }
    if (cell instanceof Number number && Double.isFinite(number.doubleValue())) {
      return OptionalDouble.of(number.doubleValue());
    }
    return OptionalDouble.empty();
  }

  /** Whether a number is whole and small enough to be spelt as one without loss. */
  static boolean isWhole(double number) {
    return number == Math.rint(number) && Math.abs(number) < EXACT_WHOLE;
  }

  /** Fewest digits that read back as the same number, never in powers of ten. */
  static String plain(double number) {
    if (isWhole(number)) {
      return Long.toString((long) number);
    }
    String shortest = NumberOutput.toString(number, true);
    return shortest.indexOf('E') < 0 ? shortest : new BigDecimal(shortest).toPlainString();
  }

  /**
   * The total of a column; none where it has none, or no number in any row: a total of nil would
   * say that there are figures and that they cancel out.
   */
  static OptionalDouble total(Table table, int column) {
    if (!table.columns().get(column).total()) {
      return OptionalDouble.empty();
    }
    List<OptionalDouble> shown = table.rows().stream().map(row -> shown(row.get(column))).toList();
    return shown.stream().allMatch(OptionalDouble::isEmpty)
        ? OptionalDouble.empty()
        : OptionalDouble.of(shown.stream().mapToDouble(each -> each.orElse(0)).sum());
  }
}
