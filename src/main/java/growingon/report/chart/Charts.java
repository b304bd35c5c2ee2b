package growingon.report.chart;

import growingon.nursery.time.Horizon;
import growingon.report.figures.Context;
import growingon.report.model.Chart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every chart of a plan that has something to show. */
public final class Charts {
  public static final String SPACE = "bench-space";
  public static final String HOURS = "hours";
  public static final String POTS = "pots";
  public static final String SUBSTRATE = "substrate";
  public static final String STOCK = "stock-by-grade";
  public static final String SALES = "sales-by-season";
  public static final String CASH = "cash";

  private Charts() {}

  public static List<Chart> of(Context context) {
    List<String> months = months(context.accounts().projection().horizon());
    GradeCharts grades = new GradeCharts(context);
    SupplyCharts supplies = new SupplyCharts(context);
    List<Chart> charts = new ArrayList<>();
    Stream.of(
            grades.sales(),
            SpaceChart.of(context, months),
            HoursChart.of(context, months),
            Optional.of(CashChart.of(context, months)),
            grades.stock(),
            supplies.pots(),
            supplies.substrate())
        .flatMap(Optional::stream)
        .forEach(charts::add);
    charts.addAll(ChanceCharts.of(context));
    return charts;
  }

  /** Months as categories of a chart. */
  public static List<String> months(Horizon horizon) {
    return IntStream.range(0, horizon.months())
        .mapToObj(month -> horizon.month(month).toString())
        .toList();
  }
}
