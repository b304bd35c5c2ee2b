package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Ladder;
import growingon.nursery.market.OtherCash;
import growingon.nursery.place.Place;
import growingon.nursery.place.Spacing;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Pot;
import growingon.nursery.time.Horizon;
import growingon.project.pot.ReadyMix;
import growingon.project.slice.GrowthStart;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What does not change about a lot while it is projected; months are offsets from the first. */
public final class LotPlan {
  public final Lot lot;
  public final Species species;
  public final Ladder ladder;
  final Route route;
  final Optional<Place> winterPlace;
  public final int arrival;
  public final int start;
  public final int counted;
  public final int apartUntil;
  public final int notBefore;
  public final GrowthStart growthStart;
  public final List<OtherCash> otherCash;
  private final Alike alike;
  private final Horizon horizon;
  private final Settings settings;
  private final StepKind[] stepKinds;
  private volatile Beginning beginning;
  private volatile Spot[] spots = {};

  /** A lot made ready, sharing with other lots what they have alike. */
  public LotPlan(Lot lot, Alike alike) {
    Nursery nursery = alike.nursery;
    this.lot = lot;
    this.alike = alike;
    this.horizon = alike.horizon;
    this.species = nursery.speciesOf(lot);
    this.ladder = nursery.ladderOf(lot);
    this.route = nursery.routeOf(lot);
    this.winterPlace = species.winterPlace().map(nursery.places()::get);
    this.arrival = horizon.offset(lot.arrived());
    this.counted = horizon.offset(lot.counted());
    this.start = Math.max(0, counted);
    this.apartUntil = arrival + lot.apartMonths();
    this.notBefore = horizon.offset(lot.notBefore());
    this.growthStart =
        new GrowthStart(lot, ladder, species.vigourSpread(), alike.lattice, nursery.qualities());
    this.settings = nursery.settings();
    this.otherCash =
        nursery.otherCash().stream()
            .filter(row -> row.lot().filter(lot.name()::equals).isPresent())
            .toList();
    this.stepKinds = alike.steps(route);
  }

  /** What it has behind it; worked out once. */
  public Beginning beginning(Surroundings where) {
    Beginning known = beginning;
    if (known == null) {
      known = new Beginning(this, where);
      beginning = known;
    }
    return known;
  }

  /** The place that a step sets the plants in, if it does; the same object each time. */
  public Optional<Place> place(int step) {
    return stepKinds[step].place();
  }

  /** The pot that a step sets the plants in, if it does; the same object each time. */
  public Optional<Pot> pot(int step) {
    return stepKinds[step].pot();
  }

  /** What a step fills the pot with; empty where it names no mix. */
  public Optional<ReadyMix> mix(int step) {
    return stepKinds[step].mix();
  }

  /** Whether a step takes potted plants out of their pots. */
  public boolean plantsOut(int step) {
    return stepKinds[step].plantsOut();
  }

  /** Whether a step is put off while the lot is apart: planting out and setting in the field. */
  public boolean waits(int step) {
    return stepKinds[step].waits();
  }

  /** Whether a step sets plants on a field bed without taking them out of their pots. */
  public boolean standsInFieldInPot(int step) {
    return stepKinds[step].standsInFieldInPot();
  }

  /** Potting, moving and lifting take a plant up; wiring, pruning and planting out do not. */
  public boolean lifts(int step) {
    return stepKinds[step].lifts();
  }

  /** Whether a step does nothing but carry the plants elsewhere. */
  public boolean isMove(int step) {
    return stepKinds[step].isMove();
  }

  /** Whether other cash of the lot falls in a month by its own months. */
  public boolean isDue(OtherCash row, int month) {
    return row.isDue(month, horizon);
  }

  /** How it stands in a pot, place and spacing; found once for all runs. */
  Spot spot(Optional<Pot> pot, Optional<Place> place, Spacing spacing) {
    for (Spot known : spots) {
      if (known.isOf(pot, place, spacing)) {
        return known;
      }
    }
    return newSpot(pot, place, spacing);
  }

  private synchronized Spot newSpot(Optional<Pot> pot, Optional<Place> place, Spacing spacing) {
    Spot made = alike.spot(this, pot, place, spacing);
    Spot[] more = Arrays.copyOf(spots, spots.length + 1);
    more[spots.length] = made;
    spots = more;
    return made;
  }

  /** Minutes of work to sell one plant from a place. */
  double minutesASale(Optional<Place> from) {
    OptionalDouble ofPlace = from.map(Place::minutesASale).orElse(OptionalDouble.empty());
    return ofPlace.orElse(settings.minutesASale());
  }

  /** Whether nothing but care is done in a month: held officially while apart. */
  public boolean isUntouched(int month) {
    return lot.untouched() && isApart(month);
  }

  /** Grades of its ladder, the least first. */
  public List<Grade> grades() {
    return ladder.grades();
  }

  /** Steps of its route in order. */
  public List<Step> steps() {
    return route.steps();
  }

  /** Whether a month is one of the first year: the arrival month and the 11 after. */
  boolean isFirstYear(int month) {
    return month < firstYearEnds();
  }

  /** First month after its first year. */
  int firstYearEnds() {
    return arrival + 12;
  }

  /** Whether it still stands apart from other plants in a month. */
  public boolean isApart(int month) {
    return month < apartUntil;
  }

  @Override
  public String toString() {
    return lot.name();
  }
}
