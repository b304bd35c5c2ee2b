package growingon.load.table.route;

import growingon.load.row.As;
import growingon.load.row.DormantSeason;
import growingon.load.row.Row;
import growingon.load.table.Defined;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.route.Step;
import growingon.nursery.route.When;
import growingon.nursery.time.Hemisphere;
import growingon.problem.advice.RouteAdvice;
import java.time.Month;
import java.util.List;
import java.util.Optional;

/** What cannot be seen from one step alone: whether the steps of a route can follow each other. */
final class RouteChecks {
  /** A step and the row that it was read from. */
  record StepRow(Step step, Row row) {}

  private final List<StepRow> steps;
  private final Defined<Place> places;
  private final Hemisphere hemisphere;

  private RouteChecks(List<StepRow> steps, Defined<Place> places, Hemisphere hemisphere) {
    this.steps = steps;
    this.places = places;
    this.hemisphere = hemisphere;
  }

  static void check(List<StepRow> steps, Defined<Place> places, Hemisphere hemisphere) {
    RouteChecks checks = new RouteChecks(steps, places, hemisphere);
    steps.forEach(checks::checkPotting);
    checks.checkOrder();
    checks.checkSort();
    checks.checkLifting();
  }

  private void checkPotting(StepRow each) {
    Step step = each.step;
    if (step.pot().isPresent() && step.mix().isEmpty()) {
      each.row.remark(RoutesTable.POT, where -> RouteAdvice.potWithoutMix(where, step.pot().get()));
    }
    if (step.pot().isEmpty() && step.liftedBallLitres() > 0) {
      each.row.remark(
          RoutesTable.LIFTED_BALL,
          where ->
              RouteAdvice.ballWithoutPot(where, each.row.cell(RoutesTable.LIFTED_BALL).shown()));
    }
  }

  /** Nothing can be done on arrival after something that comes later; years should not fall. */
  private void checkOrder() {
    Optional<Step> later = Optional.empty();
    int year = 0;
    for (StepRow each : steps) {
      When when = each.step.when();
      if (when instanceof When.Arrival && later.isPresent()) {
        String above = later.get().name();
        each.row.fail(RoutesTable.WHEN, where -> RouteAdvice.arrivalTooLow(where, above));
      }
      if (when instanceof When.InYear dated && dated.year() < year) {
        each.row.remark(RoutesTable.WHEN, where -> RouteAdvice.yearFalls(where, when.toString()));
      }
      year = when instanceof When.InYear dated ? Math.max(year, dated.year()) : year;
      later = when.recurs() || when instanceof When.Arrival ? later : Optional.of(each.step);
    }
  }

  /** The first sort counts, later ones grade again. */
  private void checkSort() {
    steps.stream()
        .filter(each -> each.step.sort() && each.step.when().recurs())
        .forEach(each -> each.row.fail(RoutesTable.SORT, RouteAdvice::sortRecurs));
  }

  /** Plants leave the ground only while they rest. */
  private void checkLifting() {
    boolean inGround = false;
    for (int i = 0; i < steps.size(); i++) {
      StepRow each = steps.get(i);
      boolean lifts = each.step.pot().isPresent() && (inGround || each.step.liftedBallLitres() > 0);
      Optional<Month> month = lifts ? monthOf(i) : Optional.empty();
      month
          .filter(found -> !DormantSeason.contains(found, hemisphere))
          .ifPresent(found -> remarkLifting(each, found));
      inGround = inGroundAfter(each.step, inGround);
    }
  }

  private boolean inGroundAfter(Step step, boolean before) {
    Optional<Boolean> field =
        step.place().flatMap(places::find).map(place -> place.kind() == PlaceKind.FIELD_BED);
    return step.pot().isPresent() ? field.orElse(false) : field.orElse(before);
  }

  private void remarkLifting(StepRow each, Month month) {
    each.row.remark(
        RoutesTable.WHEN,
        where ->
            RouteAdvice.liftedOutOfSeason(
                where,
                each.step.when().toString(),
                As.nameOf(month),
                DormantSeason.words(hemisphere)));
  }

  /** The calendar month of a step, if it is the same for every lot. */
  private Optional<Month> monthOf(int index) {
    When when = steps.get(index).step.when();
    if (when instanceof When.InYear dated) {
      return Optional.of(dated.month());
    }
    if (when instanceof When.Every every) {
      return Optional.of(every.month());
    }
    if (when instanceof When.Once once) {
      return Optional.of(once.month());
    }
    return when instanceof When.After after
        ? indexOf(after.step()).flatMap(this::monthOf).map(month -> month.plus(after.months()))
        : Optional.empty();
  }

  private Optional<Integer> indexOf(String name) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).step.name().equals(name)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }
}
