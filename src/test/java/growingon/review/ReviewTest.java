package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.CULLED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.FOUND;
import static growingon.nursery.record.DaybookLine.What.LOST;
import static growingon.nursery.record.DaybookLine.What.MOVED;
import static growingon.nursery.record.DaybookLine.What.RETURNED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPENT;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static growingon.nursery.record.DaybookLine.What.USED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import growingon.money.CostKind;
import growingon.nursery.Inputs;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Offer;
import growingon.nursery.lot.Papers;
import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.problem.Problem;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.book.Loss;
import growingon.review.book.Suspicion;
import growingon.review.book.Trace;
import growingon.review.bought.BoughtReview;
import growingon.review.bought.BoughtReview.Payback;
import growingon.review.bought.BoughtReview.Verdict;
import growingon.review.bought.Cause;
import growingon.review.bought.CausePart;
import growingon.review.bought.GambleKind;
import growingon.review.kept.KeptChances;
import growingon.review.kept.KeptJudged;
import growingon.review.kept.KeptJudging;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptSpan;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A plan with its daybook. */
class ReviewTest {
  private static final YearMonth TODAY = YearMonth.of(2028, 6);
  private static final double TINY = 1e-9;

  private static Review review(Scenario scenario, Diary diary) {
    return Review.of(diary.of(scenario), TODAY, Optional.empty());
  }

  private static LotReview lot(Review review, String name) {
    return review.lots().stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static BoughtReview bought(Review review, String name) {
    return review.bought().stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> sentences(Review review) {
    return review.faults().stream().map(Problem::toString).toList();
  }

  private static Nurseries plain() {
    return Nurseries.bare().labour(12, 0.5).sellsAll("one", "any", 20);
  }

  private static Scenario twoHundred() {
    return plain()
        .lot(
            Lots.lot("liners")
                .quantity(200)
                .unitCost(3)
                .papers(new Papers("Oldshaw Seedlings", "OS-1", "home grown", "", ""))
                .build())
        .scenario();
  }

  private static Diary splitInThree() {
    return new Diary()
        .on("2026-11-20", "liners", SPENT)
        .amount(400)
        .because("materials")
        .on("2026-12-01", "liners", SPLIT, 90)
        .to("liners A")
        .on("2026-12-01", "liners", SPLIT, 60)
        .to("liners B");
  }

  @Test
  void lotOf200_split90And60And50_addsUpToTheParent() {
    Review review = review(twoHundred(), splitInThree());
    assertThat(review.faults()).isEmpty();
    assertThat(review.lots())
        .extracting(each -> each.lot().name())
        .containsExactly("liners", "liners A", "liners B");
    assertThat(review.lots())
        .extracting(each -> Math.round(each.alive().real() * 1e6) / 1e6)
        .containsExactly(50.0, 90.0, 60.0);
    Review whole =
        review(
            twoHundred(),
            new Diary()
                .on("2026-11-20", "liners", SPENT)
                .amount(400)
                .because("materials")
                .on("2026-12-01", "liners", COUNTED, 200));
    double cost = review.lots().stream().mapToDouble(LotReview::costToDate).sum();
    assertThat(cost).isCloseTo(lot(whole, "liners").costToDate(), within(1e-6));
    assertThat(cost).isGreaterThan(200 * 3 + 400 - TINY);
    assertThat(lot(review, "liners B").costToDate()).isCloseTo(cost * 60 / 200, within(1e-6));
    assertThat(lot(review, "liners A").splitFrom()).contains("liners");
    assertThat(lot(review, "liners A").lot().papers().passport()).isEqualTo("OS-1");
    assertThat(lot(review, "liners A").lot().papers().fromLot()).isEqualTo("liners");
  }

  @Test
  void salesBeforeASplit_stayWithTheLotTheyWereBookedOn_andThePartsAddUp() {
    Review review =
        review(
            twoHundred(),
            new Diary()
                .on("2026-11-20", "liners", SOLD, 20)
                .amount(410)
                .on("2026-12-01", "liners", SPLIT, 90)
                .to("liners A")
                .on("2026-12-20", "liners A", SOLD, 30)
                .amount(590)
                .on("2026-12-21", "liners", RETURNED, 2)
                .amount(41));
    LotReview rest = lot(review, "liners");
    LotReview split = lot(review, "liners A");
    assertThat(rest.unitsSold().byDaybook()).isCloseTo(18, within(TINY));
    assertThat(rest.sales().byDaybook()).isCloseTo(369, within(TINY));
    assertThat(split.unitsSold().byDaybook()).isCloseTo(30, within(TINY));
    assertThat(split.sales().byDaybook()).isCloseTo(590, within(TINY));
    assertThat(review.nursery().sales().real()).isCloseTo(959, within(TINY));
    // 200 came, 20 went, 90 were split off, 2 came back.
    assertThat(rest.wholeBalance())
        .isEqualTo(new Whereabouts(200, 0, 2, 0, 0, 0, 20, 0, 90, 0, 92));
    assertThat(split.wholeBalance()).isEqualTo(new Whereabouts(0, 90, 0, 0, 0, 0, 30, 0, 0, 0, 60));
    assertThat(rest.result().difference() + split.result().difference())
        .isCloseTo(review.nursery().result().difference(), within(1e-6));
  }

  @Test
  void costOfNoLot_isTheNurserys_andNoLotsAccountChanges() {
    Diary counted = new Diary().on("2026-12-20", "liners", COUNTED, 200);
    Diary spent =
        new Diary()
            .on("2026-12-20", "liners", COUNTED, 200)
            .on("2026-12-05", "", SPENT)
            .amount(268)
            .hours(3);
    Review without = review(twoHundred(), counted);
    Review with = review(twoHundred(), spent);
    assertThat(with.faults()).isEmpty();
    assertThat(with.lots()).isEqualTo(without.lots());
    assertThat(with.ofNoLot().cost().byDaybook()).isCloseTo(268 + 3 * 12, within(TINY));
    assertThat(with.ofNoLot().hours()).isEqualTo(3);
    assertThat(without.ofNoLot().cost().real()).isZero();
  }

  @Test
  void salesAfterASplit_goToTheRightPart() {
    Review review =
        review(
            twoHundred(),
            splitInThree()
                .on("2026-12-15", "liners A", SOLD, 30)
                .amount(450)
                .on("2027-01-10", "liners", SOLD, 5)
                .amount(60));
    assertThat(lot(review, "liners A").unitsSold().real()).isCloseTo(30, within(TINY));
    assertThat(lot(review, "liners A").sales().real()).isCloseTo(450, within(1e-6));
    assertThat(lot(review, "liners A").alive().real()).isCloseTo(60, within(1e-6));
    assertThat(lot(review, "liners").sales().real()).isCloseTo(60, within(1e-6));
    assertThat(lot(review, "liners").alive().real()).isCloseTo(45, within(1e-6));
    assertThat(lot(review, "liners B").unitsSold().real()).isZero();
  }

  /** 40 of 100 bought are split off; then 10 more come into each of the two. */
  @Test
  void plantsThatCome_intoAPartOfABoughtLot_areThere() {
    Review review =
        review(
            Nurseries.bare()
                .lot(Lots.lot("gamble").arrived(2027, 2).bought(8, 0).build())
                .scenario(),
            new Diary()
                .on("2027-02-03", "gamble", ARRIVED, 100)
                .on("2027-03-01", "gamble", SPLIT, 40)
                .to("own")
                .on("2027-04-01", "own", ARRIVED, 10)
                .on("2027-04-02", "gamble", ARRIVED, 10));
    assertThat(lot(review, "own").alive().real()).isCloseTo(50, within(1e-6));
    assertThat(lot(review, "gamble").alive().real()).isCloseTo(70, within(1e-6));
  }

  @Test
  void plantsAndTheirSales_splitAfterASale_areThoseOfTheLotSoldFrom() {
    Review review =
        review(
            twoHundred(),
            new Diary()
                .on("2026-11-05", "liners", SOLD, 40)
                .amount(800)
                .on("2026-12-01", "liners", SPLIT, 40)
                .to("liners A"));
    assertThat(lot(review, "liners A").sales().real()).isCloseTo(0, within(1e-6));
    assertThat(lot(review, "liners").sales().real()).isCloseTo(800, within(1e-6));
    assertThat(lot(review, "liners A").alive().real()).isCloseTo(40, within(1e-6));
    assertThat(lot(review, "liners").alive().real()).isCloseTo(120, within(1e-6));
  }

  @Test
  void lotSplitOffOnTheDayOfItsOwnSplit_isFollowed() {
    Review review =
        review(
            twoHundred(),
            new Diary()
                .on("2026-12-01", "M", SPLIT, 20)
                .to("C")
                .on("2026-12-01", "liners", SPLIT, 80)
                .to("M"));
    assertThat(review.faults()).isEmpty();
    assertThat(lot(review, "C").alive().real()).isCloseTo(20, within(1e-6));
    assertThat(lot(review, "M").alive().real()).isCloseTo(60, within(1e-6));
    assertThat(lot(review, "liners").alive().real()).isCloseTo(120, within(1e-6));
  }

  @Test
  void plantsThatJoinAnotherLot_changeBothCounts_andTakeTheirCostAlong() {
    Scenario scenario =
        plain()
            .lot(Lots.lot("A").quantity(100).unitCost(4).build())
            .lot(Lots.lot("B").quantity(50).unitCost(10).build())
            .scenario();
    Review review = review(scenario, new Diary().on("2026-12-05", "A", MOVED, 25).to("B"));
    assertThat(review.faults()).isEmpty();
    assertThat(lot(review, "A").balance().splitOut()).isCloseTo(25, within(TINY));
    assertThat(lot(review, "A").alive().real()).isCloseTo(75, within(TINY));
    assertThat(lot(review, "B").balance().splitIn()).isCloseTo(25, within(TINY));
    assertThat(lot(review, "B").alive().real()).isCloseTo(75, within(TINY));
    assertThat(lot(review, "A").costToDate()).isCloseTo(300, within(1e-6));
    assertThat(lot(review, "B").costToDate()).isCloseTo(600, within(1e-6));
  }

  /**
   * Cost per living tree by Gilman, University of Florida 2001: 14 trees of each method; container
   * 144, field 107, planting 145, staking 25, water 131 with and 22 without the summer's. The live
   * counts are derived from the published costs.
   */
  @ParameterizedTest
  @CsvSource({
    "144, 145, 25, 131, 0, 445",
    "107, 145, 0, 131, 0, 383",
    "144, 145, 25, 22, 6, 588",
    "144, 145, 25, 22, 8, 784",
    "144, 145, 25, 22, 7, 672",
    "144, 145, 25, 22, 10, 1176",
    "107, 145, 0, 22, 4, 383.6"
  })
  void costPerLivingTree_agreesWithGilman(
      double tree, double planting, double staking, double water, int died, double expected) {
    Scenario scenario =
        Nurseries.bare()
            .lot(Lots.lot("trees").quantity(14).arrived(2027, 2).bought(99, 0).build())
            .scenario();
    Diary diary =
        new Diary()
            .on("2027-02-03", "trees", ARRIVED, 14)
            .amount(14 * tree)
            .on("2027-02-04", "trees", SPENT)
            .amount(14 * planting)
            .because("planting")
            .on("2027-02-05", "trees", SPENT)
            .amount(14 * staking)
            .because("stakes")
            .on("2027-08-31", "trees", SPENT)
            .amount(14 * water)
            .because("water")
            .on("2027-09-01", "trees", DIED, died)
            .because("drought");
    LotReview trees = lot(review(scenario, diary), "trees");
    assertThat(trees.alive().real()).isCloseTo(14 - died, within(1e-9));
    assertThat(trees.costPerLiving().getAsDouble()).isCloseTo(expected, within(0.05));
  }

  @Test
  void moreGoneThanAlive_isNamedWithItsRows() {
    Review review =
        review(
            twoHundred(),
            new Diary()
                .on("2026-11-10", "liners", COUNTED, 120)
                .on("2026-11-12", "liners", DIED, 15)
                .on("2026-12-01", "liners", SOLD, 110)
                .amount(2000));
    assertThat(sentences(review))
        .containsExactly(
            "daybook.csv, row 4: more plants of liners are sold than the 105 alive by rows 2 and 3"
                + " before it (110); correct the row that is wrong, or enter plants that were found"
                + " or returned");
    Whereabouts balance = lot(review, "liners").balance();
    assertThat(balance.sold()).isCloseTo(110, within(TINY));
    assertThat(balance.difference()).isCloseTo(0, within(TINY));
  }

  @Test
  void countThatRises_isNamed_unlessPlantsWereFound() {
    Diary diary =
        new Diary()
            .on("2026-12-01", "liners", COUNTED, 180)
            .on("2027-02-01", "liners", COUNTED, 184);
    assertThat(sentences(review(twoHundred(), diary)))
        .containsExactly(
            "daybook.csv, row 3: more plants of liners are counted than the 180 that were alive"
                + " (184); enter plants that were found or returned, or correct the count");
    diary.on("2027-01-15", "liners", FOUND, 4);
    assertThat(review(twoHundred(), diary).faults()).isEmpty();
  }

  @Test
  void gradeThatCannotBeReached_isNamed() {
    Scenario scenario =
        Nurseries.working()
            .lot(
                Lots.lot("young elms")
                    .species("elm")
                    .trunks(9, 0.15)
                    .pot("7 litre")
                    .place("ground")
                    .route("liner")
                    .build())
            .scenario();
    Review review =
        review(scenario, new Diary().on("2026-12-03", "young elms", COUNTED, 90).grade("specimen"));
    assertThat(sentences(review))
        .containsExactly(
            "daybook.csv, row 2, column grade: plants of young elms cannot have reached this grade:"
                + " its training has not started and its thickest are about 13 mm (specimen);"
                + " correct the grade, or the lot's trunk and training since");
  }

  @Test
  void lineOfALaterMonth_isNotKnownYet() {
    Review review =
        review(twoHundred(), new Diary().on("2028-07-01", "liners", SOLD, 10).amount(100));
    assertThat(review.sources().lines()).isZero();
    assertThat(lot(review, "liners").isRecorded()).isFalse();
  }

  @Test
  void balance_holdsForEveryWayOfComingAndGoing() {
    Review review =
        review(
            twoHundred(),
            new Diary()
                .on("2026-11-10", "liners", DIED, 12)
                .on("2026-11-11", "liners", CULLED, 3)
                .on("2026-11-20", "liners", LOST, 2)
                .on("2026-12-01", "liners", SOLD, 40)
                .amount(800)
                .on("2026-12-02", "liners", USED, 6)
                .amount(120)
                .on("2027-01-05", "liners", RETURNED, 4)
                .amount(80)
                .on("2027-01-09", "liners", FOUND, 1)
                .on("2027-02-01", "liners", COUNTED, 139));
    assertThat(review.faults()).isEmpty();
    Whereabouts balance = lot(review, "liners").balance();
    assertThat(balance.difference()).isCloseTo(0, within(1e-9));
    assertThat(balance.died()).isCloseTo(12, within(1e-9));
    assertThat(balance.culled()).isCloseTo(3, within(1e-9));
    assertThat(balance.used()).isCloseTo(6, within(1e-9));
    assertThat(balance.returned()).isCloseTo(4, within(1e-9));
    assertThat(balance.found()).isCloseTo(1, within(1e-9));
    assertThat(balance.lost()).isCloseTo(2 + 3, within(1e-9));
    assertThat(balance.standing()).isCloseTo(139, within(1e-9));
    assertThat(lot(review, "liners").sales().real()).isCloseTo(800 + 120 - 80, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void orderOfLines_doesNotMatter(long seed) {
    List<DaybookLine> lines = new ArrayList<>(manyLines().lines());
    Collections.shuffle(lines, new Random(seed));
    Scenario scenario = twoHundred();
    Review inOrder = Review.of(manyLines().of(scenario), TODAY, Optional.empty());
    Review shuffled = Review.of(Diary.inputs(scenario, lines), TODAY, Optional.empty());
    assertThat(shuffled).usingRecursiveComparison().isEqualTo(inOrder);
  }

  private static Diary manyLines() {
    return splitInThree()
        .on("2026-12-01", "liners", COUNTED, 48)
        .on("2026-12-01", "liners A", COUNTED, 50)
        .quality(Quality.FIRST)
        .trunks(11, 0.1)
        .on("2026-12-01", "liners A", COUNTED, 38)
        .quality(Quality.SECOND)
        .trunks(10, 0.2)
        .on("2026-12-15", "liners A", SOLD, 30)
        .amount(450)
        .on("2026-12-15", "liners A", DIED, 2)
        .because("frost")
        .on("2027-03-01", "liners B", LOST, 1)
        .on("2027-03-01", "liners B", SOLD, 3)
        .customer("K7")
        .amount(70);
  }

  @Test
  void losses_byReason_largestFirst_andSuspicionsByDate() {
    Review review =
        review(
            twoHundred(),
            new Diary()
                .on("2026-11-10", "liners", DIED, 3)
                .because("frost")
                .on("2026-11-12", "liners", DIED, 9)
                .because("Notifiable? leaves wilting")
                .on("2026-12-10", "liners", DIED, 5)
                .because("frost"));
    assertThat(review.losses())
        .extracting(Loss::reason, Loss::plants, Loss::lines, Loss::supplier, Loss::isNotifiable)
        .containsExactly(
            tuple("Notifiable? leaves wilting", 9.0, 1, "Oldshaw Seedlings", true),
            tuple("frost", 8.0, 2, "Oldshaw Seedlings", false));
    assertThat(review.suspicions())
        .extracting(Suspicion::lot, Suspicion::passport, each -> each.where().row())
        .containsExactly(tuple("liners", "OS-1", 3));
  }

  @Test
  void trace_followsAPassportToItsLotsAndCustomers() {
    Review review = review(twoHundred(), manyLines());
    assertThat(review.traces()).hasSize(1);
    Trace trace = review.traces().get(0);
    assertThat(trace.passport()).isEqualTo("OS-1");
    assertThat(trace.lots())
        .extracting(Trace.TracedLot::lot)
        .containsExactly("liners", "liners A", "liners B");
    assertThat(trace.lots().get(2).sales())
        .extracting(Trace.Left::customer, Trace.Left::plants)
        .containsExactly(tuple("K7", 3.0));
    assertThat(trace.lots().get(0).moves()).hasSize(2);
  }

  private static Scenario gamble() {
    return plain()
        .lot(
            Lots.lot("gamble")
                .quantity(100)
                .arrived(2027, 2)
                .notBefore(2027, 6)
                .bought(8, 50)
                .papers(new Papers("Tansy Hill", "TH-1", "", "", ""))
                .build())
        .seasons(3)
        .scenario();
  }

  @Test
  void lotThatEarnedItsMoney_paid() {
    BoughtReview gamble =
        bought(
            review(
                gamble(),
                new Diary()
                    .on("2027-02-03", "gamble", ARRIVED, 100)
                    .on("2027-06-20", "gamble", SOLD, 60)
                    .amount(1200)),
            "gamble");
    assertThat(gamble.resultSoFar()).isCloseTo(1200 - 850, within(1e-6));
    assertThat(gamble.verdict().kind()).isEqualTo(Verdict.Kind.PAID);
    assertThat(gamble.verdict().why()).isEqualTo(Verdict.Why.MONEY_IS_BACK);
    assertThat(gamble.payback().state()).isEqualTo(Payback.State.REACHED);
    assertThat(gamble.payback().month()).contains(YearMonth.of(2027, 6));
    assertThat(gamble.toBeEven()).isEmpty();
    assertThat(gamble.unitsToCome()).isCloseTo(40, within(1e-6));
  }

  @Test
  void lotThatDied_didNotPay() {
    BoughtReview gamble =
        bought(
            review(
                gamble(),
                new Diary()
                    .on("2027-02-03", "gamble", ARRIVED, 100)
                    .on("2027-04-20", "gamble", DIED, 100)
                    .because("frost")),
            "gamble");
    assertThat(gamble.verdict().kind()).isEqualTo(Verdict.Kind.DID_NOT_PAY);
    assertThat(gamble.verdict().why()).isEqualTo(Verdict.Why.NOTHING_LEFT);
    assertThat(gamble.verdict().amount()).isCloseTo(850, within(1e-6));
    assertThat(gamble.causes())
        .filteredOn(each -> each.cents() != 0)
        .extracting(CausePart::cause, CausePart::cents)
        .containsExactly(tuple(Cause.LOSSES, -200000L));
  }

  @Test
  void lotStillInTheRed_isUndecided_andSaysWhatMustBeSold() {
    BoughtReview gamble =
        bought(
            review(
                gamble(),
                new Diary()
                    .on("2027-02-03", "gamble", ARRIVED, 100)
                    .on("2027-06-20", "gamble", SOLD, 10)
                    .amount(200)),
            "gamble");
    assertThat(gamble.verdict().kind()).isEqualTo(Verdict.Kind.UNDECIDED);
    assertThat(gamble.verdict().why()).isEqualTo(Verdict.Why.EXPECTED_TO_PAY);
    assertThat(gamble.toBeEven())
        .contains(new BoughtReview.ToBeEven(33, gamble.toBeEven().get().price(), true));
    assertThat(gamble.toBeEven().get().price()).isCloseTo(20, within(1e-9));
    assertThat(gamble.payback().state()).isEqualTo(Payback.State.EXPECTED);
    assertThat(gamble.payback().month()).contains(YearMonth.of(2027, 7));
    assertThat(gamble.payback().planned()).contains(YearMonth.of(2027, 6));
    List<Double> expected = gamble.money().expected();
    assertThat(expected).hasSameSizeAs(gamble.money().planned());
    assertThat(gamble.expected()).isCloseTo(expected.get(expected.size() - 1), within(1e-6));
  }

  @Test
  void boughtLot_withItsSplitOffs_isOneGamble() {
    Review review =
        review(
            gamble(),
            new Diary()
                .on("2027-02-03", "gamble", ARRIVED, 100)
                .on("2027-03-03", "gamble", SPLIT, 100)
                .to("all of it")
                .on("2027-06-20", "all of it", SOLD, 60)
                .amount(1200));
    assertThat(review.bought()).hasSize(1);
    BoughtReview gamble = bought(review, "gamble");
    assertThat(gamble.parts()).containsExactly("gamble", "all of it");
    assertThat(gamble.resultSoFar()).isCloseTo(350, within(1e-6));
    assertThat(review.kinds())
        .extracting(GambleKind::by, GambleKind::kind, GambleKind::paid)
        .containsExactly(
            tuple(GambleKind.By.SUPPLIER, "Tansy Hill", 1),
            tuple(GambleKind.By.SPECIES, "ash", 1),
            tuple(GambleKind.By.SEEN, "seen", 1));
  }

  @Test
  void fewerPlantsForLessMoney_comeAsTheyCame() {
    Review review =
        review(gamble(), new Diary().on("2027-03-09", "gamble", ARRIVED, 80).amount(600));
    LotReview lot = lot(review, "gamble");
    assertThat(lot.lot().arrived()).isEqualTo(YearMonth.of(2027, 3));
    assertThat(lot.alive().real()).isCloseTo(80, within(TINY));
    assertThat(lot.alive().planned()).isCloseTo(100, within(TINY));
    Compared plants = lot.costs().get(CostKind.PLANTS);
    assertThat(plants.real()).isCloseTo(600, within(TINY));
    assertThat(plants.isReal()).isTrue();
    Compared carriage = lot.costs().get(CostKind.CARRIAGE);
    assertThat(carriage.isReal()).isTrue();
    assertThat(carriage.planned()).isCloseTo(50, within(TINY));
    assertThat(carriage.real()).isZero();
    assertThat(bought(review, "gamble").landed()).isCloseTo(600, within(TINY));
  }

  @Test
  void carriageOnALineOfItsOwn_comesOnTopOfTheInvoice() {
    Review review =
        review(
            gamble(),
            new Diary()
                .on("2027-02-09", "gamble", ARRIVED, 100)
                .amount(800)
                .on("2027-02-20", "gamble", SPENT)
                .amount(64)
                .because("carriage"));
    assertThat(review.faults()).isEmpty();
    assertThat(bought(review, "gamble").landed()).isCloseTo(864, within(TINY));
  }

  @Test
  void invoiceOfAboutThePlantsAlone_isAskedAbout() {
    assertThat(sentences(review(gamble(), arrivedFor(812))))
        .containsExactly(
            "daybook.csv, row 2, column amount: this is about the price of the plants of gamble"
                + " alone, without the 50 planned for carriage and charges; it counts as the whole"
                + " invoice (812); if carriage was billed apart, enter a line spent with the reason"
                + " carriage");
    assertThat(review(gamble(), arrivedFor(850)).faults()).isEmpty();
    assertThat(review(gamble(), arrivedFor(730)).faults()).isEmpty();
  }

  private static Diary arrivedFor(double amount) {
    return new Diary().on("2027-02-09", "gamble", ARRIVED, 100).amount(amount);
  }

  @Test
  void plantThatCameBack_isNotSold_andWhatWasPaidBackIsAskedFor() {
    Review review =
        review(
            gamble(),
            new Diary()
                .on("2027-02-03", "gamble", ARRIVED, 100)
                .on("2027-06-20", "gamble", SOLD, 60)
                .amount(1200)
                .on("2027-06-25", "gamble", RETURNED, 3)
                .amount(60)
                .on("2027-06-26", "gamble", RETURNED, 1));
    LotReview lot = lot(review, "gamble");
    assertThat(lot.unitsSold().real()).isCloseTo(56, within(TINY));
    assertThat(lot.unitsSold().wholeReal()).isEqualTo(56);
    assertThat(lot.sales().real()).isCloseTo(1140, within(TINY));
    assertThat(lot.alive().real()).isCloseTo(44, within(TINY));
    assertThat(sentences(review))
        .containsExactly(
            "daybook.csv, row 5: plants of gamble came back, and nothing says what was paid back"
                + " for them (1); enter the amount paid back, 0 if there was none");
  }

  @Test
  void hoursOfOneKindOfJob_leaveThoseOfTheOthers() {
    double ofSteps = hours(worked(9));
    assertThat(ofSteps).isGreaterThan(9.1);
    assertThat(hours(worked(19))).isCloseTo(ofSteps + 10, within(1e-6));
    Diary all =
        worked(9)
            .on("2026-12-20", "elms", SPENT)
            .hours(2)
            .because("Care")
            .on("2026-12-21", "elms", SPENT)
            .hours(3)
            .because("winter move");
    assertThat(hours(all)).isCloseTo(14, within(1e-6));
  }

  private static Diary worked(double hours) {
    return new Diary()
        .on("2026-11-20", "elms", SPENT)
        .hours(hours)
        .on("2027-09-20", "elms", COUNTED, 90);
  }

  private static double hours(Diary diary) {
    Scenario scenario = Nurseries.working().lot(Lots.pottedElms("elms").build()).scenario();
    return lot(review(scenario, diary), "elms").hours().real();
  }

  @Test
  void deaths_insideOutsideLuckAndOutsideAll_areTakenSo_andAliveIsNotJudged() {
    Scenario scenario = twoHundred();
    KeptPlan line = PlanKeeping.keep(new Diary().of(scenario), 1, done -> {});
    // 20 of 200 are missing at the count.
    assertThat(judged(scenario, line, span(15, 25), span(10, 30))).isEqualTo(Judged.Take.LUCK);
    assertThat(judged(scenario, line, span(5, 19), span(5, 25)))
        .isEqualTo(Judged.Take.MORE_THAN_LUCK);
    assertThat(judged(scenario, line, span(5, 12), span(5, 19)))
        .isEqualTo(Judged.Take.MORE_THAN_KNOWN);
  }

  private static KeptSpan span(double low, double high) {
    return new KeptSpan(
        Collections.nCopies(36, low), Collections.nCopies(36, high), Collections.nCopies(36, 0.15));
  }

  /** How the deaths of 180 counted of 200 are taken. */
  private static Judged.Take judged(Scenario scenario, KeptPlan line, KeptSpan luck, KeptSpan all) {
    KeptPlan kept = judgedBy(line, luck, all);
    Inputs inputs = new Diary().on("2026-11-20", "liners", COUNTED, 180).of(scenario);
    Review review = Review.of(inputs, TODAY, Optional.of(kept));
    assertThat(review.judged()).hasSize(1);
    Judged deaths = review.judged().get(0);
    assertThat(deaths.what()).isEqualTo(Judged.What.DEATHS);
    assertThat(deaths.real()).isCloseTo(20, within(TINY));
    assertThat(deaths.outsideByLuck()).isEqualTo(0.15);
    return deaths.take();
  }

  private static KeptPlan judgedBy(KeptPlan line, KeptSpan luck, KeptSpan all) {
    KeptSpan none = new KeptSpan(List.of(), List.of(), List.of());
    KeptJudging judging =
        new KeptJudging(
            new KeptJudged(all, none, none),
            Optional.of(new KeptJudged(luck, none, none)),
            Collections.nCopies(36, 3.0),
            Map.of(),
            Optional.empty(),
            Optional.empty());
    KeptLot lot = line.lots().get(0);
    KeptLot drawn = lot.with().chances(KeptChances.NONE).judging(Optional.of(judging)).build();
    return new KeptPlan(
        line.name(),
        line.firstMonth(),
        line.seasons(),
        200,
        1,
        List.of(drawn),
        KeptChances.NONE,
        Optional.empty(),
        List.of());
  }

  @Test
  void lotWithoutALine_sellsAsPlanned_whateverOthersSell() {
    Scenario scenario =
        plain()
            .lot(Lots.lot("told of").quantity(80).build())
            .lot(Lots.lot("forgotten").quantity(60).build())
            .scenario();
    Diary none = new Diary().on("2027-03-01", "told of", COUNTED, 80);
    Diary sold = new Diary().on("2027-03-01", "told of", SOLD, 47).amount(940);
    Review nothing = review(scenario, none);
    Review some = review(scenario, sold);
    LotReview forgotten = lot(some, "forgotten");
    assertThat(forgotten).isEqualTo(lot(nothing, "forgotten"));
    assertThat(forgotten.unitsSold().real())
        .isCloseTo(forgotten.unitsSold().planned(), within(TINY));
    assertThat(forgotten.unitsSold().byDaybook()).isZero();
    Compared all = some.nursery().unitsSold();
    assertThat(all.byDaybook()).isCloseTo(47, within(TINY));
    assertThat(all.assumed()).isCloseTo(60, within(TINY));
    assertThat(some.nursery().sales().byDaybook()).isCloseTo(940, within(TINY));
  }

  @Test
  void lotThatNeitherCameNorIsBought_isNamedOnce() {
    Review review =
        review(
            twoHundred(),
            new Diary().on("2026-12-01", "whips", DIED, 3).on("2026-12-09", "whips", DIED, 2));
    assertThat(sentences(review))
        .containsExactly(
            "daybook.csv, row 2: by the daybook this lot has not arrived, and the plan does not buy"
                + " it; its rows are left out (whips); enter its arrival, or take the offer up in"
                + " the plan");
  }

  @Test
  void lotSplitOffBeforeTheCount_andNotInTheStock_isNamed() {
    Review review =
        review(twoHundred(), new Diary().on("2026-08-01", "liners", SPLIT, 20).to("liners X"));
    assertThat(sentences(review))
        .containsExactly(
            "daybook.csv, row 2: this lot was split off before the stock was counted, but the stock"
                + " list does not have it; its rows are left out (liners X); add it to the stock"
                + " list");
    assertThat(review.lots()).hasSize(1);
  }

  @Test
  void offerThatThePlanDoesNotTake_butThatCame_isReviewed() {
    Offer offer =
        Offer.named("late whips", Lots.lot("late whips").arrived(2027, 2).quantity(0).build())
            .currency("GBP")
            .breaks(List.of(new Offer.PriceBreak(1, 2)))
            .arrival(YearMonth.of(2027, 2))
            .carriage(30)
            .build();
    Inputs without = new Diary().on("2027-03-05", "late whips", ARRIVED, 40).of(twoHundred());
    Inputs inputs =
        new Inputs(
            without.scenario(),
            List.of(offer),
            List.of(),
            0,
            Optional.empty(),
            without.daybook(),
            Optional.empty());
    Review review = Review.of(inputs, TODAY, Optional.empty());
    assertThat(review.faults()).isEmpty();
    LotReview whips = lot(review, "late whips");
    assertThat(whips.alive().planned()).isZero();
    assertThat(whips.alive().real()).isCloseTo(40, within(TINY));
    assertThat(bought(review, "late whips").landed()).isCloseTo(110, within(TINY));
    assertThat(bought(review, "late whips").planned()).isZero();
  }

  @Test
  void linesSinceAnOlderCount_areGoneBeforeThePlan() {
    Scenario scenario =
        plain()
            .lot(Lots.lot("oaks").quantity(100).counted(2026, 6).arrived(2025, 3).build())
            .scenario();
    Review review =
        review(
            scenario,
            new Diary()
                .on("2026-05-01", "oaks", DIED, 50)
                .on("2026-08-01", "oaks", DIED, 8)
                .on("2026-09-01", "oaks", SOLD, 12)
                .amount(100));
    LotReview oaks = lot(review, "oaks");
    assertThat(oaks.alive().real()).isCloseTo(80, within(TINY));
    assertThat(oaks.sales().real()).isZero();
    assertThat(oaks.balance().difference()).isCloseTo(0, within(TINY));
    assertThat(review.losses()).extracting(Loss::plants).containsExactly(58.0);
  }
}
