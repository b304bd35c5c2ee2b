package growingon.load.table.lot;

import growingon.load.row.Row;
import growingon.load.row.Spacings;
import growingon.load.table.route.RoutesTable.RouteRead;
import growingon.nursery.library.Library;
import growingon.nursery.lot.Lot;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.place.Spacing;
import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.route.StepsDone;
import growingon.nursery.route.When;
import growingon.nursery.species.Species;
import growingon.problem.advice.LibraryAdvice;
import growingon.problem.advice.LotAdvice;
import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Follows a lot along the steps ahead of it: wherever it comes, its species must have a growth
 * curve, and where it stands without a pot its spacing must be known. What is amiss with a species
 * on a route is said once, at the first lot that meets it.
 */
public final class LotChecks {
  private final Definitions known;
  private final Set<List<String>> told = new HashSet<>();

  public LotChecks(Definitions known) {
    this.known = known;
  }

  /** Where and in what a lot stands after a step; the step is empty before the first. */
  private record State(
      Optional<String> pot,
      Optional<String> place,
      Optional<Spacing> spacing,
      Optional<String> step) {}

  /** Checks a lot whose row is fine. */
  void check(Row row, Lot lot) {
    Optional<Route> route = known.routes().find(lot.route()).flatMap(RouteRead::route);
    Optional<Species> species = known.species().find(lot.species());
    if (route.isPresent() && species.isPresent()) {
      walk(row, lot, route.get(), species.get());
    }
  }

  private void walk(Row row, Lot lot, Route route, Species species) {
    int done = StepsDone.of(lot, route, known.horizon().firstMonth()).last() + 1;
    State state = start(lot, route, done);
    checkApart(row, lot, state, species);
    boolean arriving = done == 0 && startsOnArrival(lot, route);
    if (!arriving) {
      check(row, lot, state, species, !isWorkedApart(lot, route, done));
    }
    for (int i = 0; i < route.steps().size(); i++) {
      Step step = route.steps().get(i);
      if (i >= done || step.when().recurs()) {
        state = after(state, step);
        boolean moreOnArrival = arriving && onArrival(route, i + 1);
        if (!moreOnArrival) {
          check(row, lot, state, species);
          checkRecurring(row, lot, route, i, state, species);
        }
      }
    }
  }

  /** Whether it waits heeled in, apart, until its next step: then nobody needs its spacing. */
  private boolean isWorkedApart(Lot lot, Route route, int done) {
    YearMonth released = lot.arrived().plusMonths(lot.apartMonths());
    boolean apart = lot.apartMonths() > 0 && released.isAfter(known.horizon().firstMonth());
    return apart
        && route.steps().stream()
            .skip(done)
            .filter(step -> !step.when().recurs())
            .findFirst()
            .filter(step -> !due(lot, step.when()).isAfter(released))
            .isPresent();
  }

  /** Month of a step by its date; a far one where a trunk or another step decides. */
  private static YearMonth due(Lot lot, When when) {
    if (when instanceof When.InYear rule) {
      int months = Math.floorMod(rule.month().getValue() - lot.arrived().getMonthValue(), 12);
      return lot.arrived().plusMonths(months + 12L * rule.year());
    }
    return when instanceof When.Arrival ? lot.arrived() : YearMonth.of(9999, 12);
  }

  private boolean startsOnArrival(Lot lot, Route route) {
    return !lot.arrived().isBefore(known.horizon().firstMonth()) && onArrival(route, 0);
  }

  private static boolean onArrival(Route route, int index) {
    return index < route.steps().size() && route.steps().get(index).when() instanceof When.Arrival;
  }

  /** A recurring step may come again after any later step. */
  private void checkRecurring(
      Row row, Lot lot, Route route, int index, State state, Species species) {
    route.steps().subList(0, index).stream()
        .filter(step -> step.when().recurs())
        .forEach(step -> check(row, lot, after(state, step), species));
  }

  private State start(Lot lot, Route route, int done) {
    Optional<Spacing> fromSteps =
        route.steps().subList(0, done).stream()
            .map(Step::spacing)
            .flatMap(Optional::stream)
            .reduce((earlier, later) -> later);
    return new State(
        lot.potting().pot(),
        lot.standing().place(),
        lot.standing().spacing().or(() -> fromSteps),
        Optional.empty());
  }

  private State after(State before, Step step) {
    boolean intoField = step.place().filter(this::isField).isPresent() && step.pot().isEmpty();
    boolean plantsOut = step.potEnds() || (intoField && step.rootWork());
    return new State(
        plantsOut ? Optional.empty() : step.pot().or(before::pot),
        step.place().or(before::place),
        step.spacing().or(before::spacing),
        Optional.of(step.name()));
  }

  private boolean isField(String place) {
    return known.places().find(place).filter(p -> p.kind() == PlaceKind.FIELD_BED).isPresent();
  }

  private void check(Row row, Lot lot, State state, Species species) {
    check(row, lot, state, species, true);
  }

  private void check(Row row, Lot lot, State state, Species species, boolean withSpacing) {
    checkCondition(row, lot, state, species);
    if (withSpacing) {
      checkSpacing(row, lot, state);
    }
    Optional<String> winter = species.winterPlace();
    if (winter.isPresent() && state.pot().isPresent()) {
      checkCondition(row, lot, standingIn(state, winter), species);
    }
  }

  private static State standingIn(State state, Optional<String> place) {
    return new State(state.pot(), place, state.spacing(), state.step());
  }

  /** Plants that stand apart may grow in the condition of the quarantine place. */
  private void checkApart(Row row, Lot lot, State state, Species species) {
    boolean apart =
        lot.arrived().plusMonths(lot.apartMonths()).isAfter(known.horizon().firstMonth());
    if (lot.apartMonths() > 0 && apart) {
      known.places().values().values().stream()
          .filter(place -> place.kind() == PlaceKind.QUARANTINE)
          .forEach(
              place ->
                  checkCondition(row, lot, standingIn(state, Optional.of(place.name())), species));
    }
  }

  private void checkCondition(Row row, Lot lot, State state, Species species) {
    String condition = condition(state, species);
    if (species.growth().containsKey(condition) || !told.add(List.of(species.name(), condition))) {
      return;
    }
    String heading = state.step().isPresent() ? LotCells.ROUTE.name() : LotCells.SPECIES.name();
    String found = row.cell(heading).shown();
    row.fail(
        heading,
        where ->
            species.fromLibrary().isPresent()
                ? LibraryAdvice.conditionOfLotUnknown(
                    where,
                    found,
                    lot.name(),
                    state.step(),
                    condition,
                    species.name(),
                    Library.shipped().conditions())
                : LotAdvice.conditionWithoutCurve(
                    where,
                    found,
                    lot.name(),
                    state.step(),
                    condition,
                    species.name(),
                    species.growth().keySet()));
  }

  private String condition(State state, Species species) {
    return species.conditionIn(
        state.pot().flatMap(known.pots()::find), state.place().flatMap(known.places()::find));
  }

  private void checkSpacing(Row row, Lot lot, State state) {
    boolean needsSpacing = !known.places().values().isEmpty() && state.pot().isEmpty();
    boolean given = state.spacing().filter(each -> each.plantsPerM2().isPresent()).isPresent();
    if (needsSpacing
        && !given
        && told.add(List.of(lot.route(), "spacing", state.step().orElse(lot.name())))) {
      String heading = state.step().isPresent() ? LotCells.ROUTE.name() : Spacings.PLANTS.name();
      String found = row.cell(heading).shown();
      row.fail(heading, where -> LotAdvice.noSpacing(where, found, lot.name(), state.step()));
    }
  }

  /** The pot that the steps done lead to, against the one stated. */
  static void checkPot(Row row, Lot lot, Route route) {
    int done = lot.lastStep().map(route::indexOf).orElse(-1);
    Optional<String> expected =
        route.steps().subList(0, done + 1).stream()
            .map(Step::pot)
            .flatMap(Optional::stream)
            .reduce((earlier, later) -> later);
    if (expected.isPresent() && !expected.equals(lot.potting().pot())) {
      String pot = expected.get();
      row.remark(
          StockTable.POT,
          where ->
              LotAdvice.potAgainstSteps(
                  where, row.cell(StockTable.POT).shown(), lot.lastStep().orElse(""), pot));
    }
  }
}
