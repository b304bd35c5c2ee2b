package growingon.write.chart;

import growingon.report.model.Chart;
import growingon.report.model.Chart.Series;
import growingon.write.chart.plot.AxisMarks;
import java.util.List;
import java.util.stream.Collectors;

/** A chart in words, for those who cannot see it. */
public final class ChartWords {
  private static final int NAMED = 12;

  private ChartWords() {}

  /** What a chart shows, for those who do not see it. */
  public static String alternative(Chart chart) {
    List<String> categories = chart.categories();
    String span =
        categories.isEmpty()
            ? ""
            : ", " + label(chart, 0) + " to " + label(chart, categories.size() - 1);
    String names =
        chart.series().stream()
            .map(ChartWords::name)
            .distinct()
            .limit(NAMED)
            .collect(Collectors.joining(", "));
    String subtitle = chart.subtitle().isEmpty() ? "" : " " + chart.subtitle();
    return "Chart: %s, in %s%s.%s Shown: %s.%s The figures are in figures.json."
        .formatted(chart.title(), chart.unit(), span, subtitle, names, marks(chart));
  }

  private static String marks(Chart chart) {
    String marks =
        chart.marks().stream()
            .limit(NAMED)
            .map(each -> each.group().isEmpty() ? each.label() : each.group() + " " + each.label())
            .collect(Collectors.joining("; "));
    return marks.isEmpty() ? "" : " Marked: " + marks + ".";
  }

  /** The figures of a chart in sentences: of each series the first, the last and the greatest. */
  public static List<String> figures(Chart chart) {
    return chart.series().stream().map(each -> figures(chart, each)).toList();
  }

  private static String figures(Chart chart, Series series) {
    int first = -1;
    int last = -1;
    int most = -1;
    for (int i = 0; i < series.values().size(); i++) {
      if (Double.isFinite(series.values().get(i))) {
        first = first < 0 ? i : first;
        last = i;
        most = most < 0 || series.values().get(i) > series.values().get(most) ? i : most;
      }
    }
    String name = series.group().isEmpty() ? series.name() : series.group() + ", " + series.name();
    return first < 0
        ? name + ": no figures."
        : "%s: %s in %s, %s in %s; most in %s, %s."
            .formatted(
                name,
                figure(chart, series, first),
                label(chart, first),
                figure(chart, series, last),
                label(chart, last),
                label(chart, most),
                figure(chart, series, most));
  }

  private static String figure(Chart chart, Series series, int at) {
    double value = series.values().get(at);
    return chart.writing().decimals(value, Math.abs(value) < 100 ? 1 : 0);
  }

  private static String label(Chart chart, int at) {
    return AxisMarks.spelt(chart.categories().get(at), chart.writing());
  }

  private static String name(Series series) {
    return series.group().isEmpty() ? series.name() : series.group();
  }
}
