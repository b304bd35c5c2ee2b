package growingon.whole;

/** Shares whole plants out to parts of which so many are expected, each rounded down or up. */
public final class Shares {
  private Shares() {}

  /**
   * The parts whose fractions are largest are rounded up until all plants are given.
   *
   * @param total whole plants, next to the sum of the parts
   * @param exact plants expected in each part
   */
  public static int[] of(long total, double... exact) {
    return of(total, exact, new double[exact.length]);
  }

  /**
   * The parts whose fractions are largest, after what others of their kind were given too many, are
   * rounded up until all plants are given; a part of which nothing is expected gets nothing.
   *
   * @param total whole plants, next to the sum of the parts
   * @param exact plants expected in each part
   * @param tooMany whole plants given to each kind of part so far less those expected; what is
   *     given here is added
   */
  static int[] of(long total, double[] exact, double[] tooMany) {
    int[] whole = new int[exact.length];
    long left = total;
    for (int i = 0; i < exact.length; i++) {
      whole[i] = (int) Ticks.floor(exact[i]);
      left -= whole[i];
    }
    for (; left > 0; left--) {
      whole[neediest(exact, whole, tooMany)]++;
    }
    for (; left < 0; left++) {
      whole[largest(whole)]--;
    }
    for (int i = 0; i < exact.length; i++) {
      tooMany[i] += whole[i] - exact[i];
    }
    return whole;
  }

  private static int neediest(double[] exact, int[] whole, double[] tooMany) {
    int best = -1;
    double most = 0;
    for (int i = 0; i < exact.length; i++) {
      boolean mayHaveMore = whole[i] < Ticks.ceil(exact[i]);
      double need = exact[i] - whole[i] - tooMany[i] + (mayHaveMore ? 1e6 : 0);
      if (exact[i] > Ticks.ROUNDING && (best < 0 || need > most)) {
        best = i;
        most = need;
      }
    }
    return best < 0 ? 0 : best;
  }

  private static int largest(int[] whole) {
    int largest = 0;
    for (int i = 1; i < whole.length; i++) {
      largest = whole[i] > whole[largest] ? i : largest;
    }
    return largest;
  }
}
