package growingon.report;

import growingon.chance.Chances;
import growingon.money.Accounts;
import growingon.nursery.Horizon;
import growingon.nursery.Nursery;
import growingon.project.HoursUse;
import growingon.project.SpaceUse.PlaceMonth;
import growingon.project.Supplies;
import growingon.project.Use;
import growingon.report.Chart.ChartKind;
import growingon.report.Chart.Role;
import growingon.report.Chart.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Every chart that has something to show. */
final class Charts {
  static final String SPACE = "bench-space";
  static final String HOURS = "hours";
  static final String POTS = "pots";
  static final String SUBSTRATE = "substrate";
  static final String STOCK = "stock-by-grade";
  static final String SALES = "sales-by-season";
  static final String CASH = "cash";

  /** As many panels as one chart draws. */
  private static final int PANELS = 30;

  private final Accounts accounts;
  private final SeasonFigures figures;
  private final Nursery nursery;
  private final Horizon horizon;
  private final List<String> months;
  private final List<String> seasons;
  private final Optional<Chances> chances;

  private Charts(Context context, SeasonFigures figures) {
    this.chances = context.chances();
    this.accounts = context.accounts();
    this.figures = figures;
    this.nursery = context.inputs().scenario().nursery();
    this.horizon = accounts.projection().horizon();
    this.months =
        IntStream.range(0, horizon.months()).mapToObj(m -> horizon.month(m).toString()).toList();
    this.seasons = IntStream.range(0, figures.seasons()).mapToObj(figures::label).toList();
  }

  static List<Chart> of(Context context, SeasonFigures figures) {
    Charts charts = new Charts(context, figures);
    List<Chart> all = new ArrayList<>(charts.all());
    all.addAll(ChanceCharts.of(context));
    return all;
  }

  private List<Chart> all() {
    return List.of(
            sales(),
            space(),
            hours(),
            cash(),
            stock(),
            supplies(
                POTS,
                Use.Kind.POT,
                "Pots used by season",
                "What the work takes, bought or on hand.",
                "pots"),
            supplies(
                SUBSTRATE,
                Use.Kind.COMPONENT,
                "Substrate used by season",
                "Loose litres of each component, waste counted.",
                "litres"))
        .stream()
        .flatMap(Optional::stream)
        .toList();
  }

  private static Series series(String name, int colour, int count, IntToDoubleFunction value) {
    return new Series(name, Role.VALUE, values(count, value), "", colour);
  }

  private static List<Double> values(int count, IntToDoubleFunction value) {
    return IntStream.range(0, count).mapToDouble(value).boxed().toList();
  }

  private static boolean shows(Series series) {
    return series.values().stream().anyMatch(value -> Math.abs(value) > 1e-9);
  }

  private String currency() {
    return nursery.settings().currency();
  }

  private Optional<Chart> sales() {
    List<Series> series = byGrade(figures::money);
    if (!series.isEmpty()) {
      chances.ifPresent(drawn -> series.addAll(ChanceCharts.band(drawn.sales(), "", Colours.KEPT)));
    }
    return chart(
        SALES,
        "Expected sales by season",
        "By grade, lowest at the bottom; without VAT." + inDraws("stroke"),
        ChartKind.STACKED_BARS,
        currency() + " a season",
        seasons,
        series);
  }

  private String inDraws(String mark) {
    return chances.isEmpty() ? "" : " Eight draws of ten lie within the %s.".formatted(mark);
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
      Series each =
          series(
              grades.get(i).label(),
              grades.get(i).colour(),
              figures.seasons(),
              season -> value.at(grade, season));
      if (shows(each)) {
        series.add(each);
      }
    }
    return series;
  }

  private Optional<Chart> chart(
      String name,
      String title,
      String subtitle,
      ChartKind kind,
      String unit,
      List<String> categories,
      List<Series> series) {
    return series.isEmpty()
        ? Optional.empty()
        : Optional.of(new Chart(name, title, subtitle, kind, unit, categories, series));
  }

  private Optional<Chart> stock() {
    List<Series> series = new ArrayList<>();
    int count = figures.seasons();
    series.add(series("no grade yet", Colours.REST, count, figures::ungraded));
    series.addAll(byGrade(figures::standing));
    series.add(series("kept", Colours.KEPT, count, figures::kept));
    series.removeIf(each -> !shows(each));
    return chart(
        STOCK,
        "Plants standing at the end of each season, by grade",
        "After the season's losses and sales.",
        ChartKind.STACKED_BARS,
        "plants",
        seasons,
        series);
  }

  /** In the order of the places; where too many for one chart, those that overflow come first. */
  private List<String> placesDrawn() {
    if (nursery.places().isEmpty()) {
      return List.of();
    }
    List<String> places = new ArrayList<>(accounts.space().places());
    if (places.size() > PANELS) {
      List<String> over = SpaceTrouble.of(accounts).stream().map(SpaceTrouble::name).toList();
      places.sort(Comparator.comparing(place -> !over.contains(place)));
    }
    return places;
  }

  private Optional<Chart> space() {
    List<Series> series = new ArrayList<>();
    for (String place : placesDrawn()) {
      List<PlaceMonth> list = accounts.space().months(place);
      String group = place.isEmpty() ? "without a place" : place;
      List<Double> needed = list.stream().map(PlaceMonth::neededM2).toList();
      List<Double> there = list.stream().map(PlaceMonth::capacityM2).toList();
      series.add(new Series("needed", Role.VALUE, needed, group, Colours.SPACE));
      chances
          .filter(drawn -> drawn.space().containsKey(place))
          .ifPresent(
              drawn ->
                  series.addAll(ChanceCharts.band(drawn.space().get(place), group, Colours.EDGE)));
      series.add(new Series("there", Role.LIMIT, there, group, Colours.KEPT));
    }
    return chart(
        SPACE,
        "Bench space by place",
        "Above the line it does not fit." + inDraws("two thin lines"),
        ChartKind.PANELS,
        "m²",
        months,
        series);
  }

  private Optional<Chart> hours() {
    HoursUse hours = accounts.hours();
    List<Series> series = new ArrayList<>();
    Map<String, double[]> jobs = HoursSheet.mainJobs(hours, months.size());
    jobs.forEach(
        (job, byMonth) -> {
          int colour = HoursSheet.OTHER.equals(job) ? Colours.REST : Colours.of(series.size());
          series.add(series(job, colour, months.size(), month -> byMonth[month]));
        });
    if (!series.isEmpty() && hours.available(0).isPresent()) {
      List<Double> available =
          values(months.size(), month -> hours.available(month).orElse(Double.NaN));
      series.add(new Series("available", Role.LIMIT, available, "", Colours.KEPT));
    }
    boolean stated = hours.available(0).isPresent();
    return chart(
        HOURS,
        "Hours of work by month",
        stated ? "Above the line hours are short." : "By job.",
        ChartKind.STACKED_BARS,
        "hours",
        months,
        series);
  }

  private Optional<Chart> cash() {
    double[] balances = accounts.cash().balances();
    List<Series> series = new ArrayList<>();
    chances.ifPresent(drawn -> series.addAll(ChanceCharts.band(drawn.cash(), "", Colours.SPACE)));
    String line = chances.isPresent() ? "plan's line" : "cash";
    series.add(
        new Series(line, Role.VALUE, Arrays.stream(balances).boxed().toList(), "", Colours.CASH));
    nursery
        .settings()
        .lowestCash()
        .ifPresent(
            lowest ->
                series.add(
                    new Series(
                        "lowest allowed",
                        Role.LIMIT,
                        Collections.nCopies(months.size(), lowest),
                        "",
                        Colours.KEPT)));
    int lowest = accounts.cash().lowestMonth();
    return chart(
        CASH,
        "Cash at the end of each month",
        "Lowest at the end of %s, %s; without VAT."
                .formatted(
                    Phrases.month(horizon, lowest), Phrases.money(currency(), balances[lowest]))
            + inDraws("band"),
        ChartKind.LINES,
        currency(),
        months,
        series);
  }

  private Optional<Chart> supplies(
      String name, Use.Kind kind, String title, String subtitle, String unit) {
    List<Series> series = new ArrayList<>();
    for (Supplies.Item item : accounts.supplies().items()) {
      if (item.kind() == kind) {
        int colour = Colours.of((int) position(item));
        series.add(series(item.name(), colour, figures.seasons(), s -> used(item, s)));
      }
    }
    series.removeIf(each -> !shows(each));
    return chart(name, title, subtitle, ChartKind.STACKED_BARS, unit, seasons, series);
  }

  /** Place of an item among those of its kind. */
  private long position(Supplies.Item item) {
    return accounts.supplies().items().stream()
        .takeWhile(each -> each != item)
        .filter(each -> each.kind() == item.kind())
        .count();
  }

  private double used(Supplies.Item item, int season) {
    int last = horizon.seasonLast(season);
    return Arrays.stream(item.used(), horizon.seasonFirst(season), last + 1).sum();
  }
}
