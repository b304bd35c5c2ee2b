package growingon.project;

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
    plan.beginning(run.programme()).remark(run);
    lot.position.begin(plan.start, lot.vessel.isPotted());
    lot.plants.growBy(lot.spot(plan.counted).curve());
    for (int month = plan.counted; month < plan.start; month++) {
      lot.carryForward(month);
    }
    lot.position.begin(plan.start, lot.vessel.isPotted());
  }
}
