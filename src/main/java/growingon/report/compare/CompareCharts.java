package growingon.report.compare;

import growingon.nursery.Horizon;
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
import java.util.stream.IntStream;

/** The cash of two plans, month by month. */
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
    return first.currency().equals(second.currency())
        ? List.of(new CompareCharts(horizon(first), horizon(second)).cash(first, second))
        : List.of();
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
    double[] values = new double[months.size()];
    Arrays.fill(values, Double.NaN);
    double[] balances = side.accounts().cash().balances();
    System.arraycopy(balances, 0, values, place(horizon(side).firstMonth()), balances.length);
    List<Double> boxed = Arrays.stream(values).boxed().toList();
    return new Series(side.label(), Role.VALUE, boxed, "", colour);
  }

  private Mark lowest(Side side) {
    YearMonth month = horizon(side).month(side.accounts().cash().lowestMonth());
    return CashChart.lowest(side.accounts(), place(month));
  }
}
