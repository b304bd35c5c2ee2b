package growingon.project.lot;

import growingon.nursery.time.Horizon;
import growingon.project.history.Recorder;

/**
 * Books the plants of a lot that come and go: tells a recorder, and adds up what is accounted for,
 * so that the balance can be checked at the end of any run.
 */
public final class HeadCount {
  private final LotPlan plan;
  private final Recorder to;
  private double accountedFor;

  /** Nothing is accounted for yet. */
  public HeadCount(LotPlan plan, Recorder to) {
    this.plan = plan;
    this.to = to;
  }

  /** The same so far, for a lot that goes on apart. */
  public HeadCount(HeadCount same, Recorder to) {
    this.plan = same.plan;
    this.to = to;
    this.accountedFor = same.accountedFor;
  }

  /** Begins a run. */
  public void begin() {
    accountedFor = 0;
  }

  /** Plants dead before the plan begins. */
  public void diedBefore(double plants) {
    accountedFor += plants;
    to.diedBefore(plants);
  }

  /** Plants dead in a month, counted from 0. */
  public void died(int month, double plants) {
    accountedFor += plants;
    to.died(month, plants);
  }

  /** Plants thrown out. */
  public void culled(int month, double plants) {
    accountedFor += plants;
    to.culled(month, plants);
  }

  /** Plants sold; the market tells the recorder. */
  public void sold(double plants) {
    accountedFor += plants;
  }

  /** Plants that came from another lot. */
  public void came(int month, double plants) {
    accountedFor -= plants;
    to.came(month, plants);
  }

  /** Plants that went to another lot. */
  public void went(int month, double plants) {
    accountedFor += plants;
    to.went(month, plants);
  }

  /**
   * Checks that what was booked and what stands are all the plants there were.
   *
   * @param part share of the lot's plants that it is of
   * @param standing plants that stand, added up slice by slice
   * @throws BalanceException if they are not
   */
  public void check(double part, double standing, Horizon horizon) {
    Balance.check(plan.lot, part, accountedFor, standing, horizon);
  }
}
