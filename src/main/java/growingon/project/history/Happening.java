package growingon.project.history;

import growingon.project.pot.Lifting;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A step done, or a move made, on a lot: one line of its life and of the job list.
 *
 * @param month offset of the month in which it is done
 * @param months months over which the work is spread
 * @param job name of the step or move
 * @param place where the lot stands while it is worked, if in a place
 * @param toPlace where it stands afterwards, if in a place
 * @param plants plants worked on, after the step's loss and culls
 * @param died died of the step
 * @param culled culled at the step
 * @param pot the pot it goes into, if any
 * @param potsUsed pots taken from the store
 * @param substrateLitres loose litres mixed, with waste
 * @param hours hours of work of all people in all its months
 * @param kgEach weight of one plant afterwards
 * @param dueMonth month in which it was due, if it was done later
 * @param lifting how a plant must be lifted for it
 */
public record Happening(
    int month,
    int months,
    String job,
    Optional<String> place,
    Optional<String> toPlace,
    double plants,
    double died,
    double culled,
    Optional<String> pot,
    double potsUsed,
    double substrateLitres,
    double hours,
    double kgEach,
    OptionalInt dueMonth,
    Lifting lifting) {
  /** Work that uses nothing up and lifts nothing. */
  public static Happening job(
      int month,
      String job,
      Optional<String> place,
      Optional<String> toPlace,
      double plants,
      double hours) {
    return new Happening(
        month,
        1,
        job,
        place,
        toPlace,
        plants,
        0,
        0,
        Optional.empty(),
        0,
        0,
        hours,
        0,
        OptionalInt.empty(),
        Lifting.NOTHING_LIFTED);
  }

  /** The same, with plants of a weight lifted for it. */
  public Happening lifted(double kg, Lifting how) {
    return new Happening(
        month,
        months,
        job,
        place,
        toPlace,
        plants,
        died,
        culled,
        pot,
        potsUsed,
        substrateLitres,
        hours,
        kg,
        dueMonth,
        how);
  }
}
