package growingon.project.slice;

import growingon.nursery.market.Quality;
import java.util.Arrays;

/**
 * Plants of one lot that sort and sell alike: one quality, either free or held back.
 *
 * @param quality their quality
 * @param mayGrade whether they reach grades
 * @param sellsFrom lowest grade at which they are sold
 * @param plants plants of each slice of the lot
 */
record Stream(Quality quality, boolean mayGrade, int sellsFrom, double[] plants) {
  /** How many slices it has plants of. */
  int slices() {
    return (int) Arrays.stream(plants).filter(each -> each > 0).count();
  }
}
