/**
 * The figures of a plan that several sheets, sentences and charts share, reckoned once from its
 * results.
 */
package growingon.report.figures;
