/** Writes a report to files: workbook, charts, tables, figures.json. No arithmetic. */
package growingon.write;
