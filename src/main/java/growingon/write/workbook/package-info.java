/**
 * Workbooks: the two books of a report and the one to type over; layout and pages before the first
 * row is written.
 */
package growingon.write.workbook;
