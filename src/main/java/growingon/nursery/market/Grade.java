package growingon.nursery.market;

import growingon.nursery.number.Check;

/**
 * A saleable class of a ladder.
 *
 * @param name as priced
 * @param rank place on the ladder, lower first
 * @param leastTrunkMm least trunk, mm
 * @param leastTrainingMonths whole months since training started that a plant must have
 * @param waitMonths a plant thick enough that lacks at most this many months of training waits
 */
public record Grade(
    String name, int rank, double leastTrunkMm, int leastTrainingMonths, int waitMonths) {
  public Grade {
    Check.named(name, "a grade");
    Check.notNegative(leastTrunkMm, "least trunk of " + name);
    Check.notNegative(leastTrainingMonths, "least training months of " + name);
    Check.notNegative(waitMonths, "wait months of " + name);
  }
}
