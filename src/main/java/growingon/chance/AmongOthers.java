package growingon.chance;

import java.util.Arrays;

/**
 * Holds each draw against all the others: whether its figure lies from their P10 to their P90. By
 * it figures of one draw can be counted that are good or bad together.
 */
final class AmongOthers {
  /** Draws are kept to about seven digits. */
  private static final double DUST = 1e-6;

  private static final int DRAWS_A_DIGIT = 4;
  private static final int RADIX = 16;
  private static final int FEWEST = 3;

  private final float[] sorted;

  private AmongOthers(float[] sorted) {
    this.sorted = sorted;
  }

  /**
   * Whether each draw is within the others, as hexadecimal digits of four draws each, the first
   * draw's bit the highest; of under three draws all are.
   *
   * @param draws a figure by draw; one that is not a number is left out and counts as within
   */
  static String of(float[] draws) {
    float[] sorted = new float[draws.length];
    int number = 0;
    for (float draw : draws) {
      if (!Float.isNaN(draw)) {
        sorted[number++] = draw;
      }
    }
    float[] own = Arrays.copyOf(sorted, number);
    Arrays.sort(own);
    AmongOthers others = new AmongOthers(own);
    StringBuilder digits = new StringBuilder();
    for (int first = 0; first < draws.length; first += DRAWS_A_DIGIT) {
      digits.append(Character.forDigit(others.digit(draws, first), RADIX));
    }
    return digits.toString();
  }

  private int digit(float[] draws, int first) {
    int digit = 0;
    for (int draw = first; draw < first + DRAWS_A_DIGIT; draw++) {
      digit = 2 * digit + (draw < draws.length && isWithin(draws[draw]) ? 1 : 0);
    }
    return digit;
  }

  private boolean isWithin(float draw) {
    if (Float.isNaN(draw) || sorted.length < FEWEST) {
      return true;
    }
    int own = Arrays.binarySearch(sorted, draw);
    double dust = DUST * Math.max(1, Math.abs(draw));
    return draw >= othersAt(0.1, own) - dust && draw <= othersAt(0.9, own) + dust;
  }

  /** A quantile of all draws but one, as {@link Quantiles} has it. */
  private double othersAt(double share, int own) {
    double place = (sorted.length - 2) * share;
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 2, below + 1);
    double low = other(below, own);
    return low + (place - below) * (other(above, own) - low);
  }

  private double other(int rank, int own) {
    return sorted[rank < own ? rank : rank + 1];
  }
}
