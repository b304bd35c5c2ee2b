/** The charts of a plan. */
package growingon.report.chart;
