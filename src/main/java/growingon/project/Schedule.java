package growingon.project;

import growingon.nursery.Route;
import growingon.nursery.Step;
import growingon.nursery.When;
import java.time.Month;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleSupplier;

/**
 * When the steps of one lot's route are due (design section 6.4). Months are offsets from the
 * plan's first month, negative before it. Once-only steps keep their order; a step not done by its
 * month is done when that month next comes, or at once while its window is open, and later dated
 * steps move by as many years. A recurring step is live once the once-only steps above it are done
 * and counts its years from the last of them.
 */
final class Schedule {
  private static final int NOT_YET = Integer.MIN_VALUE;

  private final Route route;
  private final YearMonth firstMonth;
  private final int arrival;
  private final int[] doneAt;
  private final int[] startMonth;
  private final int[] nextOnceOnly;
  private int next;
  private int moved;
  private int wake = NOT_YET;

  /**
   * A schedule with nothing done yet.
   *
   * @param route the route
   * @param firstMonth first month of the plan, offset 0
   * @param arrival offset of the arrival month
   */
  Schedule(Route route, YearMonth firstMonth, int arrival) {
    this.route = route;
    this.firstMonth = firstMonth;
    this.arrival = arrival;
    int steps = route.steps().size();
    this.doneAt = new int[steps];
    Arrays.fill(doneAt, NOT_YET);
    this.startMonth = route.steps().stream().mapToInt(Schedule::startMonth).toArray();
    this.nextOnceOnly = new int[steps + 1];
    nextOnceOnly[steps] = steps;
    for (int i = steps - 1; i >= 0; i--) {
      nextOnceOnly[i] = step(i).when().recurs() ? nextOnceOnly[i + 1] : i;
    }
    this.next = nextOnceOnly[0];
  }

  private Step step(int index) {
    return route.steps().get(index);
  }

  /** Offset of the first such month on or after an offset. */
  private int firstOnOrAfter(int offset, Month month) {
    return offset + Math.floorMod(month.getValue() - monthOfYear(offset), 12);
  }

  /** Month of the year, 1 = January, of an offset. */
  private int monthOfYear(int offset) {
    return Math.floorMod(firstMonth.getMonthValue() - 1 + offset, 12) + 1;
  }

  private boolean isMonth(int offset, Month month) {
    return monthOfYear(offset) == month.getValue();
  }

  /**
   * Months over which the work of a step is spread, counted from its own month or, if it has none,
   * from the month in which it is done.
   */
  private int windowMonths(int index, int month) {
    if (step(index).toMonth().isEmpty()) {
      return 1;
    }
    int first = startMonth[index] == 0 ? monthOfYear(month) : startMonth[index];
    return Math.floorMod(step(index).toMonth().get().getValue() - first, 12) + 1;
  }

  /** Month of the year in which a step's window opens, 1 = January; 0 if its date decides. */
  private static int startMonth(Step step) {
    When when = step.when();
    if (when instanceof When.InYear rule) {
      return rule.month().getValue();
    }
    if (when instanceof When.Every rule) {
      return rule.month().getValue();
    }
    return when instanceof When.Once rule ? rule.month().getValue() : 0;
  }

  /** The month of a step by its date alone; empty where a trunk or an undone step decides. */
  OptionalInt dated(int index) {
    When when = step(index).when();
    if (when instanceof When.Arrival) {
      return OptionalInt.of(arrival);
    }
    if (when instanceof When.InYear rule) {
      return OptionalInt.of(firstOnOrAfter(arrival, rule.month()) + 12 * rule.year() + moved);
    }
    if (when instanceof When.After rule) {
      int before = route.indexOf(rule.step());
      return doneAt[before] == NOT_YET
          ? OptionalInt.empty()
          : OptionalInt.of(doneAt[before] + rule.months());
    }
    if (when instanceof When.Every rule) {
      int from = Math.max(doneAt[index], lastOnceOnlyAbove(index));
      return from == NOT_YET
          ? OptionalInt.empty()
          : OptionalInt.of(firstOnOrAfter(from + 12 * rule.years(), rule.month()));
    }
    return OptionalInt.empty();
  }

  /** When the last once-only step above was done; the arrival where there is none. */
  private int lastOnceOnlyAbove(int index) {
    for (int i = index - 1; i >= 0; i--) {
      if (!step(i).when().recurs()) {
        return doneAt[i];
      }
    }
    return arrival;
  }

  /**
   * Whether a step is to be done in a month.
   *
   * @param index index of the step
   * @param month offset of the month, not before arrival
   * @param meanTrunkMm mean trunk of the living plants; asked only where a trunk decides
   */
  boolean isDue(int index, int month, DoubleSupplier meanTrunkMm) {
    When when = step(index).when();
    if (when instanceof When.Every) {
      return next > index
          && isWindowOpen(index, month)
          && month >= dated(index).orElse(Integer.MAX_VALUE);
    }
    if (index != next) {
      return false;
    }
    if (when instanceof When.Once rule) {
      return isMonth(month, rule.month()) && meanTrunkMm.getAsDouble() >= rule.trunkMm();
    }
    int due = dated(index).orElse(Integer.MAX_VALUE);
    if (when instanceof When.InYear) {
      return month >= due && isWindowOpen(index, month);
    }
    return month >= due;
  }

  /** Whether no step can be due in a month; asked month by month, it costs next to nothing. */
  boolean isQuiet(int month) {
    if (month >= wake) {
      wake = Integer.MAX_VALUE;
      for (int index = 0; index < doneAt.length; index++) {
        wake = Math.min(wake, earliest(index, month));
      }
    }
    return month < wake;
  }

  /** First month on or after a month in which a step may be due as things stand. */
  private int earliest(int index, int month) {
    When when = step(index).when();
    if (when.recurs() ? next <= index : next != index) {
      return Integer.MAX_VALUE;
    }
    if (when instanceof When.Once rule) {
      return firstOnOrAfter(month, rule.month());
    }
    int from = Math.max(month, dated(index).orElse(Integer.MAX_VALUE));
    boolean mustWait =
        startMonth[index] > 0 && from < Integer.MAX_VALUE && !isWindowOpen(index, from);
    return mustWait ? firstOnOrAfter(from, Month.of(startMonth[index])) : from;
  }

  private boolean isWindowOpen(int index, int month) {
    return monthsIntoWindow(index, month) < windowMonths(index, month);
  }

  /** Months since the window of a dated step opened, 0 to 11. */
  private int monthsIntoWindow(int index, int month) {
    return startMonth[index] == 0 ? 0 : Math.floorMod(monthOfYear(month) - startMonth[index], 12);
  }

  /** A step done later than its date. */
  record Late(int dueMonth, int yearsMoved) {}

  /** A step that was done. */
  record Done(int monthsOfWork, Optional<Late> late) {}

  /** Notes that a step is done in a month in which it is due. */
  Done done(int index, int month) {
    When when = step(index).when();
    int into = when.recurs() || when instanceof When.InYear ? monthsIntoWindow(index, month) : 0;
    Optional<Late> late = Optional.empty();
    if (when instanceof When.InYear) {
      int due = dated(index).getAsInt();
      int years = (month - into - due) / 12;
      late = month > due ? Optional.of(new Late(due, years)) : Optional.empty();
      moved += 12 * years;
    }
    record(index, when.recurs() ? month - into : month);
    return new Done(windowMonths(index, month) - into, late);
  }

  private void record(int index, int month) {
    doneAt[index] = month;
    wake = NOT_YET;
    if (index == next) {
      next = nextOnceOnly[index + 1];
    }
  }

  /**
   * Takes the steps up to the last one done before the plan as done, in the months in which they
   * were due or can at the latest have been done.
   *
   * @param last index of the last step done
   * @param latest the latest month they can have been done in, before the plan
   */
  void alreadyDone(int last, int latest) {
    int before = arrival;
    for (int i = 0; i <= last; i++) {
      if (!step(i).when().recurs()) {
        before = Math.max(before, Math.min(guess(i, before, latest), latest));
        record(i, before);
      }
    }
    for (int i = 0; i < route.steps().size(); i++) {
      if (step(i).when().recurs() && next > i) {
        recurredBefore(i, latest);
      }
    }
  }

  private void recurredBefore(int index, int latest) {
    OptionalInt due = dated(index);
    while (due.isPresent() && due.getAsInt() <= latest) {
      doneAt[index] = due.getAsInt();
      due = dated(index);
    }
  }

  private int guess(int index, int before, int latest) {
    if (step(index).when() instanceof When.Once rule) {
      int month = firstOnOrAfter(latest - 11, rule.month());
      return Math.max(before, month);
    }
    return dated(index).orElse(before);
  }

  /**
   * The last step that can be taken as done by the dates alone: dated steps in order whose month
   * lies before the plan. A step that a trunk decides ends the search, unless a later one is
   * stated.
   *
   * @param latest last month before the plan
   * @return index of the step, −1 for none
   */
  static int lastDoneByDates(Route route, YearMonth firstMonth, int arrival, int latest) {
    Schedule trial = new Schedule(route, firstMonth, arrival);
    int last = -1;
    for (int i = trial.next; i < route.steps().size(); i = trial.next) {
      int due = trial.dated(i).orElse(Integer.MAX_VALUE);
      if (due > latest) {
        break;
      }
      trial.record(i, Math.max(due, last < 0 ? arrival : trial.doneAt[last]));
      last = i;
    }
    return last;
  }

  /** When a step was done; empty if it is not done yet. */
  OptionalInt doneAt(int index) {
    return doneAt[index] == NOT_YET ? OptionalInt.empty() : OptionalInt.of(doneAt[index]);
  }
}
