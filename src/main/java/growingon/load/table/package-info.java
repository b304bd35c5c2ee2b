/**
 * The tables of a nursery. The columns of each {@code ...Table}, each a {@link
 * growingon.load.row.Heading}, and its class comment are the specification of that table.
 */
package growingon.load.table;
