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
  private int yearsLate;

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
        Optional<YearMonth> month = monthOf(step.when());
        if (month.isEmpty() || !month.get().isBefore(firstMonth)) {
          return ahead;
        }
        done.put(step.name(), month.get());
        latest = month.get();
        ahead = i + 1;
      }
    }
    return ahead;
  }

  /** When the step is done; empty if that depends on trunks. */
  private Optional<YearMonth> monthOf(When when) {
    if (when instanceof When.Arrival) {
      return Optional.of(arrived);
    }
    if (when instanceof When.After after) {
      return Optional.ofNullable(done.get(after.step()))
          .map(month -> month.plusMonths(after.months()))
          .map(month -> month.isBefore(latest) ? latest : month);
    }
    return when instanceof When.InYear dated ? Optional.of(inYear(dated)) : Optional.empty();
  }

  /** A step that cannot be done by its month waits for the next one, and later ones move along. */
  private YearMonth inYear(When.InYear dated) {
    YearMonth month = next(dated.month(), arrived).plusYears(dated.year() + yearsLate);
    if (month.isBefore(latest)) {
      YearMonth next = next(dated.month(), latest);
      yearsLate += next.getYear() - month.getYear();
      return next;
    }
    return month;
  }

  private static YearMonth next(Month month, YearMonth from) {
    int wait = Math.floorMod(month.getValue() - from.getMonthValue(), 12);
    return from.plusMonths(wait);
  }
}
