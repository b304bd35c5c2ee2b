/**
 * Accounts of a projection: cash by month, net present value, internal rate of return, payback, an
 * account for each lot, and what a bought lot is worth to the whole nursery. Start at {@link
 * growingon.money.Accounts}. May use {@code nursery} and {@code project}. All amounts are plan
 * currency in prices of the first month, without VAT.
 */
package growingon.money;
