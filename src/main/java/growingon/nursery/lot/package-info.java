/**
 * Lots that stand in the nursery or are on offer: plants, trunks, qualities, pots, papers and
 * costs.
 */
package growingon.nursery.lot;
