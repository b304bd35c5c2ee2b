package growingon.problem;

import java.util.Objects;

/**
 * One thing the user should know about the input.
 *
 * @param severity error, warning or notice
 * @param reason the kind of fault
 * @param sentence what is wrong, in plain words
 * @param where file, sheet, row and column
 * @param found the offending text as it stands in the input, empty if there is none
 * @param remedy what to do about it
 */
public record Problem(
    Severity severity, Reason reason, String sentence, Where where, String found, String remedy) {
  public Problem {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(sentence);
    Objects.requireNonNull(where);
    Objects.requireNonNull(found);
    Objects.requireNonNull(remedy);
  }

  /** Whether this one stops the plan. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** {@code file, sheet, row, column: what is wrong (what was found); what to do}. */
  @Override
  public String toString() {
    String place = where.toString();
    return (place.isEmpty() ? "" : place + ": ")
        + sentence
        + (found.isEmpty() ? "" : " (" + found + ")")
        + (remedy.isEmpty() ? "" : "; " + remedy);
  }
}
