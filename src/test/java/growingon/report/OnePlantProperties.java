package growingon.report;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.time.Horizon;
import growingon.plan.Planned;
import growingon.project.Nurseries;
import growingon.report.edition.Edition;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Audience;
import growingon.report.model.Chart;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.PlanReport;
import growingon.report.text.Plants;
import growingon.whole.RandomNurseries;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Plants sold, standing, ready, died and culled, by lot, season, month, grade and place, are the
 * same to the plant in every table, sentence and chart of a report.
 */
class OnePlantProperties {
  /** Tables with plants, which are all checked below; a new one is to be checked too. */
  private static final List<String> CHECKED =
      List.of(
          "seasons",
          "ready-next",
          "jobs-next",
          "jobs",
          "bench-space",
          "lots",
          "line-of-life",
          "stock-by-species",
          "stock-by-lot",
          "saleable-by-season",
          "saleable",
          "saleable-by-lot",
          "sales-by-season",
          "sales",
          "demand-met",
          "sales-by-lot",
          "lot-accounts",
          "stock-value",
          "stock-value-by-lot",
          "count-sheet",
          "lot-months",
          "sales-lines",
          "hours-lines",
          "place-months");

  /** Counted like plants, but they are pots: a test of their own looks at them. */
  private static final List<String> POTS = List.of("pots", "pots-by-month");

  private static final String ALL = "";

  private Context context;
  private Report report;
  private Horizon horizon;
  private final Map<String, Table> tables = new HashMap<>();

  @Provide
  Arbitrary<Nurseries> nurseries() {
    return RandomNurseries.any();
  }

  @Property(tries = 60, seed = "20261107")
  void everyReport_ofAnyNursery_saysOneNumber(@ForAll("nurseries") Nurseries nursery) {
    check(nursery.scenario());
  }

  @Example
  void everyReport_ofTheDemonstration_saysOneNumber() {
    for (String plan : List.of("as-it-stands", "with-the-field-lot", "two-seasons-on")) {
      LoadOptions options = new LoadOptions(LocalDate.of(2026, 11, 30));
      Inputs inputs = Loader.load(Path.of("plans", plan + ".json"), options).value().orElseThrow();
      check(inputs.scenario());
    }
  }

  private void check(Scenario scenario) {
    Inputs inputs = new Inputs(scenario, List.of(), List.of(), scenario.lots().size());
    context = new Context(Planned.booked(inputs), List.of());
    horizon = scenario.horizon();
    report = PlanReport.of(context.plan(), List.of());
    tables.clear();
    Stream.concat(
            report.sheets().stream().flatMap(sheet -> sheet.tables().stream()),
            report.extra().stream())
        .forEach(table -> tables.put(table.name(), table));
    assertThat(tables.values().stream().filter(OnePlantProperties::hasPlants).map(Table::name))
        .isSubsetOf(Stream.concat(CHECKED.stream(), POTS.stream()).toList());
    checkSold();
    checkStanding();
    checkReady();
    checkLost();
    checkPlaces();
    checkJobs();
    checkStockValue();
    checkDemand();
    checkSentences();
    checkLives();
    checkCharts();
    checkPartner();
    checkBank();
  }

  private static boolean hasPlants(Table table) {
    return table.columns().stream().anyMatch(column -> column.kind() == Kind.PLANTS);
  }

  private static int column(Table table, String key) {
    List<String> keys = table.columns().stream().map(Column::key).toList();
    assertThat(keys).contains(key);
    return keys.indexOf(key);
  }

  /** Plants of a column that is printed, added up by what other cells say; nothing of a nil. */
  private Map<String, Long> sums(String name, String plants, String... by) {
    return tables.containsKey(name) ? sums(tables.get(name), plants, by) : Map.of();
  }

  private static Map<String, Long> sums(Table table, String plants, String... by) {
    Map<String, Long> sums = new TreeMap<>();
    int of = column(table, plants);
    for (List<Object> row : table.rows()) {
      if (row.get(of) instanceof Plants cell && cell.whole() != 0) {
        StringBuilder key = new StringBuilder(ALL);
        for (String each : by) {
          key.append(row.get(column(table, each))).append('|');
        }
        sums.merge(key.toString(), cell.whole(), Long::sum);
      }
    }
    return sums;
  }

  private Function<Object, String> seasonOf() {
    return month -> horizon.seasonLabel(horizon.season(horizon.offset((YearMonth) month)));
  }

  private void checkSold() {
    Map<String, Long> bySeason = sums("seasons", "sold", "season");
    assertThat(sums("sales-by-season", "plants_sold", "season")).isEqualTo(bySeason);
    assertThat(sums("sales", "plants", "season")).isEqualTo(bySeason);
    assertThat(sums("sales-by-lot", "plants", "season")).isEqualTo(bySeason);
    assertThat(sums("sales-lines", "units", "season")).isEqualTo(bySeason);
    assertThat(sums("demand-met", "sold", "season")).isEqualTo(bySeason);
    assertThat(sums("saleable-by-season", "sold", "season")).isEqualTo(bySeason);
    assertThat(sums("saleable", "sold", "season")).isEqualTo(bySeason);
    assertThat(sums("saleable-by-lot", "sold", "season")).isEqualTo(bySeason);
    Map<String, Long> byLot = sums("lots", "sold", "lot");
    assertThat(sums("lot-accounts", "sold", "lot")).isEqualTo(byLot);
    assertThat(sums("sales-by-lot", "plants", "lot")).isEqualTo(byLot);
    assertThat(sums("sales-lines", "units", "lot")).isEqualTo(byLot);
    assertThat(sums("saleable-by-lot", "sold", "lot")).isEqualTo(byLot);
    assertThat(sums("lot-months", "sold", "lot")).isEqualTo(byLot);
    assertThat(sums("sales-lines", "units", "lot", "month"))
        .isEqualTo(sums("lot-months", "sold", "lot", "month"));
    Map<String, Long> byGrade = sums("sales", "plants", "season", "species", "grade", "quality");
    assertThat(sums("sales-by-lot", "plants", "season", "species", "grade", "quality"))
        .isEqualTo(byGrade);
    assertThat(sums("sales-lines", "units", "season", "species", "grade", "quality"))
        .isEqualTo(byGrade);
    assertThat(sums("saleable", "sold", "season", "species", "grade"))
        .isEqualTo(sums("sales", "plants", "season", "species", "grade"));
    for (String name : List.of("sales", "sales-by-lot", "sales-lines")) {
      checkMoney(name);
    }
  }

  /** No line has money without plants. */
  private void checkMoney(String name) {
    Table table = tables.get(name);
    if (table != null) {
      String plants = name.equals("sales-lines") ? "units" : "plants";
      assertThat(table.rows())
          .allMatch(row -> ((Plants) row.get(column(table, plants))).whole() > 0);
    }
  }

  private void checkStanding() {
    Map<String, Long> seasons = sums("seasons", "standing", "season");
    Map<String, Long> bySpecies = new TreeMap<>();
    Map<String, Long> byLot = new TreeMap<>();
    Map<String, Long> lotMonths = sums("lot-months", "standing", "lot", "month");
    Map<String, Long> ofSeasons = new TreeMap<>();
    for (int season = 0; season < horizon.seasons(); season++) {
      String label = horizon.seasonLabel(season);
      String key = label.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9%]+", "_");
      String last = horizon.month(horizon.seasonLast(season)) + "|";
      sums("stock-by-species", key).forEach((all, plants) -> bySpecies.put(label + "|", plants));
      Map<String, Long> lots = sums("stock-by-lot", key, "lot");
      lots.forEach((lot, plants) -> byLot.merge(label + "|", plants, Long::sum));
      Map<String, Long> atEnd = new TreeMap<>();
      lotMonths.forEach(
          (lot, plants) -> {
            if (lot.endsWith("|" + last)) {
              atEnd.put(lot.substring(0, lot.length() - last.length()), plants);
            }
          });
      assertThat(atEnd).isEqualTo(lots);
      atEnd.values().forEach(plants -> ofSeasons.merge(label + "|", plants, Long::sum));
      assertThat(sums("stock-by-lot", key, "species", "grade"))
          .isEqualTo(sums("stock-by-species", key, "species", "grade"));
      if (season == horizon.seasons() - 1) {
        assertThat(sums("lots", "standing", "lot")).isEqualTo(lots);
        assertThat(sums("lot-accounts", "standing", "lot")).isEqualTo(lots);
        Map<String, Long> kept = new TreeMap<>();
        sums("stock-by-lot", key, "grade", "lot")
            .forEach(
                (k, n) ->
                    Optional.of(k)
                        .filter(each -> each.startsWith("kept|"))
                        .ifPresent(each -> kept.put(each.substring(5), n)));
        assertThat(sums("lots", "kept", "lot")).isEqualTo(kept);
        assertThat(sums("lot-accounts", "of_these_kept", "lot")).isEqualTo(kept);
      }
    }
    assertThat(bySpecies).isEqualTo(seasons);
    assertThat(byLot).isEqualTo(seasons);
    assertThat(ofSeasons).isEqualTo(seasons);
  }

  private void checkReady() {
    for (String what : List.of("firsts", "seconds", "thirds", "in_all", "left_unsold")) {
      Map<String, Long> bySeason = sums("saleable-by-season", what, "season");
      assertThat(sums("saleable", what, "season")).isEqualTo(bySeason);
      assertThat(sums("saleable-by-lot", what, "season")).isEqualTo(bySeason);
      assertThat(sums("saleable-by-lot", what, "season", "species", "grade"))
          .isEqualTo(sums("saleable", what, "season", "species", "grade"));
    }
    for (String name : List.of("saleable-by-season", "saleable", "saleable-by-lot")) {
      if (tables.containsKey(name)) {
        Table table = tables.get(name);
        for (List<Object> row : table.rows()) {
          long all = whole(table, row, "in_all");
          assertThat(whole(table, row, "sold") + whole(table, row, "left_unsold")).isEqualTo(all);
          assertThat(
                  whole(table, row, "firsts")
                      + whole(table, row, "seconds")
                      + whole(table, row, "thirds"))
              .isEqualTo(all);
        }
      }
    }
    checkReadyStands();
    checkReadyNext();
  }

  /** The seasons that the Summary shows have the numbers of all others. */
  private void checkReadyNext() {
    if (context.inputs().scenario().nursery().demand().isEmpty()) {
      assertThat(tables).doesNotContainKey("ready-next");
      return;
    }
    Map<String, Long> saleable = sums("saleable-by-season", "in_all", "season");
    Map<String, Long> sold = sums("seasons", "sold", "season");
    SeasonFigures figures = context.seasons();
    for (int season = 0; season <= figures.next(); season++) {
      String label = figures.label(season) + "|";
      String key = season == figures.next() ? "_next" : "_now";
      assertThat(sum(sums("ready-next", "ready" + key)))
          .isEqualTo(saleable.getOrDefault(label, 0L));
      assertThat(sum(sums("ready-next", "sold" + key))).isEqualTo(sold.getOrDefault(label, 0L));
    }
  }

  /** What is ready at a season's end stands then, of its lot and grade. */
  private void checkReadyStands() {
    for (int season = 0; season < horizon.seasons(); season++) {
      String label = horizon.seasonLabel(season);
      String key = label.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9%]+", "_");
      Map<String, Long> standing = sums("stock-by-lot", key, "lot", "grade");
      sums("saleable-by-lot", "left_unsold", "season", "lot", "grade")
          .forEach(
              (of, ready) -> {
                if (of.startsWith(label + "|")) {
                  String lot = of.substring(label.length() + 1);
                  assertThat(standing.getOrDefault(lot, 0L)).isGreaterThanOrEqualTo(ready);
                }
              });
    }
  }

  private static long whole(Table table, List<Object> row, String key) {
    Object cell = row.get(column(table, key));
    return cell == null ? 0 : ((Plants) cell).whole();
  }

  private void checkLost() {
    if (!tables.containsKey("lots")) {
      return;
    }
    for (String name : List.of("lots", "lot-accounts")) {
      Table table = tables.get(name);
      for (List<Object> row : table.rows()) {
        long started = ((Number) row.get(column(table, "started"))).longValue();
        assertThat(whole(table, row, "lost") + whole(table, row, "sold"))
            .isEqualTo(started - whole(table, row, "standing"));
      }
    }
    assertThat(sums("lot-accounts", "lost", "lot")).isEqualTo(sums("lots", "lost", "lot"));
    Map<String, Long> lost = new TreeMap<>(sums("lot-months", "died", "lot"));
    sums("lot-months", "culled", "lot").forEach((lot, n) -> lost.merge(lot, n, Long::sum));
    context
        .whole()
        .lots()
        .forEach(
            lot -> {
              if (lot.diedBefore() > 0) {
                String name = lot.history().lot().name() + "|";
                lost.merge(name, (long) lot.diedBefore(), Long::sum);
              }
            });
    assertThat(lost).isEqualTo(sums("lots", "lost", "lot"));
    checkMonths();
  }

  private void checkMonths() {
    Table months = tables.get("lot-months");
    String lot = "";
    long standing = 0;
    for (List<Object> row : months.rows()) {
      long gone = whole(months, row, "died") + whole(months, row, "culled");
      gone += whole(months, row, "sold");
      if (row.get(0).equals(lot)) {
        assertThat(whole(months, row, "standing")).isEqualTo(standing - gone);
      }
      lot = (String) row.get(0);
      standing = whole(months, row, "standing");
    }
  }

  private void checkPlaces() {
    Map<String, Long> byPlace = sums("place-months", "plants", "place", "month");
    assertThat(sums("bench-space", "plants", "place", "month")).isEqualTo(byPlace);
    Map<String, Long> byMonth = new TreeMap<>();
    context
        .whole()
        .lots()
        .forEach(
            lot -> {
              for (int month = lot.history().start(); month < horizon.months(); month++) {
                long plants = lot.standingAfterWork(month);
                if (plants > 0 && lot.history().stood(month) != null) {
                  byMonth.merge(horizon.month(month) + "|", plants, Long::sum);
                }
              }
            });
    assertThat(sums("place-months", "plants", "month")).isEqualTo(byMonth);
  }

  /** A job is done on as many plants as the line of life and the hours have. */
  private void checkJobs() {
    Map<String, Long> jobs = new TreeMap<>(sums("jobs-next", "plants", "lot", "month", "job"));
    jobs.putAll(sums("jobs", "plants", "lot", "month", "job"));
    // what falls due beside the steps of routes is no event of a lot's life
    jobs.keySet().removeIf(job -> job.contains("wire off") || job.contains(" come: unload"));
    Map<String, Long> lives = sums("line-of-life", "plants", "lot", "month", "event");
    jobs.forEach((job, plants) -> assertThat(lives).containsEntry(job, plants));
    sums("hours-lines", "plants", "lot", "month", "job")
        .forEach(
            (job, plants) -> {
              if (jobs.containsKey(job)) {
                assertThat(jobs).containsEntry(job, plants);
              }
            });
    Map<String, Long> starts = sums("line-of-life", "plants", "lot", "event");
    sums("count-sheet", "expected", "lot")
        .forEach((lot, plants) -> assertThat(starts).containsEntry(lot + "stands|", plants));
  }

  private void checkStockValue() {
    Map<String, Long> byYear = sums("stock-value", "plants", "year_end");
    assertThat(sums("stock-value-by-lot", "plants", "year_end")).isEqualTo(byYear);
    assertThat(sums("stock-value-by-lot", "of_these_with_a_list_price", "year_end"))
        .isEqualTo(sums("stock-value", "of_these_with_a_list_price", "year_end"));
    Map<String, Long> lotMonths = sums("lot-months", "standing", "month");
    byYear.forEach(
        (month, plants) ->
            assertThat(lotMonths.getOrDefault(month, 0L)).isGreaterThanOrEqualTo(plants));
  }

  private void checkDemand() {
    if (!tables.containsKey("demand-met")) {
      return;
    }
    Table table = tables.get("demand-met");
    for (List<Object> row : table.rows()) {
      if (row.get(column(table, "wanted")) != null) {
        assertThat(whole(table, row, "sold") + whole(table, row, "missed"))
            .isEqualTo(whole(table, row, "wanted"));
      }
    }
    assertThat(sums("sales-by-season", "plants_missed", "season"))
        .isEqualTo(sums("demand-met", "missed", "season"));
  }

  private static Optional<Long> said(List<String> sentences, String pattern) {
    return sentences.stream()
        .map(Pattern.compile(pattern)::matcher)
        .filter(Matcher::find)
        .map(found -> Long.parseLong(found.group(1).replace(",", "")))
        .findFirst();
  }

  private void checkSentences() {
    List<String> sentences = new ArrayList<>(report.headlines());
    report.sheets().forEach(sheet -> sentences.addAll(sheet.sentences()));
    report.answers().forEach(answer -> sentences.addAll(answer.sentences()));
    SeasonFigures figures = context.seasons();
    String next = figures.label(figures.next()) + "|";
    Map<String, Long> saleable = sums("saleable-by-season", "in_all", "season");
    Map<String, Long> sold = sums("seasons", "sold", "season");
    said(sentences, "([\\d,]+) plants? can be sold: ")
        .ifPresent(plants -> assertThat(saleable).containsEntry(next, plants));
    said(sentences, "first full season, ([\\d,]+) plants? can be sold; ")
        .ifPresent(plants -> assertThat(saleable).containsEntry(next, plants));
    said(sentences, "season under way, ([\\d,]+) plants? can be sold")
        .ifPresent(
            plants ->
                assertThat(saleable.getOrDefault(figures.label(0) + "|", 0L)).isEqualTo(plants));
    said(sentences, "The plan sells ([\\d,]+) of them")
        .ifPresent(plants -> assertThat(sold).containsEntry(next, plants));
    said(
            sentences,
            "^Saleable in " + Pattern.quote(figures.label(figures.next())) + ": ([\\d,]+) plants?;")
        .ifPresent(plants -> assertThat(saleable).containsEntry(next, plants));
    if (figures.next() > 0) {
      String begun = figures.label(0) + "|";
      String line = "^Saleable in " + Pattern.quote(figures.label(0)) + ": ";
      said(sentences, line + "([\\d,]+) plants?;")
          .ifPresent(plants -> assertThat(saleable.getOrDefault(begun, 0L)).isEqualTo(plants));
      said(sentences, line + ".*; ([\\d,]+) (?:is|are) sold")
          .ifPresent(plants -> assertThat(sold.getOrDefault(begun, 0L)).isEqualTo(plants));
    }
    said(sentences, "^Sold of them: ([\\d,]+) plants?,")
        .ifPresent(plants -> assertThat(sold.getOrDefault(next, 0L)).isEqualTo(plants));
    long missed = sum(sums("demand-met", "missed"));
    said(sentences, "asks for ([\\d,]+) plants? more than are ready")
        .ifPresent(plants -> assertThat(plants).isEqualTo(missed));
    long kept = sum(sums("lots", "kept"));
    said(sentences, "([\\d,]+) plants? unsold at the end")
        .ifPresent(plants -> assertThat(plants).isEqualTo(sum(sums("lots", "standing")) - kept));
    said(sentences, "; ([\\d,]+) more are kept")
        .ifPresent(plants -> assertThat(plants).isEqualTo(kept));
  }

  private static long sum(Map<String, Long> plants) {
    return plants.values().stream().mapToLong(Long::longValue).sum();
  }

  /** What the line of life says in words of each season. */
  private void checkLives() {
    Table lives = tables.get("line-of-life");
    if (lives == null) {
      return;
    }
    Map<String, Long> sold = new TreeMap<>();
    Map<String, Long> died = new TreeMap<>();
    Map<String, Long> culled = new TreeMap<>();
    for (List<Object> row : lives.rows()) {
      String event = (String) row.get(column(lives, "event"));
      if (event.equals("season end") || event.equals("end of plan")) {
        String key =
            row.get(column(lives, "lot"))
                + "|"
                + seasonOf().apply(row.get(column(lives, "month")))
                + "|";
        List<String> what = List.of((String) row.get(column(lives, "what")));
        said(what, "([\\d,]+) plants? sold").ifPresent(n -> sold.merge(key, n, Long::sum));
        said(what, "([\\d,]+) plants? died").ifPresent(n -> died.merge(key, n, Long::sum));
        said(what, "([\\d,]+) plants? culled").ifPresent(n -> culled.merge(key, n, Long::sum));
        assertThat(said(what, "([\\d,]+) stands?,").orElse(0L))
            .isEqualTo(whole(lives, row, "plants"));
      }
    }
    assertThat(sold).isEqualTo(sums("sales-by-lot", "plants", "lot", "season"));
    assertThat(died).isEqualTo(bySeason("died"));
    assertThat(culled).isEqualTo(bySeason("culled"));
  }

  private Map<String, Long> bySeason(String what) {
    Table months = tables.get("lot-months");
    Map<String, Long> sums = new TreeMap<>();
    for (List<Object> row : months.rows()) {
      long plants = whole(months, row, what);
      if (plants > 0) {
        sums.merge(row.get(0) + "|" + seasonOf().apply(row.get(1)) + "|", plants, Long::sum);
      }
    }
    return sums;
  }

  private void checkCharts() {
    report.charts().stream()
        .filter(chart -> chart.name().equals("stock-by-grade"))
        .forEach(
            chart -> {
              Map<String, Long> seasons = new TreeMap<>();
              for (int i = 0; i < chart.categories().size(); i++) {
                double sum = 0;
                for (Chart.Series series : chart.series()) {
                  sum += series.values().get(i);
                }
                if (sum > 0) {
                  seasons.put(chart.categories().get(i) + "|", (long) sum);
                }
              }
              assertThat(seasons).isEqualTo(sums("seasons", "standing", "season"));
            });
  }

  private Report edition(Edition edition) {
    return edition.report(Planned.booked(edition.seen(context.inputs())), Optional.empty());
  }

  /** A partner sees the same plants, of lots under other names. */
  private void checkPartner() {
    for (Sheet sheet : edition(new Edition(Audience.PARTNER, false, false)).sheets()) {
      for (Table table : sheet.tables()) {
        Table own = tables.get(table.name());
        if (hasPlants(table) && own != null && !table.name().startsWith("stock-value")) {
          for (Column column : table.columns()) {
            if (column.kind() == Kind.PLANTS) {
              assertThat(shown(table, column.key())).isEqualTo(shown(own, column.key()));
            }
          }
        }
      }
    }
  }

  private static List<Long> shown(Table table, String key) {
    return table.rows().stream()
        .map(row -> row.get(column(table, key)))
        .map(cell -> cell == null ? null : (Long) ((Plants) cell).whole())
        .toList();
  }

  /** A bank sees the same plants, added up by ladder, where no single lot stands behind them. */
  private void checkBank() {
    for (Sheet sheet : edition(new Edition(Audience.BANK, false, false)).sheets()) {
      for (Table table : sheet.tables()) {
        if (table.name().equals("sold-by-ladder")) {
          for (int season = 0; season < horizon.seasons(); season++) {
            int at = season + 1;
            boolean isWhole = table.rows().stream().noneMatch(row -> row.get(at) == null);
            if (isWhole) {
              long sum =
                  table.rows().stream().mapToLong(row -> ((Plants) row.get(at)).whole()).sum();
              assertThat(sum)
                  .isEqualTo(
                      sums("seasons", "sold", "season")
                          .getOrDefault(horizon.seasonLabel(season) + "|", 0L));
            }
          }
        }
      }
    }
  }
}
