package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.FOUND;
import static growingon.nursery.record.DaybookLine.What.LOST;
import static growingon.nursery.record.DaybookLine.What.MOVED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Quality;
import growingon.nursery.species.Curve;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.kept.AcrossDraws;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptJudged;
import growingon.review.kept.KeptJudging;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptLotBuilder;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptSale;
import growingon.review.kept.KeptSpan;
import growingon.review.kept.KeptWithin;
import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Deaths, growth and price held against a kept plan, by hand. 100 ash of 10 mm grow 0.5 mm a month
 * from November 2026, month 0, at whose end they have 10.5 mm. The kept plan had them at 20 mm then
 * and a whole mm thicker each month; by luck alone from 1 less to 1 more, in all from 4 less to 4
 * more. Two more died in it each month, by luck from half to twice as many, in all up to four
 * times.
 */
class LuckOrMoreByHandTest {
  private static final int MONTHS = 24;

  private static <T> List<T> months(IntFunction<T> each) {
    return IntStream.range(0, MONTHS).mapToObj(each).toList();
  }

  private static KeptSpan span(IntFunction<Double> low, IntFunction<Double> high, double outside) {
    return new KeptSpan(months(low), months(high), Collections.nCopies(MONTHS, outside));
  }

  private static KeptJudged luck() {
    return new KeptJudged(
        span(month -> 1.0 + month, month -> 4.0 + 4 * month, 0.2),
        span(month -> 19.0 + month, month -> 21.0 + month, 0.21),
        span(month -> 0.9, month -> 1.1, 0.22));
  }

  private static KeptJudged all() {
    return new KeptJudged(
        span(month -> 0.0, month -> 8.0 + 8 * month, 0.1),
        span(month -> 16.0 + month, month -> 24.0 + month, 0.11),
        span(month -> 0.5, month -> 1.5, 0.12));
  }

  /** Of four draws: deaths inside in all, growth in the last three, price in the last two. */
  private static KeptWithin within(String deaths, String trunk, String price) {
    List<String> none = Collections.nCopies(MONTHS, "0");
    return new KeptWithin(
        none,
        Collections.nCopies(MONTHS, trunk),
        none,
        Collections.nCopies(MONTHS, deaths),
        Collections.nCopies(MONTHS, price));
  }

  private static KeptJudging judging() {
    return new KeptJudging(
        all(),
        Optional.of(luck()),
        months(month -> 2.0 * (month + 1)),
        Map.of("any, first", 20.0, "any, second", 10.0),
        Optional.of(within("0", "0", "0")),
        Optional.of(within("f", "7", "3")));
  }

  private static KeptLotBuilder kept(double quantity) {
    return KeptLot.named("ash", "ash")
        .quantity(quantity)
        .living(Collections.nCopies(MONTHS, quantity))
        .trunkMm(months(month -> 20.0 + month))
        .trunkSpread(Collections.nCopies(MONTHS, 0.0))
        .hours(Collections.nCopies(MONTHS, 0.0))
        .result(Collections.nCopies(MONTHS, 0.0));
  }

  private static KeptPlan plan(KeptLot lot) {
    return new KeptPlan(
        "kept", "2026-11", 2, 4, 1, List.of(lot), KeptChances.NONE, Optional.empty(), List.of());
  }

  private static Nurseries nursery(Lots lot) {
    return Nurseries.bare().seasons(2).lot(lot.build()).lot(Lots.lot("other").quantity(50).build());
  }

  private static Review review(Nurseries nursery, KeptLot lot, Diary diary) {
    return Review.of(diary.of(nursery.scenario()), YearMonth.of(2028, 10), Optional.of(plan(lot)));
  }

  private static Review review(Diary diary) {
    return review(
        nursery(Lots.lot("ash")), kept(100).judging(Optional.of(judging())).build(), diary);
  }

  /** As in "ash deaths 5.00 for 6.00, luck 3.00 to 12.00, all 0.00 to 24.00". */
  private static List<String> told(Review review) {
    return review.judged().stream()
        .map(
            each ->
                String.format(
                    Locale.ROOT,
                    "%s %s %.2f for %.2f, luck %s, all %s",
                    each.lot(),
                    each.what(),
                    each.real(),
                    each.planned(),
                    each.luck().map(LuckOrMoreByHandTest::told).orElse("-"),
                    told(each.all())))
        .toList();
  }

  private static String told(KeptSpan.At span) {
    return String.format(Locale.ROOT, "%.2f to %.2f", span.p10(), span.p90());
  }

  private static List<String> of(Judged.What what, Review review) {
    return told(review).stream().filter(each -> each.contains(" " + what + " ")).toList();
  }

  /** 7 died, 4 went missing, 3 were stolen and 2 were found: 7 + 4 − 2 = 9 by month 2. */
  @Test
  void deaths_areThoseThatDiedOrWentMissing_withoutThefts_lessThoseFound() {
    Review review =
        review(
            new Diary()
                .on("2026-11-20", "ash", DIED, 7)
                .on("2026-12-05", "ash", LOST, 4)
                .on("2026-12-06", "ash", LOST, 3)
                .because("stolen")
                .on("2027-01-07", "ash", FOUND, 2));

    assertThat(told(review))
        .containsExactly("ash deaths 9.00 for 6.00, luck 3.00 to 12.00, all 0.00 to 24.00");
    assertThat(review.judged().get(0).outsideByLuck()).isEqualTo(0.2);
    assertThat(review.judged().get(0).what()).hasToString("deaths");
    assertThat(review.judged().get(0).take()).hasToString("luck");
    assertThat(review.insideByLuck()).contains(new AcrossDraws.Inside(1, 1, 1));
  }

  /** More found than died: none died, rather than fewer than none. */
  @Test
  void deaths_areNeverFewerThanNone_andThoseOfPartsAreTheirLots() {
    Diary found = new Diary().on("2026-11-20", "ash", DIED, 1).on("2026-12-07", "ash", FOUND, 2);
    Diary split =
        new Diary()
            .on("2026-11-20", "ash", DIED, 10)
            .on("2026-12-01", "ash", SPLIT, 30)
            .to("own")
            .on("2026-12-05", "own", DIED, 3)
            .on("2026-12-06", "ash", DIED, 1);

    assertThat(told(review(found)))
        .containsExactly("ash deaths 0.00 for 4.00, luck 2.00 to 8.00, all 0.00 to 16.00");
    assertThat(told(review(split)))
        .containsExactly("ash deaths 14.00 for 4.00, luck 2.00 to 8.00, all 0.00 to 16.00");
  }

  /** The kept plan had 50: with 100 there are twice as many to die. */
  @Test
  void deaths_ofMoreOrFewerPlantsThanWerePlanned_areHeldAgainstAsManyMore() {
    Diary diary = new Diary().on("2026-12-20", "ash", DIED, 7);
    KeptLot none = kept(0).judging(Optional.of(judging())).build();
    KeptLot half = kept(50).judging(Optional.of(judging())).build();

    assertThat(told(review(nursery(Lots.lot("ash")), half, diary)))
        .containsExactly("ash deaths 7.00 for 8.00, luck 4.00 to 16.00, all 0.00 to 32.00");
    assertThat(told(review(nursery(Lots.lot("ash")), none, diary))).isEmpty();
  }

  /** Whoever's plants died is not known where others joined them, or where no line says it. */
  @Test
  void deaths_areNotJudged_wherePlantsJoined_orWhereNothingIsSaid() {
    Diary died = new Diary().on("2026-12-20", "ash", DIED, 7);

    assertThat(told(review(died.on("2026-12-21", "other", MOVED, 5).to("ash")))).isEmpty();
    Diary went = new Diary().on("2026-12-20", "ash", DIED, 7);
    assertThat(told(review(went.on("2026-12-21", "ash", MOVED, 5).to("other")))).isEmpty();
    Diary more = new Diary().on("2026-12-20", "ash", DIED, 7);
    assertThat(told(review(more.on("2026-12-21", "ash", ARRIVED, 5)))).isEmpty();
    assertThat(told(review(new Diary().on("2026-12-20", "other", DIED, 7)))).isEmpty();
  }

  /** 15 mm in July for 14.5: 4.5 mm grown for 4; the kept plan's 8 mm are halved for it. */
  @Test
  void growth_isHeldAgainstThatOfThePlan_asMuchSlowerAsTheLotIsByNow() {
    Review review = review(new Diary().on("2027-07-20", "ash", COUNTED).trunks(15, 0));

    assertThat(told(review))
        .containsExactly("ash growth 4.50 for 4.00, luck 3.50 to 4.50, all 2.00 to 6.00");
    assertThat(review.judged().get(0).outsideByLuck()).isEqualTo(0.21);
    assertThat(review.insideByLuck()).contains(new AcrossDraws.Inside(0, 1, 1));
  }

  /**
   * Measured at the end of a month up to three after its coming, a lot is taken as it came: grown
   * as planned it has 0.5 mm more for each month from then to July. Later it is a growth.
   */
  @ParameterizedTest
  @CsvSource({"2027-01, 12, 5.10, 4.50", "2027-02, 12.5, 5.10, 4.50", "2027-03, 14, 5.10, 4.00"})
  void firstMeasuring_soonAfterItsComing_isHowALotCame(
      String month, double trunk, String grown, String planned) {
    Diary diary =
        new Diary()
            .on(month + "-20", "ash", COUNTED)
            .trunks(trunk, 0)
            .on("2027-07-20", "ash", COUNTED)
            .trunks(15.6, 0);

    assertThat(of(Judged.What.GROWTH, review(diary)))
        .singleElement()
        .asString()
        .startsWith("ash growth " + grown + " for " + planned);
  }

  @ParameterizedTest
  @CsvSource({"2027-04, 0", "2027-05, 1"})
  void growth_ofLessThanHalfAYear_isNotJudged(String month, int judged) {
    assertThat(told(review(new Diary().on(month + "-20", "ash", COUNTED).trunks(14, 0))))
        .hasSize(judged);
  }

  /** Half a mm planned tells something, a little less nothing: of the line, and of the lot. */
  @ParameterizedTest
  @CsvSource({"0.0625, 6, 1", "0.0624, 6, 0", "1, 0.75, 1", "1, 0.74, 0"})
  void growth_thatWasToBeLessThanHalfAMm_isNotJudged(
      double keptPerMonth, double mmPerYear, int judged) {
    KeptLot lot =
        kept(100)
            .trunkMm(months(month -> 20 + keptPerMonth * month))
            .judging(Optional.of(judging()))
            .build();
    Nurseries nursery = nursery(Lots.lot("ash"));
    nursery.species(
        Nurseries.bareSpecies("ash", "one")
            .with()
            .growth(Map.of("pot", new Curve.Steady(mmPerYear, Double.POSITIVE_INFINITY)))
            .build());

    assertThat(
            of(
                Judged.What.GROWTH,
                review(nursery, lot, new Diary().on("2027-07-20", "ash", COUNTED).trunks(11.5, 0))))
        .hasSize(judged);
  }

  /** Bought and come in February, month 3, with 10 mm: 10.5 at its end, 14 in September. */
  @Test
  void growth_ofALotThatCame_countsFromItsMonth() {
    Nurseries nursery = nursery(Lots.lot("ash").arrived(2027, 2).bought(5, 0));
    KeptLot lot = kept(100).judging(Optional.of(judging())).build();
    Diary diary =
        new Diary()
            .on("2027-02-03", "ash", ARRIVED, 100)
            .on("2027-09-20", "ash", COUNTED)
            .trunks(15, 0);

    assertThat(of(Judged.What.GROWTH, review(nursery, lot, diary)))
        .containsExactly("ash growth 4.50 for 3.50, luck 3.00 to 4.00, all 1.50 to 5.50");
  }

  /** Five months after it came, eight after the plan began, its growth tells nothing yet. */
  @Test
  void growth_ofALotThatCameLessThanHalfAYearAgo_isNotJudged() {
    Nurseries nursery = nursery(Lots.lot("ash").arrived(2027, 2).bought(5, 0));
    KeptLot lot = kept(100).judging(Optional.of(judging())).build();
    Diary diary =
        new Diary()
            .on("2027-02-03", "ash", ARRIVED, 100)
            .on("2027-07-20", "ash", COUNTED)
            .trunks(15, 0);

    assertThat(of(Judged.What.GROWTH, review(nursery, lot, diary))).isEmpty();
  }

  private static Diary sales() {
    return new Diary()
        .on("2026-11-20", "ash", SOLD, 10)
        .grade("any")
        .amount(180)
        .on("2026-12-20", "ash", SOLD, 4)
        .grade("any")
        .quality(Quality.SECOND)
        .amount(50);
  }

  /** 180 + 50 for 10 firsts at 20 and 4 seconds at 10, which are 240 at list price. */
  @Test
  void price_isTheShareOfListPrice_thatSalesOfAKnownGradeBrought() {
    KeptLot lot =
        kept(100)
            .sales(
                List.of(
                    new KeptSale(0, "any", "first", 10, 190),
                    new KeptSale(1, "any", "second", 10, 85),
                    new KeptSale(1, "other", "first", 10, 900),
                    new KeptSale(2, "any", "first", 10, 900)))
            .judging(Optional.of(judging()))
            .build();
    Diary diary =
        sales()
            .on("2026-12-21", "ash", SOLD, 4)
            .amount(50)
            .on("2026-12-22", "ash", SOLD, 4)
            .grade("any")
            .on("2026-12-24", "other", SOLD, 4)
            .grade("any")
            .amount(500);
    Review review = review(nursery(Lots.lot("ash")), lot, diary);

    assertThat(of(Judged.What.PRICE, review))
        .containsExactly("ash price 0.96 for 0.92, luck 0.90 to 1.10, all 0.50 to 1.50");
    assertThat(review.judged().get(0).real()).isEqualTo(230 / 240.0);
    assertThat(review.judged().get(0).planned()).isEqualTo(275 / 300.0);
  }

  @Test
  void price_ofALotThatWasToSellNothing_isHeldAgainstListPrice() {
    assertThat(of(Judged.What.PRICE, review(sales())))
        .containsExactly("ash price 0.96 for 1.00, luck 0.90 to 1.10, all 0.50 to 1.50");
  }

  /** What its part sold counts with it, what was sold before the plan or after it does not. */
  @Test
  void price_isThatOfALotWithItsParts_withinThePlan() {
    Nurseries nursery = nursery(Lots.lot("ash").counted(2026, 9).arrived(2025, 3));
    KeptLot lot = kept(100).judging(Optional.of(judging())).build();
    Diary diary =
        new Diary()
            .on("2026-10-31", "ash", SOLD, 1)
            .grade("any")
            .amount(90)
            .on("2026-12-01", "ash", SPLIT, 30)
            .to("own")
            .on("2026-12-20", "own", SOLD, 2)
            .grade("any")
            .amount(30)
            .on("2028-11-20", "ash", SOLD, 1)
            .grade("any")
            .amount(90);
    Review review =
        Review.of(diary.of(nursery.scenario()), YearMonth.of(2028, 12), Optional.of(plan(lot)));

    assertThat(of(Judged.What.PRICE, review))
        .singleElement()
        .asString()
        .startsWith("ash price 0.75 for 1.00");
  }

  private static Diary ofAllThree() {
    return sales().on("2027-07-19", "ash", DIED, 7).on("2027-07-20", "ash", COUNTED).trunks(15, 0);
  }

  /** Draw by draw 1, 2, 3 and 3 of the three are inside. */
  @Test
  void figuresInsideByLuck_areCountedDrawByDraw_ifTheKeptPlanSaysItOfEach() {
    Review review = review(ofAllThree());

    assertThat(review.judged())
        .extracting(Judged::what)
        .containsExactly(Judged.What.DEATHS, Judged.What.GROWTH, Judged.What.PRICE);
    assertThat(review.insideByLuck()).contains(new AcrossDraws.Inside(1, 3, 3));
  }

  @Test
  void figuresInside_areThoseOfAllDraws_whereLuckIsNotToldApart_andNotToldWhereOneIsMissing() {
    KeptJudging together =
        new KeptJudging(
            all(),
            Optional.empty(),
            months(month -> 2.0),
            Map.of("any, first", 20.0),
            Optional.of(within("f", "f", "1")),
            Optional.of(within("0", "0", "0")));
    KeptWithin withoutPrice =
        new KeptWithin(
            List.of(),
            Collections.nCopies(MONTHS, "f"),
            List.of(),
            Collections.nCopies(MONTHS, "f"),
            List.of());
    KeptJudging lacking =
        new KeptJudging(
            all(),
            Optional.of(luck()),
            months(month -> 2.0),
            Map.of("any, first", 20.0),
            Optional.of(withoutPrice),
            Optional.of(withoutPrice));
    Nurseries nursery = nursery(Lots.lot("ash"));

    Review one = review(nursery, kept(100).judging(Optional.of(together)).build(), ofAllThree());
    assertThat(one.insideByLuck()).contains(new AcrossDraws.Inside(2, 3, 3));
    assertThat(one.judged()).allMatch(each -> each.luck().isEmpty());
    Review other = review(nursery, kept(100).judging(Optional.of(lacking)).build(), ofAllThree());
    assertThat(other.judged()).hasSize(3);
    assertThat(other.insideByLuck()).isEmpty();
    Review older = review(nursery, kept(100).build(), ofAllThree());
    assertThat(older.judged()).isEmpty();
    assertThat(older.insideByLuck()).isEmpty();
  }
}
