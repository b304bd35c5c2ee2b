/**
 * Sizes and pots as the trade writes them. Start at {@link growingon.load.own.size.SizeGrammar}, a
 * list of rules of which the first that fits takes its text out of the cell.
 */
package growingon.load.own.size;
