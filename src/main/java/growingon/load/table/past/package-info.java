/** The tables of the past: daybook, records of trunks, and receipts. */
package growingon.load.table.past;
