package growingon.review.kept;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.money.CostKind;
import growingon.nursery.time.Horizon;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.Month;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A plan kept in November 2026 for a season, asked by the months of a plan that starts in January
 * 2027: its month 0 is the third of the kept one. Values of the kept months are 1 to 12.
 */
class ExpectedTest {
  private static final YearMonth KEPT = YearMonth.of(2026, 11);
  private static final List<Double> MONTHS =
      IntStream.rangeClosed(1, 12).mapToObj(month -> (double) month).toList();
  private static final List<Double> NONE = Collections.nCopies(12, 0.0);

  private static KeptLot lot(boolean bought) {
    return KeptLot.named("elms", "elm")
        .bought(bought)
        .quantity(90)
        .living(MONTHS)
        .trunkMm(MONTHS)
        .trunkSpread(NONE)
        .sales(List.of(sale(1, 5, 50), sale(3, 7, 80), sale(4, 11, 100)))
        .hours(MONTHS)
        .costs(Map.of("pots", MONTHS))
        .result(MONTHS)
        .chances(
            new KeptChances(
                quantiles(10), quantiles(20), quantiles(30), NO_DRAWS, NO_DRAWS, NO_DRAWS))
        .build();
  }

  private static final KeptQuantiles NO_DRAWS = KeptQuantiles.NONE;

  private static KeptQuantiles quantiles(double more) {
    return new KeptQuantiles(
        MONTHS, MONTHS.stream().map(each -> each + more).toList(), Collections.nCopies(12, 99.0));
  }

  private static KeptSale sale(int month, double units, double money) {
    return new KeptSale(month, "started", "first", units, money);
  }

  private static KeptPlan plan(KeptLot lot) {
    return new KeptPlan(
        "kept",
        KEPT.toString(),
        1,
        0,
        1,
        List.of(lot),
        KeptChances.NONE,
        Optional.empty(),
        List.of());
  }

  private static Expected expected(KeptLot lot) {
    return new Expected(plan(lot), new Horizon(YearMonth.of(2027, 1), 2, Month.NOVEMBER));
  }

  @Test
  void value_isThatOfTheSameMonth_nilBeforeThePlan_andItsLastAfterIt() {
    Expected expected = expected(lot(false));

    assertThat(expected.at(MONTHS, 0)).isEqualTo(3);
    assertThat(expected.at(MONTHS, -2)).isEqualTo(1);
    assertThat(expected.at(MONTHS, -3)).isZero();
    assertThat(expected.at(MONTHS, 9)).isEqualTo(12);
    assertThat(expected.at(MONTHS, 15)).isEqualTo(12);
  }

  @Test
  void sum_countsItsMonth_andAllOfThePlanAfterIt() {
    Expected expected = expected(lot(false));

    assertThat(expected.upTo(MONTHS, 0)).isEqualTo(1 + 2 + 3);
    assertThat(expected.upTo(MONTHS, -3)).isZero();
    assertThat(expected.upTo(MONTHS, 15)).isEqualTo(78);
    assertThat(expected.costUpTo(lot(false), CostKind.POTS, 1)).isEqualTo(10);
    assertThat(expected.costUpTo(lot(false), CostKind.PLACE, 1)).isZero();
  }

  @Test
  void plantsAlive_beforeTheKeptPlan_areThoseCounted_orNoneIfItBuysThem() {
    assertThat(expected(lot(false)).alive(lot(false), -3)).isEqualTo(90);
    assertThat(expected(lot(true)).alive(lot(true), -3)).isZero();
    assertThat(expected(lot(true)).alive(lot(true), -2)).isEqualTo(1);
  }

  /** The sale of the kept month 3 is that of month 1 here. */
  @Test
  void sales_countUpToTheirMonth() {
    Expected expected = expected(lot(false));

    assertThat(expected.month(sale(3, 7, 80))).isEqualTo(1);
    assertThat(expected.unitsUpTo(lot(false), 0)).isEqualTo(5);
    assertThat(expected.unitsUpTo(lot(false), 1)).isEqualTo(12);
    assertThat(expected.salesUpTo(lot(false), 1)).isEqualTo(130);
    assertThat(expected.salesUpTo(lot(false), 9)).isEqualTo(230);
  }

  @Test
  void draws_areThoseOfTheSameMonth_andNoneOutsideTheKeptPlan() {
    Expected expected = expected(lot(false));
    List<String> digits = List.of("a", "b", "c");
    KeptSpan span =
        new KeptSpan(List.of(1.0, 2.0, Double.NaN), List.of(5.0, 6.0, 7.0), List.of(0.1, 0.2, 0.3));

    assertThat(expected.range(quantiles(10), 0)).contains(new Range(3, 13, 99));
    assertThat(expected.range(quantiles(10), -2)).contains(new Range(1, 11, 99));
    assertThat(expected.range(quantiles(10), -3)).isEmpty();
    assertThat(expected.range(quantiles(10), 10)).isEmpty();
    assertThat(expected.text(digits, -2)).contains("a");
    assertThat(expected.text(digits, 0)).contains("c");
    assertThat(expected.text(digits, -3)).isEmpty();
    assertThat(expected.text(digits, 1)).isEmpty();
    assertThat(expected.span(span, -1)).contains(new KeptSpan.At(2, 6, 0.2));
    assertThat(expected.span(span, 0)).isEmpty();
    assertThat(expected.span(span, -3)).isEmpty();
    assertThat(expected.span(span, 1)).isEmpty();
  }

  @Test
  void keptPlan_isAskedByTheCalendar() {
    KeptPlan plan = plan(lot(false));
    YearMonth february = YearMonth.of(2027, 2);

    assertThat(plan.foreseen("elms", KeptPlan.Figure.PLANTS, february))
        .contains(new Range(4, 14, 99));
    assertThat(plan.foreseen("elms", KeptPlan.Figure.TRUNK, february))
        .contains(new Range(4, 24, 99));
    assertThat(plan.foreseen("elms", KeptPlan.Figure.SOLD, february))
        .contains(new Range(4, 34, 99));
    assertThat(plan.foreseen("oaks", KeptPlan.Figure.SOLD, february)).isEmpty();
    assertThat(plan.soldOnTheLine("elms", february)).isEqualTo(12);
    assertThat(plan.soldOnTheLine("elms", KEPT)).isZero();
    assertThat(plan.quantity("elms")).isEqualTo(90);
    assertThat(plan.quantity("oaks")).isZero();
  }

  /** Which draws had it inside, month by month; the price and deaths are asked otherwise. */
  @Test
  void keptPlan_saysWhichDrawsWereInside_withinItsMonthsAndForItsFigures() {
    KeptWithin within =
        new KeptWithin(
            List.of("1", "2", "3"), List.of("4"), List.of("5"), List.of("6"), List.of("7"));
    KeptSpan none = new KeptSpan(List.of(), List.of(), List.of());
    KeptJudging judging =
        new KeptJudging(
            new KeptJudged(none, none, none),
            Optional.empty(),
            NONE,
            Map.of(),
            Optional.of(within),
            Optional.empty());
    KeptPlan plan = plan(lot(false).with().judging(Optional.of(judging)).build());

    assertThat(plan.within("elms", KeptPlan.Figure.PLANTS, KEPT)).contains("1");
    assertThat(plan.within("elms", KeptPlan.Figure.PLANTS, KEPT.plusMonths(2))).contains("3");
    assertThat(plan.within("elms", KeptPlan.Figure.TRUNK, KEPT)).contains("4");
    assertThat(plan.within("elms", KeptPlan.Figure.SOLD, KEPT)).contains("5");
    assertThat(plan.within("elms", KeptPlan.Figure.PLANTS, KEPT.plusMonths(3))).isEmpty();
    assertThat(plan.within("elms", KeptPlan.Figure.PLANTS, KEPT.minusMonths(1))).isEmpty();
    assertThat(plan.within("oaks", KeptPlan.Figure.PLANTS, KEPT)).isEmpty();
    assertThat(plan(lot(false)).within("elms", KeptPlan.Figure.PLANTS, KEPT)).isEmpty();
    assertThat(plan.lotNames()).containsExactly("elms");
  }

  private static KeptPlan ofBands(Optional<KeptBands> bands) {
    return new KeptPlan(
        "kept", KEPT.toString(), 1, 0, 1, List.of(), KeptChances.NONE, bands, List.of());
  }

  @Test
  void keptPlan_isOfLuckAlone_ifItSaysSo_orNothing() {
    assertThat(ofBands(Optional.empty()).isOfLuckAlone()).isTrue();
    assertThat(ofBands(Optional.of(new KeptBands(KeptBands.LUCK, Map.of()))).isOfLuckAlone())
        .isTrue();
    assertThat(
            ofBands(Optional.of(new KeptBands(KeptBands.LUCK_AND_NOT_KNOWING, Map.of())))
                .isOfLuckAlone())
        .isFalse();
  }

  /** How growth is known of the species of its lots, each condition by itself; 1 is all. */
  @Test
  void bands_holdWhatIsNotKnownOfGrowth_ofTheSpeciesThatLotsAreOf() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("a").build()).lot(Lots.lot("b").build());
    nursery.species(Nurseries.bareSpecies("oak", "one"));

    assertThat(KeptBands.of(nursery.sure(1).scenario()))
        .isEqualTo(new KeptBands(KeptBands.LUCK, Map.of("ash, pot", 0.0)));
    KeptBands unsure = KeptBands.of(nursery.sure(0.5).scenario());
    assertThat(unsure.of()).isEqualTo(KeptBands.LUCK_AND_NOT_KNOWING);
    assertThat(unsure.growthSpread().get("ash, pot")).isPositive();
    assertThat(KeptJudging.key("tall", "first")).isEqualTo("tall, first");
  }

  /** The first season may be a part of one, as short as a month; the others are whole. */
  @ParameterizedTest
  @CsvSource({
    "1, 0, false",
    "1, 1, true",
    "1, 12, true",
    "1, 13, false",
    "3, 24, false",
    "3, 25, true",
    "3, 36, true",
    "3, 37, false"
  })
  void keptPlan_hasTheMonthsOfItsSeasons(int seasons, int months, boolean fits) {
    List<Double> values = Collections.nCopies(months, 0.0);
    KeptLot lot =
        KeptLot.named("elms", "elm")
            .living(values)
            .trunkMm(values)
            .trunkSpread(values)
            .hours(values)
            .result(values)
            .build();

    assertThat(isPossible(() -> plan(lot, seasons))).isEqualTo(fits);
  }

  private static KeptPlan plan(KeptLot lot, int seasons) {
    return new KeptPlan(
        "kept",
        KEPT.toString(),
        seasons,
        0,
        1,
        List.of(lot),
        KeptChances.NONE,
        Optional.empty(),
        List.of());
  }

  private static boolean isPossible(Runnable made) {
    try {
      made.run();
      return true;
    } catch (IllegalArgumentException refused) {
      return false;
    }
  }

  /** Each list of a lot has a value for each of its months, whichever list it is. */
  @Test
  void lists_ofOneLot_areOfOneLength() {
    List<Double> tooShort = List.of(1.0);
    KeptLot lot = lot(false);

    for (KeptLotBuilder uneven :
        List.of(
            lot.with().trunkMm(tooShort),
            lot.with().trunkSpread(tooShort),
            lot.with().hours(tooShort),
            lot.with().result(tooShort),
            lot.with().byQuality(Map.of("first", MONTHS, "second", tooShort)),
            lot.with().byGrade(Map.of("started", tooShort)),
            lot.with().costs(Map.of("pots", tooShort)),
            lot.with().quantity(-1))) {
      assertThat(isPossible(uneven::build)).isFalse();
    }
    assertThat(isPossible(lot.with().quantity(0)::build)).isTrue();
  }

  /** A figure at an end of the span is within, whatever seven digits of a draw leave of it. */
  @Test
  void span_holdsItsEnds_andWhatIsKeptOfThem() {
    Range range = new Range(100, 150, 200);
    KeptSpan.At span = new KeptSpan.At(100, 200, 0.2);
    for (double inside : new double[] {100, 200, 99.99995, 200.0001, 150}) {
      assertThat(range.holds(inside)).as("%s", inside).isTrue();
      assertThat(span.holds(inside)).as("%s", inside).isTrue();
    }
    for (double outside : new double[] {99.99, 200.01}) {
      assertThat(range.holds(outside)).as("%s", outside).isFalse();
      assertThat(span.holds(outside)).as("%s", outside).isFalse();
    }
    assertThat(range.plus(5)).isEqualTo(new Range(105, 155, 205));
    assertThat(range.times(0.5)).isEqualTo(new Range(50, 75, 100));
    assertThat(span.times(0.5)).isEqualTo(new KeptSpan.At(50, 100, 0.2));
  }
}
