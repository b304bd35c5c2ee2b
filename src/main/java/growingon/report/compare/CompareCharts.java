package growingon.report.compare;

import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse;
import growingon.report.chart.CashChart;
import growingon.report.chart.Charts;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Two plans month by month: their cash, or what a reader may see who is not shown any. */
final class CompareCharts {
  private final List<YearMonth> months;

  private CompareCharts(Horizon first, Horizon second) {
    YearMonth from = Collections.min(List.of(first.firstMonth(), second.firstMonth()));
    YearMonth to = Collections.max(List.of(last(first), last(second)));
    int count = (int) ChronoUnit.MONTHS.between(from, to) + 1;
    this.months = IntStream.range(0, count).mapToObj(from::plusMonths).toList();
  }

  private static YearMonth last(Horizon horizon) {
    return horizon.month(horizon.months() - 1);
  }

  /** None of plans in different currencies. */
  static List<Chart> of(Side first, Side second) {
    return first.hasCurrencyOf(second)
        ? List.of(new CompareCharts(horizon(first), horizon(second)).cash(first, second))
        : List.of();
  }

  /** Plants and space, which tell nothing of money. */
  static List<Chart> withoutMoney(Side first, Side second) {
    CompareCharts charts = new CompareCharts(horizon(first), horizon(second));
    List<Chart> all = new ArrayList<>();
    all.add(
        charts.lines(
            "plants-standing",
            "Plants standing at the end of each month, plan against plan",
            "All lots together; as planned, without luck.",
            "plants",
            charts.series(first, CompareCharts::plants, Colours.LOSS),
            charts.series(second, CompareCharts::plants, Colours.CASH)));
    if (hasPlaces(first) || hasPlaces(second)) {
      all.add(
          charts.lines(
              Charts.SPACE,
              "Space needed each month, plan against plan",
              "All places together; as planned, without luck.",
              "m²",
              charts.series(first, CompareCharts::space, Colours.LOSS),
              charts.series(second, CompareCharts::space, Colours.CASH)));
    }
    return all;
  }

  private static boolean hasPlaces(Side side) {
    return !side.inputs().scenario().nursery().places().isEmpty();
  }

  private Chart lines(String name, String title, String subtitle, String unit, Series... series) {
    return new Chart(
        name,
        title,
        subtitle,
        ChartKind.LINES,
        unit,
        months.stream().map(YearMonth::toString).toList(),
        List.of(series),
        List.of());
  }

  private static double[] plants(Side side) {
    return IntStream.range(0, horizon(side).months())
        .mapToDouble(
            month -> side.whole().lots().stream().mapToInt(lot -> lot.standing(month)).sum())
        .toArray();
  }

  private static double[] space(Side side) {
    SpaceUse space = side.accounts().space();
    double[] needed = new double[horizon(side).months()];
    for (Optional<String> place : space.places()) {
      List<SpaceUse.PlaceMonth> list = space.months(place);
      for (int month = 0; month < list.size(); month++) {
        needed[month] += list.get(month).neededM2();
      }
    }
    return needed;
  }

  private static Horizon horizon(Side side) {
    return side.accounts().projection().horizon();
  }

  private Chart cash(Side first, Side second) {
    List<Series> series = new ArrayList<>();
    series.add(balance(first, Colours.LOSS));
    series.add(balance(second, Colours.CASH));
    List<Double> limits = limits(first, second);
    limits.forEach(limit -> series.add(CashChart.limit("lowest allowed", months.size(), limit)));
    return new Chart(
        Charts.CASH,
        "Cash at the end of each month, plan against plan",
        "Without VAT; as planned, without luck.",
        ChartKind.LINES,
        first.currency(),
        months.stream().map(YearMonth::toString).toList(),
        series,
        List.of(lowest(second), lowest(first)));
  }

  /** The lowest cash that each plan allows, once where it is the same. */
  private static List<Double> limits(Side first, Side second) {
    return List.of(first, second).stream()
        .flatMapToDouble(
            each -> each.inputs().scenario().nursery().settings().lowestCash().stream())
        .distinct()
        .boxed()
        .toList();
  }

  private int place(YearMonth month) {
    return (int) ChronoUnit.MONTHS.between(months.get(0), month);
  }

  private Series balance(Side side, int colour) {
    return series(side, each -> each.accounts().cash().balances(), colour);
  }

  private Series series(Side side, Function<Side, double[]> byMonth, int colour) {
    double[] values = new double[months.size()];
    Arrays.fill(values, Double.NaN);
    double[] own = byMonth.apply(side);
    System.arraycopy(own, 0, values, place(horizon(side).firstMonth()), own.length);
    List<Double> boxed = Arrays.stream(values).boxed().toList();
    return new Series(side.label(), Role.VALUE, boxed, "", colour);
  }

  private Mark lowest(Side side) {
    YearMonth month = horizon(side).month(side.accounts().cash().lowestMonth());
    return CashChart.lowest(side.accounts(), place(month));
  }
}
