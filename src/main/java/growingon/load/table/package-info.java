/**
 * The tables of a nursery, by what they are of in rooms of their own. The columns of each {@code
 * ...Table}, each a {@link growingon.load.row.Heading}, and its class comment are the specification
 * of that table.
 */
package growingon.load.table;
