package growingon.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.report.SmallNursery;
import growingon.report.figures.Context;
import growingon.report.figures.GainClasses;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.MarkKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Colours;
import growingon.report.text.Phrases;
import growingon.report.text.Spell;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the charts of small, large and odd nurseries hold. */
class ChartsTest {
  private static List<Chart> charts(Nurseries nursery) {
    Context context = SmallNursery.context(nursery);
    return Charts.of(context);
  }

  private static Chart chart(List<Chart> charts, String name) {
    return charts.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
  }

  /** A nursery whose lots are so many, of one ladder of so many grades, in so many places. */
  private static Nurseries nursery(int lots, int seasons, int places, int grades) {
    Nurseries nursery = Nurseries.bare().seasons(seasons).slices(16).hoursAvailable(10);
    nursery.ladder("one", ladder(grades));
    for (int i = 0; i < places; i++) {
      nursery.place(Nurseries.place("bench " + i, PlaceKind.BENCH, 10));
    }
    for (int i = 0; i < lots; i++) {
      nursery.lot(
          Lots.lot("lot " + i)
              .trunks(4 + 7 * (i % 9), 0.1)
              .plantsPerM2(20)
              .place("bench " + i % places)
              .build());
    }
    return nursery.sellsAll("one", "grade 1", 10);
  }

  private static Grade[] ladder(int grades) {
    return IntStream.rangeClosed(1, grades)
        .mapToObj(i -> new Grade("grade " + i, i, 5 + 6 * (i - 1), 0, 12))
        .toArray(Grade[]::new);
  }

  @ParameterizedTest(name = "{0} lots, {1} seasons, {2} places, {3} grades")
  @CsvSource({"1, 1, 1, 1", "40, 40, 30, 9", "5000, 1, 30, 5", "40, 3, 1, 9", "0, 2, 1, 1"})
  void charts_ofAnySize_areWhole(int lots, int seasons, int places, int grades) {
    List<Chart> charts = charts(nursery(lots, seasons, places, grades));

    assertThat(charts).extracting(Chart::name).contains("cash");
    for (Chart chart : charts) {
      boolean byMonth = chart.kind() == ChartKind.PANELS || chart.kind() == ChartKind.LINES;
      assertThat(chart.categories()).hasSize(byMonth ? seasons * 12 : chart.categories().size());
      assertThat(chart.series()).as(chart.name()).isNotEmpty();
      assertThat(coloursOfStacks(chart)).allMatch(each -> each.size() <= 5);
      assertThat(coloursOfStacks(chart)).allMatch(each -> isWithoutTwins(each));
    }
  }

  private static boolean isWithoutTwins(List<Integer> colours) {
    return colours.stream().distinct().count() == colours.size();
  }

  /** The colours of what is stacked in each panel of a chart. */
  private static List<List<Integer>> coloursOfStacks(Chart chart) {
    Map<String, List<Integer>> colours =
        chart.series().stream()
            .filter(each -> each.role() == Role.VALUE)
            .collect(
                Collectors.groupingBy(
                    Series::group, Collectors.mapping(Series::colour, Collectors.toList())));
    return List.copyOf(colours.values());
  }

  @Test
  void ladder_ofNineGrades_standsInTwoPanelsOfFiveAndFour() {
    Chart stock = chart(charts(nursery(40, 2, 1, 9).withoutDemand()), "stock-by-grade");

    assertThat(stock.kind()).isEqualTo(ChartKind.BAR_PANELS);
    assertThat(stock.series())
        .extracting(Series::group)
        .filteredOn(each -> each.startsWith("one"))
        .containsExactly(
            "one, grade 1 to grade 5",
            "one, grade 1 to grade 5",
            "one, grade 1 to grade 5",
            "one, grade 1 to grade 5",
            "one, grade 1 to grade 5",
            "one, grade 6 to grade 9",
            "one, grade 6 to grade 9",
            "one, grade 6 to grade 9",
            "one, grade 6 to grade 9");
    // the higher the darker: 14 is the lightest step, 10 the darkest
    assertThat(stock.series().stream().limit(5))
        .extracting(Series::colour)
        .containsExactly(14, 13, 12, 11, 10);
  }

  @Test
  void ladder_ofOneGrade_hasAPanelOfItsName() {
    Chart sales = chart(charts(nursery(3, 2, 1, 1)), "sales-by-season");
    assertThat(sales.series()).extracting(Series::name).containsExactly("grade 1");
    assertThat(sales.series()).extracting(Series::group).containsExactly("one");
  }

  @Test
  void sales_ofSeveralPanels_haveTheirSumBeforeThem() {
    Chart sales = chart(charts(SmallNursery.nursery()), "sales-by-season");

    Series all = sales.series().get(0);
    assertThat(all.name()).isEqualTo("all sales");
    assertThat(all.role()).isEqualTo(Role.TOTAL);
    for (int season = 0; season < sales.categories().size(); season++) {
      int place = season;
      double sum =
          sales.series().stream()
              .filter(each -> each.role() == Role.VALUE)
              .mapToDouble(each -> each.values().get(place))
              .sum();
      assertThat(all.values().get(season)).isCloseTo(sum, within(1e-6));
    }
  }

  @Test
  void hours_thatAreShort_areMarkedWorstFirst() {
    Context context = SmallNursery.context(SmallNursery.nursery().hoursAvailable(5));
    Chart hours =
        HoursChart.of(context, Charts.months(context.accounts().projection().horizon())).get();

    List<Spell> spells = Spell.of(hours.categories().size(), context.accounts().hours()::shortBy);
    assertThat(spells).isNotEmpty();
    assertThat(hours.marks()).hasSameSizeAs(spells);
    Spell worst = Spell.worst(spells);
    Mark first = hours.marks().get(0);
    assertThat(first.kind()).isEqualTo(MarkKind.BEYOND);
    assertThat(first.at()).isEqualTo(worst.worst() + 0.5);
    assertThat(first.value()).isEqualTo(context.accounts().hours().needed(worst.worst()));
    assertThat(first.label()).matches("[\\d,.]+ hours short, \\w{3} \\d{4}");
  }

  @Test
  void cash_atItsLowest_isMarkedAndBeyondWhereItIsTooLow() {
    Nurseries nursery = nursery(2, 1, 1, 1).withoutDemand().openingCash(-50);

    Chart cash = chart(charts(nursery), "cash");
    assertThat(cash.marks()).containsExactly(Mark.point("lowest: GBP -50, Nov 2026", 0, -50));

    Chart limited = chart(charts(nursery.lowestCash(0)), "cash");
    assertThat(limited.marks())
        .containsExactly(Mark.beyond("lowest: GBP -50, Nov 2026", 0, -50, ""));
    assertThat(limited.series()).extracting(Series::role).contains(Role.LIMIT);
  }

  @Test
  void manyThings_inOneStack_areTheFourLargestAndTheRest() {
    Map<String, double[]> values = new LinkedHashMap<>();
    for (int i = 1; i <= 7; i++) {
      values.put("thing " + i, new double[] {i, 10 * i});
    }
    values.put("nothing", new double[] {0, 0});

    List<Series> series = FewSeries.of(values, "others");
    assertThat(series)
        .extracting(Series::name)
        .containsExactly("thing 7", "thing 6", "thing 5", "thing 4", "others");
    assertThat(series.get(4).values()).containsExactly(6.0, 60.0);
    assertThat(series.get(4).colour()).isEqualTo(Colours.REST);

    values.keySet().removeAll(List.of("thing 1", "thing 2"));
    assertThat(FewSeries.of(values, "others"))
        .extracting(Series::name)
        .containsExactly("thing 7", "thing 6", "thing 5", "thing 4", "thing 3");
    assertThat(FewSeries.of(Map.of(), "others")).isEmpty();
  }

  @Test
  void rest_ofWhatIsNotTold_isNotToldEither() {
    Map<String, double[]> values = new LinkedHashMap<>();
    for (int i = 1; i <= 6; i++) {
      values.put("ladder " + i, new double[] {i, i == 1 ? Double.NaN : i});
    }
    assertThat(FewSeries.of(values, "other ladders").get(4).values())
        .containsExactly(3.0, Double.NaN);
  }

  @Test
  void classes_ofGains_areRoundAndPartAtNil() {
    GainClasses classes = GainClasses.of(new double[] {-2500, -10, 0, 700, 11_900});

    assertThat(classes.step()).isEqualTo(1000);
    assertThat(classes.edges(Phrases.PLAIN))
        .startsWith("-3,000", "-2,000", "-1,000", "0")
        .hasSize(16);
    assertThat(classes.shares(false)).startsWith(20.0, 0.0, 20.0, Double.NaN);
    assertThat(classes.shares(true).get(3)).isEqualTo(40.0);
    assertThat(classes.at(-500)).isEqualTo(2.5);
  }

  @Test
  void mark_withoutAPlace_isRefused() {
    assertThatThrownBy(() -> Mark.point("lowest", 3, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a mark is nowhere: lowest");
  }
}
