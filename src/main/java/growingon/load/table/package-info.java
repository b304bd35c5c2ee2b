/**
 * The tables of a nursery. The class comment of each {@code ...Table} is the specification of that
 * table.
 */
package growingon.load.table;
