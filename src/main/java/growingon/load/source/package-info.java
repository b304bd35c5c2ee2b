/** Files as grids and tables: CSV, workbooks and JSON, their headings and their rows. */
package growingon.load.source;
