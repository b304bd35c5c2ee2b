package growingon.buying.answer;

import growingon.buying.engine.Outcome;
import growingon.buying.question.Candidate;
import growingon.buying.question.Spread;

/**
 * One of the plans that are set side by side.
 *
 * @param kind which
 * @param candidate what is bought and held
 * @param line what it comes to on the plan's line
 * @param value its present value over the draws
 * @param gain what it gains over as given
 * @param chanceBelow chance that cash falls below the lowest allowed; 0 where none is stated
 * @param laidOut what the plants bought cost landed, beyond those ordered
 */
public record PlanValue(
    Kind kind,
    Candidate candidate,
    Outcome line,
    Spread value,
    Spread gain,
    double chanceBelow,
    double laidOut) {
  /** Which plan. */
  public enum Kind {
    /** Nothing bought beyond what is ordered, everything held as given. */
    AS_GIVEN("as given"),
    /** The plan's own purchases. */
    AS_PLANNED("as planned"),
    /** What is recommended. */
    RECOMMENDED("recommended"),
    /** What is recommended to buy, everything held as given. */
    PURCHASES_ALONE("purchases only");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    @Override
    public String toString() {
      return words;
    }
  }
}
