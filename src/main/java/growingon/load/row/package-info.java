/**
 * A row of a table and its columns: what each heading is called, what a cell is read as, and the
 * one way to its value; and what several tables read alike: names that are defined, months and
 * spans of months, seasons, spacings, numbers of plants, shares of a year. Start at {@link
 * growingon.load.row.Row} and {@link growingon.load.row.Heading}.
 */
package growingon.load.row;
