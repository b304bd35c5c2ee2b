package growingon.write.chart.plot;

import growingon.report.model.Chart.Series;

/**
 * The room between a lower and an upper edge.
 *
 * @param low series of its lower edge
 * @param high series of its upper edge
 */
record Band(Series low, Series high) {}
