package growingon.project.lot;

import growingon.nursery.route.Step;
import growingon.project.slice.Grading;
import growingon.project.time.Schedule;
import java.util.Optional;
import java.util.OptionalInt;

/** When the training of a lot started, or is to start. Once started, it goes on. */
public final class Training {
  private static final int NEVER = Integer.MIN_VALUE;

  private final Schedule schedule;
  private int startedAt = NEVER;

  Training(Schedule schedule) {
    this.schedule = schedule;
  }

  /** The same so far, by a schedule of its own. */
  public Training(Training same, Schedule schedule) {
    this.schedule = schedule;
    takeOver(same);
  }

  /** Is from now on as another is. */
  public void takeOver(Training same) {
    startedAt = same.startedAt;
  }

  /** A step was done in a month. */
  public void done(Step step, int month) {
    if (step.trainingStarts() && startedAt == NEVER) {
      startedAt = month;
    }
  }

  /** As the stock list states it, if it does. */
  void stated(Optional<Integer> month) {
    startedAt = month.orElse(startedAt);
  }

  /** Whole months since training started, −1 if it has not. */
  public int months(int month) {
    return startedAt == NEVER || startedAt > month ? -1 : month - startedAt;
  }

  /**
   * Whole months since training started, negative where it is to start by a dated step ahead;
   * {@link Grading#UNTRAINED} where it is not.
   */
  public int clock(int month) {
    if (startedAt != NEVER) {
      return month - startedAt;
    }
    OptionalInt starts = schedule.trainingStarts(month);
    return starts.isPresent() ? month - starts.getAsInt() : Grading.UNTRAINED;
  }
}
