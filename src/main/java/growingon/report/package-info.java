/**
 * What a report says, as plain tables, charts and notes; no file formats, no arithmetic beyond
 * totals and rounding. Start at {@link growingon.report.Report}. Takes the results of {@code
 * project} and {@code money}; {@code write} turns a report into files.
 */
package growingon.report;
