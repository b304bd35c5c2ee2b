package growingon.report.plan.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.Accounts;
import growingon.money.CashFlow;
import growingon.money.CashItem;
import growingon.nursery.route.Step;
import growingon.nursery.time.Horizon;
import growingon.problem.MarkedText;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.project.lot.LotHistory;
import growingon.project.need.HoursUse;
import growingon.project.need.SpaceUse.PlaceMonth;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.figures.SeasonFigures;
import growingon.report.model.Book;
import growingon.report.model.Chart;
import growingon.report.model.Chart.Series;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.plan.PlanReport;
import growingon.report.text.Phrases;
import growingon.report.text.Plants;
import growingon.report.text.Shown;
import growingon.report.words.Headlines;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The tables and charts of a report agree with each other and with the accounts. */
class FiguresTest {
  private static final double CENT = 0.005;

  private static Context context;
  private static Accounts accounts;
  private static Horizon horizon;
  private static Report report;

  @BeforeAll
  static void makeReport() {
    context = MapleNursery.context(MapleNursery.scenario());
    accounts = context.accounts();
    horizon = accounts.projection().horizon();
    report = PlanReport.of(context.plan(), List.of());
  }

  private static Stream<Table> tables() {
    return Stream.concat(
            report.sheets().stream().flatMap(sheet -> sheet.tables().stream()),
            report.extra().stream())
        .distinct();
  }

  private static Table table(String name) {
    return tables().filter(table -> table.name().equals(name)).findFirst().orElseThrow();
  }

  private static int column(Table table, String key) {
    List<String> keys = table.columns().stream().map(Column::key).toList();
    assertThat(keys).contains(key);
    return keys.indexOf(key);
  }

  private static double number(Object cell) {
    if (cell instanceof Shown number) {
      return number.exact();
    }
    return cell instanceof Plants plants ? plants.exact() : ((Number) cell).doubleValue();
  }

  private static double[] values(Table table, String key) {
    int column = column(table, key);
    return table.inFull().stream()
        .map(row -> row.get(column))
        .filter(cell -> cell != null)
        .mapToDouble(FiguresTest::number)
        .toArray();
  }

  private static double[] shown(Table table, String key) {
    int column = column(table, key);
    return table.rows().stream()
        .map(row -> row.get(column))
        .mapToDouble(cell -> cell instanceof Plants p ? p.whole() : number(cell))
        .toArray();
  }

  private static double total(String table, String key) {
    return Arrays.stream(values(table(table), key)).sum();
  }

  private static long wholeTotal(String table, String key) {
    Table found = table(table);
    int column = column(found, key);
    return found.rows().stream().mapToLong(row -> ((Plants) row.get(column)).whole()).sum();
  }

  @Test
  void sales_areTheSameInEveryTable_toTheCent() {
    double sales = accounts.cash().total(CashItem.SALES);
    assertThat(sales).isGreaterThan(1000);
    assertThat(total("seasons", "sales")).isEqualTo(sales, within(CENT));
    assertThat(total("cash-by-season", "sales")).isEqualTo(sales, within(CENT));
    assertThat(total("cash", "sales")).isEqualTo(sales, within(CENT));
    assertThat(total("lots-use", "sales")).isEqualTo(sales, within(CENT));
    assertThat(total("sales-lines", "money")).isEqualTo(sales, within(CENT));
    assertThat(total("line-of-life", "received")).isEqualTo(sales, within(CENT));
  }

  @Test
  void seasonSales_areTheMonthsOfTheCashFlow() {
    double[] seasons = values(table("seasons"), "sales");
    for (int season = 0; season < horizon.seasons(); season++) {
      double months = 0;
      int last = horizon.seasonLast(season);
      for (int month = horizon.seasonFirst(season); month <= last; month++) {
        months += accounts.cash().get(CashItem.SALES, month);
      }
      assertThat(seasons[season]).isEqualTo(months, within(CENT));
    }
  }

  @Test
  void cashLines_addUpToTheBalance() {
    CashFlow cash = accounts.cash();
    Table months = table("cash");
    double[] net = values(months, "net");
    double[] balance = values(months, "balance");
    double sum = cash.opening();
    for (int month = 0; month < cash.months(); month++) {
      sum += net[month];
      assertThat(balance[month]).isEqualTo(sum, within(CENT));
    }
    for (CashItem item : CashItem.values()) {
      String key = item.name().toLowerCase(Locale.ENGLISH);
      if (months.columns().stream().anyMatch(column -> column.key().equals(key))) {
        assertThat(total("cash", key)).isEqualTo(cash.total(item), within(CENT));
        assertThat(total("cash-by-season", key)).isEqualTo(cash.total(item), within(CENT));
      } else {
        assertThat(cash.total(item)).isZero();
      }
    }
  }

  @Test
  void seasonsOfCash_endAsTheMonthsDo() {
    double[] balances = accounts.cash().balances();
    double[] seasons = values(table("cash-by-season"), "balance");
    double[] summary = values(table("seasons"), "cash");
    for (int season = 0; season < horizon.seasons(); season++) {
      assertThat(seasons[season]).isEqualTo(balances[horizon.seasonLast(season)], within(CENT));
      assertThat(summary[season]).isEqualTo(seasons[season], within(CENT));
    }
  }

  @Test
  void lotsToCash_addUpToTheChangeOfCash() {
    double change = Arrays.stream(accounts.cash().flows()).sum();
    assertThat(total("reconciliation", "amount")).isEqualTo(change, within(CENT));
    assertThat(total("lots-use", "result"))
        .isEqualTo(number(table("reconciliation").rows().get(0).get(1)), within(CENT));
  }

  @Test
  void otherSheets_agreeWithTheseOnes() {
    CashFlow cash = accounts.cash();
    double sales = cash.total(CashItem.SALES);
    double bought =
        cash.total(CashItem.POTS) + cash.total(CashItem.SUBSTRATE) + cash.total(CashItem.MATERIALS);
    assertThat(total("sales-by-season", "receipts")).isEqualTo(sales, within(CENT));
    assertThat(total("sales", "receipts")).isEqualTo(sales, within(CENT));
    assertThat(total("lot-accounts", "sales")).isEqualTo(sales, within(CENT));
    assertThat(total("orders", "cost")).isEqualTo(-bought, within(CENT));
    assertThat(total("lot-accounts", "started")).isEqualTo(total("lots", "started"));
    SeasonFigures figures = context.seasons();
    Table saleable = table("saleable-by-season");
    List<Object> next =
        saleable.rows().stream()
            .filter(row -> row.get(0).equals(figures.label(figures.next())))
            .findFirst()
            .orElseThrow();
    assertThat(((Plants) next.get(column(saleable, "in_all"))).whole())
        .isEqualTo(figures.saleable(figures.next()).whole());
  }

  @Test
  void moneySheets_sayThatVatIsNotIn() {
    for (Sheet sheet : report.sheets()) {
      boolean money =
          sheet.tables().stream()
              .flatMap(table -> table.columns().stream())
              .anyMatch(column -> column.kind() == Kind.MONEY || column.kind() == Kind.MONEY_EACH);
      Stream<String> notes = sheet.tables().stream().flatMap(table -> table.notes().stream());
      boolean says =
          Stream.concat(sheet.sentences().stream(), notes)
              .anyMatch(sentence -> sentence.contains("without VAT"));
      assertThat(says || !money).as(sheet.name()).isTrue();
    }
  }

  @Test
  void sheets_areInTheOrderInWhichTheyAreRead() {
    assertThat(report.sheets().stream().map(Sheet::name))
        .containsExactly(
            "Summary",
            "Jobs",
            "Bench space",
            "To order",
            "Cash",
            "Lots bought",
            "Sales",
            "Notes",
            "Later jobs",
            "Bench space by month",
            "All orders",
            "Enquiries",
            "Cash by month",
            "Lots bought in full",
            "Sales in full",
            "Lots",
            "Chances",
            "Swings",
            "Stock by season",
            "Saleable",
            "Sell or hold",
            "Hours",
            "Pots",
            "Substrate",
            "Materials",
            "Weights",
            "Lot accounts",
            "Stock value",
            "Count sheet",
            "Wall sheet",
            "Labels",
            "Assumptions");
    assertThat(report.sheets().stream().filter(sheet -> sheet.book() == Book.PLAN))
        .extracting(Sheet::name)
        .endsWith("Notes")
        .hasSize(8);
  }

  @Test
  void plantsSold_addUpWholeAndExact() {
    double sold = accounts.lots().stream().mapToDouble(lot -> lot.sold()).sum();
    assertThat(total("seasons", "sold")).isEqualTo(sold, within(1e-6));
    assertThat(total("lots", "sold")).isEqualTo(sold, within(1e-6));
    assertThat(total("sales-lines", "units")).isEqualTo(sold, within(1e-6));
    long whole = wholeTotal("seasons", "sold");
    assertThat((double) whole).isCloseTo(sold, within(2.0));
    assertThat(wholeTotal("lots", "sold")).isEqualTo(whole);
  }

  @Test
  void lots_startedIsLostSoldAndStanding() {
    assertThat(total("lots", "lost") + total("lots", "sold") + total("lots", "standing"))
        .isEqualTo(total("lots", "started"), within(1e-6));
    double[] seasons = values(table("seasons"), "standing");
    assertThat(total("lots", "standing")).isEqualTo(seasons[seasons.length - 1], within(1e-6));
  }

  @Test
  void lotMonths_areTheHistories() {
    Table months = table("lot-months");
    int row = 0;
    for (LotHistory lot : accounts.projection().lots()) {
      for (int month = lot.start(); month < lot.months(); month++) {
        List<Object> cells = months.rows().get(row++);
        assertThat(cells.get(0)).isEqualTo(lot.lot().name());
        assertThat(cells.get(1)).isEqualTo(horizon.month(month));
        assertThat(number(cells.get(2))).isEqualTo(lot.standing(month));
      }
    }
    assertThat(row).isEqualTo(months.rows().size());
  }

  @Test
  void hours_byJobAddUpToTheMonthsAndSeasons() {
    HoursUse hours = accounts.hours();
    Table months = table("hours");
    for (int month = 0; month < horizon.months(); month++) {
      List<Object> row = months.rows().get(month);
      int needed = column(months, "needed");
      double jobs = 0;
      for (int job = 1; job < needed; job++) {
        jobs += number(row.get(job));
      }
      assertThat(jobs).isEqualTo(hours.needed(month), within(1e-9));
      assertThat(number(row.get(needed))).isEqualTo(hours.needed(month));
    }
    assertThat(total("hours-by-season", "needed"))
        .isEqualTo(total("hours", "needed"), within(1e-9));
    assertThat(total("hours-lines", "hours") + total("lot-months", "care"))
        .isEqualTo(total("hours", "needed"), within(1e-9));
    assertThat(total("lot-months", "care")).isGreaterThan(1);
    assertThat(total("hours-by-season", "short")).isEqualTo(total("hours", "short"), within(1e-9));
    assertThat(total("hours-short", "short_in_all"))
        .isEqualTo(total("hours", "short"), within(1e-9));
    assertThat(total("seasons", "hours_short")).isEqualTo(total("hours", "short"), within(1e-9));
    assertThat(total("hours", "short")).isGreaterThan(1);
  }

  @Test
  void jobs_beyondWhatFitsAcross_areAddedUp() {
    Nurseries nursery = Nurseries.bare();
    Step[] steps = new Step[12];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = Steps.onArrival("job " + i).minutes(i + 1).build();
    }
    nursery.route("busy", steps).lot(Lots.lot("a").route("busy").build());
    HoursUse hours = MapleNursery.context(nursery.scenario()).accounts().hours();
    Map<String, double[]> jobs = HoursSheet.mainJobs(hours, 1);
    assertThat(jobs.keySet())
        .containsExactly(
            "job 5", "job 6", "job 7", "job 8", "job 9", "job 10", "job 11", "other work");
    assertThat(jobs.values().stream().mapToDouble(job -> job[0]).sum())
        .isEqualTo(hours.needed(0), within(1e-9));
  }

  @Test
  void roomLeft_isThereLessNeeded() {
    Table room = table("room-left");
    for (Optional<String> place : accounts.space().places()) {
      double[] left = values(room, place.orElse("without a place").replace(' ', '_'));
      for (PlaceMonth month : accounts.space().months(place)) {
        assertThat(left[month.month()])
            .isEqualTo(month.roomM2() - month.overflowM2(), within(1e-9));
      }
    }
  }

  @Test
  void overflow_isNamedWhereverItShows() {
    Table overflow = table("space-overflow");
    long months = 0;
    for (List<Object> row : overflow.rows()) {
      YearMonth from = (YearMonth) row.get(column(overflow, "from"));
      YearMonth to = (YearMonth) row.get(column(overflow, "to"));
      months += horizon.offset(to) - horizon.offset(from) + 1;
    }
    long over =
        accounts.space().places().stream()
            .flatMap(place -> accounts.space().months(place).stream())
            .filter(month -> month.overflowM2() > Phrases.NEGLIGIBLE)
            .count();
    assertThat(months).isEqualTo(over).isPositive();
    double most = Arrays.stream(values(overflow, "overflow")).max().getAsDouble();
    assertThat(Arrays.stream(values(table("seasons"), "overflow")).max().getAsDouble())
        .isEqualTo(most);
  }

  @Test
  void charts_showWhatTheTablesSay() {
    Map<String, Chart> charts = new HashMap<>();
    report.charts().forEach(chart -> charts.put(chart.name(), chart));
    assertThat(charts.keySet())
        .containsExactlyInAnyOrder(
            "bench-space",
            "hours",
            "pots",
            "substrate",
            "stock-by-grade",
            "sales-by-season",
            "lot-endings",
            "cash");
    double[] sales = shown(table("seasons"), "sales");
    double[] standing = shown(table("seasons"), "standing");
    double[] needed = values(table("hours"), "needed");
    double[] balance = values(table("cash"), "balance");
    assertThat(sum(charts.get("sales-by-season"))).containsExactly(sales, within(CENT));
    assertThat(sum(charts.get("stock-by-grade"))).containsExactly(standing, within(1e-6));
    assertThat(sum(charts.get("hours"))).containsExactly(needed, within(1e-9));
    assertThat(sum(charts.get("cash"))).containsExactly(balance, within(CENT));
  }

  private static double[] sum(Chart chart) {
    double[] sum = new double[chart.categories().size()];
    for (Series series : chart.series()) {
      for (int i = 0; series.role() == Chart.Role.VALUE && i < sum.length; i++) {
        sum[i] += series.values().get(i);
      }
    }
    return sum;
  }

  @Test
  void gradeColours_areTheSameInEveryChart() {
    Map<String, Integer> colours = new HashMap<>();
    for (Chart chart : report.charts()) {
      if (List.of("stock-by-grade", "sales-by-season").contains(chart.name())) {
        for (Series series : chart.series()) {
          String grade = series.name() + " of " + series.group();
          Integer before = colours.put(grade, series.colour());
          assertThat(before == null || before == series.colour()).isTrue();
        }
      }
    }
    assertThat(colours.keySet())
        .contains(
            "small of patio",
            "large of patio",
            "shelf of shelf",
            "large of shelf",
            "no grade yet of without a grade, or kept",
            "kept of without a grade, or kept");
    assertThat(colours.get("small of patio")).isNotEqualTo(colours.get("large of patio"));
  }

  @Test
  void names_areUniqueAndPlain() {
    List<String> names = tables().map(Table::name).toList();
    assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z0-9-]+"));
    tables()
        .forEach(
            table ->
                assertThat(table.columns().stream().map(Column::key).toList())
                    .as(table.name())
                    .doesNotHaveDuplicates());
    assertThat(report.sheets().stream().map(Sheet::name).toList()).doesNotHaveDuplicates();
  }

  @Test
  void chartsOnSheets_areInTheReport() {
    List<String> drawn = report.charts().stream().map(Chart::name).toList();
    List<String> placed =
        report.sheets().stream().flatMap(sheet -> sheet.charts().stream()).toList();
    assertThat(drawn).containsAll(placed);
    assertThat(placed).as("each stands on one sheet").doesNotHaveDuplicates();
  }

  @Test
  void cells_areOfTheirColumnsKind() {
    tables()
        .forEach(
            table -> {
              for (List<Object> row : table.rows()) {
                for (int i = 0; i < row.size(); i++) {
                  Column column = table.columns().get(i);
                  assertThat(fits(row.get(i), column.kind()))
                      .as(table.name() + " " + column.key() + " " + row.get(i))
                      .isTrue();
                }
              }
            });
  }

  private static boolean fits(Object cell, Kind kind) {
    if (cell == null) {
      return true;
    }
    return switch (kind) {
      case TEXT, LONG_TEXT ->
          (cell instanceof String || cell instanceof MarkedText) && !cell.toString().isEmpty();
      case MONTH -> cell instanceof YearMonth;
      case PLANTS -> cell instanceof Plants;
      case COUNT -> cell instanceof Integer || cell instanceof Long;
      case TO_FILL -> false;
      default -> cell instanceof Shown || cell instanceof Double number && Double.isFinite(number);
    };
  }

  @Test
  void headlines_whereFewFit_spareSalesBeforeWhatLacks_andBreakNoLine() {
    List<String> lines =
        List.of(
            "Plan.",
            "Saleable in 2027/28: 9 plants.",
            "Sold of them: 3 plants, for GBP 30.",
            "Expected sales: 2026/27 GBP 1,",
            "  and 2027/28 GBP 2.",
            "Does not fit: bench.",
            "Hours short: in May.",
            "Order by the end of May: nothing.");
    assertThat(Headlines.fewer(lines, 8)).isEqualTo(lines);
    assertThat(Headlines.fewer(lines, 6))
        .containsExactly(
            lines.get(0), lines.get(1), lines.get(2), lines.get(5), lines.get(6), lines.get(7));
    assertThat(Headlines.fewer(lines, 3)).containsExactly(lines.get(0), lines.get(1), lines.get(5));
    assertThat(Headlines.fewer(List.of("one,", "  two", "three"), 1)).isEmpty();
    assertThat(Headlines.fewer(lines, -2)).isEmpty();
  }

  @Test
  void headlines_fitALineAndSayWhatMatters() {
    assertThat(report.headlines()).allMatch(line -> line.length() <= Headlines.WIDTH);
    assertThat(report.headlines())
        .containsExactly(
            "Test nursery, test plan: Nov 2026 to Sep 2030, 4 lots, 440 plants.",
            "Saleable in 2026/27 from Nov: 167 plants; 102 are sold, for GBP 3,532.",
            "Saleable in 2027/28: 205 plants; 132 Field maple small, 66 Field maple large, 4 Rock pine"
                + " shelf and 3 others.",
            "Sold of them: 102 plants, for GBP 7,470, above all for Field maple large and Field maple"
                + " small.",
            "Expected sales: 2026/27 from Nov GBP 3,532, 2027/28 GBP 7,470, 2028/29 GBP 7,908 and"
                + " 2029/30 GBP 4,703.",
            "Does not fit: cold tunnel in 7 months (Nov–Mar) from Mar 2027 to Mar 2029, by up to 6.1"
                + " m² (Mar 2027).",
            "Hours short: in Mar 2027, by 16 hours.",
            "Potted in the next twelve months: 3 lots, 331 trees, 2,634 litres of mix.",
            "Order by the end of Dec 2026: 80 plants (ridge lot), GBP 1,380.",
            "Cash: lowest GBP 472 at the end of Mar 2027; GBP 13,932 at the end of the plan.",
            "Ridge lot pays: GBP 3,672 gained; you can pay GBP 63.52 a plant landed.");
  }
}
