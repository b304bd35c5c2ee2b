package growingon.report.edition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import growingon.load.FrozenReader;
import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.nursery.Inputs;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.plan.Planned;
import growingon.report.Cells;
import growingon.report.compare.CompareReport.Side;
import growingon.report.model.Audience;
import growingon.report.model.Chart;
import growingon.report.model.Column;
import growingon.report.model.Kind;
import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.review.LotReview;
import growingon.review.Review;
import growingon.review.bought.BoughtReview;
import growingon.review.kept.KeptPlan;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a partner or a bank could reckon out of a review or of two plans set side by side. */
class LookingBackSecretsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 3);
  private static final int DRAWS = 100;

  private static Inputs reviewed;
  private static Review review;
  private static Side before;
  private static Side after;

  @BeforeAll
  static void lookAtDemonstration() {
    reviewed = read("two-seasons-on");
    Optional<KeptPlan> kept =
        FrozenReader.read(Path.of("plans", "kept", "two seasons on-2022-11.json"), KeptPlan.class)
            .value();
    review = Review.of(reviewed, YearMonth.from(TODAY), kept);
    before = side("as-it-stands");
    after = side("with-the-field-lot");
  }

  private static Inputs read(String plan) {
    return Loader.load(Path.of("plans", plan + ".json"), new LoadOptions(TODAY))
        .value()
        .orElseThrow();
  }

  private static Side side(String plan) {
    Inputs read = read(plan);
    Inputs inputs = read.withPlan(read.scenario().plan().withDraws(DRAWS));
    Planned drawn = Planned.drawn(inputs, new Planned.Drawing(false, 2, phase -> {}));
    return new Side(inputs.scenario().plan().name(), drawn, List.of());
  }

  private static Report review(Audience audience) {
    return Edition.lookingBack(audience).review(reviewed, review);
  }

  private static Report compare(Audience audience) {
    return Edition.lookingBack(audience).compare(before, after);
  }

  private static List<Table> tables(Report report) {
    return report.sheets().stream().flatMap(sheet -> sheet.tables().stream()).toList();
  }

  private static String text(Report report) {
    StringBuilder text = new StringBuilder(report.plan());
    report.headlines().forEach(text::append);
    report.answers().forEach(answer -> text.append(answer.sentences()));
    for (Sheet sheet : report.sheets()) {
      text.append(sheet.name()).append(sheet.sentences());
      sheet.tables().forEach(table -> text.append(table.title()).append(table.rows()));
    }
    return text.toString();
  }

  private static Set<String> names(Inputs inputs) {
    Set<String> names = new LinkedHashSet<>();
    inputs.scenario().lots().forEach(lot -> addNames(lot, names));
    inputs.offers().forEach(offer -> addNames(offer.lot(), names));
    inputs.daybook().forEach(line -> names.add(line.lot()));
    inputs.daybook().forEach(line -> names.add(line.reason()));
    names.remove("");
    return names;
  }

  private static void addNames(Lot lot, Set<String> names) {
    names.add(lot.name());
    names.add(lot.papers().supplier());
    names.add(lot.papers().passport());
  }

  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void noLotSupplierPassportOrReason_isNamed(Audience audience) {
    String text = text(review(audience)) + text(compare(audience));

    assertThat(names(reviewed)).hasSizeGreaterThan(10).noneMatch(text::contains);
    assertThat(names(after.inputs())).noneMatch(text::contains);
    assertThat(review(audience).problems()).isEmpty();
    assertThat(compare(audience).problems()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void hours_standNowhere(Audience audience) {
    for (Report report : List.of(review(audience), compare(audience))) {
      assertThat(tables(report))
          .flatExtracting(Table::columns)
          .extracting(Column::kind)
          .doesNotContain(Kind.HOURS);
      assertThat(text(report)).doesNotContain("hourly");
    }
  }

  /** Even who knows the hours of each lot finds no price of an hour in its money. */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void moneyOfLots_overTheirHours_isNoRate(Audience audience) {
    Settings settings = reviewed.scenario().nursery().settings();
    Map<Object, Double> hours = new LinkedHashMap<>();
    List<LotReview> lots = review.lots();
    for (int i = 0; i < lots.size(); i++) {
      hours.put(i, lots.get(i).hours().real());
    }
    int compared = 0;
    for (Table table : tables(review(audience))) {
      for (int column = 0; column < table.columns().size(); column++) {
        if (table.columns().get(column).kind() == Kind.MONEY
            && table.inFull().size() == lots.size()) {
          Map<Object, Double> money = new LinkedHashMap<>();
          for (int i = 0; i < lots.size(); i++) {
            money.put(i, ((Number) table.inFull().get(i).get(column)).doubleValue());
          }
          compared++;
          for (double rate :
              new double[] {settings.hourlyRate(), settings.hourlyRate() * settings.paidShare()}) {
            assertThat(EditionSecretsTest.isSlope(money, hours, rate)).isFalse();
            assertThat(EditionSecretsTest.isQuotient(money, hours, rate)).isFalse();
          }
        }
      }
    }
    assertThat(compared).isEqualTo(audience == Audience.PARTNER ? 3 : 0);
  }

  /**
   * Every amount, every difference of two of one column and what those of sales add up to, against
   * what a bought lot cost: whole, its plants alone, its carriage and charges alone.
   */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void noAmountOfAPlanSetBesideAnother_overTheNumberOfABoughtLot_isItsPrice(Audience audience) {
    List<Double> amounts = new ArrayList<>();
    for (Table table : tables(compare(audience))) {
      if (table.name().equals("cash-limit")) {
        continue;
      }
      for (int column = 0; column < table.columns().size(); column++) {
        if (table.columns().get(column).kind() == Kind.MONEY) {
          List<Double> found = differences(table, column);
          amounts.addAll(found);
          double sum = 0;
          // Quantiles of seasons do not add up.
          boolean addsUp = table.columns().get(column).key().equals("sales");
          for (double each : addsUp ? found : List.<Double>of()) {
            sum += each;
            amounts.add(sum);
          }
        }
      }
    }
    List<Lot> bought =
        after.inputs().scenario().lots().stream()
            .filter(lot -> lot.purchase().isPresent())
            .toList();
    assertThat(bought).isNotEmpty();
    assertThat(text(compare(audience))).doesNotContain("lowest cash is");
    for (Lot lot : bought) {
      double landed = lot.purchase().orElseThrow().landed(lot.quantity());
      assertThat(lowest(after) - lowest(before))
          .as("what would tell the price: the lowest cash of both")
          .isNegative();
      double plants = lot.purchase().orElseThrow().unitPrice() * lot.quantity();
      for (double part : new double[] {landed, plants, landed - plants}) {
        assertThat(part).isPositive();
        assertThat(amounts)
            .isNotEmpty()
            .noneMatch(each -> Math.abs(Math.abs(each) - part) < 0.02 * part);
      }
    }
  }

  /** The same season of the second plan less that of the first, or the difference that is shown. */
  private static List<Double> differences(Table table, int column) {
    List<Double> all = new ArrayList<>();
    List<List<Object>> rows = table.inFull();
    boolean isByPlan = table.columns().get(0).key().equals("plan");
    int half = rows.size() / 2;
    for (int row = 0; row < (isByPlan ? half : rows.size()); row++) {
      Object cell = rows.get(row).get(column);
      Object other = isByPlan ? rows.get(row + half).get(column) : null;
      double value = cell instanceof Number number ? number.doubleValue() : 0;
      double second = other instanceof Number number ? number.doubleValue() : 0;
      all.add(isByPlan ? second - value : value);
    }
    return all;
  }

  /** What stands in the charts of a partner: plants and space. */
  @Test
  void chartsOfPlansSetBesideAnother_areOfPlantsAndSpace_andNoneForABank() {
    Report partner = compare(Audience.PARTNER);
    assertThat(partner.charts())
        .extracting(Chart::name, Chart::unit)
        .containsExactly(tuple("plants-standing", "plants"), tuple("bench-space", "m²"));
    assertThat(partner.sheets().get(0).charts()).containsExactly("plants-standing", "bench-space");
    for (Side side : List.of(before, after)) {
      assertThat(partner.charts())
          .allSatisfy(
              chart ->
                  assertThat(chart.series())
                      .filteredOn(series -> series.name().equals(side.label()))
                      .hasSize(1));
    }
    assertThat(compare(Audience.BANK).charts()).isEmpty();
  }

  private static double lowest(Side side) {
    return side.accounts().cash().balances()[side.accounts().cash().lowestMonth()];
  }

  /** Who cannot know whether plants were sold is not told that their money does not come back. */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void lotWithPlantsGoneWithoutALine_isSaidToRestOnThem(Audience audience) {
    Loader.WithPast read =
        Loader.loadWithPast(
                Path.of("plans", "without-a-daybook.json"), new LoadOptions(TODAY).lookingBack())
            .value()
            .orElseThrow();
    Review lists =
        Review.of(read.inputs(), read.past(), YearMonth.from(TODAY), Optional.empty(), 2);

    assertThat(text(Edition.lookingBack(audience).review(read.inputs(), lists)))
        .contains(
            " is undecided; no line says what became of some of its plants, and without them its money"
                + " does not come back within the plan (planned: Aug 2024).");
  }

  @Test
  void partnersLuck_saysHowManyLuckAloneBrings() {
    assertThat(review(Audience.PARTNER).sheets())
        .filteredOn(sheet -> sheet.name().equals("Luck"))
        .flatExtracting(Sheet::sentences)
        .containsExactly(
            "8 of 15 figures judged are more than luck.",
            "Lots have good and bad seasons together: in nine of ten draws luck alone put 0 to 6 of"
                + " them outside; so many are more than luck.");
  }

  /** Result of lots less what no lot costs is the result of the grower's own summary. */
  @Test
  void banksTotals_tellOfTheCostsOfNoLot() {
    Cells totals = Cells.of(review(Audience.BANK).sheets().get(0), "so-far");

    assertThat(totals.all("what"))
        .endsWith("result of all lots", "costs of no lot, less its receipts", "result");
    assertThat(totals.get(totals.row("what", "costs of no lot, less its receipts"), "real"))
        .isEqualTo(315L);
    assertThat(totals.get(totals.row("what", "result"), "real")).isEqualTo(-1805L);
  }

  /** The word of each bought lot stands on the first page, equal to the grower's own. */
  @ParameterizedTest
  @EnumSource(
      value = Audience.class,
      names = {"PARTNER", "BANK"})
  void firstPage_saysWhetherEachBoughtLotPaid(Audience audience) {
    List<String> first = review(audience).sheets().get(0).sentences();

    assertThat(review.bought()).hasSize(3);
    for (BoughtReview each : review.bought()) {
      assertThat(first).anyMatch(line -> line.contains(" " + each.verdict().kind() + "; "));
    }
  }
}
