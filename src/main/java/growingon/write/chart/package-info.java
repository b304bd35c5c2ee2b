/**
 * Charts as pictures: bodies by kind of chart, axes, keys and colours; PNG for paper, SVG for the
 * page.
 */
package growingon.write.chart;
