/**
 * What is drawn of a chart: bands, blocks and curves over an axis, with their names and marks.
 * Start at {@link growingon.write.chart.plot.Body}.
 */
package growingon.write.chart.plot;
