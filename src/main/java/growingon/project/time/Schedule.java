package growingon.project.time;

import growingon.nursery.route.Route;
import growingon.nursery.route.Step;
import growingon.nursery.route.StepsDone;
import growingon.nursery.route.When;
import java.time.Month;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;

/**
 * When the steps of one lot's route are due. Months are offsets from the plan's first month,
 * negative before it. Once-only steps keep their order; a step not done by its month is done when
 * that month next comes, or at once while its window is open, and later dated steps move by as many
 * years. A recurring step is live once the once-only steps above it are done and counts its years
 * from the last of them.
 */
public final class Schedule {
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
  private int trainingAskedAt = NOT_YET;
  private int trainingStarts;

  /**
   * A schedule with nothing done yet.
   *
   * @param route the route
   * @param firstMonth first month of the plan, offset 0
   * @param arrival offset of the arrival month
   */
  public Schedule(Route route, YearMonth firstMonth, int arrival) {
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

  /** The same so far, for a lot that goes on apart. */
  public Schedule(Schedule same) {
    this.route = same.route;
    this.firstMonth = same.firstMonth;
    this.arrival = same.arrival;
    this.doneAt = new int[same.doneAt.length];
    this.startMonth = same.startMonth;
    this.nextOnceOnly = same.nextOnceOnly;
    takeOver(same);
  }

  /** Is from now on as another of the same lot is. */
  public void takeOver(Schedule same) {
    System.arraycopy(same.doneAt, 0, doneAt, 0, doneAt.length);
    next = same.next;
    moved = same.moved;
    wake = same.wake;
    trainingAskedAt = same.trainingAskedAt;
    trainingStarts = same.trainingStarts;
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

  /** Months over which the work of a step is spread, counted from the month it opens in. */
  private int windowMonths(int index) {
    return windowMonths(index, opens(index));
  }

  private int windowMonths(int index, int opens) {
    Optional<Month> last = step(index).toMonth();
    return last.isEmpty() ? 1 : Math.floorMod(last.get().getValue() - opens, 12) + 1;
  }

  /** Month of the year in which the window of a step opens, 1 = January; 0 while nobody knows. */
  private int opens(int index) {
    if (startMonth[index] > 0) {
      return startMonth[index];
    }
    OptionalInt due = dated(index);
    return due.isPresent() ? monthOfYear(due.getAsInt()) : 0;
  }

  /** Whether it is done in some months of the year only. */
  private boolean hasSeason(int index) {
    When when = step(index).when();
    boolean afterAStep = when instanceof When.After && step(index).toMonth().isPresent();
    return startMonth[index] > 0 || afterAStep;
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
    return dated(index, doneAt);
  }

  /** The same by other months in which steps are done. */
  private OptionalInt dated(int index, int[] doneAt) {
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
   * @param reaches whether the mean trunk of the living plants is so many mm; asked only where a
   *     trunk decides
   */
  public boolean isDue(int index, int month, DoublePredicate reaches) {
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
      return isMonth(month, rule.month()) && reaches.test(rule.trunkMm());
    }
    return month >= dated(index).orElse(Integer.MAX_VALUE)
        && (!hasSeason(index) || isWindowOpen(index, month));
  }

  /** Whether a once-only step is next, and its date has come or passed. */
  public boolean isOverdue(int index, int month) {
    return index == next && month >= dated(index).orElse(Integer.MAX_VALUE);
  }

  /** Whether no step can be due in a month; asked month by month, it costs next to nothing. */
  public boolean isQuiet(int month) {
    if (month > wake || wake == NOT_YET) {
      wake = Integer.MAX_VALUE;
      for (int index = 0; index < doneAt.length; index++) {
        wake = Math.min(wake, earliest(index, month));
      }
    }
    return month < wake;
  }

  /**
   * The month in which, after {@link #isQuiet}, a step may next be due; never as the last month.
   */
  public int wakesIn() {
    return wake;
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
    OptionalInt due = dated(index);
    return due.isEmpty()
        ? Integer.MAX_VALUE
        : openFrom(index, Math.max(month, due.getAsInt()), opens(index));
  }

  /**
   * The first month on or after a month in which the window of a step is open.
   *
   * @param opens month of the year in which it opens
   */
  private int openFrom(int index, int month, int opens) {
    int into = Math.floorMod(monthOfYear(month) - opens, 12);
    return hasSeason(index) && into >= windowMonths(index, opens) ? month + 12 - into : month;
  }

  private boolean isWindowOpen(int index, int month) {
    return monthsIntoWindow(index, month) < windowMonths(index);
  }

  /** Months since the window of a step last opened, 0 to 11. */
  private int monthsIntoWindow(int index, int month) {
    return Math.floorMod(monthOfYear(month) - opens(index), 12);
  }

  /** A step done later than its date. */
  public record Late(int dueMonth, int yearsMoved) {}

  /** A step that was done. */
  public record Done(int monthsOfWork, Optional<Late> late) {}

  /** Notes that a step is done in a month in which it is due. */
  public Done done(int index, int month) {
    When when = step(index).when();
    if (when instanceof When.Arrival || when instanceof When.Once) {
      return doneInOneGo(index, month);
    }
    int into = hasSeason(index) ? monthsIntoWindow(index, month) : 0;
    if (when.recurs()) {
      record(index, month - into);
      return new Done(windowMonths(index) - into, Optional.empty());
    }
    int due = dated(index).getAsInt();
    int years = hasSeason(index) ? (month - into - due) / 12 : 0;
    Optional<Late> late = month > due ? Optional.of(new Late(due, years)) : Optional.empty();
    int months = windowMonths(index) - into;
    moved += 12 * years;
    record(index, month);
    return new Done(months, late);
  }

  /**
   * Notes that a step is done now that nothing keeps it waiting any more: without a notice and
   * without moving any other, its hours in what is left of its window, else in this month.
   */
  public Done doneInOneGo(int index, int month) {
    int into = opens(index) == 0 ? 0 : monthsIntoWindow(index, month);
    int months = Math.max(1, windowMonths(index) - into);
    record(index, step(index).when().recurs() ? dated(index).orElse(month) : month);
    return new Done(months, Optional.empty());
  }

  /** Recurring steps that came due before a month have not been done, and are not made up for. */
  public void missRecurring(int month) {
    for (int i = 0; i < doneAt.length; i++) {
      while (step(i).when().recurs() && next > i && dated(i).orElse(month) < month) {
        record(i, dated(i).getAsInt());
      }
    }
  }

  private void record(int index, int month) {
    doneAt[index] = month;
    wake = NOT_YET;
    trainingAskedAt = NOT_YET;
    if (index == next) {
      next = nextOnceOnly[index + 1];
    }
  }

  /** Takes the steps that a lot has behind it as done. */
  public void alreadyDone(StepsDone before) {
    for (int i = 0; i < doneAt.length; i++) {
      Optional<YearMonth> month = before.doneAt(i);
      if (month.isPresent()) {
        record(i, (int) ChronoUnit.MONTHS.between(firstMonth, month.get()));
      }
    }
  }

  /**
   * The month in which training is to start by dated steps ahead: arrival, year n, or n months
   * after such a step. Empty where no step ahead starts it, or a trunk decides about one before it.
   *
   * @param month offset of the month in which it is asked
   */
  public OptionalInt trainingStarts(int month) {
    if (trainingAskedAt != NOT_YET && month <= trainingStarts) {
      return trainingStarts == Integer.MAX_VALUE
          ? OptionalInt.empty()
          : OptionalInt.of(trainingStarts);
    }
    trainingAskedAt = month;
    trainingStarts = findTrainingStart(month);
    return trainingStarts(month);
  }

  private int findTrainingStart(int month) {
    int[] ahead = doneAt.clone();
    int before = month;
    for (int i = next; i < doneAt.length; i++) {
      if (step(i).when().recurs()) {
        continue;
      }
      OptionalInt due = dated(i, ahead);
      if (due.isEmpty()) {
        return Integer.MAX_VALUE;
      }
      before = openFrom(i, Math.max(before, due.getAsInt()), monthOfYear(due.getAsInt()));
      ahead[i] = before;
      if (step(i).trainingStarts()) {
        return before;
      }
    }
    return Integer.MAX_VALUE;
  }

  /** When a step was done; empty if it is not done yet. */
  public OptionalInt doneAt(int index) {
    return doneAt[index] == NOT_YET ? OptionalInt.empty() : OptionalInt.of(doneAt[index]);
  }
}
