/** What is bought for the work: pots, mixes with their components, and materials. */
package growingon.nursery.supply;
