/** The sheets of what is sold, what is saleable, and whether to sell or hold. */
package growingon.report.plan.sale;
