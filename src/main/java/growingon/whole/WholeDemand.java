package growingon.whole;

import growingon.nursery.market.Demand;

/**
 * How far a demand row was met in a season. Where it states units, wanted = sold + missed, in whole
 * plants and expected.
 *
 * @param season index of the season
 * @param row index of the demand row
 * @param demand the row
 * @param units plants expected to be sold to it
 * @param missing plants wanted that are not expected to be there; 0 where all that is ready sells
 * @param sold whole plants sold to it
 * @param missed whole plants missed
 */
public record WholeDemand(
    int season, int row, Demand demand, double units, double missing, int sold, int missed) {
  /** Whole plants wanted in the months of the season that lie in the plan. */
  public int wanted() {
    return sold + missed;
  }
}
