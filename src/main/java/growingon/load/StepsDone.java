package growingon.load;

import growingon.nursery.Lot;
import growingon.nursery.Route;
import growingon.nursery.Step;
import growingon.nursery.When;
import java.time.Month;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How many steps of its route a lot has behind it when the plan begins: up to its last step where
 * that is stated, else from the dates of its once-only steps. Used by checks only.
 */
final class StepsDone {
  private final YearMonth arrived;
  private final Map<String, YearMonth> done = new HashMap<>();
  private YearMonth latest;

  private StepsDone(YearMonth arrived) {
    this.arrived = arrived;
    this.latest = arrived;
  }

  /** Index of the first step that is still ahead. */
  static int of(Lot lot, Route route, YearMonth firstMonth) {
    return lot.lastStep()
        .map(step -> route.indexOf(step) + 1)
        .orElseGet(() -> new StepsDone(lot.arrived()).before(firstMonth, route));
  }

  private int before(YearMonth firstMonth, Route route) {
    int ahead = 0;
    for (int i = 0; i < route.steps().size(); i++) {
      Step step = route.steps().get(i);
      if (!step.when().recurs()) {
        Optional<YearMonth> due = due(step.when());
        if (due.isEmpty() || !due.get().isBefore(firstMonth)) {
          return ahead;
        }
        latest = due.get().isBefore(latest) ? latest : due.get();
        done.put(step.name(), latest);
        ahead = i + 1;
      }
    }
    return ahead;
  }

  /** When the step is due; empty if that depends on trunks. */
  private Optional<YearMonth> due(When when) {
    if (when instanceof When.Arrival) {
      return Optional.of(arrived);
    }
    if (when instanceof When.After after) {
      return Optional.ofNullable(done.get(after.step()))
          .map(month -> month.plusMonths(after.months()));
    }
    return when instanceof When.InYear dated
        ? Optional.of(first(dated.month()).plusYears(dated.year()))
        : Optional.empty();
  }

  /** The first such month on or after arrival. */
  private YearMonth first(Month month) {
    return arrived.plusMonths(Math.floorMod(month.getValue() - arrived.getMonthValue(), 12));
  }
}
