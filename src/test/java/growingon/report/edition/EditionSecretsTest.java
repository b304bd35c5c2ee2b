package growingon.report.edition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.Chances;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.time.Horizon;
import growingon.plan.Planned;
import growingon.report.chart.Charts;
import growingon.report.model.Audience;
import growingon.report.model.Chart;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.report.text.Odds;
import growingon.report.text.Plants;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a partner or a bank could reckon out of the tables, and what they are told of risk. */
class EditionSecretsTest {
  private static final int DRAWS = 100;

  /** A slope that explains less tells nothing. */
  private static final double STABLE = 0.8;

  private static Inputs inputs;
  private static Planned whole;

  @BeforeAll
  static void drawDemonstration() {
    Inputs read =
        Loader.load(
                Path.of("plans", "with-the-field-lot.json"),
                new LoadOptions(LocalDate.of(2026, 11, 3)))
            .value()
            .orElseThrow();
    inputs = read.withPlan(read.scenario().plan().withDraws(DRAWS));
    whole = Planned.drawn(inputs, new Planned.Drawing(false, 2, phase -> {}));
  }

  private static Report edition(Audience audience) {
    Edition edition = new Edition(audience, false, false);
    return edition.report(Planned.weighed(edition.seen(inputs)), Optional.of(whole));
  }

  /**
   * What is not to be found: cost of an hour, whole and paid, and of a plant of each bought lot.
   */
  private static Map<String, Double> secrets() {
    Map<String, Double> secrets = new LinkedHashMap<>();
    Settings settings = inputs.scenario().nursery().settings();
    secrets.put("hourly rate", settings.hourlyRate());
    secrets.put("paid share of it", settings.hourlyRate() * settings.paidShare());
    for (Lot lot : inputs.scenario().lots()) {
      lot.purchase()
          .ifPresent(
              each -> {
                secrets.put("price of " + lot.name(), each.unitPrice());
                double landed = each.landed(lot.quantity()) / lot.quantity();
                secrets.put("landed price of " + lot.name(), landed);
              });
    }
    return secrets;
  }

  /** Each column of numbers of a table that goes by month or season, by what its rows go by. */
  private static Map<String, Map<Object, Double>> columns(Report report) {
    Map<String, Map<Object, Double>> columns = new LinkedHashMap<>();
    report.sheets().stream()
        .flatMap(sheet -> sheet.tables().stream())
        .filter(table -> goesByTime(table.columns().get(0).key()))
        .forEach(table -> add(table, columns));
    return columns;
  }

  private static boolean goesByTime(String key) {
    return key.equals("month") || key.equals("season");
  }

  private static void add(Table table, Map<String, Map<Object, Double>> columns) {
    for (int column = 1; column < table.columns().size(); column++) {
      String name = table.name() + ": " + table.columns().get(column).key();
      Map<Object, Double> values = new LinkedHashMap<>();
      for (List<Object> row : table.inFull()) {
        Object cell = row.get(column);
        double value =
            cell instanceof Plants plants
                ? plants.exact()
                : cell instanceof Number number ? number.doubleValue() : 0;
        values.merge(row.get(0), value, Double::sum);
      }
      columns.put(name, values);
    }
  }

  /** Hours stand nowhere, and what costs stands at one grain only where work stands at another. */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void hoursAndMoneyOfOneGrain_areNeverInOneEdition(Audience audience) {
    Report report = edition(audience);
    assertThat(report.sheets())
        .flatExtracting(Sheet::tables)
        .flatExtracting(Table::columns)
        .extracting(Column::kind)
        .doesNotContain(Kind.HOURS);
    assertThat(report.charts()).extracting(Chart::unit).doesNotContain("hours");
    Map<String, Map<Object, Double>> columns = columns(report);
    boolean workByMonth = columns.keySet().stream().anyMatch(name -> name.contains("work"));
    boolean costByMonth =
        columns.keySet().stream().anyMatch(name -> name.startsWith("cash: "))
            || hasCashChart(report);
    assertThat(workByMonth && costByMonth).isFalse();
    assertThat(workByMonth || costByMonth).isTrue();
  }

  private static boolean hasCashChart(Report report) {
    return report.charts().stream().anyMatch(chart -> chart.name().equals(Charts.CASH));
  }

  /** Even who knows the hours that stand behind the shares of work finds no price of an hour. */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void moneyOverHours_hasNoStableSlopeThatIsTheRate(Audience audience) {
    Map<Object, Double> bySeason = new LinkedHashMap<>();
    Map<Object, Double> byMonth = new LinkedHashMap<>();
    Horizon horizon = whole.accounts().projection().horizon();
    for (int month = 0; month < horizon.months(); month++) {
      double hours = whole.accounts().hours().needed(month);
      bySeason.merge(horizon.seasonLabel(horizon.season(month)), hours, Double::sum);
      byMonth.put(horizon.month(month), hours);
    }
    List<String> found = new ArrayList<>();
    Map<String, Double> secrets = secrets();
    columns(edition(audience))
        .forEach(
            (name, money) -> {
              if (isCost(name)) {
                for (String what : List.of("hourly rate", "paid share of it")) {
                  double secret = secrets.get(what);
                  boolean isFound =
                      isSlope(money, bySeason, secret) || isQuotient(money, bySeason, secret);
                  if (audience == Audience.PARTNER) {
                    isFound |=
                        isSlope(money, byMonth, secret) || isQuotient(money, byMonth, secret);
                  }
                  if (isFound) {
                    found.add(what + " by " + name);
                  }
                }
              }
            });
    assertThat(found).isEmpty();
  }

  private static boolean isCost(String name) {
    return name.startsWith("cash") && !name.endsWith(": sales");
  }

  /** The differences of one column over those of another: a stable slope that is the secret. */
  static boolean isSlope(Map<Object, Double> y, Map<Object, Double> x, double secret) {
    List<Object> keys = y.keySet().stream().filter(x::containsKey).toList();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 1; i < keys.size(); i++) {
      double dx = x.get(keys.get(i)) - x.get(keys.get(i - 1));
      double dy = y.get(keys.get(i)) - y.get(keys.get(i - 1));
      xx += dx * dx;
      xy += dx * dy;
      yy += dy * dy;
    }
    if (keys.size() < 4 || xx == 0 || yy == 0) {
      return false;
    }
    boolean isStable = xy * xy / (xx * yy) >= STABLE;
    return isStable && isNear(Math.abs(xy / xx), secret);
  }

  /** One column over another, the same in all rows but a few. */
  static boolean isQuotient(Map<Object, Double> y, Map<Object, Double> x, double secret) {
    List<Object> keys = y.keySet().stream().filter(x::containsKey).toList();
    List<Double> quotients = new ArrayList<>();
    for (Object key : keys) {
      if (x.get(key) != 0 && y.get(key) != 0) {
        quotients.add(Math.abs(y.get(key) / x.get(key)));
      }
    }
    long near = quotients.stream().filter(each -> isNear(each, secret)).count();
    return quotients.size() >= 4 && near >= STABLE * quotients.size();
  }

  static boolean isNear(double value, double secret) {
    return Math.abs(value - secret) <= 0.1 * secret;
  }

  /** Money of a season over the number of plants of a bought lot, which a partner sees. */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void noMoneyOverTheNumberOfABoughtLot_isItsPrice(Audience audience) {
    Map<String, Map<Object, Double>> columns = columns(edition(audience));
    Map<String, Double> secrets = secrets();
    for (Lot lot : inputs.scenario().lots()) {
      if (lot.purchase().isEmpty()) {
        continue;
      }
      Map<String, Double> found = new HashMap<>();
      columns.forEach(
          (name, values) -> {
            if (name.endsWith(": bought")) {
              values.forEach(
                  (when, money) -> found.put(name + " " + when, -money / lot.quantity()));
            }
          });
      assertThat(found.values())
          .noneMatch(each -> isNear(each, secrets.get("price of " + lot.name())))
          .noneMatch(each -> isNear(each, secrets.get("landed price of " + lot.name())));
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void firstPage_tellsTheChancesOfThePlan(Audience audience) {
    Chances chances = whole.chances().orElseThrow();
    List<String> first = edition(audience).sheets().get(0).sentences();

    assertThat(first)
        .anyMatch(
            each ->
                each.startsWith("Cash falls below")
                    && each.contains(Odds.in(chances.chanceBelowLowest().orElseThrow(), DRAWS)));
    chances
        .gambles()
        .forEach(
            gamble ->
                assertThat(first)
                    .anyMatch(
                        each -> each.contains("it pays " + Odds.in(gamble.chancePays(), DRAWS))));
    assertThat(first)
        .anyMatch(
            each ->
                each.startsWith("Cash at the end of 2031/32: GBP ")
                    && each.endsWith(" of the spread is not knowing how fast its trees grow."))
        .contains("Odds of bought lots hold both luck and what is not known.");
    assertThat(chances.gambles()).isNotEmpty();
    assertThat(chances.draws()).isCloseTo(DRAWS, within(0));
  }
}
