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
    long[] whole = new long[exact.length];
    long rest = Math.round(Arrays.stream(exact).sum());
    for (int i = 0; i < exact.length; i++) {
      whole[i] = (long) Math.floor(exact[i] + 1e-9);
      rest -= whole[i];
    }
    List<Integer> byRemainder =
        IntStream.range(0, exact.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> whole[i] - exact[i]))
            .toList();
    for (int i = 0; i < rest; i++) {
      whole[byRemainder.get(i)]++;
    }
    List<Plants> plants = new ArrayList<>(exact.length);
    for (int i = 0; i < exact.length; i++) {
      plants.add(new Plants(exact[i], whole[i]));
    }
    return plants;
  }
}
