package growingon.report.chart;

import growingon.chance.Chances;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.nursery.time.Horizon;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.figures.Context;
import growingon.report.figures.SpaceTrouble;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.MarkKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Square metres needed and there, a panel for each place in which anything ever stands. */
final class SpaceChart {
  /** As many panels as one chart draws. */
  private static final int PANELS = 30;

  /** So many empty places are named. */
  private static final int NAMED = 3;

  private final Accounts accounts;
  private final Horizon horizon;
  private final Optional<Chances> chances;
  private final List<SpaceTrouble> troubles;
  private final Phrases say;

  private SpaceChart(Context context) {
    this.say = context.say();
    this.accounts = context.accounts();
    this.horizon = accounts.projection().horizon();
    this.chances = context.chances();
    this.troubles = SpaceTrouble.of(accounts);
  }

  /** Empty where the nursery has no places, or nothing ever stands in one. */
  static Optional<Chart> of(Context context, List<String> months) {
    return context.inputs().scenario().nursery().places().isEmpty()
        ? Optional.empty()
        : new SpaceChart(context).chart(months);
  }

  private Optional<Chart> chart(List<String> months) {
    List<Optional<String>> places = places();
    if (places.isEmpty()) {
      return Optional.empty();
    }
    String band = chances.isEmpty() ? "" : ChanceCharts.within("two thin lines");
    return Optional.of(
        new Chart(
            Charts.SPACE,
            "Bench space by place",
            "Above the line it does not fit." + band + empty(),
            ChartKind.PANELS,
            "m²",
            months,
            places.stream().flatMap(place -> series(place).stream()).toList(),
            marks(places)));
  }

  /** In the order of the places; where too many for one chart, those that overflow come first. */
  private List<Optional<String>> places() {
    List<Optional<String>> places = new ArrayList<>(accounts.space().places());
    places.removeIf(place -> !isUsed(place));
    if (places.size() > PANELS) {
      List<Optional<String>> over = troubles.stream().map(SpaceTrouble::name).toList();
      places.sort(Comparator.comparing(place -> !over.contains(place)));
    }
    return places;
  }

  private boolean isUsed(Optional<String> place) {
    return accounts.space().months(place).stream()
            .anyMatch(each -> each.neededM2() > Phrases.NEGLIGIBLE)
        || drawn(place).stream().anyMatch(each -> each.p90() > Phrases.NEGLIGIBLE);
  }

  private List<Quantiles> drawn(Optional<String> place) {
    return chances.flatMap(each -> place.map(each.space()::get)).orElse(List.of());
  }

  private String empty() {
    List<String> empty =
        accounts.space().places().stream()
            .filter(place -> !isUsed(place))
            .map(SpaceChart::named)
            .toList();
    return empty.isEmpty()
        ? ""
        : " Nothing stands in %s.".formatted(Phrases.list(empty, NAMED, "places"));
  }

  private static String named(Optional<String> place) {
    return place.orElse("without a place");
  }

  private List<Series> series(Optional<String> place) {
    List<PlaceMonth> list = accounts.space().months(place);
    String group = named(place);
    List<Double> needed = list.stream().map(PlaceMonth::neededM2).toList();
    List<Double> there = list.stream().map(PlaceMonth::capacityM2).toList();
    List<Series> series = new ArrayList<>();
    series.add(new Series("needed", Role.VALUE, needed, group, Colours.SPACE));
    if (!drawn(place).isEmpty()) {
      series.addAll(ChanceCharts.band(drawn(place), group, Colours.EDGE));
    }
    series.add(new Series("there", Role.LIMIT, there, group, Colours.KEPT));
    return series;
  }

  /** The worst month of each place that does not hold what stands, the fullest of each other. */
  private List<Mark> marks(List<Optional<String>> places) {
    return places.stream()
        .map(
            place ->
                troubles.stream()
                    .filter(each -> each.name().equals(place))
                    .findFirst()
                    .map(each -> missing(place, each.worst()))
                    .orElseGet(() -> fullest(place)))
        .toList();
  }

  private Mark missing(Optional<String> place, Spell worst) {
    return Mark.beyond(
        "%s missing, %s"
            .formatted(say.squareMetres(worst.most()), say.month(horizon, worst.worst())),
        worst.worst(),
        accounts.space().months(place).get(worst.worst()).neededM2(),
        named(place));
  }

  private Mark fullest(Optional<String> place) {
    PlaceMonth most =
        accounts.space().months(place).stream()
            .reduce((a, b) -> b.neededM2() > a.neededM2() ? b : a)
            .orElseThrow();
    String label =
        "most %s of %s m², %s"
            .formatted(
                brief(most.neededM2()), brief(most.capacityM2()), say.month(horizon, most.month()));
    return new Mark(MarkKind.POINT, label, most.month() + 0.5, most.neededM2(), named(place));
  }

  /** With a decimal below a hundred only. */
  private String brief(double squareMetres) {
    return squareMetres < 100 ? say.number(squareMetres) : say.whole(squareMetres);
  }
}
