/**
 * A list as it stands in a spreadsheet: its sheets, their filled rows and cells, before anyone asks
 * what they mean.
 */
package growingon.load.own.sheet;
