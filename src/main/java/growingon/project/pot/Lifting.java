package growingon.project.pot;

import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import java.util.Optional;

/**
 * How a plant may be lifted by its weight: screening values for one lift close to the body, between
 * elbow and knuckle from a bench 25 and 16 kg, at floor level from the ground 10 and 7 kg. The
 * first value of each pair is meant for men, the second for women. Source: HSE guidance INDG143;
 * the bench values read in secondary copies, the ground values from memory. A screening value is no
 * limit: above it the job wants a look, a trolley or a second person.
 *
 * <p>Minutes in routes are those of one person. Where a plant weighs more than the first value, a
 * second person lifts it. The second value is left to the eye, because the planner does not know
 * who lifts.
 */
public enum Lifting {
  /** A job that leaves the plants where they stand. */
  NOTHING_LIFTED,
  /** Under both values. */
  ONE_PERSON,
  /** Over the second value, not over the first: not for everyone alone. */
  NOT_FOR_EVERYONE,
  /** Over the first value: two people or a trolley. */
  TWO_PEOPLE;

  /** Whether it takes a second person. */
  public boolean needsTwo() {
    return this == TWO_PEOPLE;
  }

  /** The first screening value of a lifting height, kg. */
  public static double firstKg(LiftFrom from) {
    return from == LiftFrom.BENCH ? 25 : 10;
  }

  /** The second screening value of a lifting height, kg. */
  public static double secondKg(LiftFrom from) {
    return from == LiftFrom.BENCH ? 16 : 7;
  }

  /** How a plant of a weight, in kg, may be lifted from a height. */
  public static Lifting of(double kg, LiftFrom from) {
    if (kg > firstKg(from)) {
      return TWO_PEOPLE;
    }
    return kg > secondKg(from) ? NOT_FOR_EVERYONE : ONE_PERSON;
  }

  /**
   * The lower of the heights at which a plant is taken up and set down: the ground if either place
   * is lifted from the ground, or if it has no place at all.
   */
  public static LiftFrom lower(Optional<Place> takenUp, Optional<Place> setDown) {
    LiftFrom from = takenUp.or(() -> setDown).map(Place::liftFrom).orElse(LiftFrom.GROUND);
    LiftFrom to = setDown.map(Place::liftFrom).orElse(from);
    return from == LiftFrom.BENCH ? to : from;
  }
}
