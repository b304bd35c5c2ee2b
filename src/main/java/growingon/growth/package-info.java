/**
 * Growth laws of the trunk as closed-form flow maps, without step error. Start at {@link
 * growingon.growth.Flow}. May use {@code nursery}, where the laws stand as data.
 */
package growingon.growth;
