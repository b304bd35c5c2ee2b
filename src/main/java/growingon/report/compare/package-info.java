/** Two plans side by side. Start at {@link growingon.report.compare.CompareReport}. */
package growingon.report.compare;
