package growingon.report.chart;

import growingon.chance.Chances;
import growingon.report.figures.Context;
import growingon.report.figures.Grades;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Charts of plants and money by grade and season: a panel for each ladder, or for each five grades
 * of a longer one, so that no panel has more colours than eyes of every kind tell apart.
 */
final class GradeCharts {
  private static final String ALL = "all sales";
  private static final String NO_GRADE = "without a grade, or kept";

  private final SeasonFigures figures;
  private final Optional<Chances> chances;
  private final String currency;

  GradeCharts(Context context) {
    this.figures = context.seasons();
    this.chances = context.chances();
    this.currency = context.inputs().scenario().nursery().settings().currency();
  }

  /** Money by grade; with several panels, the sum and its band in one before them. */
  Optional<Chart> sales() {
    List<Series> series = byGrade(figures::money);
    List<String> panels = series.stream().map(Series::group).distinct().toList();
    if (panels.size() > 1) {
      series.add(0, series(ALL, Role.TOTAL, ALL, Colours.CASH, figures::money));
    }
    if (!panels.isEmpty()) {
      String group = series.get(0).group();
      int place = (int) series.stream().filter(each -> each.group().equals(group)).count();
      chances.ifPresent(drawn -> series.addAll(place, bands(drawn, group)));
    }
    String band = chances.isEmpty() ? "" : ChanceCharts.within(stroke());
    return chart(
        Charts.SALES,
        "Expected sales by season",
        "By grade, the higher the darker; without VAT." + band,
        currency + " a season",
        series);
  }

  private static List<Series> bands(Chances drawn, String group) {
    List<Series> bands = new ArrayList<>(ChanceCharts.band(drawn.sales(), group, Colours.KEPT));
    drawn
        .luckAlone()
        .ifPresent(luck -> bands.addAll(ChanceCharts.luckBand(luck.sales(), group, Colours.LOSS)));
    return bands;
  }

  private String stroke() {
    return chances.flatMap(Chances::luckAlone).isPresent()
        ? "long stroke, luck and not knowing; the short one is luck alone"
        : "stroke";
  }

  Optional<Chart> stock() {
    List<Series> series = byGrade((grade, season) -> figures.standing(grade, season).whole());
    series.add(
        series(
            "no grade yet",
            Role.VALUE,
            NO_GRADE,
            Colours.REST,
            season -> figures.ungraded(season).whole()));
    series.add(
        series("kept", Role.VALUE, NO_GRADE, Colours.KEPT, season -> figures.kept(season).whole()));
    series.removeIf(each -> !shows(each));
    return chart(
        Charts.STOCK,
        "Plants standing at the end of each season, by grade",
        "After the season's losses and sales; the higher the grade the darker.",
        "plants",
        series);
  }

  /** A value by grade and season. */
  private interface ByGrade {
    double at(int grade, int season);
  }

  private List<Series> byGrade(ByGrade value) {
    List<Series> series = new ArrayList<>();
    List<Grades.Named> grades = figures.grades().all();
    for (int i = 0; i < grades.size(); i++) {
      int grade = i;
      Grades.Named named = grades.get(i);
      series.add(
          series(
              named.name(),
              Role.VALUE,
              figures.grades().panel(named),
              named.colour(),
              season -> value.at(grade, season)));
    }
    series.removeIf(each -> !shows(each));
    return series;
  }

  private Series series(
      String name, Role role, String group, int colour, IntToDoubleFunction value) {
    List<Double> values = IntStream.range(0, figures.seasons()).mapToDouble(value).boxed().toList();
    return new Series(name, role, values, group, colour);
  }

  private static boolean shows(Series series) {
    return series.values().stream().anyMatch(value -> Math.abs(value) > 1e-9);
  }

  private Optional<Chart> chart(
      String name, String title, String subtitle, String unit, List<Series> series) {
    List<String> seasons = IntStream.range(0, figures.seasons()).mapToObj(figures::label).toList();
    return series.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Chart(name, title, subtitle, ChartKind.BAR_PANELS, unit, seasons, series));
  }
}
