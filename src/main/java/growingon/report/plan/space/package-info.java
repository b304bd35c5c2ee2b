/** The sheets of the room that plants take, and of what they weigh. */
package growingon.report.plan.space;
