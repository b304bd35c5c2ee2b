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
    Severity severity,
    Reason reason,
    MarkedText sentence,
    Where where,
    MarkedText found,
    MarkedText remedy) {
  public Problem {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(sentence);
    Objects.requireNonNull(where);
    Objects.requireNonNull(found);
    Objects.requireNonNull(remedy);
  }

  /**
   * One of texts.
   *
   * @param sentence in which numbers may be marked
   * @param found in which nothing is
   * @param remedy in which numbers may be marked
   */
  public Problem(
      Severity severity, Reason reason, String sentence, Where where, String found, String remedy) {
    this(
        severity,
        reason,
        new MarkedText(sentence),
        where,
        MarkedText.asItIs(found),
        new MarkedText(remedy));
  }

  /** Whether this one stops the plan. */
  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** {@code what is wrong (what was found)}. */
  public MarkedText what() {
    return new MarkedText(sentence.marked() + (found.isEmpty() ? "" : " (" + found.marked() + ")"));
  }

  /** {@code file, sheet, row, column: what is wrong (what was found); what to do}. */
  public MarkedText line() {
    String place = where.toString();
    return new MarkedText(
        (place.isEmpty() ? "" : place + ": ")
            + what().marked()
            + (remedy.isEmpty() ? "" : "; " + remedy.marked()));
  }

  /** The line with its numbers written plainly. */
  @Override
  public String toString() {
    return line().toString();
  }
}
