package growingon.review.bought;

/**
 * A cause with the figures that its part is worked out from, so that a reader can do it again.
 * Factor a cause changes in sales is plants that live × share of them sold × money of a plant; of
 * the three, each step takes the one it replaces as planned and as real, those replaced before it
 * as real, and the others as planned.
 *
 * @param cause the cause
 * @param factor what is replaced
 * @param planned as planned
 * @param real as it came
 */
public record CauseStep(Cause cause, Factor factor, double planned, double real) {
  /** Factor a step replaces. */
  public enum Factor {
    /** Costs but hours, less what came in besides sales; plan currency. */
    COSTS,
    /** Cost of hours, plan currency. */
    COST_OF_HOURS,
    /** Plants that live to be sold or to stand at the end. */
    LIVING,
    /** Money of a plant sold, plan currency. */
    MONEY_OF_A_PLANT,
    /** Share of the living plants that is sold. */
    SHARE_SOLD
  }

  /** Real less planned. */
  public double difference() {
    return real - planned;
  }
}
