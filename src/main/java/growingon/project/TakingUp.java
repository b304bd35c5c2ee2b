package growingon.project;

import growingon.nursery.Horizon;
import growingon.nursery.Lot;
import growingon.nursery.Nursery;
import growingon.nursery.Pot;
import growingon.nursery.Step;
import growingon.nursery.StepsDone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Brings a lot to the plan's first month, or to its arrival: what it has behind it. */
final class TakingUp {
  private final LotState lot;
  private final LotPlan plan;
  private final Nursery nursery;

  TakingUp(LotState lot, Nursery nursery) {
    this.lot = lot;
    this.plan = lot.plan;
    this.nursery = nursery;
  }

  /** Takes the lot up. */
  void takeUp(Run run) {
    Horizon horizon = run.programme().horizon();
    Lot stated = plan.lot;
    if (plan.arrival < plan.start) {
      StepsDone done = StepsDone.of(stated, plan.route, horizon.month(plan.start));
      lot.schedule.alreadyDone(done);
      done.clashes().forEach(clash -> run.remark(plan, () -> Remarks.clash(stated.name(), clash)));
      replay();
      if (stated.lastStep().isEmpty()) {
        remarkOnPot(done.last(), run);
      }
    }
    lot.vessel.settle(stated.potting().potted().map(horizon::offset));
    stated.potting().rootWork().map(horizon::offset).ifPresent(lot.speed::rootsCutIn);
    lot.training.stated(stated.trainingSince().map(horizon::offset));
    lot.position.begin(plan.start, lot.vessel.isPotted());
    lot.plants.growBy(lot.spot(plan.counted).curve());
    for (int month = plan.counted; month < plan.start; month++) {
      lot.carryForward(month);
    }
    lot.position.begin(plan.start, lot.vessel.isPotted());
  }

  /** The pot that the steps done lead to, against the one stated. */
  private void remarkOnPot(int last, Run run) {
    Optional<String> reached = Optional.empty();
    for (int i = 0; i <= last; i++) {
      reached = plan.plantsOut(i) ? Optional.empty() : plan.steps().get(i).pot().or(same(reached));
    }
    Optional<String> stated = lot.vessel.pot().map(Pot::name);
    if (reached.isPresent() && !reached.equals(stated)) {
      String expected = reached.get();
      run.remark(
          plan,
          () ->
              Remarks.lastStepDisagrees(
                  plan.lot.name(),
                  plan.steps().get(last).name(),
                  expected,
                  stated.orElse("no pot")));
    }
  }

  private static Supplier<Optional<String>> same(Optional<String> value) {
    return () -> value;
  }

  /** What the steps done before the plan left behind, as far as the stock row does not say. */
  private void replay() {
    List<Integer> done = new ArrayList<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      if (lot.schedule.doneAt(i).isPresent()) {
        done.add(i);
      }
    }
    done.sort(Comparator.comparingInt(i -> lot.schedule.doneAt(i).getAsInt()));
    done.forEach(i -> replay(plan.steps().get(i), lot.schedule.doneAt(i).getAsInt()));
  }

  private void replay(Step step, int month) {
    if (step.pot().isPresent()) {
      lot.vessel.wasPotted(step, month);
    }
    if (step.rootWork()) {
      lot.speed.rootsCut(step, month);
    }
    lot.training.done(step, month);
    boolean spaced = plan.lot.standing().spacing().isPresent();
    boolean placed = plan.lot.standing().place().isPresent();
    lot.position.standIn(
        placed ? Optional.empty() : step.place().map(nursery.places()::get),
        spaced ? Optional.empty() : step.spacing());
  }
}
