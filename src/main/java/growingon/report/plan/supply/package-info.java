/** The sheets of what is used up and must be ordered: pots, substrate and materials. */
package growingon.report.plan.supply;
