package growingon.project;

import growingon.nursery.route.StepsDone;
import growingon.nursery.supply.Pot;
import growingon.project.lot.Beginning;
import growingon.project.lot.LotPlan;
import java.util.Optional;

/** Brings a lot to the plan's first month, or to its arrival: what it has behind it. */
final class TakingUp {
  private final LotState lot;
  private final LotPlan plan;

  TakingUp(LotState lot) {
    this.lot = lot;
    this.plan = lot.plan;
  }

  /** Takes the lot up. */
  void takeUp(Run run) {
    if (run.isTold()) {
      remark(plan.beginning(run.programme().surroundings()), run);
    }
    lot.position.begin(plan.start, lot.vessel.isPotted());
    lot.plants.growBy(lot.spot(plan.counted).curve());
    for (int month = plan.counted; month < plan.start; month++) {
      lot.carryForward(month);
    }
    lot.position.begin(plan.start, lot.vessel.isPotted());
  }

  /** Notes where what the stock list states clashes with the steps that are taken as done. */
  private void remark(Beginning beginning, Run run) {
    if (beginning.done().isEmpty()) {
      return;
    }
    StepsDone done = beginning.done().get();
    done.clashes()
        .forEach(
            clash ->
                run.remark(
                    plan, () -> Remarks.clash(plan.lot.name(), clash, run.programme().writing())));
    if (plan.lot.lastStep().isEmpty()) {
      remarkOnPot(done.last(), beginning.vessel.pot().map(Pot::name), run);
    }
  }

  /** The pot that the steps done lead to, against the one stated. */
  private void remarkOnPot(int last, Optional<String> stated, Run run) {
    Optional<String> reached = Optional.empty();
    for (int i = 0; i <= last; i++) {
      Optional<String> before = reached;
      reached = plan.plantsOut(i) ? Optional.empty() : plan.steps().get(i).pot().or(() -> before);
    }
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
}
