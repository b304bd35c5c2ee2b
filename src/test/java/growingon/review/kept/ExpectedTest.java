package growingon.review.kept;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.money.CostKind;
import growingon.nursery.time.Horizon;
import java.time.Month;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

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
