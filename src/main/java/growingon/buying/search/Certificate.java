package growingon.buying.search;

import growingon.buying.question.Move;
import java.util.Optional;

/**
 * What was tried about the recommended, and what each would gain or lose on the draws that it was
 * chosen on.
 *
 * @param runs candidates run, on the plan's line or on a draw
 * @param singles single moves looked at
 * @param bestSingle the best single move that fits, if one does
 * @param bestDouble the best double move that fits, if one does
 * @param threshold a gain that is not worth saying
 */
public record Certificate(
    long runs,
    int singles,
    Optional<Tried> bestSingle,
    Optional<Tried> bestDouble,
    double threshold) {
  /** A move and what it gains. */
  public record Tried(Move move, double gain) {}

  /** Whether nothing that was tried gains more than is worth saying. */
  public boolean holds() {
    return bestSingle.map(Tried::gain).orElse(0.0) <= threshold
        && bestDouble.map(Tried::gain).orElse(0.0) <= threshold;
  }
}
