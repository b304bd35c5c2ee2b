package growingon.buying.question;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** What of many draws is to be as high as can be. */
public enum Aim {
  /** Their mean. */
  MEAN,
  /** The mean of the worst fifth of them. */
  CAREFUL;

  private static final int FIFTH = 5;

  /**
   * What is to be as high as can be, in the unit of the values.
   *
   * @param values [draw] in any order, at least one; they stay as they are
   * @return the mean of all, or of the lowest ⌊n/5⌋ and at least one of them
   */
  public double of(double[] values) {
    if (this == MEAN) {
      return Sample.mean(values);
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return Sample.mean(Arrays.copyOf(sorted, counted(sorted.length)));
  }

  /** The draws of which that is the mean, of equal ones the first. */
  public int[] draws(double[] values) {
    IntStream all = IntStream.range(0, values.length);
    return this == MEAN
        ? all.toArray()
        : all.boxed()
            .sorted(Comparator.comparingDouble(draw -> values[draw]))
            .limit(counted(values.length))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  private static int counted(int draws) {
    return Math.max(1, draws / FIFTH);
  }
}
