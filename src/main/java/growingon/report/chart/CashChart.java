package growingon.report.chart;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.nursery.Nursery;
import growingon.nursery.Settings;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Cash at the end of each month, its lowest point and the lowest allowed. */
public final class CashChart {
  private CashChart() {}

  static Chart of(Context context, List<String> months) {
    Accounts accounts = context.accounts();
    Nursery nursery = context.inputs().scenario().nursery();
    String currency = nursery.settings().currency();
    double[] balances = accounts.cash().balances();
    List<Series> series = new ArrayList<>();
    context
        .chances()
        .ifPresent(drawn -> series.addAll(ChanceCharts.band(drawn.cash(), "", Colours.SPACE)));
    context
        .chances()
        .flatMap(Chances::luckAlone)
        .ifPresent(luck -> series.addAll(ChanceCharts.luckBand(luck.cash(), "", Colours.CASH)));
    String line = context.chances().isPresent() ? "plan's line" : "cash";
    series.add(series(line, Role.VALUE, balances, Colours.CASH));
    nursery
        .settings()
        .lowestCash()
        .ifPresent(lowest -> series.add(limit("lowest allowed", months.size(), lowest)));
    String band =
        context.chances().isEmpty()
            ? ""
            : ChanceCharts.within(
                context.chances().get().luckAlone().isPresent()
                    ? "outer band, luck and not knowing; the inner is luck alone"
                    : "band");
    return new Chart(
        Charts.CASH,
        "Cash at the end of each month",
        "Without VAT." + band,
        ChartKind.LINES,
        currency,
        months,
        series,
        List.of(lowest(accounts, accounts.cash().lowestMonth())));
  }

  private static Series series(String name, Role role, double[] values, int colour) {
    return new Series(name, role, Arrays.stream(values).boxed().toList(), "", colour);
  }

  public static Series limit(String name, int months, double value) {
    return new Series(name, Role.LIMIT, Collections.nCopies(months, value), "", Colours.KEPT);
  }

  /**
   * The lowest cash of a plan, beyond the limit where less is allowed.
   *
   * @param place of its month among the months of the chart
   */
  public static Mark lowest(Accounts accounts, int place) {
    Phrases say = Phrases.of(accounts.projection().scenario());
    Settings settings = accounts.projection().scenario().nursery().settings();
    int month = accounts.cash().lowestMonth();
    double amount = accounts.cash().balances()[month];
    String label =
        "lowest: %s, %s"
            .formatted(say.money(amount), say.month(accounts.projection().horizon(), month));
    boolean isTooLow = amount < settings.lowestCash().orElse(Double.NEGATIVE_INFINITY);
    return isTooLow ? Mark.beyond(label, place, amount, "") : Mark.point(label, place, amount);
  }
}
