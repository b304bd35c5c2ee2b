package growingon.money.bought;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.Lot;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import java.time.Month;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a bought lot is worth, by hand. */
class WeighingTest {
  private static BoughtLot weigh(Nurseries nursery) {
    return ValueJoin.of(nursery.scenario()).bought().get(0);
  }

  private static Nurseries fortyWantedAt20() {
    return Nurseries.bare()
        .seasons(1)
        .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(40), 20));
  }

  /**
   * 100 plants for 500. 40 sell at 20 for 800; 60 are left, at half their list price worth 600. At
   * f times all prices that is 1,400 f, so it pays from f = 500 / 1,400.
   */
  @Test
  void leastPrice_countsWhatUnsoldPlantsAreWorth_atAShareOfTheirListPrice() {
    BoughtLot bought =
        weigh(fortyWantedAt20().horizonValue(0.5).lot(Lots.lot("a").bought(5, 0).build()));

    assertThat(bought.presentValue()).isCloseTo(800 + 600 - 500, within(1e-6));
    assertThat(bought.bargain().leastPriceShare().orElseThrow())
        .isCloseTo(500 / 1400.0, within(1e-9));
    assertThat(bought.bargain().averagePrice()).isCloseTo(20, within(1e-9));
    assertThat(bought.bridge().unsold()).isCloseTo(600, within(1e-6));
    assertThat(bought.bridge().cash()).isCloseTo(800 - 500, within(1e-6));
  }

  /**
   * The same at 10 % a year, beside 30 plants that are never sold: 800 come in twelve equal months,
   * 800/12 (1 − 1/1.1)/(1 − 1.1^(−1/12)) of today's money; what is left is worth 600 in the last of
   * them; the others are worth the same with the lot and without it.
   */
  @Test
  void leastPrice_countsWhatUnsoldPlantsAreWorth_atTheEnd_andOnlyThoseOfTheLot() {
    BoughtLot bought =
        weigh(
            fortyWantedAt20()
                .horizonValue(0.5)
                .discountRate(0.1)
                .lot(Lots.lot("a").bought(5, 0).build())
                .lot(Lots.lot("old").quantity(30).notBefore(2030, 1).build()));

    double sold = 800 / 12.0 * (1 - 1 / 1.1) / (1 - Math.pow(1.1, -1 / 12.0));
    double left = 600 * Math.pow(1.1, -11 / 12.0);
    assertThat(bought.presentValue()).isCloseTo(sold + left - 500, within(1e-6));
    assertThat(bought.bargain().leastPriceShare().orElseThrow())
        .isCloseTo(500 / (sold + left), within(1e-9));
  }

  /**
   * 40 of 100 sell through the year; 60 are left, at the lower of what they cost and 20. Paid 18 or
   * less, each plant that is left brings its price back at the end: sold = 100 p − 60 p ·
   * 1.1^(−11/12). So it is whether the lot is bought too dear or cheap now.
   */
  @ParameterizedTest
  @ValueSource(doubles = {5, 30})
  void mostLanded_countsThatStockIsWorthWhatWasPaid(double unitPrice) {
    BoughtLot bought =
        weigh(
            fortyWantedAt20()
                .stockValueAtTheEnd()
                .discountRate(0.1)
                .lot(Lots.lot("a").bought(unitPrice, 0).build()));

    double sold = 800 / 12.0 * (1 - 1 / 1.1) / (1 - Math.pow(1.1, -1 / 12.0));
    assertThat(bought.bargain().mostLandedEach().orElseThrow())
        .isCloseTo(sold / (100 - 60 * Math.pow(1.1, -11 / 12.0)), within(1e-6));
  }

  /** 100 plants for 600, of which only firsts sell, at 20: 20 of them lose 200, 30 are enough. */
  @Test
  void fewestUsable_ofALotThatLosesAsItIs_isMoreThanItHas() {
    BoughtLot bought =
        weigh(
            Nurseries.bare()
                .seasons(1)
                .quality(Quality.THIRD, 0, false)
                .sellsAll("one", "any", 20)
                .lot(Lots.lot("a").quality(0.2, 0, true).bought(6, 0).build()));

    assertThat(bought.presentValue()).isCloseTo(-200, within(1e-6));
    assertThat(bought.bargain().fewestUsable()).hasValue(30);
  }

  /**
   * 50 firsts and 50 seconds for 600. 40 firsts sell at 20 for 800. 10 firsts at 20 and 50 seconds
   * at 12 are left: 800 at list, 360 at cost. At f times all prices the stock is worth 800 f up to
   * f = 0.45: it pays from 1,600 f = 600.
   */
  @Test
  void leastPrice_countsWhatUnsoldPlantsAreWorth_atTheLowerOfCostAndListPrice() {
    Nurseries nursery = fortyWantedAt20().stockValueAtTheEnd().quality(Quality.SECOND, 0.6, true);
    BoughtLot bought =
        weigh(nursery.lot(Lots.lot("a").quality(0.5, 0.5, true).bought(6, 0).build()));

    assertThat(bought.presentValue()).isCloseTo(800 + 360 - 600, within(1e-6));
    assertThat(bought.bargain().leastPriceShare().orElseThrow())
        .isCloseTo(600 / 1600.0, within(1e-9));
  }

  /**
   * 10 hours are there each month. The lot that stands takes 15 in March, so 5 are short without
   * the bought one, and 8 in April, so 2 are left. The bought one takes 4 in both months: it is the
   * cause of 4 hours short in March and of 2 in April.
   */
  @Test
  void hoursShort_areOnlyThoseThatTheBoughtLotAdds() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .hoursAvailable(10)
            .route(
                "standing",
                Steps.in("pot", Month.MARCH, 0).minutes(9).build(),
                Steps.in("tie in", Month.APRIL, 0).minutes(4.8).build())
            .route(
                "bought",
                Steps.in("pot", Month.MARCH, 0).minutes(4.8).build(),
                Steps.in("tie in", Month.APRIL, 0).minutes(4.8).build())
            .lot(Lots.lot("old").route("standing").build())
            .lot(Lots.lot("new").quantity(50).route("bought").bought(1, 0).build());

    double[] expected = new double[12];
    expected[4] = 4;
    expected[5] = 2;
    assertThat(weigh(nursery).hoursShort()).containsExactly(expected, within(1e-9));
  }

  /** Hours of other cash are among those that are there before the bought lot comes. */
  @Test
  void hoursShort_countHoursOfOtherCashThatNoLotCauses() {
    OtherCash sweeping =
        new OtherCash(
            Optional.empty(),
            OtherCash.Every.MONTH,
            "sweeping",
            0,
            8,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .hoursAvailable(10)
            .otherCash(sweeping)
            .route("bought", Steps.in("pot", Month.MARCH, 0).minutes(6).build())
            .lot(Lots.lot("new").quantity(50).route("bought").bought(1, 0).build());

    double[] expected = new double[12];
    expected[4] = 3;
    assertThat(weigh(nursery).hoursShort()).containsExactly(expected, within(1e-9));
  }

  /**
   * The bench has 20 m². 60 plants of the lot that stands take 15 m² at 4 to the square metre, and
   * 25 with the 40 of the bought one: it is the cause of 5 m².
   */
  @Test
  void overflow_isWhatTheBoughtLotAddsToWhatIsMissing_inEveryMonthThatItStands() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .place(Nurseries.place("bench", PlaceKind.BENCH, 20))
            .lot(Lots.lot("old").quantity(60).place("bench").plantsPerM2(4).build());

    assertThat(weigh(nursery.lot(standing("new", "bench", 40))).overflows())
        .hasSize(8)
        .allSatisfy(each -> assertThat(each.place()).contains("bench"))
        .allSatisfy(each -> assertThat(each.m2()).isCloseTo(5, within(1e-9)))
        .extracting(BoughtLot.Overflow::month)
        .containsExactly(4, 5, 6, 7, 8, 9, 10, 11);
  }

  @Test
  void overflow_ofAPlaceThatIsTooSmallAlready_isAllThatTheBoughtLotTakes() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .place(Nurseries.place("bed", PlaceKind.STANDING_GROUND, 10))
            .lot(Lots.lot("bedded").quantity(48).place("bed").plantsPerM2(4).build());

    assertThat(weigh(nursery.lot(standing("new", "bed", 12))).overflows())
        .hasSize(8)
        .allSatisfy(each -> assertThat(each.m2()).isCloseTo(3, within(1e-9)));
  }

  /** A lot bought in March 2027, which stands from then on. */
  private static Lot standing(String name, String place, int plants) {
    return Lots.lot(name)
        .quantity(plants)
        .arrived(2027, 3)
        .place(place)
        .plantsPerM2(4)
        .bought(1, 0)
        .build();
  }
}
