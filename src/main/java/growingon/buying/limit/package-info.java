/**
 * What fits, on the plan's line, and what is short where it does not. Start at {@link
 * growingon.buying.limit.Limits}.
 */
package growingon.buying.limit;
