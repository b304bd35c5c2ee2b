package growingon.project.lot;

/**
 * The balance arrived = died + culled + sold + standing does not hold for a lot: a fault of the
 * program, never of the input.
 */
final class BalanceException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  BalanceException(String lot, String month, double expected, double found) {
    super(
        "the balance of lot %s breaks in %s: %s plants are accounted for, but %s stand"
            .formatted(lot, month, expected, found));
  }
}
