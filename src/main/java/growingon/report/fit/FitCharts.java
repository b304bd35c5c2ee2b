package growingon.report.fit;

import growingon.fit.Fit;
import growingon.fit.RecordRow;
import growingon.fit.score.Scored;
import growingon.fit.value.Value;
import growingon.fit.value.Value.What;
import growingon.growth.Flow;
import growingon.nursery.species.Curve;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import growingon.review.kept.KeptPlan.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * The charts of a fit: growth of each kind, how seasons differed, and kept plans against counts.
 */
final class FitCharts {
  private static final int STEPS_A_YEAR = 10;
  private static final int MOST_YEARS = 15;
  private static final int MOST_KINDS = 12;
  private static final int MOST_SCORED = 20;
  private static final int MOST_SPECIES = 5;

  private final Fit fit;
  private final Phrases say;
  private final List<Value> growthTold;
  private final List<Chart> growth = new ArrayList<>();
  private final List<Chart> seasons = new ArrayList<>();
  private final List<Chart> forecasts = new ArrayList<>();

  FitCharts(Fit fit, Phrases say) {
    this.say = say;
    this.fit = fit;
    this.growthTold =
        fit.values().stream()
            .filter(value -> value.what() == What.GROWTH && value.counts() > 0)
            .limit(MOST_KINDS)
            .toList();
    growthTold.forEach(value -> growth.add(growth(value, growth.size() + 1)));
    if (!fit.seasons().isEmpty()) {
      seasons.add(bySeason());
    }
    List<Scored> plants = lastOfEachLot();
    if (!plants.isEmpty()) {
      forecasts.add(scored(plants));
    }
  }

  private List<Scored> lastOfEachLot() {
    Map<String, Scored> last = new TreeMap<>();
    fit.scored().stream()
        .filter(each -> each.figure() == Figure.PLANTS)
        .forEach(each -> last.put(each.lot(), each));
    return last.values().stream().limit(MOST_SCORED).toList();
  }

  List<Chart> all() {
    List<Chart> all = new ArrayList<>(growth);
    all.addAll(seasons);
    all.addAll(forecasts);
    return all;
  }

  /** That of the growth which the records contradict most, else the first. */
  List<String> first() {
    return growthTold.stream()
        .filter(Value::isChanged)
        .max(Comparator.comparingDouble(value -> Math.abs(Math.log(value.value()))))
        .map(value -> growth.get(growthTold.indexOf(value)).name())
        .or(() -> names(growth).stream().findFirst())
        .stream()
        .toList();
  }

  List<String> growth() {
    return names(growth);
  }

  List<String> seasons() {
    return names(seasons);
  }

  List<String> forecasts() {
    return names(forecasts);
  }

  private static List<String> names(List<Chart> charts) {
    return charts.stream().map(Chart::name).toList();
  }

  /** Each interval from where its first trunk stands on the new curve. */
  private Chart growth(Value value, int number) {
    Curve old = fit.assumed().get(value.species()).growth().get(value.condition());
    List<RecordRow> rows =
        fit.records().stream()
            .filter(row -> row.isInterval() && row.clock() > 0)
            .filter(row -> row.species().equals(value.species()))
            .filter(row -> row.condition().equals(value.condition()))
            .sorted(Comparator.comparing(row -> !row.used()))
            .toList();
    double least = rows.stream().mapToDouble(RecordRow::trunkFrom).min().orElse(1);
    Flow now = Flow.of(old.faster(value.value()));
    double longest =
        rows.stream()
            .mapToDouble(row -> time(now, least, row.trunkFrom()) + row.clock())
            .max()
            .orElse(1);
    int steps = (int) Math.ceil(Math.min(MOST_YEARS, longest) * STEPS_A_YEAR) + 1;
    List<Series> series = new ArrayList<>();
    series.add(curve("P10", Role.LOW, steps, Colours.SPACE, grown(old.faster(value.p10()), least)));
    series.add(
        curve("P90", Role.HIGH, steps, Colours.SPACE, grown(old.faster(value.p90()), least)));
    series.add(
        curve(
            "by the records",
            Role.LINE,
            steps,
            Colours.CASH,
            grown(old.faster(value.value()), least)));
    series.add(curve("by your figure", Role.LINE, steps, Colours.KEPT, grown(old, least)));
    addIntervals(series, rows, steps, now, least);
    String title =
        "%s, %s: growth from %s mm on"
            .formatted(value.species(), value.condition(), say.whole(least));
    return new Chart(
        "growth-" + number,
        title,
        "By growth years. Each count from the one before, lower after sales of thick ones.",
        ChartKind.LINES,
        "mm",
        IntStream.range(0, steps).mapToObj(FitCharts::year).toList(),
        series);
  }

  private static String year(int step) {
    return step % STEPS_A_YEAR == 0 ? Integer.toString(step / STEPS_A_YEAR) : "";
  }

  private static void addIntervals(
      List<Series> series, List<RecordRow> rows, int steps, Flow now, double least) {
    boolean toldUsed = false;
    boolean toldRefused = false;
    for (RecordRow row : rows) {
      String name = "";
      if (row.used() && !toldUsed) {
        name = "counts used";
        toldUsed = true;
      } else if (!row.used() && !toldRefused) {
        name = "refused";
        toldRefused = true;
      }
      double from = time(now, least, row.trunkFrom()) * STEPS_A_YEAR;
      double to = from + row.clock() * STEPS_A_YEAR;
      List<Double> values = new ArrayList<>(Collections.nCopies(steps, Double.NaN));
      for (int step = (int) Math.round(from); step <= Math.round(to) && step < steps; step++) {
        double part = Math.max(0, Math.min(1, (step - from) / (to - from)));
        values.set(step, row.trunkFrom() + part * (row.trunkTo() - row.trunkFrom()) - least);
      }
      int colour = row.used() ? Colours.BETTER : Colours.REST;
      series.add(new Series(name, Role.LINE, values, "", colour));
    }
  }

  /**
   * Growth years from one trunk to another; those of the longest chart where it is never reached.
   */
  private static double time(Flow flow, double from, double to) {
    double low = 0;
    double high = MOST_YEARS;
    if (flow.advance(from, high) < to) {
      return high;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (flow.advance(from, middle) < to) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** What a plant grows from the least trunk on; so lines fill the chart, which begins at nil. */
  private static DoubleUnaryOperator grown(Curve curve, double least) {
    Flow flow = Flow.of(curve);
    return years -> flow.advance(least, years) - least;
  }

  private static Series curve(
      String name, Role role, int steps, int colour, DoubleUnaryOperator trunk) {
    List<Double> values =
        IntStream.range(0, steps)
            .mapToObj(step -> trunk.applyAsDouble((double) step / STEPS_A_YEAR))
            .toList();
    return new Series(name, role, values, "", colour);
  }

  private Chart bySeason() {
    List<String> names =
        fit.seasons().stream().map(Fit.Season::season).distinct().sorted().toList();
    List<String> species =
        fit.seasons().stream()
            .map(Fit.Season::species)
            .distinct()
            .sorted()
            .limit(MOST_SPECIES)
            .toList();
    List<Series> series = new ArrayList<>();
    for (int i = 0; i < species.size(); i++) {
      String name = species.get(i);
      List<Double> values =
          names.stream()
              .map(
                  season ->
                      fit.seasons().stream()
                          .filter(each -> each.season().equals(season))
                          .filter(each -> each.species().equals(name))
                          .map(each -> 100 * (each.factor() - 1))
                          .findFirst()
                          .orElse(Double.NaN))
              .toList();
      series.add(new Series(name, Role.VALUE, values, "", Colours.of(i)));
    }
    return new Chart(
        "seasons",
        "How well each season grew",
        "Against an ordinary season, in per cent.",
        ChartKind.BARS,
        "%",
        names,
        series);
  }

  private Chart scored(List<Scored> plants) {
    List<String> categories = plants.stream().map(Scored::lot).toList();
    List<Series> series =
        List.of(
            new Series(
                "counted",
                Role.VALUE,
                plants.stream().map(Scored::seen).toList(),
                "",
                Colours.CASH),
            new Series(
                "P10",
                Role.LOW,
                plants.stream().map(each -> each.foreseen().p10()).toList(),
                "",
                Colours.KEPT),
            new Series(
                "P90 of the kept plan",
                Role.HIGH,
                plants.stream().map(each -> each.foreseen().p90()).toList(),
                "",
                Colours.KEPT));
    return new Chart(
        "forecasts",
        "Plants alive, counted, against the kept plan",
        "At the last count of each lot. Most strokes should hold the top of their bar; lots have bad"
            + " seasons together.",
        ChartKind.STACKED_BARS,
        "plants",
        categories,
        series);
  }
}
