/** The sheets of money: cash by month, and the accounts of the lots. */
package growingon.report.plan.cash;
