package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.Gamble.Swing;
import growingon.chance.luck.Assumption;
import growingon.chance.luck.Spreads;
import growingon.money.Accounts;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.MarketSure;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.Quality;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Species;
import growingon.nursery.species.SpeciesBuilder;
import growingon.nursery.species.Sure;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import growingon.project.Steps;
import java.time.Month;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Offset;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.Test;

/** Chances and swings that can be worked out by hand. */
class ChancesByHandTest {
  private static final Offset<Double> CENT = within(0.005);

  /** The standard normal score that nine tenths stay below, as tables have it. */
  private static final double P90 = 1.2815515655;

  private static Chances chances(Nurseries nursery, int draws) {
    Scenario scenario = nursery.scenario();
    Scenario drawn = scenario.withPlan(scenario.plan().withDraws(draws).withSeed(1));
    Accounts accounts = Accounts.of(Projector.project(drawn));
    return Chances.draw(accounts, ValueJoin.of(drawn).bought(), 1, done -> {});
  }

  /**
   * 100 plants at 10 to the square metre need 10 m²; potting takes 5 hours in March; the rent
   * leaves 100 − 60 − 60 = −20 in December and is paid back in January. Nothing is left to luck.
   */
  private static Nurseries withoutLuck() {
    return Nurseries.bare()
        .seasons(1)
        .openingCash(100)
        .otherCash(once(2026, 11, -60))
        .otherCash(once(2026, 12, -60))
        .otherCash(once(2027, 1, 500))
        .place(Nurseries.place("bench", PlaceKind.BENCH, 9.9))
        .place(Nurseries.place("bed", PlaceKind.STANDING_GROUND, 20))
        .route("r", Steps.in("pot", Month.MARCH, 0).minutes(3).build())
        .lot(Lots.lot("a").route("r").place("bench").plantsPerM2(10).build());
  }

  private static OtherCash once(int year, int month, double amount) {
    return new OtherCash(
        Optional.of(YearMonth.of(year, month)), OtherCash.Every.ONCE, "rent", amount);
  }

  @Test
  void chanceOfOverflow_isOneWhereAPlaceIsTooSmall() {
    Chances chances = chances(withoutLuck(), 5);

    assertThat(chances.chanceOfOverflow().get("bench")).containsOnly(1);
    assertThat(chances.chanceOfOverflow().get("bed")).containsOnly(0);
    assertThat(chances.space().get("bench").get(0).p50()).isCloseTo(10, CENT);
    assertThat(chances.space().get("bed").get(0).p50()).isZero();
  }

  @Test
  void chanceOfShortHours_isOneWhereTheyDoNotSuffice() {
    List<Double> fewInMarch = List.of(9d, 9d, 4.9, 9d, 9d, 9d, 9d, 9d, 9d, 9d, 9d, 9d);
    List<Double> enough = List.of(0d, 0d, 5d, 0d, 0d, 0d, 0d, 0d, 0d, 0d, 0d, 0d);
    double[] march = new double[12];
    march[4] = 1;

    assertThat(chances(withoutLuck().hoursAvailable(fewInMarch), 5).chanceOfShortHours())
        .containsExactly(march);
    assertThat(chances(withoutLuck().hoursAvailable(enough), 5).chanceOfShortHours())
        .containsOnly(0);
    assertThat(chances(withoutLuck(), 5).chanceOfShortHours()).isEmpty();
  }

  @Test
  void chanceBelowTheLowestCash_isThatOfAnyMonth() {
    assertThat(chances(withoutLuck().lowestCash(-19), 5).chanceBelowLowest()).hasValue(1);
    assertThat(chances(withoutLuck().lowestCash(-20), 5).chanceBelowLowest()).hasValue(0);
    assertThat(chances(withoutLuck(), 5).chanceBelowLowest()).isEmpty();
  }

  private static Lots gamble() {
    return Lots.lot("gamble").arrived(2026, 12).notBefore(2027, 6);
  }

  private static Nurseries sellsFor20() {
    return Nurseries.bare().seasons(4).sellsAll("one", "any", 20);
  }

  /**
   * A lot for 850 that brings 2,000 in its first June or fails as a whole, by a chance of 0.3: it
   * pays wherever it came, loses all where not, and overflows the bench where it came too.
   */
  @Test
  void lotThatFailsInThreeOfTen_paysInTheOthers() {
    Chances chances =
        chances(
            sellsFor20()
                .place(Nurseries.place("bench", PlaceKind.BENCH, 5))
                .lot(gamble().place("bench").plantsPerM2(10).bought(8, 50, 1, 0.3).build()),
            400);
    Gamble gamble = chances.gambles().get(0);
    double came = chances.chanceOfOverflow().get("bench")[1];

    assertThat(came).isBetween(0.63, 0.77);
    assertThat(gamble.chancePays()).isEqualTo(came);
    assertThat(gamble.chanceLosesTenth()).isCloseTo(1 - came, within(1e-9));
    assertThat(gamble.chanceFails()).isEqualTo(0.3);
    assertThat(gamble.gain().mean()).isCloseTo(2000 * came - 850, CENT);
    assertThat(gamble.mostLandedEach().orElseThrow()).isCloseTo(20 * came, CENT);
    assertThat(gamble.paidBackEven()).hasValue(7);
    assertThat(gamble.paidBackSure()).isEmpty();
    assertThat(gamble.paysByEnding()[0]).isEqualTo(came);
    assertThat(gamble.paysFrom()).hasValue(0);
    assertThat(DoubleStream.of(gamble.gains()).filter(gain -> gain > 0).count())
        .isEqualTo(Math.round(came * 400));
    assertThat(chances.lotResults().get("gamble").p90()).isCloseTo(1150, CENT);
    assertThat(chances.standing().get(0).p50()).isZero();
  }

  /** 2,000 (1 − d) = 850 where 57.5 % are dead on arrival: 42.5 of 100 must live. */
  @Test
  void breakEvens_areTheValuesAtWhichTheLotBringsWhatItCost() {
    Gamble.BreakEvens plain =
        chances(sellsFor20().lot(gamble().bought(8, 50).build()), 2).gambles().get(0).breakEvens();
    assertThat(plain.survivors().orElseThrow()).isCloseTo(42.5, within(0.05));
    assertThat(plain.price().orElseThrow()).isCloseTo(0.425, within(1e-6));
    assertThat(plain.firsts()).isEmpty();
    assertThat(plain.severalSlowest()).isFalse();

    Gamble.BreakEvens unseen =
        chances(
                sellsFor20()
                    .quality(Quality.SECOND, 0, true)
                    .quality(Quality.THIRD, 0, true)
                    .lot(gamble().unseen(0.6, 0.3, 1).bought(8, 50).build()),
                2)
            .gambles()
            .get(0)
            .breakEvens();
    assertThat(unseen.firsts().orElseThrow()).isCloseTo(0.425, within(0.001));
  }

  /** 10 mm that grow 6 a year must grow 10 more in 3 years: at least by 10/18 of that. */
  @Test
  void breakEven_ofGrowth_isWhereAllJustReachTheirGrade() {
    Gamble.BreakEvens slow =
        chances(
                Nurseries.bare()
                    .seasons(3)
                    .ladder("stout", new Grade("stout", 1, 20, 0, 12))
                    .species(Nurseries.bareSpecies("rowan", "stout"))
                    .sellsAll("stout", "stout", 20)
                    .lot(Lots.lot("rowans").species("rowan").bought(8, 50).build()),
                2)
            .gambles()
            .get(0)
            .breakEvens();
    assertThat(slow.slowest().orElseThrow()).isCloseTo(10 / 18.0, within(0.001));
    assertThat(slow.severalSlowest()).isFalse();
  }

  /** A lognormal factor of mean 1: its logarithm has the mean −v/2. */
  private static double factor(double spread, double score) {
    double variance = Math.log(1 + spread * spread);
    return Math.exp(Math.sqrt(variance) * score - variance / 2);
  }

  private static Swing swing(Nurseries nursery, Assumption of) {
    List<Swing> swings = chances(nursery, 2).gambles().get(0).swings();
    return swings.stream().filter(each -> each.assumption() == of).findFirst().orElseThrow();
  }

  private static Demand row(double unitsSpread, double priceSpread) {
    return new Demand(
        Optional.empty(),
        "one",
        "any",
        Optional.empty(),
        new MonthSpan(6, 6),
        OptionalDouble.of(50),
        20,
        0,
        unitsSpread,
        priceSpread);
  }

  private static Nurseries fiftyWantedInJune(double unitsSpread, double priceSpread) {
    return Nurseries.bare().seasons(1).demand(row(unitsSpread, priceSpread));
  }

  private static Lot fifty() {
    return gamble().quantity(50).bought(3, 50).build();
  }

  private static void assertSwing(Swing swing, double low, double line, double high) {
    assertThat(swing.gainAtLow()).isCloseTo(low, CENT);
    assertThat(swing.gainAtLine()).isCloseTo(line, CENT);
    assertThat(swing.gainAtHigh()).isCloseTo(high, CENT);
  }

  /**
   * 50 plants for 200 sell at 20: a gain of 800 that moves with price and rate, and with the units
   * where fewer are wanted.
   */
  @Test
  void swings_ofTheMarket_areTheGainAtTheTenths() {
    double low = factor(0.2, -P90);
    double high = factor(0.2, P90);

    Swing price = swing(fiftyWantedInJune(0, 0.2).lot(fifty()), Assumption.PRICE);
    assertSwing(price, 1000 * low - 200, 800, 1000 * high - 200);
    assertThat(price.low()).isEqualTo(Math.round(100 * low) + " %");
    assertThat(price.high()).isEqualTo(Math.round(100 * high) + " %");

    Swing units = swing(fiftyWantedInJune(0.2, 0).lot(fifty()), Assumption.UNITS);
    assertSwing(units, 1000 * low - 200, 800, 800);

    Lot abroad = fifty().withPurchase(Optional.of(new Purchase(3, 50, 0, "EUR", 1, 0)));
    Swing rate =
        swing(fiftyWantedInJune(0, 0).exchangeSpread(0.2).lot(abroad), Assumption.EXCHANGE);
    assertSwing(rate, 1000 - 200 * low, 800, 1000 - 200 * high);
  }

  /** The mean of four seasons spreads by half as much: 50 plants sell in each of two of them. */
  @Test
  void swing_ofSeveralSeasons_isThatOfTheirMean() {
    Lot hundred = gamble().bought(3, 50).build();
    Swing price = swing(fiftyWantedInJune(0, 0.2).seasons(4).lot(hundred), Assumption.PRICE);

    assertSwing(price, 2000 * factor(0.2, -P90 / 2) - 350, 1650, 2000 * factor(0.2, P90 / 2) - 350);
    assertThat(price.low()).isEqualTo(Math.round(100 * factor(0.2, -P90 / 2)) + " %");
  }

  /** 50 plants take 6 minutes each, 5 hours at 12: 60 that move with the minutes. */
  @Test
  void swings_ofWorkAndFailure_areTheGainAtTheirEnds() {
    Nurseries nursery =
        fiftyWantedInJune(0, 0)
            .labour(12, 1)
            .labourSpread(0.3)
            .route("r", Steps.in("pot", Month.MARCH, 0).minutes(6).build());
    Lot lot = gamble().quantity(50).route("r").bought(3, 50, 1, 0.1).build();

    assertSwing(
        swing(nursery.lot(lot), Assumption.MINUTES),
        800 - 60 * factor(0.3, -P90),
        740,
        800 - 60 * factor(0.3, P90));
    Swing failure = swing(nursery, Assumption.FAILURE);
    assertSwing(failure, -200, 740, 740);
    assertThat(failure.low()).isEqualTo("it does");
  }

  @Test
  void drawsOfNothingLeftToLuck_areThePlansLine() {
    Chances chances = chances(fiftyWantedInJune(0, 0).lot(gamble().bought(3, 50).build()), 3);

    assertThat(chances.sales().get(0).p10()).isCloseTo(1000, CENT);
    assertThat(chances.cash().get(11).p90()).isCloseTo(650, CENT);
    assertThat(Arrays.stream(chances.values()).toArray())
        .containsExactly(new double[] {650, 650, 650}, CENT);
    assertThat(chances.units().values().iterator().next().get(0).p50()).isCloseTo(50, CENT);
    assertThat(chances.stock().values().iterator().next().get(0).p50()).isCloseTo(50, CENT);
    assertThat(chances.luckAlone()).isEmpty();
  }

  /** Half sure is known as from ten plants: a spread of √(2.5/10) of the logarithm. */
  private static final double HALF_SURE = Math.exp(P90 * 0.5);

  @Test
  void swings_ofAMarketThatIsNotKnown_areThatOfItsLevel() {
    Nurseries prices = fiftyWantedInJune(0, 0).market(new MarketSure(0.5, 1)).lot(fifty());
    Swing price = swing(prices, Assumption.PRICES_NOT_KNOWN);
    assertSwing(price, 1000 / HALF_SURE - 200, 800, 1000 * HALF_SURE - 200);
    assertThat(price.low()).isEqualTo("53 %");
    assertThat(price.high()).isEqualTo("190 %");

    Nurseries demand = fiftyWantedInJune(0, 0).market(new MarketSure(1, 0.5)).lot(fifty());
    assertSwing(swing(demand, Assumption.DEMAND_NOT_KNOWN), 1000 / HALF_SURE - 200, 800, 800);
  }

  /**
   * 10 mm that grow 6 a year need 20 in three years: half sure of it, one in ten grows 3.2 and
   * sells nothing. Once measured all of them sell.
   */
  @Test
  void swing_ofGrowthThatIsNotKnown_isThatOfItsTenths_andNarrowerOnceMeasured() {
    Species rowan = Nurseries.bareSpecies("rowan", "stout");
    Swing growth =
        swing(
            Nurseries.bare()
                .seasons(3)
                .ladder("stout", new Grade("stout", 1, 20, 0, 12))
                .species(rowan.withSure(new Sure(Map.of("pot", 0.5), 1, 1)))
                .sellsAll("stout", "stout", 20)
                .lot(Lots.lot("rowans").species("rowan").bought(8, 50).build()),
            Assumption.GROWTH_NOT_KNOWN);

    assertSwing(growth, -850, 1150, 1150);
    assertThat(growth.low()).isEqualTo("53 %");
    assertThat(growth.measured()).contains(new Swing.Measured(1150, 1150));
    assertThat(growth.narrower()).isEqualTo(1);
  }

  private static Nurseries losing(SpeciesBuilder ash) {
    return Nurseries.bare()
        .seasons(4)
        .species(ash.build())
        .sellsAll("one", "any", 20)
        .lot(Lots.lot("gamble").arrived(2026, 12).notBefore(2027, 12).bought(8, 50).build());
  }

  private static SpeciesBuilder ash() {
    return Nurseries.bareSpecies("ash", "one").with();
  }

  /** A first year's loss of 0.2 that is 80 % sure is known as from 40 plants. */
  @Test
  void swing_ofAFirstYearLossThatIsNotKnown_isThatOfItsTenths() {
    Swing loss =
        swing(
            losing(ash().firstYearLoss(0.2).sure(new Sure(Map.of("pot", 1.0), 0.8, 1))),
            Assumption.FIRST_YEAR_LOSS_NOT_KNOWN);
    Spreads spreads = new Spreads();
    double low = spreads.share(0.2, Math.sqrt(0.16 / 41), -P90);
    double high = spreads.share(0.2, Math.sqrt(0.16 / 41), P90);

    assertSwing(loss, 2000 * (1 - low) - 850, 1600 - 850, 2000 * (1 - high) - 850);
    assertThat(low).isBetween(0.11, 0.14);
    assertThat(loss.low()).isEqualTo(Math.round(100 * low) + " %");
  }

  /**
   * A loss of 0.1 a year spreads by half of itself; by December 2027 thirteen months have passed.
   */
  @Test
  void swing_ofTheYearlyLoss_isThatOfTheMeanOfFourSeasons() {
    Swing loss =
        swing(losing(ash().firstYearLoss(0.1).laterLoss(0.1).lossSpread(0.5)), Assumption.LOSS);
    Spreads spreads = new Spreads();
    double low = spreads.share(0.1, 0.05, -P90 / 2);
    double high = spreads.share(0.1, 0.05, P90 / 2);

    assertSwing(loss, after(low), after(0.1), after(high));
  }

  private static double after(double yearlyLoss) {
    return 2000 * Math.pow(1 - yearlyLoss, 13 / 12.0) - 850;
  }

  /** 80 % sure of 60 firsts in 100 is as if 40 had been sorted: tenths of Beta(24, 16). */
  @Test
  void swing_ofTheShareOfFirsts_isThatOfFortyPlantsSorted() {
    Swing firsts =
        swing(
            sellsFor20()
                .quality(Quality.SECOND, 0, true)
                .quality(Quality.THIRD, 0, true)
                .lot(gamble().unseen(0.6, 0.3, 0.8).bought(8, 50).build()),
            Assumption.FIRSTS);
    BetaDistribution seen = new BetaDistribution(24, 16);

    assertSwing(
        firsts,
        2000 * seen.inverseCumulativeProbability(0.1) - 850,
        1200 - 850,
        2000 * seen.inverseCumulativeProbability(0.9) - 850);
  }

  /**
   * Of 100 bought 42.5 must live through the first year, a loss of 0.1 on arrival and one of 0.05
   * in March; what is lost at a step of the year after comes too late to matter.
   */
  @Test
  void survivors_areThoseOfTheFirstYearWithItsSteps() {
    Nurseries nursery =
        losing(ash().firstYearLoss(0.2))
            .route(
                "r",
                Steps.onArrival("pot").loss(0.1).build(),
                Steps.in("move", Month.MARCH, 0).loss(0.05).build(),
                Steps.in("move again", Month.MARCH, 1).loss(0.5).build())
            .lots(
                List.of(
                    Lots.lot("gamble")
                        .arrived(2026, 12)
                        .notBefore(2027, 12)
                        .route("r")
                        .bought(8, 50)
                        .build()));

    assertThat(chances(nursery, 2).gambles().get(0).breakEvens().survivors().orElseThrow())
        .isCloseTo(42.5, within(0.05));
  }

  /** Of 850 landed 40 is less than a tenth, 100 is more. */
  @Test
  void lotThatLosesALittle_doesNotLoseATenth() {
    assertThat(soldAt(8.1).chanceLosesTenth()).isZero();
    assertThat(soldAt(8.1).chancePays()).isZero();
    assertThat(soldAt(7.5).chanceLosesTenth()).isEqualTo(1);
  }

  private static Gamble soldAt(double price) {
    return chances(
            Nurseries.bare()
                .seasons(2)
                .sellsAll("one", "any", price)
                .lot(gamble().bought(8, 50).build()),
            3)
        .gambles()
        .get(0);
  }

  /**
   * Elms are sold by the mm they grow, rowans never. A rate that is 90 % sure spreads by √(2.5/90);
   * twenty trunks of about 10.5 mm that grow 6 a year are worth 2.5/((2 · (0.015 · 10.5)² +
   * 0.025)/36) plants more, which leaves 0.26 of the spread of cash.
   */
  private static Nurseries soldByTheMm() {
    Sure sure = new Sure(Map.of("pot", 0.9), 1, 1);
    return Nurseries.bare()
        .seasons(3)
        .species(Nurseries.bareSpecies("elm", "one").withSure(sure))
        .species(Nurseries.bareSpecies("rowan", "one").withSure(sure))
        .demand(
            new Demand(
                Optional.empty(),
                "one",
                "any",
                Optional.empty(),
                MonthSpan.ALL_YEAR,
                OptionalDouble.empty(),
                1,
                1,
                0,
                0))
        .lot(Lots.lot("rowans").species("rowan").notBefore(2040, 1).build())
        .lot(Lots.lot("elms").species("elm").notBefore(2029, 9).build());
  }

  @Test
  void measuring_takesOffWhatIsNotKnownOfTheGrowthThatIsSold() {
    WorthMeasuring worth = chances(soldByTheMm(), 200).worthMeasuring().orElseThrow();
    double learnt = 2.5 / ((2 * Math.pow(0.015 * 10.5, 2) + 0.025) / 36);
    double left = Math.sqrt(90 / (90 + learnt));

    WorthMeasuring.Row elm = worth.rows().get(0);
    assertThat(elm.species()).isEqualTo("elm");
    assertThat(elm.told()).isEqualTo(WorthMeasuring.Told.DRAWN);
    assertThat(elm.narrowing()).isCloseTo(1 - left, within(0.03));
    assertThat(worth.all().orElseThrow()).isCloseTo(1 - left, within(0.03));
    assertThat(worth.rows().get(1).species()).isEqualTo("rowan");
    assertThat(worth.rows().get(1).told()).isEqualTo(WorthMeasuring.Told.TOO_SMALL);
    assertThat(worth.rows().get(1).narrowing()).isZero();
  }

  @Test
  void luckAlone_isToldApartWhereSomethingIsNotKnown() {
    Chances few = chances(soldByTheMm(), 99);
    assertThat(few.luckAlone().orElseThrow().draws()).isEqualTo(49);
    assertThat(few.worthMeasuring()).isEmpty();
    assertThat(chances(soldByTheMm(), 100).worthMeasuring()).isPresent();
    Scenario twoLots = soldByTheMm().scenario();
    assertThat(Chances.isToldApart(twoLots.withPlan(twoLots.plan().withDraws(200_000)))).isTrue();
    assertThat(Chances.isToldApart(twoLots.withPlan(twoLots.plan().withDraws(200_001)))).isFalse();
  }
}
