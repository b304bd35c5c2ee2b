/**
 * Writes a report to files: workbook, charts, tables, figures.json; and freezes a record in a file.
 * No arithmetic.
 */
package growingon.write;
