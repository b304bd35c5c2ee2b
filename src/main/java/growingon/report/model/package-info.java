/**
 * What a report is made of: {@link growingon.report.model.Report}, its books, sheets, tables,
 * columns and charts. Knows nothing of a plan.
 */
package growingon.report.model;
