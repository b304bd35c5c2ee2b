package growingon.whole;

import growingon.project.Projection;
import growingon.project.lot.LotHistory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A projection in whole plants. It reckons with expected numbers, 0.4 plants of a lot among them; a
 * reader counts whole ones. They are made here, once, and everything that is printed adds up from
 * them:
 *
 * <ul>
 *   <li>Exactly: start + came = died + culled + sold + went + standing, of every lot at every
 *       month's end; what stands is what its grades, qualities and kept plants add up to; what a
 *       lot sells is what its demand rows, grades and qualities do; wanted = sold + missed of every
 *       demand row in every season; a count and a sale of whole plants stay what they are.
 *   <li>Within one plant of what is expected: what stands, and what died, was culled, was sold and
 *       went since the start, of every lot at every month's end and after every step; a lot's
 *       plants of each grade at a season's end.
 *   <li>As near as may be: what a demand row sold up to a season's end. A row that misses nothing
 *       sells what is typed, unless the lots that it buys from leave no other way.
 *   <li>Lots make good for each other, so that a hundred lots of 0.4 plants are forty plants, not
 *       none and not a hundred: what one was given too many the next is given too few.
 * </ul>
 *
 * <p>A fraction of a plant is counted with the lot's next. In its sales the money goes with it; the
 * cash flow has it in its month.
 */
public final class WholePlan {
  private final List<WholeLot> lots;
  private final List<WholeDemand> demand;
  private final Map<String, WholeLot> byName = new HashMap<>();

  WholePlan(List<WholeLot> lots, List<WholeDemand> demand) {
    this.lots = List.copyOf(lots);
    this.demand = List.copyOf(demand);
    lots.forEach(lot -> byName.put(lot.history().lot().name(), lot));
  }

  /** Rounds a projection. The same projection gives the same whole plants. */
  public static WholePlan of(Projection projection) {
    return new Making(projection).plan();
  }

  /** Every lot, in the order of the projection. */
  public List<WholeLot> lots() {
    return lots;
  }

  /** A lot by its history, which is one of the projection. */
  public WholeLot lot(LotHistory history) {
    return lot(history.lot().name());
  }

  /** A lot by name. */
  public WholeLot lot(String name) {
    WholeLot lot = byName.get(name);
    if (lot == null) {
      throw new IllegalArgumentException("no lot " + name);
    }
    return lot;
  }

  /** Every demand row in every season in which it sells or misses something. */
  public List<WholeDemand> demand() {
    return demand;
  }
}
