/**
 * The tables of lots, stock and offers, with their trunks and what is checked of them. Start at
 * {@link growingon.load.table.lot.StockTable}.
 */
package growingon.load.table.lot;
