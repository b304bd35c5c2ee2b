package growingon.project.history;

import growingon.project.pot.Weight;
import java.util.Optional;

/**
 * Where a lot stands in a month, read after the month's steps and before its losses and sales.
 *
 * @param month offset from the first month
 * @param place name of the place; none for a lot without one
 * @param plants plants standing
 * @param m2 square metres they need
 * @param weight weight of one plant; nothing for plants not in pots
 * @param pot pot they stand in, empty if none
 */
public record Stood(
    int month, Optional<String> place, double plants, double m2, Weight weight, String pot) {
  /** Load of the area it needs, kg per m²; 0 for a lot that needs none. */
  public double kgPerM2() {
    return m2 == 0 ? 0 : plants * weight.kg() / m2;
  }
}
