package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPENT;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.Payback;
import growingon.review.bought.BoughtReview.ToBeEven;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.Cause;
import growingon.review.bought.CausePart;
import growingon.review.bought.CauseStep;
import growingon.review.bought.GambleKind;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.Range;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The money of bought lots that are not sold out, by hand. */
class BoughtLotByHandTest {
  private static final YearMonth TODAY = YearMonth.of(2028, 6);
  private static final Offset<Double> CENT = within(1e-6);

  private static BoughtReview bought(Scenario scenario, Diary diary) {
    return Review.of(diary.of(scenario), TODAY, Optional.empty()).bought().get(0);
  }

  /**
   * 100 plants bought in February 2027 for 800 and 50 of carriage, ten of them kept, six in ten
   * firsts, the others seconds at 0.6 of the price of 20; 20 m² at 1 a month. None sells before the
   * plan ends in October 2028.
   */
  private static Scenario unsold() {
    return Nurseries.bare()
        .seasons(2)
        .labour(12, 0.25)
        .sellsAll("one", "any", 20)
        .place(Nurseries.place("bench", PlaceKind.BENCH, 100, 1, 12))
        .lot(
            Lots.lot("gamble")
                .quantity(100)
                .kept(10)
                .quality(0.6, 0.4, true)
                .arrived(2027, 2)
                .notBefore(2030, 1)
                .place("bench")
                .plantsPerM2(5)
                .bought(8, 50)
                .build())
        .scenario();
  }

  /**
   * By March: 850, ten hours at 12 and two months of the bench are 1,010; in cash three quarters of
   * the hours and the bench less, 880. To come are 19 months of the bench, 380. 54 firsts and 36
   * seconds list at 1,512, 16.80 each: 83 of them are 1,390. A part split off changes nothing.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void lotOfWhichNothingIsSold_whetherSplitOrNot(boolean isSplit) {
    Diary diary =
        new Diary()
            .on("2027-02-03", "gamble", ARRIVED, 100)
            .on("2027-03-05", "gamble", SPENT)
            .hours(10);
    if (isSplit) {
      diary.on("2027-03-20", "gamble", SPLIT, 40).to("part");
    }
    BoughtReview gamble = bought(unsold(), diary);

    assertThat(gamble.parts()).hasSize(isSplit ? 2 : 1);
    assertThat(gamble.landed()).isCloseTo(850, CENT);
    assertThat(gamble.resultSoFar()).isCloseTo(-1010, CENT);
    assertThat(gamble.cashSoFar()).isCloseTo(-880, CENT);
    assertThat(gamble.resultToCome()).isCloseTo(-380, CENT);
    assertThat(gamble.standing()).isCloseTo(90, CENT);
    assertThat(gamble.wholeStanding()).isEqualTo(90);
    assertThat(gamble.unitsToCome()).isZero();
    assertThat(gamble.unsoldAtList()).isCloseTo(1512, CENT);
    assertThat(gamble.planned()).isCloseTo(-850 - 21 * 20, CENT);
    assertThat(gamble.verdict().why()).isEqualTo(Verdict.Why.EXPECTED_TO_FALL_SHORT);
    assertThat(gamble.verdict().amount()).isCloseTo(1390, CENT);
    ToBeEven even = gamble.toBeEven().orElseThrow();
    assertThat(even.plants()).isEqualTo(83);
    assertThat(even.price()).isCloseTo(16.8, CENT);
    assertThat(even.isEnough()).isTrue();
    assertThat(gamble.payback().state()).isEqualTo(Payback.State.NEVER);
    assertStep(gamble, Cause.COST, 1270, 1270);
    assertStep(gamble, Cause.HOURS, 0, 120);
    assertStep(gamble, Cause.LOSSES, 100, 100);
  }

  private static void assertStep(BoughtReview of, Cause cause, double planned, double real) {
    CauseStep step =
        of.steps().stream().filter(each -> each.cause() == cause).findFirst().orElseThrow();
    assertThat(step.planned()).as("%s as planned", cause).isCloseTo(planned, CENT);
    assertThat(step.real()).as("%s as it came", cause).isCloseTo(real, CENT);
  }

  /**
   * Nothing has a grade of 20 mm yet: what must be sold is reckoned at the lowest grade's price.
   */
  @Test
  void lotWithoutAGrade_isTooYoung_andToBeEvenAtTheLowestPrice() {
    Scenario young =
        Nurseries.bare()
            .seasons(2)
            .ladder("stout", grade("first", 1, 20), grade("second", 2, 40), grade("third", 3, 60))
            .species(Nurseries.bareSpecies("rowan", "stout"))
            .demand(Nurseries.demandRow("stout", "second", OptionalDouble.of(0), 30))
            .demand(Nurseries.demandRow("stout", "third", OptionalDouble.of(0), 90))
            .lot(
                Lots.lot("gamble")
                    .species("rowan")
                    .arrived(2027, 2)
                    .trunks(5, 0)
                    .bought(8, 50)
                    .build())
            .scenario();
    BoughtReview gamble = bought(young, new Diary().on("2027-02-03", "gamble", ARRIVED, 100));

    assertThat(gamble.verdict().kind()).isEqualTo(Verdict.Kind.TOO_YOUNG);
    assertThat(gamble.verdict().amount()).isCloseTo(850, CENT);
    assertThat(gamble.toBeEven()).contains(new ToBeEven(29, 30, true));
  }

  private static Grade grade(String name, int rank, double trunkMm) {
    return new Grade(name, rank, trunkMm, 0, 12);
  }

  /** 60 of 100 sell for 1,200 as planned, 40 later: all are among those that live to be sold. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void lotHalfSold_countsWhatIsToComeAmongItsPlants(boolean isSplit) {
    Diary diary = new Diary().on("2027-02-03", "gamble", ARRIVED, 100);
    if (isSplit) {
      diary.on("2027-03-20", "gamble", SPLIT, 40).to("part");
    }
    diary.on("2027-06-20", "gamble", SOLD, 60).amount(1200);
    BoughtReview gamble = bought(gamble(Nurseries.bare()).scenario(), diary);

    assertThat(gamble.unitsToCome()).isCloseTo(40, CENT);
    assertThat(gamble.wholeToCome()).isEqualTo(40);
    assertThat(gamble.salesToCome()).isCloseTo(800, CENT);
    assertThat(gamble.resultToCome()).isCloseTo(800, CENT);
    assertStep(gamble, Cause.LOSSES, 100, 100);
    assertStep(gamble, Cause.BUYERS, 1, 1);
    assertStep(gamble, Cause.COST, 850, 850);
    assertThat(gamble.payback().planned()).contains(YearMonth.of(2027, 6));
  }

  private static Nurseries gamble(Nurseries nursery) {
    return nursery
        .seasons(2)
        .sellsAll("one", "any", 20)
        .lot(
            Lots.lot("gamble")
                .quantity(100)
                .arrived(2027, 2)
                .notBefore(2027, 6)
                .bought(8, 50)
                .build());
  }

  /**
   * Without luck every draw ends with 2,000 less 850; a lot without a line is likely to as well.
   */
  @Test
  void lotWithoutALine_isLikelyToEndAsTheKeptPlanSaid() {
    Scenario scenario =
        gamble(Nurseries.bare()).lot(Lots.lot("old").quantity(10).build()).scenario();
    KeptPlan kept =
        PlanKeeping.keep(
            new Diary().of(scenario).withPlan(scenario.plan().withDraws(10)), 1, done -> {});
    Diary ofAnother = new Diary().on("2027-03-20", "old", COUNTED, 10);
    BoughtReview gamble =
        Review.of(ofAnother.of(scenario), TODAY, Optional.of(kept)).bought().get(0);

    Range likely = gamble.likely().orElseThrow();
    assertThat(likely.p10()).isCloseTo(1150, within(0.01));
    assertThat(likely.p90()).isCloseTo(1150, within(0.01));
    assertThat(gamble.money().range()).hasSize(24);
    assertThat(gamble.money().range().get(2).p50()).isZero();
    assertThat(gamble.money().range().get(3).p50()).isCloseTo(-850, within(0.01));
    assertThat(gamble.money().range().get(7).p50()).isCloseTo(1150, within(0.01));
  }

  @Test
  void planWithoutDraws_saysNoRange() {
    Scenario scenario = gamble(Nurseries.bare()).scenario();
    BoughtReview gamble = bought(scenario, new Diary().on("2027-02-03", "gamble", ARRIVED, 100));

    assertThat(gamble.money().range()).isEmpty();
    assertThat(gamble.likely()).isEmpty();
  }

  /**
   * 10 mm that grow 6 a year are 18 in June 2028, when all are to be sold: small, at 20. Measured
   * they are 25 mm in March, so they are sold large, at 50: growth alone makes 30 more of each.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void lotThatGrewFaster_fetchesMoreByItsGrowthAlone(boolean isSplit) {
    Scenario scenario =
        Nurseries.bare()
            .seasons(2)
            .ladder("sizes", grade("small", 1, 1), grade("large", 2, 20))
            .species(Nurseries.bareSpecies("rowan", "sizes"))
            .sellsAll("sizes", "small", 20)
            .sellsAll("sizes", "large", 50)
            .lot(
                Lots.lot("gamble")
                    .species("rowan")
                    .arrived(2027, 2)
                    .notBefore(2028, 6)
                    .bought(8, 50)
                    .build())
            .scenario();
    Diary diary = new Diary().on("2027-02-03", "gamble", ARRIVED, 100);
    if (isSplit) {
      diary.on("2027-03-20", "gamble", SPLIT, 40).to("part");
      diary.on("2028-03-20", "part", COUNTED, 40).trunks(25, 0);
    }
    diary.on("2028-03-20", "gamble", COUNTED, isSplit ? 60 : 100).trunks(25, 0);
    BoughtReview gamble = bought(scenario, diary);

    assertStep(gamble, Cause.QUALITY, 20, 20);
    assertStep(gamble, Cause.GROWTH, 20, 50);
    assertStep(gamble, Cause.GRADE_SOLD, 50, 50);
    assertThat(gamble.causes())
        .filteredOn(part -> part.cents() != 0)
        .containsExactly(new CausePart(Cause.GROWTH, 300_000));
  }

  @Test
  void lotsOfAKind_areCountedByTheirVerdicts() {
    Scenario scenario =
        gamble(Nurseries.bare())
            .lot(Lots.lot("other").arrived(2027, 2).notBefore(2027, 6).bought(8, 50).build())
            .scenario();
    Diary diary =
        new Diary()
            .on("2027-02-03", "gamble", ARRIVED, 100)
            .on("2027-02-03", "other", ARRIVED, 100)
            .on("2027-04-20", "other", DIED, 100)
            .on("2027-06-20", "gamble", SOLD, 60)
            .amount(1200);
    Review review = Review.of(diary.of(scenario), TODAY, Optional.empty());

    assertThat(review.kinds())
        .filteredOn(each -> each.by() == GambleKind.By.SPECIES)
        .containsExactly(
            new GambleKind(GambleKind.By.SPECIES, "ash", 2, 1, 1, 0, 0, 1700, 2300, 1150 - 850));
  }

  /** Half of such consignments fail as a whole; one that has come did not. */
  @Test
  void consignmentThatHasCome_failsInNoDraw() {
    Scenario scenario =
        Nurseries.bare()
            .seasons(2)
            .sellsAll("one", "any", 20)
            .lot(
                Lots.lot("gamble")
                    .arrived(2027, 2)
                    .notBefore(2027, 6)
                    .bought(8, 50, 1, 0.5)
                    .build())
            .scenario();
    Diary diary = new Diary().on("2027-02-03", "gamble", ARRIVED, 100);
    BoughtReview gamble = bought(scenario.withPlan(scenario.plan().withDraws(100)), diary);

    assertThat(gamble.likely().orElseThrow().p10()).isCloseTo(1150, within(0.01));
  }
}
