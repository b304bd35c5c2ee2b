package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.route.Step;
import growingon.nursery.supply.Pot;
import growingon.project.pot.ReadyMix;
import java.util.Optional;

/**
 * What a step does to where and in what the plants stand.
 *
 * @param plantsOut takes them out of their pots
 * @param waits is put off while the lot is apart
 * @param standsInFieldInPot sets potted plants on a field bed as they are
 * @param lifts takes each plant up
 * @param isMove does nothing but carry them elsewhere
 * @param place the place it sets them in, if it does
 * @param pot the pot it sets them in, if it does
 * @param mix what it fills the pot with, if it says so
 */
record StepKind(
    boolean plantsOut,
    boolean waits,
    boolean standsInFieldInPot,
    boolean lifts,
    boolean isMove,
    Optional<Place> place,
    Optional<Pot> pot,
    Optional<ReadyMix> mix) {
  static StepKind of(Step step, Nursery nursery) {
    Optional<Place> place = step.place().map(nursery.places()::get);
    boolean inField = place.map(Place::kind).stream().anyMatch(PlaceKind.FIELD_BED::equals);
    boolean intoField = inField && step.pot().isEmpty();
    boolean plantsOut = step.potEnds() || (intoField && step.rootWork());
    boolean pots = step.pot().isPresent() || step.liftedBallLitres() > 0;
    boolean moves = step.place().isPresent() && !plantsOut;
    return new StepKind(
        plantsOut,
        intoField || (step.potEnds() && step.place().isPresent()),
        intoField && !plantsOut,
        pots || moves,
        moves && !pots,
        place,
        step.pot().map(nursery.pots()::get),
        step.mix().map(mix -> ReadyMix.of(nursery.mixes().get(mix), nursery.components())));
  }
}
