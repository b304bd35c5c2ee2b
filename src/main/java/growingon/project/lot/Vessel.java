package growingon.project.lot;

import growingon.nursery.Nursery;
import growingon.nursery.route.Step;
import growingon.nursery.supply.Pot;
import growingon.project.pot.Filling;
import growingon.project.pot.ReadyMix;
import growingon.project.pot.Weight;
import growingon.project.slice.Growing;
import java.util.Optional;

/** What the plants of a lot stand in: their pot, what fills it, and since when. */
public final class Vessel {
  private static final int NEVER = Integer.MIN_VALUE;

  private final LotPlan plan;
  private Optional<Pot> pot;
  private Filling filling = Filling.NONE;
  private int pottedAt = NEVER;
  private boolean pottedBefore;
  private Weight weight;
  private double weighedTrunk;
  private Filling weighedFilling;

  Vessel(LotPlan plan, Nursery nursery) {
    this.plan = plan;
    this.pot = plan.lot.potting().pot().map(nursery.pots()::get);
  }

  /** The same so far, for a lot that goes on apart. */
  public Vessel(Vessel same) {
    this.plan = same.plan;
    takeOver(same);
  }

  /** Is from now on as another of the same lot is. */
  public void takeOver(Vessel same) {
    pot = same.pot;
    filling = same.filling;
    pottedAt = same.pottedAt;
    pottedBefore = same.pottedBefore;
    weight = same.weight;
    weighedTrunk = same.weighedTrunk;
    weighedFilling = same.weighedFilling;
  }

  /** The pot; empty without one. */
  public Optional<Pot> pot() {
    return pot;
  }

  /** Whether its plants stand in a pot. */
  public boolean isPotted() {
    return pot.isPresent();
  }

  /** A step that pots was done before the plan. */
  void wasPotted(int step, int month) {
    pottedAt = month;
    fill(step, plan.pot(step).orElseThrow());
  }

  /**
   * Brings pot, filling and clock in line with what the stock list states.
   *
   * @param stated offset of the month in which it was potted, if stated
   */
  void settle(Optional<Integer> stated) {
    if (pot.isEmpty()) {
      filling = Filling.NONE;
      pottedAt = NEVER;
      return;
    }
    pottedAt = stated.orElse(pottedAt == NEVER ? plan.arrival : pottedAt);
    if (Math.abs(filling.litres() - pot.get().fillLitres()) > 1e-9) {
      filling = Filling.NONE.filledUp(pot.get());
    }
  }

  /**
   * Pots the plants, by a step that does.
   *
   * @return litres of mix as firmed in one pot
   */
  public double pot(int step, int month) {
    pot = plan.pot(step);
    double fresh = fill(step, pot.orElseThrow());
    pottedAt = month;
    pottedBefore = true;
    return fresh;
  }

  /** Fills a pot round the ball that stays on; gives the litres of mix in one pot. */
  private double fill(int index, Pot into) {
    Step step = plan.steps().get(index);
    Filling ball = filling.ballKept(step, ballKeptShare(step), filling.litres() > 0, into);
    Optional<ReadyMix> mix = plan.mix(index);
    filling = mix.isPresent() ? ball.filledUp(into, mix.get()) : ball.filledUp(into);
    return Math.max(0, into.fillLitres() - ball.litres());
  }

  /** Of the first potting as the lot says, if it does, else as the step says. */
  private double ballKeptShare(Step step) {
    return pottedBefore
        ? step.ballKeptShare()
        : plan.lot.potting().ballKept().orElse(step.ballKeptShare());
  }

  /** The plants are taken out of their pots. */
  public void end() {
    pot = Optional.empty();
    filling = Filling.NONE;
    pottedAt = NEVER;
  }

  /**
   * The first month in which the plants have stood in their pot for too long; never as the last.
   */
  public int potBoundFrom() {
    return pottedAt == NEVER
        ? Integer.MAX_VALUE
        : (int) Math.min(Integer.MAX_VALUE, (long) pottedAt + plan.species.potBoundMonths());
  }

  /** Whether the plants have stood in their pot for too long. */
  public boolean isPotBound(int month) {
    return month >= potBoundFrom();
  }

  /** Weight of a plant, the same object while nothing about it changes. */
  public Weight weight(Growing plants) {
    if (pot.isEmpty()) {
      return Weight.NONE;
    }
    double squaredTrunk = plants.meanSquaredTrunk();
    if (weight == null || squaredTrunk != weighedTrunk || filling != weighedFilling) {
      weight = weight(squaredTrunk);
      weighedTrunk = squaredTrunk;
      weighedFilling = filling;
    }
    return weight;
  }

  /** Weight of a plant whose trunk squared is given, in mm²; nothing without a pot. */
  public Weight weight(double squaredTrunk) {
    return pot.isEmpty()
        ? Weight.NONE
        : new Weight(
            filling.mixKg(),
            filling.liftedKg(),
            pot.get().emptyKg(),
            Weight.woodKg(squaredTrunk, plan.lot.standing().heightLeftMm()));
  }
}
