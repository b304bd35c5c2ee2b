/**
 * Puts tables together: rows of cells, groups of columns, units said once, what an edition picks.
 */
package growingon.report.build;
