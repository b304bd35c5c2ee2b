package growingon.report.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Quantiles;
import growingon.money.Accounts;
import growingon.money.CashFlow;
import growingon.money.GradeName;
import growingon.nursery.Scenario;
import growingon.nursery.time.Horizon;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import growingon.report.Cells;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Chart;
import growingon.report.model.Chart.ChartKind;
import growingon.report.model.Chart.Mark;
import growingon.report.model.Chart.MarkKind;
import growingon.report.model.Chart.Role;
import growingon.report.model.Chart.Series;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Odds;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Sentences;
import growingon.report.words.Headlines;
import growingon.report.words.VerdictWords;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the sheets, charts and lines about chances say agrees with the draws. */
class ChancesSheetTest {
  private static final int DRAWS = 120;
  private static final Set<String> NAMES = Set.of("Chances", "Swings");

  private static Context context;
  private static Chances chances;
  private static Horizon horizon;
  private static Report report;

  @BeforeAll
  static void draw() {
    Scenario scenario =
        MapleNursery.nursery()
            .lots(MapleNursery.stock())
            .lot(MapleNursery.unseenRidgeLot())
            .scenario();
    context = MapleNursery.drawn(scenario, DRAWS);
    chances = context.chances().orElseThrow();
    horizon = context.accounts().projection().horizon();
    report = MapleNursery.report(context);
  }

  private static Sheet sheet(Report from, String name) {
    return from.sheets().stream().filter(each -> each.name().equals(name)).findFirst().get();
  }

  private static Cells table(String sheet, String name) {
    return Cells.of(sheet(report, sheet), name);
  }

  private static Cells extra(String name) {
    List<Table> tables = report.extra().stream().filter(each -> each.name().equals(name)).toList();
    return Cells.of(new Sheet("extra", List.of(), tables, List.of(), false), name);
  }

  private static Chart chart(String name) {
    return report.charts().stream().filter(each -> each.name().equals(name)).findFirst().get();
  }

  private static double number(Object cell) {
    return cell instanceof Plants plants ? plants.exact() : ((Number) cell).doubleValue();
  }

  private static void assertQuantiles(
      Cells table, List<Object> row, double plan, Quantiles drawn, boolean errors) {
    assertThat(number(table.get(row, "plan's line"))).isCloseTo(plan, within(1e-9));
    assertThat(number(table.get(row, "mean"))).isEqualTo(drawn.mean());
    assertThat(number(table.get(row, "mean ±"))).isEqualTo(drawn.meanError());
    assertThat(number(table.get(row, "P10"))).isEqualTo(drawn.p10());
    assertThat(number(table.get(row, "P50"))).isEqualTo(drawn.p50());
    assertThat(number(table.get(row, "P90"))).isEqualTo(drawn.p90());
    if (errors) {
      assertThat(number(table.get(row, "P10 ±"))).isEqualTo(drawn.p10Error());
      assertThat(number(table.get(row, "P50 ±"))).isEqualTo(drawn.p50Error());
      assertThat(number(table.get(row, "P90 ±"))).isEqualTo(drawn.p90Error());
    }
  }

  @Test
  void sales_bySeason_areThoseOfTheDrawsBesideThePlansLine() {
    Cells sales = table("Chances", "chance-sales");
    SeasonFigures figures = context.seasons();

    assertThat(sales.rows()).hasSize(4);
    for (int season = 0; season < 4; season++) {
      List<Object> row = sales.row("season", horizon.seasonLabel(season));
      assertQuantiles(sales, row, figures.money(season), chances.sales().get(season), false);
    }
  }

  @Test
  void unitsAndStock_byGrade_standOnTheirLadder() {
    Cells units = table("Chances", "chance-units");
    SeasonFigures figures = context.seasons();
    GradeName shelf = new GradeName("shelf", "large");
    int grade = figures.grades().indexOf("shelf", 1);
    String label = horizon.seasonLabel(1);

    List<Object> row =
        units
            .rows(
                each ->
                    label.equals(units.get(each, "season"))
                        && "large (shelf)".equals(units.get(each, "grade")))
            .get(0);
    assertQuantiles(
        units, row, figures.sold(grade, 1).exact(), chances.units().get(shelf).get(1), false);
    Cells stock = table("Chances", "chance-stock");
    assertThat(stock.sum("mean"))
        .isCloseTo(
            chances.stock().values().stream()
                .flatMap(List::stream)
                .mapToDouble(Quantiles::mean)
                .sum(),
            within(1e-6));
  }

  @Test
  void space_onTheSheet_isTheTightestMonthOfThoseInTheLongTable() {
    Cells sheet = table("Chances", "chance-space");
    Cells months = extra("chance-space-months");

    assertThat(months.rows()).hasSize(5 * horizon.months());
    for (List<Object> row : sheet.rows()) {
      String place = (String) sheet.get(row, "place");
      double over = number(sheet.get(row, "P90")) - number(sheet.get(row, "there"));
      List<List<Object>> others =
          months.rows(
              each ->
                  place.equals(months.get(each, "place"))
                      && horizon
                          .seasonLabel(horizon.season(horizon.offset(month(months, each))))
                          .equals(sheet.get(row, "season")));
      double most =
          others.stream()
              .mapToDouble(
                  each -> number(months.get(each, "P90")) - number(months.get(each, "there")))
              .max()
              .orElseThrow();
      assertThat(over).isEqualTo(most);
    }
    for (List<Object> row : months.rows()) {
      String place = (String) months.get(row, "place");
      int month = horizon.offset(month(months, row));
      double plan = context.accounts().space().months(Optional.of(place)).get(month).neededM2();
      assertQuantiles(months, row, plan, chances.space().get(place).get(month), true);
      assertThat(number(months.get(row, "chance that it overflows")))
          .isEqualTo(chances.chanceOfOverflow().get(place)[month]);
    }
  }

  private static YearMonth month(Cells table, List<Object> row) {
    return (YearMonth) table.get(row, "month");
  }

  @Test
  void hours_byMonth_haveTheChanceThatTheyDoNotSuffice() {
    Cells hours = table("Chances", "chance-hours");

    for (List<Object> row : hours.rows()) {
      int month = horizon.offset(month(hours, row));
      assertQuantiles(
          hours, row, context.accounts().hours().needed(month), chances.hours().get(month), false);
      assertThat(number(hours.get(row, "available"))).isEqualTo(45);
      assertThat(number(hours.get(row, "chance that they do not suffice")))
          .isEqualTo(chances.chanceOfShortHours()[month]);
    }
    assertThat(hours.sum("mean"))
        .isCloseTo(chances.hours().stream().mapToDouble(Quantiles::mean).sum(), within(1e-6));
  }

  @Test
  void cashAndLots_areThoseOfTheDraws() {
    Cells months = extra("chance-cash-months");
    double[] balances = context.accounts().cash().balances();
    assertThat(months.rows()).hasSize(balances.length);
    for (int month = 0; month < balances.length; month++) {
      assertQuantiles(
          months, months.rows().get(month), balances[month], chances.cash().get(month), true);
    }
    Cells lots = table("Chances", "chance-lots");
    assertThat(lots.rows()).hasSize(4);
    for (List<Object> row : lots.rows()) {
      String lot = (String) lots.get(row, "lot");
      double plan = context.accounts().lot(lot).result();
      assertQuantiles(lots, row, plan, chances.lotResults().get(lot), false);
    }
  }

  @Test
  void longTable_ofQuantiles_hasEverySeasonGradeMonthAndLot() {
    Cells all = extra("chance-quantiles");

    int seasons = 4;
    int grades = 5;
    assertThat(all.rows()).hasSize(seasons * (1 + 2 * grades) + horizon.months() + 4);
    List<Object> last = all.rows().get(all.rows().size() - 1);
    assertThat(last.subList(0, 3)).isEqualTo(Arrays.asList("result", "ridge lot", null));
    assertQuantiles(
        all,
        last,
        context.accounts().lot("ridge lot").result(),
        chances.lotResults().get("ridge lot"),
        true);
  }

  @Test
  void verdicts_agreeWithTheGamble() {
    Gamble gamble = chances.gambles().get(0);
    Cells verdicts = table("Lots bought", "lot-verdicts");
    List<Object> row = verdicts.row("lot", "ridge lot");

    assertThat(verdicts.get(row, "verdict"))
        .isEqualTo(new VerdictWords(context, gamble).verdict().toString());
    assertThat(verdicts.get(row, "plan's line")).isEqualTo(gamble.bought().presentValue());
    assertThat(verdicts.get(row, "mean gain")).isEqualTo(gamble.gain().mean());
    assertThat(verdicts.get(row, "P10")).isEqualTo(gamble.gain().p10());
    assertThat(verdicts.get(row, "P90")).isEqualTo(gamble.gain().p90());
    assertThat(verdicts.get(row, "chance that it pays")).isEqualTo(gamble.chancePays());
    assertThat(verdicts.get(row, "chance to lose over a tenth"))
        .isEqualTo(gamble.chanceLosesTenth());
    Cells limits = table("Lots bought in full", "lot-break-evens");
    List<Object> limit = limits.row("lot", "ridge lot");
    assertThat(number(limits.get(limit, "most landed, each")) * 80)
        .isCloseTo(80 * gamble.mostLandedEach().orElseThrow(), within(1e-6));
    Cells returns = table("Lots bought in full", "lot-returns");
    List<Object> back = returns.row("lot", "ridge lot");
    assertThat(returns.get(back, "rate asked, a year")).isEqualTo(0.05);
    assertThat(returns.get(back, "taken to fail as a whole")).isEqualTo(0.02);
    assertThat(returns.get(back, "back, chance 50 %"))
        .isEqualTo(
            gamble.paidBackEven().isPresent()
                ? horizon.month(gamble.paidBackEven().getAsInt())
                : null);
  }

  @Test
  void summary_everySentence_hasFortyWordsAtMost() {
    List<String> sentences =
        sheet(report, "Summary").sentences().stream()
            .flatMap(each -> Stream.of(each.split("(?<=[.;:]) (?=[A-Z])")))
            .toList();

    assertThat(sentences).hasSizeGreaterThan(8);
    assertThat(sentences)
        .allSatisfy(each -> assertThat(each.split(" ")).as(each).hasSizeLessThanOrEqualTo(40));
  }

  @Test
  void verdictSheetAndSummary_sayTheSameSentence() {
    String sentence = new VerdictWords(context, chances.gambles().get(0)).sentence();

    assertThat(sheet(report, "Lots bought").sentences()).contains(sentence, Sentences.WITHOUT_VAT);
    assertThat(sheet(report, "Summary").sentences())
        .containsAll(new VerdictWords(context, chances.gambles().get(0)).brief());
  }

  @Test
  void answers_ofThePage_sayHowSureItIsAndWhetherTheLotPays() {
    String sentence = new VerdictWords(context, chances.gambles().get(0)).sentence();

    assertThat(report.answers())
        .filteredOn(answer -> answer.question().equals("Do the bought lots pay"))
        .allMatch(answer -> answer.sentences().contains(sentence))
        .hasSize(1);
    assertThat(report.answers())
        .filteredOn(answer -> answer.question().equals("How sure is it"))
        .allMatch(
            answer ->
                sheet(report, "Chances").sentences().containsAll(answer.sentences())
                    && !answer.how().isEmpty())
        .hasSize(1);
  }

  @Test
  void swings_ofTheLot_areWidestFirstInTableAndChart() {
    Cells swings = table("Swings", "swings");
    Gamble gamble = chances.gambles().get(0);
    Chart chart = chart("swings");

    assertThat(swings.rows()).hasSameSizeAs(gamble.swings());
    assertThat(swings.all("assumption"))
        .contains("share of firsts", "first-year loss of this consignment");
    List<Double> widths = swings.all("moves it by").stream().map(w -> number(w)).toList();
    assertThat(widths).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(chart.kind()).isEqualTo(ChartKind.SWINGS);
    assertThat(chart.series())
        .extracting(Series::name)
        .containsExactly("at P10", "at P90", "if it fails", "plan's line");
    int failure = swings.all("assumption").indexOf("the whole consignment fails");
    for (int i = 0; i < gamble.swings().size(); i++) {
      assertThat(chart.series().get(0).values().get(i))
          .isEqualTo(i == failure ? Double.NaN : swings.all("gain at P10").get(i));
      assertThat(chart.series().get(1).values().get(i))
          .isEqualTo(i == failure ? Double.NaN : swings.all("gain at P90").get(i));
      assertThat(chart.series().get(2).values().get(i))
          .isEqualTo(i == failure ? swings.all("gain at P10").get(i) : Double.NaN);
    }
    assertThat(chart.series().get(2).role()).isEqualTo(Role.EVENT);
    assertThat(chart.series().get(3).values())
        .allMatch(value -> value == gamble.bought().presentValue());
    assertThat(chart.categories())
        .anyMatch(row -> row.matches("share of firsts \\(\\d+ %, \\d+ %\\)"))
        .contains("the whole consignment fails (chance 2 %)");
  }

  @Test
  void gains_inClasses_addUpToAHundredDrawsAndPartAtNil() {
    Chart chart = chart("lot-gains");
    Gamble gamble = chances.gambles().get(0);

    double paying = sum(chart, "pays");
    double losing = sum(chart, "does not pay");
    assertThat(paying + losing).isCloseTo(100, within(1e-9));
    assertThat(paying).isCloseTo(100 * gamble.chancePays(), within(1e-9));
    assertThat(chart.categories()).doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(19);
    assertThat(sheet(report, "Lots bought").charts()).containsExactly("lot-endings");
    assertThat(sheet(report, "Chances").charts()).containsExactly("lot-gains");
  }

  @Test
  void gains_haveMeanAndTenthsMarkedWhereTheyLie() {
    Chart chart = chart("lot-gains");
    Gamble gamble = chances.gambles().get(0);
    double first = edge(chart, 0);
    double step = edge(chart, 1) - first;

    assertThat(chart.marks()).allMatch(each -> each.kind() == MarkKind.UPRIGHT);
    assertThat(chart.marks())
        .extracting(Mark::label)
        .containsExactly(
            "mean " + Phrases.PLAIN.whole(gamble.gain().mean()),
            "P10 " + Phrases.PLAIN.whole(gamble.gain().p10()),
            "P90 " + Phrases.PLAIN.whole(gamble.gain().p90()));
    assertThat(first + step * chart.marks().get(0).at())
        .isCloseTo(gamble.gain().mean(), within(1e-6));
    assertThat(first + step * chart.marks().get(2).at())
        .isCloseTo(gamble.gain().p90(), within(1e-6));
  }

  private static double edge(Chart chart, int place) {
    return Double.parseDouble(chart.categories().get(place).replace(",", ""));
  }

  private static double sum(Chart chart, String name) {
    return chart.series().stream()
        .filter(each -> each.name().equals(name))
        .flatMap(each -> each.values().stream())
        .filter(value -> !value.isNaN())
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  @Test
  void fans_onSalesCashAndSpace_areTheQuantilesOfTheDraws() {
    String panel = chart("sales-by-season").series().get(0).group();
    assertThat(edge("sales-by-season", Role.HIGH, panel))
        .isEqualTo(chances.sales().stream().map(Quantiles::p90).toList());
    assertThat(edge("cash", Role.LOW, ""))
        .isEqualTo(chances.cash().stream().map(Quantiles::p10).toList());
    assertThat(edge("bench-space", Role.HIGH, "cold tunnel"))
        .isEqualTo(chances.space().get("cold tunnel").stream().map(Quantiles::p90).toList());
    assertThat(chart("cash").series()).extracting(Series::name).contains("plan's line");
  }

  private static List<Double> edge(String chart, Role role, String group) {
    return chart(chart).series().stream()
        .filter(each -> each.role() == role && each.group().equals(group))
        .findFirst()
        .orElseThrow()
        .values();
  }

  @Test
  void sentences_sayThePlansLineIsNotTheMean() {
    assertThat(sheet(report, "Chances").sentences())
        .anyMatch(
            each -> each.startsWith("120 draws of growth, losses, the quality of unseen lots"))
        .anyMatch(
            each ->
                each.startsWith(
                    "The plan's line is what comes of every assumption as stated"
                        + "; it is not the mean. Where demand binds the mean lies below it"))
        .anyMatch(each -> each.startsWith("Cold tunnel is the tightest place: in "))
        .anyMatch(each -> each.startsWith("Hours are tightest in "))
        .contains(Sentences.WITHOUT_VAT)
        .noneMatch(each -> each.contains("too few"));
  }

  @Test
  void headlines_nameTheOddsWithinTheirWidth() {
    assertThat(report.headlines())
        .anyMatch(line -> line.startsWith("Ridge lot pays in ") && line.contains("(P10 to P90)"))
        .anyMatch(line -> line.startsWith("At worst: "))
        .noneMatch(line -> line.contains("you can pay"))
        .allMatch(line -> line.length() <= Headlines.WIDTH);
  }

  @Test
  void headlines_nameThePlaceThatOverflowsMostOften() {
    double[] surest = {0};
    chances
        .chanceOfOverflow()
        .values()
        .forEach(each -> surest[0] = Math.max(surest[0], Arrays.stream(each).max().getAsDouble()));
    assertThat(surest[0]).isPositive();
    assertThat(report.headlines())
        .anyMatch(
            line ->
                line.startsWith("At worst: ")
                    && line.contains(" overflows " + Odds.in(surest[0], chances.draws())));
  }

  @Test
  void cash_thatKeepsToItsLimitOnThePlansLineOnly_saysHowOftenItDoesNot() {
    Nurseries stock = MapleNursery.nursery().lots(MapleNursery.stock());
    CashFlow cash = Accounts.of(Projector.project(stock.scenario())).cash();
    double lowest = cash.balances()[cash.lowestMonth()];
    Scenario justKept = stock.lowestCash(Math.floor(lowest) - 1).scenario();

    Report drawn = MapleNursery.report(MapleNursery.drawn(justKept, 60));
    assertThat(sheet(drawn, "Cash").sentences().get(0))
        .containsPattern(
            ", on the plan's line never below the GBP .* allowed, but in \\d+ of 60 draws in some"
                + " month; ");
    assertThat(sheet(MapleNursery.report(justKept), "Cash").sentences().get(0))
        .containsPattern(", at GBP [0-9,-]+, never below the GBP [0-9,-]+ allowed; ");
  }

  @Test
  void report_withoutDraws_showsNothingOfChances() {
    Report plain = MapleNursery.report(MapleNursery.scenario());

    assertThat(plain.sheets().stream().filter(each -> NAMES.contains(each.name())))
        .hasSize(2)
        .allMatch(Sheet::isEmpty);
    assertThat(sheet(plain, "Lots bought").tables())
        .extracting(Table::name)
        .containsExactly("bought-lots", "bought-lot-limits");
    assertThat(plain.extra()).noneMatch(each -> each.name().startsWith("chance"));
    assertThat(plain.charts().stream().flatMap(each -> each.series().stream()))
        .noneMatch(each -> each.role() == Role.LOW || each.role() == Role.HIGH);
    assertThat(plain.charts())
        .extracting(Chart::name)
        .noneMatch(name -> name.startsWith("lot-gains") || name.startsWith("swings"));
    assertThat(plain.headlines()).noneMatch(line -> line.contains("draws"));
  }

  @Test
  void report_withDrawsAndNothingBought_hasNoVerdictsAndNoSwings() {
    Scenario scenario = MapleNursery.nursery().lots(MapleNursery.stock()).scenario();

    Report stock = MapleNursery.report(MapleNursery.drawn(scenario, 3));

    assertThat(sheet(stock, "Chances").isEmpty()).isFalse();
    assertThat(sheet(stock, "Lots bought").isEmpty()).isTrue();
    assertThat(sheet(stock, "Swings").isEmpty()).isTrue();
    assertThat(stock.headlines()).anyMatch(line -> line.startsWith("At worst: "));
    assertThat(sheet(stock, "Chances").sentences())
        .contains(
            "3 draws are too few to tell: with fewer than 100, chances and quantiles change much"
                + " with the seed. Ask for 1,000 (--draws 1000).");
  }

  @Test
  void report_ofOneDraw_isWhole() {
    Report one = MapleNursery.report(MapleNursery.drawn(MapleNursery.scenario(), 1));

    assertThat(sheet(one, "Chances").sentences())
        .anyMatch(each -> each.startsWith("1 draw is too few to tell: "));
    assertThat(one.headlines())
        .anyMatch(
            line ->
                line.matches(
                    "Ridge lot pays (not )?in the one draw made: .*; too few draws to tell\\."));
    Chart gains =
        one.charts().stream().filter(each -> each.name().equals("lot-gains")).findFirst().get();
    assertThat(gains.series()).hasSize(1);
  }

  @Test
  void report_withoutPlacesHoursOrLots_saysNothingOfThem() {
    Nurseries bare = Nurseries.bare();
    Report none = MapleNursery.report(MapleNursery.drawn(bare.scenario(), 5));
    assertThat(sheet(none, "Chances").isEmpty()).isTrue();

    Nurseries ash =
        Nurseries.bare().lot(Lots.lot("ash 26").plantsPerM2(8).build()).sellsAll("one", "any", 10);
    Report placeless = MapleNursery.report(MapleNursery.drawn(ash.scenario(), 5));
    Sheet chances = sheet(placeless, "Chances");
    assertThat(Stream.of("chance-space", "chance-hours"))
        .noneMatch(name -> chances.tables().stream().anyMatch(each -> each.name().equals(name)));
    assertThat(chances.sentences())
        .noneMatch(each -> each.contains("tightest") || each.contains("Cash falls"));
    assertThat(placeless.headlines()).noneMatch(line -> line.startsWith("At worst"));
  }
}
