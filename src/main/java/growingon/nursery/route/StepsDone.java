package growingon.nursery.route;

import growingon.nursery.lot.Lot;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

/**
 * The steps of its route that a lot has behind it when a plan begins, and when they were done. What
 * the stock list states dates the step it belongs to: {@code potted} the last done step that pots,
 * {@code root work} the last done one with root work, {@code training since} the one that starts
 * training. Other done steps lie between their neighbours by their own rule. Where the last step is
 * not stated, it is worked out by the steps' own rule; a step that a trunk decides then never
 * counts as done.
 */
public final class StepsDone {
  private static final int NOT_DONE = Integer.MIN_VALUE;

  private final Route route;
  private final int arrival;
  private final int latest;
  private final int[] doneAt;
  private final int[] typedAt;
  private final String[] typedAs;
  private final List<Clash> clashes = new ArrayList<>();
  private int last = -1;

  /**
   * A month that the stock list states for a step, and that lies before one that it states for an
   * earlier step, or before arrival.
   *
   * @param heading column of the stock list
   * @param month month stated there
   * @param step the step that it dates
   * @param before what it should not lie before: an earlier step, or the arrival
   * @param earliest the month of that
   */
  public record Clash(
      String heading, YearMonth month, String step, String before, YearMonth earliest) {}

  private StepsDone(Route route, YearMonth arrived, YearMonth firstMonth) {
    this.route = route;
    this.arrival = number(arrived);
    this.latest = number(firstMonth) - 1;
    this.doneAt = new int[route.steps().size()];
    this.typedAt = new int[doneAt.length];
    this.typedAs = new String[doneAt.length];
    forget();
    Arrays.fill(typedAt, NOT_DONE);
  }

  /** The steps that a lot has behind it at the start of a plan's first month. */
  public static StepsDone of(Lot lot, Route route, YearMonth firstMonth) {
    StepsDone done = new StepsDone(route, lot.arrived(), firstMonth);
    if (lot.arrived().isBefore(firstMonth)) {
      done.work(lot);
    }
    return done;
  }

  private void work(Lot lot) {
    boolean stated = lot.lastStep().isPresent();
    last = stated ? route.indexOf(lot.lastStep().get()) : lastByRule();
    date(stated);
    recur();
    lot.trainingSince().ifPresent(this::typedTraining);
    lot.potting().rootWork().ifPresent(month -> typed("root work", month, Step::rootWork));
    lot.potting().potted().ifPresent(month -> typed("potted", month, s -> s.pot().isPresent()));
    forget();
    date(stated);
    recur();
  }

  private void forget() {
    Arrays.fill(doneAt, NOT_DONE);
  }

  private static int number(YearMonth month) {
    return month.getYear() * 12 + month.getMonthValue() - 1;
  }

  private static YearMonth month(int number) {
    return YearMonth.of(Math.floorDiv(number, 12), Math.floorMod(number, 12) + 1);
  }

  private static int firstOnOrAfter(int from, Month month) {
    return from + Math.floorMod(month.getValue() - 1 - from, 12);
  }

  private When when(int index) {
    return route.steps().get(index).when();
  }

  /** Month of a once-only step by its own rule; empty where a trunk or an undone step decides. */
  private OptionalInt byRule(int index) {
    When when = when(index);
    if (when instanceof When.Arrival) {
      return OptionalInt.of(arrival);
    }
    if (when instanceof When.InYear rule) {
      return OptionalInt.of(firstOnOrAfter(arrival, rule.month()) + 12 * rule.year());
    }
    if (when instanceof When.After rule) {
      int before = doneAt[route.indexOf(rule.step())];
      return before == NOT_DONE ? OptionalInt.empty() : OptionalInt.of(before + rule.months());
    }
    return OptionalInt.empty();
  }

  /** The last once-only step whose date and those of all above it lie before the plan. */
  private int lastByRule() {
    int found = -1;
    int before = arrival;
    for (int i = 0; i < doneAt.length; i++) {
      if (!when(i).recurs()) {
        OptionalInt due = byRule(i);
        if (due.isEmpty() || due.getAsInt() > latest) {
          return found;
        }
        before = Math.max(before, due.getAsInt());
        doneAt[i] = before;
        found = i;
      }
    }
    return found;
  }

  /** A stated month dates the last of the done steps of a kind. */
  private void typed(String heading, YearMonth month, Predicate<Step> kind) {
    int found = -1;
    for (int i = 0; i < doneAt.length; i++) {
      boolean later = found < 0 || doneAt[i] >= doneAt[found];
      if (doneAt[i] != NOT_DONE && later && kind.test(route.steps().get(i))) {
        found = i;
      }
    }
    typed(heading, month, found);
  }

  /** Training, once started, goes on: the first of the done steps that start it counts. */
  private void typedTraining(YearMonth month) {
    int found = 0;
    while (found < doneAt.length
        && (doneAt[found] == NOT_DONE || !route.steps().get(found).trainingStarts())) {
      found++;
    }
    typed("training since", month, found < doneAt.length ? found : -1);
  }

  private void typed(String heading, YearMonth month, int index) {
    if (index >= 0) {
      typedAt[index] = number(month);
      typedAs[index] = heading;
    }
  }

  /** Dates the once-only steps up to the last; where that is not stated, it may come earlier. */
  private void date(boolean stated) {
    int before = arrival;
    int beforeStep = -1;
    int end = last;
    last = -1;
    for (int i = 0; i <= end; i++) {
      if (when(i).recurs()) {
        continue;
      }
      int upper = Math.max(before, upperLimit(i, end));
      OptionalInt rule = byRule(i);
      if (!stated && when(i) instanceof When.After && rule.getAsInt() > latest) {
        return;
      }
      if (typedAt[i] != NOT_DONE && typedAt[i] < before) {
        clash(i, beforeStep, before);
      }
      int wanted =
          typedAt[i] != NOT_DONE
              ? typedAt[i]
              : rule.isPresent() ? rule.getAsInt() : latest(i, upper);
      before = Math.max(before, Math.min(wanted, typedAt[i] != NOT_DONE ? latest : upper));
      beforeStep = i;
      doneAt[i] = before;
      last = i;
    }
  }

  /** The latest month that a step which a trunk decides can have been done in. */
  private int latest(int index, int upper) {
    return firstOnOrAfter(upper - 11, ((When.Once) when(index)).month());
  }

  /** The step is done no later than what is stated of those below it. */
  private int upperLimit(int index, int end) {
    int upper = latest;
    for (int i = index + 1; i <= end; i++) {
      boolean dates = typedAt[i] != NOT_DONE && !when(i).recurs();
      upper = dates ? Math.min(upper, typedAt[i]) : upper;
    }
    return upper;
  }

  private void clash(int index, int beforeStep, int before) {
    String what =
        beforeStep < 0 ? "the arrival" : "the step " + route.steps().get(beforeStep).name();
    clashes.add(
        new Clash(
            typedAs[index],
            month(typedAt[index]),
            route.steps().get(index).name(),
            what,
            month(before)));
  }

  /** Recurring steps came again and again, once the once-only steps above them were done. */
  private void recur() {
    for (int i = 0; i < doneAt.length; i++) {
      if (when(i) instanceof When.Every rule && isLive(i)) {
        if (typedAt[i] != NOT_DONE) {
          doneAt[i] = Math.min(typedAt[i], latest);
        } else {
          recur(i, rule);
        }
      }
    }
  }

  private void recur(int index, When.Every rule) {
    int from = lastAbove(index);
    int due = firstOnOrAfter(from + 12 * rule.years(), rule.month());
    while (due <= latest) {
      doneAt[index] = due;
      due = firstOnOrAfter(due + 12 * rule.years(), rule.month());
    }
  }

  private boolean isLive(int index) {
    for (int i = 0; i < index; i++) {
      if (!when(i).recurs() && doneAt[i] == NOT_DONE) {
        return false;
      }
    }
    return true;
  }

  private int lastAbove(int index) {
    for (int i = index - 1; i >= 0; i--) {
      if (!when(i).recurs()) {
        return doneAt[i];
      }
    }
    return arrival;
  }

  /** Index of the last once-only step done, −1 for none. */
  public int last() {
    return last;
  }

  /** When a step was done, the last time; empty if it has not been. */
  public Optional<YearMonth> doneAt(int index) {
    return doneAt[index] == NOT_DONE ? Optional.empty() : Optional.of(month(doneAt[index]));
  }

  /** Stated months that contradict each other. */
  public List<Clash> clashes() {
    return clashes;
  }
}
