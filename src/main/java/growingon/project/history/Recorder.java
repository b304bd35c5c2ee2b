package growingon.project.history;

import growingon.nursery.market.Quality;
import java.util.Optional;

/**
 * Takes down what happens to one lot. Months are offsets from the plan's first month; a month after
 * the plan's end may be named, and is to be left out.
 */
public interface Recorder {
  /** Plants died between the count and the plan's first month. */
  void diedBefore(double plants);

  /** Plants died. */
  void died(int month, double plants);

  /** Plants were culled. */
  void culled(int month, double plants);

  /** Plants came that were there already, or were found; only where something is known. */
  default void came(int month, double plants) {}

  /** Plants were lost, used, or went to another lot; only where something is known. */
  default void went(int month, double plants) {}

  /** Plants were sold to a demand row; −1 where no row wants them. */
  void sold(int month, int row, int grade, Quality quality, double units, double money);

  /** Pots, loose litres of a component, or units of a material were used. */
  void used(int month, Use.Kind kind, String item, double amount);

  /** Old pots can be used again from a month on. */
  void freed(int month, String pot, double amount);

  /** Hours were worked. */
  void worked(int month, String job, double plants, double hours);

  /** Hours of care by area were worked; none where nothing is to be cared for. */
  default void cared(int month, double plants, double hours) {
    worked(month, Work.CARE, plants, hours);
  }

  /** Other cash that the lot causes: received if positive, paid if negative. */
  void paid(int month, double amount);

  /** The lot stands, in a place if it has one, and its care costs money. */
  void stood(int month, Optional<String> place, double plants, double m2, double careCost);

  /**
   * A season ended.
   *
   * @param standing how it stands then
   */
  void seasonEnded(int season, GradedPlants standing);

  /** A month is over; so many plants are alive. */
  default void monthOver(int month, double living) {}

  /** Whether it wants to know how the plants are just before they are counted. */
  default boolean asksForCounts() {
    return false;
  }

  /** How the plants are just before they are counted in a month. */
  default void beforeCount(int month, BeforeCount how) {}

  /** Whether it wants to know the mean trunk at every month's end, which costs time. */
  default boolean asksForTrunks() {
    return false;
  }

  /** Mean trunk of the living plants at a month's end, mm; 0 for none. */
  default void trunk(int month, double meanMm) {}

  /** The growing condition of the lot in a month; of those that ask for trunks. */
  default void growsIn(int month, String condition) {}
}
