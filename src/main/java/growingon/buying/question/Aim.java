package growingon.buying.question;

import java.util.Arrays;

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
    return Sample.mean(Arrays.copyOf(sorted, Math.max(1, sorted.length / FIFTH)));
  }
}
