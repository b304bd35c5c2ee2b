/**
 * A row of a table and its columns: what each heading is called, what a cell is read as, and the
 * one way to its value. Start at {@link growingon.load.row.Row} and {@link
 * growingon.load.row.Heading}.
 */
package growingon.load.row;
