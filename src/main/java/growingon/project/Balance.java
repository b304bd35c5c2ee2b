package growingon.project;

import growingon.nursery.Horizon;

/**
 * Conservation: arrived = died + culled + sold + standing, for every lot and month, and where
 * something is known of a lot what came and went besides. Standing is added up from the
 * representative plants, the rest from what was booked, so the two are independent.
 */
final class Balance {
  private static final double TOLERANCE = 1e-9;

  private Balance() {}

  /**
   * Checks one lot.
   *
   * @throws BalanceException naming the lot and the first month in which the balance breaks
   */
  static void check(LotHistory history, Horizon horizon) {
    double arrived = history.quantity();
    double left = arrived - history.diedBefore();
    for (int month = history.start(); month < history.months(); month++) {
      left += history.came(month) - history.went(month);
      left -= history.died(month) + history.culled(month) + history.sold(month);
      double standing = history.standing(month);
      if (!(Math.abs(left - standing) <= TOLERANCE * Math.max(1, arrived))) {
        throw new BalanceException(
            history.lot().name(), horizon.month(month).toString(), left, standing);
      }
    }
  }
}
