package growingon.report.chart;

import growingon.money.Accounts;
import growingon.nursery.time.Horizon;
import growingon.project.history.Use;
import growingon.project.need.Supplies;
import growingon.report.figures.Context;
import growingon.report.figures.PottedPlants;
import growingon.report.figures.WholeStore;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Series;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Pots and substrate used by season. */
final class SupplyCharts {
  private final Accounts accounts;
  private final Horizon horizon;
  private final PottedPlants potted;

  SupplyCharts(Context context) {
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.potted = PottedPlants.of(context);
  }

  Optional<Chart> pots() {
    return chart(
        Charts.POTS,
        Use.Kind.POT,
        "Pots used by season",
        "What the work takes, bought or on hand.",
        "pots");
  }

  Optional<Chart> substrate() {
    return chart(
        Charts.SUBSTRATE,
        Use.Kind.COMPONENT,
        "Substrate used by season",
        "Loose litres of each component, waste counted.",
        "litres");
  }

  private Optional<Chart> chart(
      String name, Use.Kind kind, String title, String subtitle, String unit) {
    Map<String, double[]> byName = new LinkedHashMap<>();
    for (Supplies.Item item : accounts.supplies().items()) {
      if (item.kind() == kind) {
        byName.put(item.name(), used(item));
      }
    }
    List<Series> series = FewSeries.of(byName, kind == Use.Kind.POT ? "other pots" : "others");
    List<String> seasons =
        IntStream.range(0, horizon.seasons()).mapToObj(horizon::seasonLabel).toList();
    return series.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Chart(name, title, subtitle, ChartKind.STACKED_BARS, unit, seasons, series));
  }

  private double[] used(Supplies.Item item) {
    WholeStore store = WholeStore.of(item, potted);
    return IntStream.range(0, horizon.seasons())
        .mapToDouble(
            season -> store.used(horizon.seasonFirst(season), horizon.seasonLast(season)).shown())
        .toArray();
  }
}
