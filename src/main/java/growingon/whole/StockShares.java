package growingon.whole;

import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Shares the whole plants of a lot that stand at a month's end out to grades, then those of a grade
 * to ready ones and others, then each to qualities; lots of a ladder make good for each other.
 */
final class StockShares {
  private static final int QUALITIES = Quality.values().length;

  private record Key(String ladder, int month) {}

  /** What lots of a ladder were given too many so far. */
  private static final class TooMany {
    final double[] ofGroup;
    final double[][] ready;
    final double[][][] ofQuality;

    TooMany(int grades) {
      ofGroup = new double[grades + 2];
      ready = new double[grades][2];
      ofQuality = new double[grades][2][QUALITIES];
    }
  }

  private final Map<Key, TooMany> known = new HashMap<>();

  /**
   * Shares out.
   *
   * @param total whole plants standing
   * @param standing plants standing
   * @param ready those of them that could be sold
   */
  WholeStock share(
      String ladder, int month, long total, GradedPlants standing, GradedPlants ready) {
    int grades = standing.grades();
    TooMany tooMany = known.computeIfAbsent(new Key(ladder, month), key -> new TooMany(grades));
    double[] groups = new double[grades + 2];
    groups[0] = standing.kept();
    for (int grade = GradedPlants.NO_GRADE; grade < grades; grade++) {
      groups[grade + 2] = standing.ofGrade(grade);
    }
    int[] whole = Shares.of(total, groups, tooMany.ofGroup);
    int[][] wholeReady = new int[QUALITIES][grades];
    int[][] waiting = new int[QUALITIES][grades];
    for (int grade = 0; grade < grades; grade++) {
      double[][] parts = new double[2][QUALITIES];
      for (Quality quality : Quality.values()) {
        double there = standing.of(quality, grade);
        double ofThem = Math.min(ready.of(quality, grade), there);
        parts[0][quality.ordinal()] = ofThem;
        parts[1][quality.ordinal()] = there - ofThem;
      }
      int[][] ofGrade = ofGrade(whole[grade + 2], parts, tooMany, grade);
      for (int quality = 0; quality < QUALITIES; quality++) {
        wholeReady[quality][grade] = ofGrade[0][quality];
        waiting[quality][grade] = ofGrade[1][quality];
      }
    }
    return new WholeStock(whole[0], whole[1], wholeReady, waiting);
  }

  /** [ready, waiting][quality] whole plants of a grade. */
  private static int[][] ofGrade(int total, double[][] parts, TooMany tooMany, int grade) {
    double[] sums = {Arrays.stream(parts[0]).sum(), Arrays.stream(parts[1]).sum()};
    int[] whole = Shares.of(total, sums, tooMany.ready[grade]);
    return new int[][] {
      Shares.of(whole[0], parts[0], tooMany.ofQuality[grade][0]),
      Shares.of(whole[1], parts[1], tooMany.ofQuality[grade][1])
    };
  }
}
