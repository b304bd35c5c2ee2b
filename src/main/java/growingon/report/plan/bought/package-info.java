/** The sheets of the lots bought within the plan: whether each pays, and what that hangs on. */
package growingon.report.plan.bought;
