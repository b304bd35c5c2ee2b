package growingon.write;

import growingon.report.Chart.Role;
import growingon.report.Chart.Series;
import java.util.ArrayList;
import java.util.List;

/**
 * The room between a lower and an upper edge.
 *
 * @param low series of its lower edge
 * @param high series of its upper edge
 */
record Band(Series low, Series high) {
  /** Every lower edge with the upper edge that follows it. */
  static List<Band> of(List<Series> series) {
    List<Band> bands = new ArrayList<>();
    for (int i = 0; i + 1 < series.size(); i++) {
      if (series.get(i).role() == Role.LOW && series.get(i + 1).role() == Role.HIGH) {
        bands.add(new Band(series.get(i), series.get(i + 1)));
      }
    }
    return bands;
  }

  static boolean isEdge(Series series) {
    return series.role() == Role.LOW || series.role() == Role.HIGH;
  }
}
