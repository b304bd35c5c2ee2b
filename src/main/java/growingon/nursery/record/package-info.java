/**
 * What was written down of the past: daybook, readings of trunks, receipts and earlier stock lists.
 */
package growingon.nursery.record;
