package growingon.project;

import java.util.Arrays;

/**
 * How a lot stands at the end of a month.
 *
 * @param standing [quality][0 = no grade, then grades from the lowest], kept plants in a fourth row
 * @param meanTrunkMm mean trunk of the living plants, mm; 0 for none
 * @param trunkSpread their spread as a share of the mean
 */
public record MonthStock(double[][] standing, double meanTrunkMm, double trunkSpread) {
  /** No plants. */
  static MonthStock nothing(int grades) {
    return new MonthStock(new double[4][grades + 1], 0, 0);
  }

  /** Plants of a row of {@code standing}, whatever their grade. */
  public double ofQuality(int row) {
    return Arrays.stream(standing[row]).sum();
  }

  /** Plants of a column of {@code standing}, whatever their quality. */
  public double ofGrade(int column) {
    return Arrays.stream(standing).mapToDouble(row -> row[column]).sum();
  }
}
