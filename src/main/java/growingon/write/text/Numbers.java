package growingon.write.text;

import com.fasterxml.jackson.core.io.NumberOutput;
import growingon.report.model.Table;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Numbers of cells, and how they are spelt in text files. */
public final class Numbers {
  private static final double EXACT_WHOLE = 1e15;
  private static final double[] POWERS = {1, 10, 100, 1_000, 10_000};

  private Numbers() {}

  /** Whether a cell shows a number in the workbook; not so text, months and gaps. */
  public static boolean isShown(Object cell) {
    return cell instanceof Plants
        || cell instanceof Shown
        || cell instanceof Number number && Double.isFinite(number.doubleValue());
  }

  /** The number that a cell shows in the workbook: plants whole. */
  public static double shown(Object cell) {
    if (cell instanceof Plants plants) {
      return plants.whole();
    }
    return cell instanceof Shown number ? number.shown() : ((Number) cell).doubleValue();
  }

  /** Whether a cell is a number, be it one that cannot be shown. */
  public static boolean isNumber(Object cell) {
    return cell instanceof Number || cell instanceof Plants || cell instanceof Shown;
  }

  /** The number of a cell in full precision. */
  public static double exact(Object cell) {
    if (cell instanceof Plants plants) {
      return plants.exact();
    }
    return cell instanceof Shown number ? number.exact() : ((Number) cell).doubleValue();
  }

  /** The numbers of a column that are shown, from top to bottom. */
  public static DoubleStream shown(Table table, int column) {
    return table.rows().stream()
        .map(row -> row.get(column))
        .filter(Numbers::isShown)
        .mapToDouble(Numbers::shown);
  }

  /** Whether a number is whole and small enough to be spelt as one without loss. */
  public static boolean isWhole(double number) {
    return number == Math.rint(number) && Math.abs(number) < EXACT_WHOLE;
  }

  /** Fewest digits that read back as the same number, never in powers of ten. */
  public static String plain(double number) {
    if (isWhole(number)) {
      return Long.toString((long) number);
    }
    String shortest = NumberOutput.toString(number, true);
    return shortest.indexOf('E') < 0 ? shortest : new BigDecimal(shortest).toPlainString();
  }

  /** A number with at most so many decimals. */
  static double rounded(double number, int decimals) {
    double power = POWERS[decimals];
    return Math.abs(number) < EXACT_WHOLE / power
        ? Math.rint(number * power) / power
        : Math.rint(number);
  }

  /** Money with its two decimals. */
  static String cents(double amount) {
    if (Math.abs(amount) >= EXACT_WHOLE / POWERS[2]) {
      return plain(Math.rint(amount)) + ".00";
    }
    long cents = Math.round(Math.abs(amount) * POWERS[2]);
    long rest = cents % 100;
    String sign = amount < 0 && cents > 0 ? "-" : "";
    return sign + cents / 100 + (rest < 10 ? ".0" : ".") + rest;
  }

  /**
   * The total of a column; none where it has none, or no number in any row: a total of nil would
   * say that there are figures and that they cancel out.
   */
  public static OptionalDouble total(Table table, int column) {
    if (!table.columns().get(column).total()) {
      return OptionalDouble.empty();
    }
    double[] shown = shown(table, column).toArray();
    return shown.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(DoubleStream.of(shown).sum());
  }
}
