/**
 * Chances: many draws of the same plan, quantiles, what a bought lot gains with the same luck with
 * and without it, and which assumption matters most. Start at {@link growingon.chance.Chances}. May
 * use {@code nursery}, {@code project} and {@code money}.
 */
package growingon.chance;
