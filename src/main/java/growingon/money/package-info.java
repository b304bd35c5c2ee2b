/**
 * Accounts of a projection: cash by month, net present value, internal rate of return, payback, an
 * account for each lot, the value of the stock; and the same sums of one run after another without
 * a history ({@link growingon.money.Tally}), also of some lots alone. What a bought lot is worth to
 * the whole nursery stands in {@code money.bought}. Start at {@link growingon.money.Accounts}. May
 * use {@code nursery} and {@code project}. All amounts are plan currency in prices of the first
 * month, without VAT.
 */
package growingon.money;
