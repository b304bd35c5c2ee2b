package growingon.project.lot;

import growingon.nursery.route.Step;
import growingon.nursery.route.StepsDone;
import growingon.nursery.time.Horizon;
import growingon.project.time.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a lot has behind it when it comes into the plan: the steps done, and where and in what they
 * left its plants. No luck plays a part in it, so it is worked out once for all runs of a lot and
 * never changed: each run takes copies.
 */
public final class Beginning {
  public final Schedule schedule;
  public final Training training;
  public final Position position;
  public final Vessel vessel;
  public final Speed speed;
  private final LotPlan plan;
  private final Horizon horizon;
  private final Optional<StepsDone> done;

  Beginning(LotPlan plan, Surroundings where) {
    this.plan = plan;
    this.horizon = where.horizon();
    this.schedule = new Schedule(plan.route, horizon.firstMonth(), plan.arrival);
    this.training = new Training(schedule);
    this.position = new Position(plan, where);
    this.vessel = new Vessel(plan, where.nursery());
    this.speed = new Speed(plan, where.calendar(), Luck.NONE.of(plan.lot, plan.species));
    this.done =
        plan.arrival < plan.start
            ? Optional.of(StepsDone.of(plan.lot, plan.route, horizon.month(plan.start)))
            : Optional.empty();
    if (done.isPresent()) {
      schedule.alreadyDone(done.get());
      replay();
    }
    vessel.settle(plan.lot.potting().potted().map(horizon::offset));
    plan.lot.potting().rootWork().map(horizon::offset).ifPresent(speed::rootsCutIn);
    training.stated(plan.lot.trainingSince().map(horizon::offset));
  }

  /** Steps taken as done before the plan; none of a lot that arrives in it. */
  public Optional<StepsDone> done() {
    return done;
  }

  /** What the steps done before the plan left behind, as far as the stock row does not say. */
  private void replay() {
    List<Integer> done = new ArrayList<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      if (schedule.doneAt(i).isPresent()) {
        done.add(i);
      }
    }
    done.sort(Comparator.comparingInt(i -> schedule.doneAt(i).getAsInt()));
    done.forEach(i -> replay(i, schedule.doneAt(i).getAsInt()));
  }

  private void replay(int index, int month) {
    Step step = plan.steps().get(index);
    if (step.pot().isPresent()) {
      vessel.wasPotted(index, month);
    }
    if (step.rootWork()) {
      speed.rootsCut(step, month);
    }
    training.done(step, month);
    boolean spaced = plan.lot.standing().spacing().isPresent();
    boolean placed = plan.lot.standing().place().isPresent();
    position.standIn(
        placed ? Optional.empty() : plan.place(index), spaced ? Optional.empty() : step.spacing());
  }
}
