package growingon.nursery.market;

import growingon.nursery.number.Check;

/**
 * What a quality fetches, and whether it is potted at all.
 *
 * @param priceShare share of the list price, 0 to 1; 0 means it is not priced
 * @param potted whether it is potted; if not it is culled when the lot is sorted
 */
public record QualityRule(double priceShare, boolean potted) {
  public QualityRule {
    Check.notNegative(priceShare, "price share of a quality");
  }
}
