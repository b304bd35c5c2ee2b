package growingon.nursery.market;

import growingon.nursery.number.Check;

/**
 * What a quality fetches, and whether it is potted at all.
 *
 * @param priceShare what it fetches as a part of the list price: 0.6 is 60 % of it; 0 means that it
 *     is not priced, and more than 1 that it is dearer (the table takes up to 1000 %)
 * @param potted whether it is potted; if not it is culled when the lot is sorted
 */
public record QualityRule(double priceShare, boolean potted) {
  public QualityRule {
    Check.notNegative(priceShare, "price share of a quality");
  }
}
