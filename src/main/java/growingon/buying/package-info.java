/**
 * What to buy, how many, and sell now or grow on: a search with the real engine. Start at {@link
 * growingon.buying.Buying}. May use {@code nursery}, {@code project}, {@code money} and {@code
 * chance}.
 */
package growingon.buying;
