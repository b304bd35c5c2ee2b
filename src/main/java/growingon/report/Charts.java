package growingon.report;

import growingon.nursery.Horizon;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every chart of a plan that has something to show. */
final class Charts {
  static final String SPACE = "bench-space";
  static final String HOURS = "hours";
  static final String POTS = "pots";
  static final String SUBSTRATE = "substrate";
  static final String STOCK = "stock-by-grade";
  static final String SALES = "sales-by-season";
  static final String CASH = "cash";

  private Charts() {}

  static List<Chart> of(Context context, SeasonFigures figures) {
    List<String> months = months(context.accounts().projection().horizon());
    GradeCharts grades = new GradeCharts(context, figures);
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
  static List<String> months(Horizon horizon) {
    return IntStream.range(0, horizon.months())
        .mapToObj(month -> horizon.month(month).toString())
        .toList();
  }
}
