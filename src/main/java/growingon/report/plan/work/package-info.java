/** The sheets of work: jobs, hours, and the year on the wall. */
package growingon.report.plan.work;
