/**
 * A nursery whose stock is a list of the grower's own: the list as read, laid out as tables with
 * usual values. Start at {@link growingon.load.list.OwnNursery}.
 */
package growingon.load.list;
