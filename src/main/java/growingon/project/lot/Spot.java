package growingon.project.lot;

import growingon.nursery.place.Place;
import growingon.nursery.place.Spacing;
import growingon.nursery.species.Curve;
import growingon.nursery.supply.Pot;
import java.util.Optional;
import java.util.function.Function;

/**
 * How a lot stands while neither its pot, place nor spacing changes, worked out once for all lots
 * that stand alike.
 *
 * @param pot its pot
 * @param place the place it stands in
 * @param spacing how it is spaced there
 * @param placeName name of the place, if it stands in one
 * @param careKind its kind in {@link CareRates}
 * @param m2Each square metres of one plant
 * @param condition growing condition there
 * @param curve law by which it grows there
 * @param minutesASale minutes of work to sell one plant from there
 */
public record Spot(
    Optional<Pot> pot,
    Optional<Place> place,
    Spacing spacing,
    Optional<String> placeName,
    int careKind,
    double m2Each,
    String condition,
    Curve curve,
    double minutesASale) {
  /** Works out how a lot stands. */
  static Spot of(
      LotPlan plan,
      Optional<Pot> pot,
      Optional<Place> place,
      Spacing spacing,
      Optional<String> placeName,
      double m2Each) {
    String condition = plan.species.conditionIn(pot, place);
    return new Spot(
        pot,
        place,
        spacing,
        placeName,
        CareRates.kind(place),
        m2Each,
        condition,
        plan.species.growth().get(condition),
        plan.minutesASale(place));
  }

  /** Whether it is made of these values. */
  boolean isOf(Optional<Pot> ofPot, Optional<Place> ofPlace, Spacing ofSpacing) {
    return spacing.gapMm() == ofSpacing.gapMm()
        && spacing.plantsPerM2().equals(ofSpacing.plantsPerM2())
        && isSame(pot, ofPot, Pot::name)
        && isSame(place, ofPlace, Place::name);
  }

  /** Whether two are the same: names tell most of what is not, and comparing all of it is slow. */
  private static <T> boolean isSame(Optional<T> one, Optional<T> other, Function<T, String> name) {
    return one == other
        || (one.isPresent()
            && other.isPresent()
            && name.apply(one.get()).equals(name.apply(other.get()))
            && one.equals(other));
  }
}
