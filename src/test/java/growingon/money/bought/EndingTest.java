package growingon.money.bought;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a bought lot brings if the plan ends sooner or later. */
class EndingTest {
  private static Demand inDecember(String season) {
    return new Demand(
        Optional.empty(),
        "one",
        "any",
        Optional.of(season),
        new MonthSpan(12, 12),
        OptionalDouble.of(25),
        50,
        0,
        0,
        0);
  }

  /** 100 plants for 2,000 in January 2027, 25 sold at 50 in each December from 2029 to 2032. */
  private static Nurseries fourSales() {
    Nurseries nursery =
        Nurseries.bare()
            .seasonStart(Month.JANUARY)
            .firstMonth(2027, 1)
            .seasons(3)
            .discountRate(0.05)
            .lot(Lots.lot("ridge").quantity(100).arrived(2027, 1).bought(20, 0).build());
    for (String season : List.of("2029", "2030", "2031", "2032")) {
      nursery.demand(inDecember(season));
    }
    return nursery;
  }

  private static BoughtLot weighed(Scenario scenario) {
    return ValueJoin.of(scenario).bought().get(0);
  }

  /** Worked out by hand: 1,250 in months 36, 48, 60 and 72, discounted at 5 % a year. */
  @Test
  void gain_bySeasonOfEnding_isThatOfTheSalesUpToThen() {
    Ending ending = weighed(fourSales().scenario()).ending();

    assertThat(ending.seasons()).hasSize(13);
    double[] byHand = {-2000, -2000, -915.80, 116.76, 1100.16, 2036.73, 2036.73};
    for (int season = 0; season < byHand.length; season++) {
      assertThat(ending.seasons().get(season).gain()).isCloseTo(byHand[season], within(0.005));
    }
    assertThat(ending.paysFrom()).hasValue(3);
    assertThat(ending.seasons().get(4).standing()).isCloseTo(25, within(1e-9));
    assertThat(ending.soldOut()).hasValue(5);
    assertThat(ending.judgedAt()).isEqualTo(5);
    assertThat(ending.atPlanEnd().worthAtList()).isCloseTo(75 * 50, within(1e-6));
  }

  @Test
  void lot_isJudgedAtThePlansEnd_ifItIsSoldByThen() {
    BoughtLot bought = weighed(fourSales().seasons(8).scenario());
    assertThat(bought.ending().judgedAt()).isEqualTo(7);
    assertThat(bought.judged()).isSameAs(bought);
  }

  @Test
  void lot_soldLater_isWeighedInAPlanToThere() {
    BoughtLot bought = weighed(fourSales().scenario());
    assertThat(bought.presentValue()).isCloseTo(-915.80, within(0.005));
    assertThat(bought.judged().presentValue()).isCloseTo(2036.73, within(0.005));
    assertThat(bought.judged().bargain().mostLandedEach().orElseThrow())
        .isCloseTo(40.3673, within(1e-4));
  }

  /** Where demand ends, plants stand for ever and the last season run decides. */
  @Test
  void lot_neverSold_isJudgedAtTheLastSeasonRun() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(3)
            .lot(Lots.lot("ridge").quantity(100).arrived(2026, 11).bought(20, 0).build())
            .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 10));
    Ending ending = weighed(nursery.scenario()).ending();
    assertThat(ending.soldOut()).isEmpty();
    assertThat(ending.judgedAt()).isEqualTo(12);
    assertThat(ending.paysFrom()).isEmpty();
  }

  @Test
  void plants_withoutAPrice_neverCountAsLeftToSell() {
    Nurseries nursery = fourSales().quality(Quality.THIRD, 0, true).seasons(6);
    nursery =
        nursery.lot(Lots.lot("culls").arrived(2027, 1).quality(0, 0, true).bought(1, 0).build());
    BoughtLot culls = ValueJoin.of(nursery.scenario()).bought().get(1);
    assertThat(culls.ending().atPlanEnd().standing()).isPositive();
    assertThat(culls.ending().atPlanEnd().saleable()).isZero();
    assertThat(culls.ending().judgedAt()).isEqualTo(5);
  }

  @Test
  void plan_of40Seasons_isRunToThe50th() {
    assertThat(weighed(fourSales().seasons(40).scenario()).ending().seasons()).hasSize(50);
  }

  @ParameterizedTest
  @ValueSource(strings = {"nothing", "share of list", "stock value"})
  void gain_ofEverySeason_isThatOfAPlanToThere(String unsold) {
    Nurseries nursery =
        Nurseries.working()
            .lot(Lots.boughtMaples("ridge").build())
            .lot(Lots.pottedElms("elms").build())
            .seasons(4);
    if (unsold.equals("share of list")) {
      nursery.horizonValue(0.6);
    } else if (unsold.equals("stock value")) {
      nursery.stockValueAtTheEnd();
    }
    Scenario scenario = nursery.scenario();
    List<Ending.BySeason> seasons = weighed(scenario).ending().seasons();
    for (int season = 0; season < seasons.size(); season++) {
      Scenario toThere = scenario.withPlan(scenario.plan().withSeasons(season + 1));
      assertThat(seasons.get(season).gain())
          .isCloseTo(weighed(toThere).presentValue(), within(1e-6));
    }
  }

  /** Of 100 plants 20 are kept, so with 8 of the other 80 left it is sold. */
  @Test
  void lot_isSold_onceATenthOfWhatIsForSaleIsLeft() {
    Ending ending = ending(0, 50, 8.1, 8, 0);

    assertThat(ending.soldOut()).hasValue(2);
    assertThat(ending.judgedAt()).isEqualTo(2);
    assertThat(ending.isJudgedLater()).isTrue();
    assertThat(ending.atJudged().saleable()).isEqualTo(8);
    assertThat(ending(2, 50, 8, 8, 0).isJudgedLater()).isFalse();
    assertThat(ending(0, 50, 9, 8.1).soldOut()).isEmpty();
  }

  private static Ending ending(int planEnd, double... saleable) {
    return Ending.of(
        Lots.lot("a").quantity(100).kept(20).build(),
        planEnd,
        Arrays.stream(saleable)
            .mapToObj(each -> new Ending.BySeason(0, each + 20, each, each, 0))
            .toList());
  }

  @Test
  void paysFrom_isTheFirstSeasonAfterTheLastThatLoses() {
    assertThat(Ending.paysFrom(List.of(-10.0, 3.0, -2.0, 0.0, 5.0), 4)).hasValue(3);
    assertThat(Ending.paysFrom(List.of(-10.0, 3.0, -2.0, 0.0, 5.0), 2)).isEmpty();
    assertThat(Ending.paysFrom(List.of(1.0, 3.0), 1)).hasValue(0);
    assertThat(Ending.paysFrom(List.of(-10.0, 3.0), 1)).hasValue(1);
  }

  /** 10 mm that grow 6 a season are 22 mm after two: then they have the grade of 20 mm. */
  @Test
  void plants_haveAGrade_onceTheyAreThickEnough() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(3)
            .ladder("stout", new Grade("stout", 1, 20, 0, 12))
            .species(Nurseries.bareSpecies("rowan", "stout"))
            .demand(Nurseries.demandRow("stout", "stout", OptionalDouble.of(0), 30))
            .lot(Lots.lot("rowans").species("rowan").bought(1, 0).build());
    List<Ending.BySeason> seasons = weighed(nursery.scenario()).ending().seasons();

    assertThat(seasons.get(0)).isEqualTo(new Ending.BySeason(-100, 100, 100, 0, 0));
    assertThat(seasons.get(1)).isEqualTo(new Ending.BySeason(-100, 100, 100, 100, 3000));
  }
}
