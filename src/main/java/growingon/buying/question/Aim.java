package growingon.buying.question;

import java.util.Arrays;

/** What of many draws is to be as high as can be. */
public enum Aim {
  /** Their mean. */
  MEAN,
  /** The mean of the worst fifth of them. */
  CAREFUL;

  private static final int FIFTH = 5;

  public double of(double[] values) {
    if (this == MEAN) {
      return Sample.mean(values);
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return Sample.mean(Arrays.copyOf(sorted, Math.max(1, sorted.length / FIFTH)));
  }
}
