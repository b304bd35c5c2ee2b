/** The answer to a quick sheet. Start at {@link growingon.report.quick.QuickAnswer}. */
package growingon.report.quick;
