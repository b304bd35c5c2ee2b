package growingon.project;

import growingon.nursery.Grade;
import growingon.nursery.Hold;
import growingon.nursery.Horizon;
import growingon.nursery.Ladder;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Place;
import growingon.nursery.Route;
import growingon.nursery.Species;
import growingon.nursery.Step;
import java.util.List;
import java.util.Optional;

/** What does not change about a lot while it is projected; months are offsets from the first. */
final class LotPlan {
  final Lot lot;
  final Species species;
  final Ladder ladder;
  final Route route;
  final Optional<Place> winterPlace;
  final int arrival;
  final int start;
  final int counted;
  final int apartUntil;
  final int notBefore;
  final int holdFrom;
  final double heldShare;
  final GrowthStart growthStart;

  LotPlan(Lot lot, Nursery nursery, Horizon horizon, Lattice lattice) {
    this.lot = lot;
    this.species = nursery.speciesOf(lot);
    this.ladder = nursery.ladderOf(lot);
    this.route = nursery.routeOf(lot);
    this.winterPlace = species.winterPlace().map(nursery.places()::get);
    this.arrival = horizon.offset(lot.arrived());
    this.start = Math.max(0, arrival);
    this.counted = Math.min(start, horizon.offset(lot.counted()));
    this.apartUntil = arrival + lot.apartMonths();
    this.notBefore = horizon.offset(lot.notBefore());
    this.holdFrom = lot.hold().map(Hold::grade).map(ladder::indexOf).orElse(0);
    this.heldShare = lot.hold().map(Hold::share).orElse(0.0);
    this.growthStart = new GrowthStart(this, lattice, nursery.qualities());
  }

  List<Grade> grades() {
    return ladder.grades();
  }

  List<Step> steps() {
    return route.steps();
  }

  /** Whether a month is one of the first year: the arrival month and the 11 after. */
  boolean isFirstYear(int month) {
    return month - arrival < 12;
  }

  boolean isApart(int month) {
    return month < apartUntil;
  }

  @Override
  public String toString() {
    return lot.name();
  }
}
