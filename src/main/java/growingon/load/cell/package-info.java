/**
 * One cell: what stands in it, as a number, a month or a size, within which range, and what is said
 * where it is none. The same for CSV, XLSX and JSON.
 */
package growingon.load.cell;
