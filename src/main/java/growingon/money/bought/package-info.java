/**
 * What a bought lot is worth to the whole nursery, by running the plan without it. Start at {@link
 * growingon.money.bought.Weighing}.
 */
package growingon.money.bought;
