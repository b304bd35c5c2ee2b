package growingon.review.book;

import growingon.problem.Where;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Plants that a count did not find and of which no line says what became of them.
 *
 * @param lot the lot that was counted
 * @param since the day of the count before it; empty if it is the first
 * @param counted the day of the count
 * @param month offset of its month from the plan's first
 * @param before plants alive by the lines before it
 * @param found plants that were counted
 * @param where the row of the count, or the last row of a lot that a later list lacks
 */
public record Gone(
    String lot,
    Optional<LocalDate> since,
    LocalDate counted,
    int month,
    double before,
    double found,
    Where where) {
  /** Plants that are gone. */
  public double plants() {
    return before - found;
  }
}
