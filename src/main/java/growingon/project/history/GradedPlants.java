package growingon.project.history;

import growingon.nursery.market.Quality;

/**
 * Plants of a lot by quality and grade, those without a grade and kept ones among them; numbers of
 * plants, seldom whole ones. The quality of kept plants does not matter, so they stand apart.
 */
public final class GradedPlants {
  /** Stands for the grade of plants that have none yet. */
  public static final int NO_GRADE = -1;

  private static final int KEPT = Quality.values().length;

  private final int grades;
  // Row by row: of each quality and of the kept, first those without a grade, then grade by grade.
  private final double[] plants;

  /** No plants yet, on a ladder of so many grades. */
  public GradedPlants(int grades) {
    this.grades = grades;
    this.plants = new double[(KEPT + 1) * (grades + 1)];
  }

  private int at(int row, int grade) {
    return row * (grades + 1) + grade + 1;
  }

  /** Number of grades of the ladder. */
  public int grades() {
    return grades;
  }

  /**
   * Plants of a quality in a grade that are not kept.
   *
   * @param grade index of the grade, the lowest first; {@link #NO_GRADE} for none
   */
  public double of(Quality quality, int grade) {
    return plants[at(quality.ordinal(), grade)];
  }

  /** Plants of a quality, whatever their grade. */
  public double of(Quality quality) {
    return ofRow(quality.ordinal());
  }

  /** Kept plants. */
  public double kept() {
    return ofRow(KEPT);
  }

  private double ofRow(int row) {
    double sum = 0;
    for (int grade = NO_GRADE; grade < grades; grade++) {
      sum += plants[at(row, grade)];
    }
    return sum;
  }

  /** Plants in a grade that are not kept, whatever their quality. */
  public double ofGrade(int grade) {
    double sum = 0;
    for (Quality quality : Quality.values()) {
      sum += of(quality, grade);
    }
    return sum;
  }

  /** The same, kept ones among them. */
  public double allOfGrade(int grade) {
    return ofGrade(grade) + plants[at(KEPT, grade)];
  }

  /** All of them. */
  public double sum() {
    double sum = 0;
    for (double each : plants) {
      sum += each;
    }
    return sum;
  }

  /** Adds plants that are not kept; {@link #NO_GRADE} for those without a grade. */
  public void add(Quality quality, int grade, double more) {
    plants[at(quality.ordinal(), grade)] += more;
  }

  /** Adds kept plants. */
  public void addKept(int grade, double more) {
    plants[at(KEPT, grade)] += more;
  }
}
