/**
 * Whole plants: the one place in which a projection's expected numbers are rounded, so that every
 * table, sentence and chart adds up. Start at {@link growingon.whole.WholePlan}, which takes a
 * {@link growingon.project.Projection}. May use {@code nursery} and {@code project}.
 */
package growingon.whole;
