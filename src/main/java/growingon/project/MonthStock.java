package growingon.project;

import java.util.Arrays;

/**
 * How a lot stands at the end of a month.
 *
 * @param standing [quality][0 = no grade, then grades from the lowest], kept plants in a fourth row
 * @param ready [quality][grade] plants that may be sold as it: neither kept nor held back
 * @param meanTrunkMm mean trunk of the living plants, mm; 0 for none
 * @param trunkSpread their spread as a share of the mean
 * @param thickestMm trunk of the thickest representative plant, mm
 * @param trainingMonths whole months since training started, −1 if it has not
 */
public record MonthStock(
    double[][] standing,
    double[][] ready,
    double meanTrunkMm,
    double trunkSpread,
    double thickestMm,
    int trainingMonths) {
  /** No plants. */
  static MonthStock nothing(int grades) {
    return new MonthStock(new double[4][grades + 1], new double[3][grades], 0, 0, 0, -1);
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
