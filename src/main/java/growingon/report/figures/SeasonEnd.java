package growingon.report.figures;

import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;
import growingon.project.history.SeasonStock;
import growingon.report.text.Plants;
import growingon.whole.WholeLot;
import growingon.whole.WholeStock;

/** How a lot stands at the end of a season: expected, and in whole plants. */
public final class SeasonEnd {
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
    return exact.standing().grades();
  }

  /** Kept plants. */
  public Plants kept() {
    return Plants.of(exact.standing().kept(), whole.kept());
  }

  /** Plants for sale in time that have no grade. */
  public Plants ungraded() {
    return Plants.of(exact.standing().ofGrade(GradedPlants.NO_GRADE), whole.ungraded());
  }

  /** Plants of a grade for sale in time. */
  public Plants ofGrade(int grade) {
    return Plants.of(exact.standing().ofGrade(grade), whole.ofGrade(grade));
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
    return Plants.of(exact.ready().of(quality, grade), whole.ready()[quality.ordinal()][grade]);
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
