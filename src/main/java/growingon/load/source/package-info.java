/**
 * Files as grids and tables: CSV, workbooks and JSON, their headings and their rows, and own lists
 * as other programs save them; the keys of JSON files; how many rows were read and accepted; and
 * formulas that a workbook was saved without the values of.
 */
package growingon.load.source;
