package growingon.write;

import growingon.report.Chart;
import growingon.report.Chart.Series;
import java.util.List;
import java.util.stream.Collectors;

/** A chart in words, for those who cannot see it. */
final class ChartWords {
  private ChartWords() {}

  static String alternative(Chart chart) {
    List<String> categories = chart.categories();
    String span =
        categories.isEmpty()
            ? ""
            : ", " + categories.get(0) + " to " + categories.get(categories.size() - 1);
    String names =
        chart.series().stream()
            .map(ChartWords::name)
            .distinct()
            .limit(12)
            .collect(Collectors.joining(", "));
    String subtitle = chart.subtitle().isEmpty() ? "" : " " + chart.subtitle();
    return "Chart: %s, in %s%s.%s Shown: %s. The figures are in figures.json."
        .formatted(chart.title(), chart.unit(), span, subtitle, names);
  }

  private static String name(Series series) {
    return series.group().isEmpty() ? series.name() : series.group();
  }
}
