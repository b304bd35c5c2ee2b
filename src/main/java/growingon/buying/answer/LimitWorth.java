package growingon.buying.answer;

import growingon.buying.question.Candidate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What more of something that holds the nursery back would be worth.
 *
 * @param what what it is
 * @param name of the place or of the demand row
 * @param from first month in which it binds; of demand the first that its row is of
 * @param to last month
 * @param amount how much there is: square metres, hours in the tightest month, plants wanted a
 *     season, money that is laid out or may be owed
 * @param usedAsGiven how much of it is used as given: in the tightest month, plants sold in the
 *     dearest season that is sold out, of cash the lowest there is
 * @param usedAsRecommended the same as recommended
 * @param steps what more would be worth
 * @param without worth of being without the limit; empty for demand
 */
public record LimitWorth(
    What what,
    String name,
    int from,
    int to,
    double amount,
    double usedAsGiven,
    double usedAsRecommended,
    List<Step> steps,
    OptionalDouble without) {
  /** What holds a nursery back. */
  public enum What {
    /** Square metres of a place. */
    ROOM,
    /** Hours. */
    HOURS,
    /** Plants wanted of a grade. */
    DEMAND,
    /** The lowest cash allowed. */
    CASH
  }

  /**
   * So much more of it.
   *
   * @param share how much more, as a share of the amount
   * @param added how much more
   * @param worth value gained
   * @param then what one would then do
   * @param instead what one does without it, small changes that are not recommended taken in
   */
  public record Step(double share, double added, double worth, Candidate then, Candidate instead) {
    /** Worth of each unit added. */
    public double each() {
      return added > 0 ? worth / added : 0;
    }
  }

  public LimitWorth {
    steps = List.copyOf(steps);
  }

  /** What the best step is worth. */
  public double best() {
    double most = without.orElse(0);
    for (Step step : steps) {
      most = Math.max(most, step.worth());
    }
    return most;
  }
}
