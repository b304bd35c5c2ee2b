/**
 * What to buy, how many, and sell now or grow on. Start at {@link
 * growingon.report.buying.BuyingReport}.
 */
package growingon.report.buying;
