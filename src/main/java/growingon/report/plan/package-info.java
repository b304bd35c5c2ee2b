/**
 * The sheets of a plan and the two books they stand in. Start at {@link
 * growingon.report.plan.PlanReport}.
 */
package growingon.report.plan;
