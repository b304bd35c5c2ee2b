package growingon.project.history;

/**
 * How a lot stands at the end of a month.
 *
 * @param standing its plants
 * @param ready those that may be sold: neither kept nor held back
 * @param meanTrunkMm mean trunk of the living plants, mm; 0 for none
 * @param trunkSpread their spread as a share of the mean
 * @param thickestMm trunk of the thickest representative plant, mm
 * @param trainingMonths whole months since training started, −1 if it has not
 */
public record MonthStock(
    GradedPlants standing,
    GradedPlants ready,
    double meanTrunkMm,
    double trunkSpread,
    double thickestMm,
    int trainingMonths) {
  /** No plants. */
  public static MonthStock nothing(int grades) {
    return new MonthStock(new GradedPlants(grades), new GradedPlants(grades), 0, 0, 0, -1);
  }
}
