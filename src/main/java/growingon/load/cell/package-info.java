/**
 * One cell and one row: what is read as a number, a month, a name, within which range, and what is
 * said where it cannot be. The same for CSV, XLSX and JSON.
 */
package growingon.load.cell;
