/**
 * A nursery folder to type over: one workbook with a sheet for each table, and a plan. Takes the
 * headings from {@code load} and describes the workbook for {@code write}; start reading at {@link
 * growingon.start.StartedNursery}. May use nursery with its library, load and report.
 */
package growingon.start;
