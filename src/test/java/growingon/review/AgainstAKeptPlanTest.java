package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPENT;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static growingon.nursery.record.DaybookLine.What.USED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CostKind;
import growingon.nursery.market.Grade;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.record.PastRecords;
import growingon.nursery.record.Receipt;
import growingon.nursery.record.StockList;
import growingon.problem.Problem;
import growingon.problem.Severity;
import growingon.problem.Where;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptQuantiles;
import growingon.review.kept.KeptSale;
import growingon.review.kept.Range;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What came held against a plan that was kept, figure by figure and by hand. The plan is of
 * November 2026 and two seasons; the books end with January 2027, month 2.
 */
class AgainstAKeptPlanTest {
  private static final Offset<Double> TINY = within(1e-9);
  private static final YearMonth TODAY = YearMonth.of(2028, 6);
  private static final int MONTHS = 24;

  private static List<Double> months(IntToDoubleFunction each) {
    return IntStream.range(0, MONTHS).mapToDouble(each).boxed().toList();
  }

  /** From that many to that many more and twice as many more, and one more each month. */
  private static KeptQuantiles likely(double from, double more) {
    return new KeptQuantiles(
        months(month -> from + month),
        months(month -> from + more + month),
        months(month -> from + 2 * more + month));
  }

  private static KeptChances chances(double more) {
    return new KeptChances(
        likely(10, more),
        likely(20, more),
        likely(30, more),
        likely(40, more),
        likely(50, more),
        likely(60, more));
  }

  /** In month 2: 98 alive, 12 mm, 10 sold for 200, 6 hours, 30 for pots, a result of −8. */
  private static KeptLot ash() {
    return KeptLot.named("ash", "ash")
        .quantity(100)
        .living(months(month -> 100 - month))
        .trunkMm(months(month -> 10 + month))
        .trunkSpread(months(month -> 0.1 + month / 100.0))
        .byQuality(Map.of("first", months(month -> 60 - month), "second", months(month -> 30)))
        .byGrade(Map.of("", months(month -> 5), "any", months(month -> 85 + 4 * month)))
        .sales(
            List.of(
                new KeptSale(1, "any", "first", 10, 200), new KeptSale(3, "any", "first", 5, 110)))
        .hours(months(month -> month + 1))
        .costs(
            Map.of(
                CostKind.LABOUR.toString(),
                months(month -> 12 * (month + 1)),
                CostKind.POTS.toString(),
                months(month -> 10)))
        .result(months(month -> -4 * month))
        .chances(chances(1))
        .build();
  }

  /** One that never came: in month 2 it has 50 alive, 3 sold for 45, 15 hours, 21 for pots. */
  private static KeptLot never() {
    return KeptLot.named("never", "ash")
        .bought(true)
        .quantity(60)
        .living(months(month -> 50.4))
        .trunkMm(months(month -> 10))
        .trunkSpread(months(month -> 0))
        .sales(List.of(new KeptSale(2, "any", "first", 3, 45)))
        .hours(months(month -> 5))
        .costs(Map.of(CostKind.POTS.toString(), months(month -> 7)))
        .result(months(month -> 100))
        .build();
  }

  private static Optional<KeptPlan> plan(KeptLot... lots) {
    return Optional.of(
        new KeptPlan(
            "kept", "2026-11", 2, 4, 1, List.of(lots), chances(5), Optional.empty(), List.of()));
  }

  private static Lots stock() {
    return Lots.lot("ash").notBefore(2030, 1);
  }

  private static Nurseries nursery() {
    return Nurseries.bare().seasons(2).labour(12, 1).lot(stock().build());
  }

  private static Review review(Nurseries nursery, Diary diary, KeptLot... lots) {
    return Review.of(diary.of(nursery.scenario()), TODAY, plan(lots));
  }

  /** 12 sold for 240, 4 used, 3 hours worked: 84 are there. */
  private static Diary diary() {
    return new Diary()
        .on("2026-12-10", "ash", SOLD, 12)
        .amount(240)
        .on("2026-12-11", "ash", USED, 4)
        .on("2027-01-20", "ash", SPENT)
        .hours(3);
  }

  private static void assertFigure(Compared figure, double planned, double real, Range likely) {
    assertThat(figure.planned()).isCloseTo(planned, TINY);
    assertThat(figure.real()).isCloseTo(real, TINY);
    if (likely == null) {
      assertThat(figure.range()).isEmpty();
    } else {
      assertThat(figure.range()).isPresent();
      assertThat(figure.range().get().p10()).isCloseTo(likely.p10(), TINY);
      assertThat(figure.range().get().p50()).isCloseTo(likely.p50(), TINY);
      assertThat(figure.range().get().p90()).isCloseTo(likely.p90(), TINY);
    }
  }

  @Test
  void everyFigure_isHeldAgainstThatOfItsMonth_andItsOwnDraws() {
    LotReview lot = review(nursery(), diary(), ash()).lots().get(0);

    assertFigure(lot.alive(), 98, 84, new Range(12, 13, 14));
    assertThat(lot.alive().wholePlanned()).isEqualTo(98);
    assertFigure(lot.trunkMm(), 12, 11.5, new Range(22, 23, 24));
    assertThat(lot.trunkMm().isReal()).isFalse();
    assertFigure(lot.trunkSpread(), 0.12, 0, null);
    assertFigure(lot.unitsSold(), 10, 12, new Range(32, 33, 34));
    assertThat(lot.unitsSold().wholePlanned()).isEqualTo(10);
    assertFigure(lot.sales(), 200, 240, new Range(42, 43, 44));
    assertFigure(lot.hours(), 6, 3, new Range(52, 53, 54));
    assertThat(lot.hours().byDaybook()).isCloseTo(3, TINY);
    assertFigure(lot.result(), -8, 204, new Range(62, 63, 64));
    assertThat(lot.result().byDaybook()).isCloseTo(204, TINY);
    assertThat(lot.costs()).containsOnlyKeys(CostKind.LABOUR, CostKind.POTS);
    assertFigure(lot.costs().get(CostKind.LABOUR), 72, 36, null);
    assertThat(lot.costs().get(CostKind.LABOUR).byDaybook()).isCloseTo(36, TINY);
    assertFigure(lot.costs().get(CostKind.POTS), 30, 0, null);
    assertThat(lot.costPerLiving().orElseThrow()).isCloseTo(36 / 100.0, TINY);
  }

  /** 58 firsts and 30 seconds planned; the plan says nothing of the other 10 alive. */
  @Test
  void plantsByQualityAndGrade_areThoseOfTheirMonth_inWholePlantsThatAddUp() {
    LotReview lot = review(nursery(), diary(), ash()).lots().get(0);

    assertThat(lot.qualities()).containsOnlyKeys(Quality.FIRST, Quality.SECOND);
    assertFigure(lot.qualities().get(Quality.FIRST), 58, 84, null);
    assertThat(lot.qualities().get(Quality.FIRST).wholePlanned()).isEqualTo(58);
    assertFigure(lot.qualities().get(Quality.SECOND), 30, 0, null);
    assertThat(lot.qualities().get(Quality.SECOND).wholePlanned()).isEqualTo(30);
    assertThat(lot.grades()).extracting(LotReview.OfGrade::grade).containsExactly("", "any");
    assertFigure(lot.grades().get(0).plants(), 5, 0, null);
    assertFigure(lot.grades().get(1).plants(), 93, 84, null);
    assertThat(lot.grades().get(1).plants().wholePlanned()).isEqualTo(93);
    assertThat(lot.grades().get(1).plants().wholeReal()).isEqualTo(84);
    assertThat(lot.grades().get(1).plants().isReal()).isFalse();
  }

  /** A quarter is split off: it has a quarter of what was planned, but trunks are no fewer. */
  @Test
  void part_hasItsPartOfThePlan() {
    Diary split = diary().on("2027-01-21", "ash", SPLIT, 21).to("own");
    Review review = review(nursery(), split, ash());
    LotReview own = review.lots().get(1);

    assertFigure(own.alive(), 24.5, 21, new Range(3, 3.25, 3.5));
    assertFigure(own.trunkMm(), 12, 11.5, new Range(22, 23, 24));
    assertFigure(own.trunkSpread(), 0.12, 0, null);
    assertFigure(own.sales(), 50, 0, new Range(10.5, 10.75, 11));
    assertFigure(own.qualities().get(Quality.FIRST), 14.5, 21, null);
    assertThat(review.lots().get(0).alive().wholePlanned() + own.alive().wholePlanned())
        .isEqualTo(98);
    assertThat(review.nursery().alive().wholePlanned()).isEqualTo(98);
  }

  /** 98 and 50.4 alive, 10 and 3 sold, 200 and 45 taken, 6 and 15 hours, 102 and 21 spent. */
  @Test
  void allTogether_isTheWholePlan_withALotThatNeverCame() {
    Review.Together all = review(nursery(), diary(), ash(), never()).nursery();

    assertFigure(all.alive(), 148.4, 84, new Range(12, 17, 22));
    assertThat(all.alive().wholePlanned()).isEqualTo(98 + 50);
    assertThat(all.alive().wholeReal()).isEqualTo(84);
    assertFigure(all.unitsSold(), 13, 12, new Range(32, 37, 42));
    assertFigure(all.sales(), 245, 240, new Range(42, 47, 52));
    assertFigure(all.hours(), 21, 3, new Range(52, 57, 62));
    assertFigure(all.costs(), 123, 36, null);
    assertFigure(all.result(), 92, 204, new Range(62, 67, 72));
  }

  /** Of the month before the plan nothing is known but how many there are. */
  @Test
  void booksWithoutALine_areHeldAgainstTheStockThatThePlanBeginsWith() {
    Review review = review(nursery(), new Diary(), ash(), never());
    LotReview lot = review.lots().get(0);

    assertThat(review.through()).isEqualTo(YearMonth.of(2026, 10));
    assertFigure(lot.alive(), 100, 100, null);
    assertFigure(lot.trunkMm(), 10, 10.5, null);
    assertFigure(lot.unitsSold(), 0, 0, null);
    assertFigure(lot.hours(), 0, 0, null);
    assertThat(lot.qualities().get(Quality.FIRST).wholePlanned()).isEqualTo(60);
    assertThat(lot.grades().get(0).plants().wholePlanned()).isEqualTo(5);
    assertThat(lot.grades().get(1).plants().wholePlanned()).isEqualTo(85);
    assertThat(review.nursery().alive().planned()).isCloseTo(100, TINY);
  }

  /** Of 90 counted in the last month 30 are big; by their trunks all are small. */
  @ParameterizedTest
  @CsvSource({"2027-01-31, 30, true", "2026-12-31, 0, false"})
  void gradesCountedInTheLastMonth_areTaken_elseTrunksTell(String day, double big, boolean isReal) {
    Nurseries nursery = nursery();
    nursery.ladder("one", new Grade("small", 1, 5, 0, 12), new Grade("big", 2, 12, 0, 12));
    Diary diary =
        new Diary()
            .on(day, "ash", COUNTED, 60)
            .grade("small")
            .on(day, "ash", COUNTED, 30)
            .grade("big")
            .on("2027-01-15", "ash", SPENT)
            .hours(1);
    LotReview lot = review(nursery, diary, ash()).lots().get(0);

    assertThat(lot.grades())
        .extracting(LotReview.OfGrade::grade)
        .containsExactly("", "small", "big");
    assertThat(lot.grades().get(1).plants().real()).isCloseTo(90 - big, TINY);
    assertThat(lot.grades().get(2).plants().real()).isCloseTo(big, TINY);
    assertThat(lot.grades().get(2).plants().isReal()).isEqualTo(isReal);
  }

  @Test
  void boughtLot_thatHasNotCome_isNowhereYet_andOneThatCameInTheLastMonthIsHere() {
    Lots later = Lots.lot("later").arrived(2027, 2).notBefore(2030, 1).bought(5, 0);
    Lots now = Lots.lot("now").arrived(2027, 1).notBefore(2030, 1).bought(5, 0);
    Nurseries nursery = nursery().lot(later.build()).lot(now.build());
    Review review = review(nursery, diary(), ash());

    Whereabouts none = new Whereabouts(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
    Whereabouts here = new Whereabouts(100, 0, 0, 0, 0, 0, 0, 0, 0, 0, 100);
    assertThat(review.lots().get(1).balance()).isEqualTo(none);
    assertThat(review.lots().get(1).wholeBalance()).isEqualTo(none);
    assertThat(review.lots().get(2).balance()).isEqualTo(here);
    assertThat(review.lots().get(2).wholeBalance()).isEqualTo(here);
  }

  /** 100 were there and 10 came; all died, so that nobody lived to bear the cost. */
  @Test
  void plantsThatCameLater_areOfItsWholePlants_andALotWithoutALivingPlantHasNoCostForOne() {
    Diary diary =
        new Diary()
            .on("2026-12-03", "ash", ARRIVED, 10)
            .amount(70)
            .on("2027-01-05", "ash", DIED, 110);
    LotReview lot = review(nursery(), diary, ash()).lots().get(0);

    assertThat(lot.wholeBalance()).isEqualTo(new Whereabouts(110, 0, 0, 0, 110, 0, 0, 0, 0, 0, 0));
    assertThat(lot.costToDate()).isCloseTo(70, TINY);
    assertThat(lot.costPerLiving()).isEqualTo(OptionalDouble.empty());
  }

  /** Rent of 10 with an hour each month and 90 once: 3 · (10 + 12) + 90, and a lot's own not. */
  @Test
  void costOfNoLot_isThatOfThePlan_unlessTheDaybookSpeaksOfIt() {
    Optional<YearMonth> none = Optional.empty();
    Nurseries nursery =
        nursery()
            .otherCash(
                new OtherCash(
                    none, OtherCash.Every.MONTH, "rent", -10, 1, Optional.empty(), none, none))
            .otherCash(
                new OtherCash(Optional.of(YearMonth.of(2027, 1)), OtherCash.Every.ONCE, "tax", -90))
            .otherCash(
                new OtherCash(none, OtherCash.Every.MONTH, "stake", -1000).of(Optional.of("ash")));
    Review untold = review(nursery, diary(), ash());
    Review told = review(nursery, diary().on("2027-01-21", "", SPENT).amount(268).hours(3), ash());

    assertFigure(untold.ofNoLot().cost(), 156, 156, null);
    assertThat(untold.ofNoLot().cost().isReal()).isFalse();
    assertThat(untold.ofNoLot().hours()).isZero();
    assertFigure(told.ofNoLot().cost(), 156, 268 + 36, null);
    assertThat(told.ofNoLot().cost().isReal()).isTrue();
  }

  /** The plan was kept with a grade that has another name by now. */
  @Test
  void sale_ofAGradeThatIsNoMore_isASaleAsPlanned() {
    KeptLot kept =
        ash().with().sales(List.of(new KeptSale(1, "saleable", "first", 10, 190))).build();
    Nurseries nursery = nursery().lot(Lots.lot("other").build());
    LotReview lot =
        review(nursery, new Diary().on("2027-01-20", "other", DIED, 1), kept).lots().get(0);

    assertFigure(lot.unitsSold(), 10, 10, new Range(32, 33, 34));
    assertFigure(lot.sales(), 190, 190, new Range(42, 43, 44));
  }

  /** 10.5 mm at the month's end: a plant in a lot may well be a quarter thicker. */
  @ParameterizedTest
  @CsvSource({"13, 0", "14, 1"})
  void gradeCounted_thatEvenTheThickestCannotHave_isAskedAbout(double least, int asked) {
    Nurseries nursery =
        nursery().lot(Lots.lot("now").arrived(2026, 12).notBefore(2030, 1).bought(5, 0).build());
    nursery.ladder("one", new Grade("small", 1, 5, 0, 12), new Grade("big", 2, least, 0, 12));
    Review review =
        review(nursery, new Diary().on("2026-12-20", "now", COUNTED, 100).grade("big"), ash());

    assertThat(review.faults()).hasSize(asked).allMatch(each -> each.toString().contains("(big)"));
  }

  private static PastRecords past(int lists, int receipts) {
    StockList list =
        new StockList(
            "stock",
            YearMonth.of(2026, 11),
            List.of(
                new StockList.Row(
                    stock().build(), true, true, OptionalInt.empty(), Where.file("stock"))));
    StockList later =
        new StockList(
            "later",
            YearMonth.of(2027, 3),
            List.of(
                new StockList.Row(
                    stock().counted(2027, 3).build(),
                    true,
                    true,
                    OptionalInt.empty(),
                    Where.file("later"))));
    Receipt receipt =
        new Receipt(
            YearMonth.of(2027, 1),
            Optional.empty(),
            Optional.empty(),
            Optional.of("oak"),
            Optional.empty(),
            5,
            80,
            new Where("receipts.csv", "", 2, ""));
    return new PastRecords(
        List.of(list, later).subList(0, lists),
        List.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Collections.nCopies(receipts, receipt));
  }

  private static Review review(Diary diary, PastRecords past) {
    return Review.of(diary.of(nursery().scenario()), past, TODAY, plan(ash()), 1);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, false", "1, 0, false", "2, 0, true", "0, 1, true"})
  void review_takesALine_aLaterListOrAReceipt(int lists, int receipts, boolean can) {
    Diary diary = new Diary();

    assertThat(Review.canLookBack(diary.of(nursery().scenario()), past(lists, receipts), TODAY))
        .isEqualTo(can);
    assertThat(Review.canLookBack(diary().of(nursery().scenario()), past(lists, receipts), TODAY))
        .isTrue();
    assertThat(review(diary(), past(lists, receipts)).sources().isDaybookAlone()).isEqualTo(!can);
  }

  @Test
  void sources_areLinesAndCountsOfTheDaybook_listsAndReceipts() {
    Diary diary = diary().on("2027-01-21", "ash", COUNTED, 84);
    Review review = review(diary, past(2, 1));

    assertThat(review.sources())
        .isEqualTo(
            new Review.Sources(4, 1, List.of(YearMonth.of(2026, 11), YearMonth.of(2027, 3)), 1));
  }

  /** 80 of receipts that fit no lot are the nursery's; what is asked leaves out notices of rows. */
  @Test
  void receiptsOfNoLot_areMoneyOfTheNursery_andAreAskedAboutOnce() {
    Review review = review(diary(), past(1, 2));

    assertFigure(review.receiptsOfNoLot(), 0, 160, null);
    assertThat(review.receiptsOfNoLot().isReal()).isTrue();
    assertFigure(review.costsOfNoLotLessReceipts(), 0, -160, null);
    assertThat(review.faults())
        .extracting(Problem::severity)
        .containsExactly(Severity.WARNING, Severity.NOTICE, Severity.NOTICE);
    assertThat(review.asked()).extracting(Problem::severity).containsExactly(Severity.WARNING);
  }
}
