/** The tables of what is bought for the work: pots, components, mixes and materials. */
package growingon.load.table.supply;
