package growingon.report.figures;

import growingon.nursery.Quality;
import growingon.project.SeasonStock;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import growingon.whole.WholeStock;
import java.util.Arrays;

/** How a lot stands at the end of a season: expected, and in whole plants. */
public final class SeasonEnd {
  private static final int QUALITIES = Quality.values().length;

  private final SeasonStock exact;
  private final WholeStock whole;

  /**
   * A season's end.
   *
   * @param index its place among the seasons in which the lot is there
   */
  public SeasonEnd(WholeLot lot, int index) {
    this.exact = lot.history().seasons().get(index);
    this.whole = lot.seasons().get(index);
  }

  public int season() {
    return exact.season();
  }

  /** Number of grades of the lot's ladder. */
  int grades() {
    return exact.standing()[0].length - 1;
  }

  /** Kept plants. */
  public Plants kept() {
    return Plants.of(Arrays.stream(exact.standing()[QUALITIES]).sum(), whole.kept());
  }

  /** Plants for sale in time that have no grade. */
  public Plants ungraded() {
    return Plants.of(ofColumn(0), whole.ungraded());
  }

  /** Plants of a grade for sale in time. */
  public Plants ofGrade(int grade) {
    return Plants.of(ofColumn(grade + 1), whole.ofGrade(grade));
  }

  private double ofColumn(int column) {
    double sum = 0;
    for (int quality = 0; quality < QUALITIES; quality++) {
      sum += exact.standing()[quality][column];
    }
    return sum;
  }

  /** Plants of a grade that could be sold at that moment. */
  public Plants ready(int grade) {
    Plants sum = Plants.NONE;
    for (Quality quality : Quality.values()) {
      sum = sum.plus(ready(quality, grade));
    }
    return sum;
  }

  /** Plants of a quality and grade that could be sold at that moment. */
  public Plants ready(Quality quality, int grade) {
    int at = quality.ordinal();
    return Plants.of(exact.ready()[at][grade], whole.ready()[at][grade]);
  }

  /** Plants that could be sold at that moment. */
  public Plants ready() {
    Plants sum = Plants.NONE;
    for (int grade = 0; grade < grades(); grade++) {
      sum = sum.plus(ready(grade));
    }
    return sum;
  }
}
