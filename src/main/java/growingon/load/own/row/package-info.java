/**
 * Reads the rows of a list, lot by lot, and gives the list as it was read. Start at {@link
 * growingon.load.own.row.SheetRead}; {@link growingon.load.own.row.RowReader} reads one lot.
 */
package growingon.load.own.row;
