package growingon.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounds expected numbers of plants to whole ones by largest remainder, so that a column adds up to
 * its rounded sum.
 */
final class WholePlants {
  private WholePlants() {}

  /** The numbers with what is shown of each; ties go to the earlier one. */
  static List<Plants> round(double... exact) {
    return plants(exact, apportion(Math.round(Arrays.stream(exact).sum()), exact));
  }

  /** One number by itself, where a column is not added up. */
  static Plants nearest(double exact) {
    return new Plants(exact, Math.round(exact));
  }

  /** The whole numbers that sum to a total and lie next to the exact ones. */
  static long[] apportion(long total, double... exact) {
    long[] whole = new long[exact.length];
    long rest = total;
    for (int i = 0; i < exact.length; i++) {
      whole[i] = (long) Math.floor(exact[i] + 1e-9);
      rest -= whole[i];
    }
    if (rest == 0) {
      return whole;
    }
    List<Integer> byRemainder =
        IntStream.range(0, exact.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> whole[i] - exact[i]))
            .toList();
    for (int i = 0; i < rest; i++) {
      whole[byRemainder.get(i)]++;
    }
    return whole;
  }

  /**
   * Rows of numbers whose sums are whole, rounded so that every row keeps its sum and, as far as a
   * plant can be moved within a row, every column comes to its own rounded sum.
   */
  static List<List<Plants>> grid(List<double[]> rows) {
    int width = rows.isEmpty() ? 0 : rows.get(0).length;
    double[] sums = new double[width];
    long[] surplus = new long[width];
    List<long[]> whole = new ArrayList<>();
    long total = 0;
    for (double[] row : rows) {
      long rowSum = Math.round(Arrays.stream(row).sum());
      long[] rounded = apportion(rowSum, row);
      whole.add(rounded);
      total += rowSum;
      for (int column = 0; column < width; column++) {
        sums[column] += row[column];
        surplus[column] += rounded[column];
      }
    }
    long[] wanted = apportion(total, sums);
    for (int column = 0; column < width; column++) {
      surplus[column] -= wanted[column];
    }
    for (int from = 0; from < width; from++) {
      for (int to = 0; to < width; to++) {
        while (surplus[from] > 0 && surplus[to] < 0 && move(rows, whole, from, to)) {
          surplus[from]--;
          surplus[to]++;
        }
      }
    }
    return IntStream.range(0, rows.size())
        .mapToObj(i -> plants(rows.get(i), whole.get(i)))
        .toList();
  }

  /** Moves a plant in the row that was rounded up most in one column and down in another. */
  private static boolean move(List<double[]> rows, List<long[]> whole, int from, int to) {
    int best = -1;
    double most = 0;
    for (int i = 0; i < rows.size(); i++) {
      double up = whole.get(i)[from] - rows.get(i)[from];
      double down = rows.get(i)[to] - whole.get(i)[to];
      if (up > 1e-9 && down > 1e-9 && up + down > most) {
        best = i;
        most = up + down;
      }
    }
    if (best >= 0) {
      whole.get(best)[from]--;
      whole.get(best)[to]++;
    }
    return best >= 0;
  }

  private static List<Plants> plants(double[] exact, long[] whole) {
    return IntStream.range(0, exact.length).mapToObj(i -> Plants.of(exact[i], whole[i])).toList();
  }
}
