/**
 * The sheets of what stands in the nursery, lot by lot, and the papers to count and label it by.
 */
package growingon.report.plan.stock;
