/**
 * What really happened against the plan, and whether bought lots paid. Start at {@link
 * growingon.review.Review}, made from the inputs with their daybook and, if there is one, the
 * {@link growingon.review.kept.KeptPlan}, which {@link growingon.review.PlanKeeping} makes. May use
 * {@code nursery}, {@code project}, {@code whole}, {@code money} and {@code chance}.
 */
package growingon.review;
