package growingon.review.bought;

/**
 * A cause's part of a difference.
 *
 * @param cause the cause
 * @param cents its part in hundredths of the plan's currency; positive where it makes the lot
 *     better than planned
 */
public record CausePart(Cause cause, long cents) {
  /** Its part in plan currency. */
  public double amount() {
    return cents / 100.0;
  }
}
