package growingon.project.lot;

import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;

/**
 * Conservation: arrived = died + culled + sold + standing, for every lot and month, and where
 * something is known of a lot what came and went besides. Standing is added up from the
 * representative plants, the rest from what was booked, so the two are independent.
 */
public final class Balance {
  private static final double TOLERANCE = 1e-9;

  private Balance() {}

  /**
   * Checks one lot at the end of any run, one without a history too.
   *
   * @param part share of the lot's plants that it is of
   * @param accountedFor plants that died, were culled, sold or went, less those that came
   * @param standing plants that stand, added up slice by slice
   * @throws BalanceException naming the lot
   */
  static void check(Lot lot, double part, double accountedFor, double standing, Horizon horizon) {
    double arrived = lot.quantity() * part;
    check(lot.name(), arrived, arrived - accountedFor, standing, horizon.months() - 1, horizon);
  }

  private static void check(
      String lot, double arrived, double left, double standing, int month, Horizon horizon) {
    if (!(Math.abs(left - standing) <= TOLERANCE * Math.max(1, arrived))) {
      throw new BalanceException(lot, horizon.month(month).toString(), left, standing);
    }
  }

  /**
   * Checks one lot month by month.
   *
   * @throws BalanceException naming the lot and the first month in which the balance breaks
   */
  public static void check(LotHistory history, Horizon horizon) {
    double arrived = history.quantity();
    double left = arrived - history.diedBefore();
    for (int month = history.start(); month < history.months(); month++) {
      left += history.came(month) - history.went(month);
      left -= history.died(month) + history.culled(month) + history.sold(month);
      check(history.lot().name(), arrived, left, history.standing(month), month, horizon);
    }
  }
}
