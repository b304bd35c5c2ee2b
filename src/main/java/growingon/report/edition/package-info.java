/**
 * A plan as a partner, a customer or a bank may see it. Start at {@link
 * growingon.report.edition.Edition}.
 */
package growingon.report.edition;
