package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.google.common.math.Stats;
import growingon.chance.luck.FixedLuck;
import growingon.money.Accounts;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Plan;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Grade;
import growingon.nursery.species.Species;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import growingon.project.Steps;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What draws of a whole nursery must be. */
class ChancesTest {
  private static Nurseries calm() {
    Nurseries nursery = Nurseries.working();
    nursery.nursery().species().values().stream()
        .filter(each -> !each.name().equals("ash"))
        .forEach(each -> nursery.species(calm(each, each.firstYearLoss(), each.laterLoss())));
    return nursery;
  }

  /** The species without luck of the year. */
  private static Species calm(Species s, double firstYearLoss, double laterLoss) {
    return Species.named(s.name())
        .ladder(s.ladder())
        .habit(s.habit())
        .usualCondition(s.usualCondition())
        .growth(s.growth())
        .growthMonths(s.growthMonths())
        .vigourSpread(s.vigourSpread())
        .yearSpread(0)
        .firstYearLoss(firstYearLoss)
        .laterLoss(laterLoss)
        .lossMonths(s.lossMonths())
        .lossSpread(0)
        .checkFirstYear(s.checkFirstYear())
        .checkSecondYear(s.checkSecondYear())
        .potBoundMonths(s.potBoundMonths())
        .potBoundFactor(s.potBoundFactor())
        .winterPlace(s.winterPlace())
        .healthNote(s.healthNote())
        .build();
  }

  private static Lots field(String name) {
    return Lots.lot(name)
        .species("maple")
        .quantity(120)
        .trunks(22, 0.2)
        .quality(0.6, 0.3, false)
        .place("ground")
        .plantsPerM2(6)
        .route("field tree");
  }

  private static Scenario drawn(Nurseries nursery, int draws, long seed) {
    Scenario scenario = nursery.scenario();
    Plan plan = scenario.plan().withDraws(draws).withSeed(seed);
    return new Scenario(scenario.nursery(), plan, scenario.lots());
  }

  private static Chances chances(Scenario scenario, int threads) {
    Accounts accounts = Accounts.of(Projector.project(scenario));
    return Chances.draw(
        accounts, ValueJoin.of(accounts.projection().scenario()).bought(), threads, done -> {});
  }

  private static Samples samples(Scenario scenario) {
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(2, done -> {});
    return samples;
  }

  private static Lot gamble() {
    return field("ridge")
        .arrived(2027, 2)
        .build()
        .withQuality(new QualityShares(0.5, 0.3, false, 0.7))
        .withPurchase(Optional.of(new Purchase(30, 200, 0, "GBP", 0.6, 0.05)));
  }

  /** Results of a lot of 120 plants at 30 each and 200 for the order, bought in a currency. */
  private static double[] resultsBoughtIn(String currency, double spread) {
    return samples(boughtIn(currency, spread)).lotResults[0];
  }

  private static Scenario boughtIn(String currency, double spread) {
    Lot lot =
        field("ridge")
            .arrived(2027, 2)
            .quality(1, 0, true)
            .build()
            .withPurchase(Optional.of(new Purchase(30, 200, 0, currency, 1, 0)));
    Nurseries nursery = calm().exchangeSpread(spread).lot(lot);
    nursery.route("field tree", Steps.onArrival("pot").minutes(9).build());
    return drawn(nursery, 400, 1);
  }

  /** Two accounts of the same draws, kept apart from each other. */
  @Test
  void lotsMonthByMonth_endWithTheResultOfTheLot() {
    Scenario scenario = boughtIn("EUR", 0.1);
    List<LotDraws.Tenths> results = LotDraws.draw(scenario, 2, done -> {}).lot(0).result();
    LotDraws.Tenths last = results.get(results.size() - 1);
    Quantiles whole = Quantiles.of(samples(scenario).lotResults[0]);
    // Figures by month are kept in four bytes.
    assertThat(last.p10()).isCloseTo(whole.p10(), withinPercentage(0.001));
    assertThat(last.p50()).isCloseTo(whole.p50(), withinPercentage(0.001));
    assertThat(last.p90()).isCloseTo(whole.p90(), withinPercentage(0.001));
  }

  @Test
  void exchangeRates_withoutASpread_moveNothing() {
    assertThat(resultsBoughtIn("EUR", 0)).containsExactly(resultsBoughtIn("GBP", 0));
  }

  @Test
  void exchangeRates_moveWhatIsBoughtAbroad_andNothingElse() {
    assertThat(resultsBoughtIn("GBP", 0.1)).containsExactly(resultsBoughtIn("GBP", 0));
    double[] abroad = resultsBoughtIn("EUR", 0.1);
    double[] home = resultsBoughtIn("GBP", 0.1);
    double landed = 30 * 120 + 200;
    double[] dearer = new double[abroad.length];
    for (int draw = 0; draw < abroad.length; draw++) {
      dearer[draw] = (home[draw] - abroad[draw]) / landed;
    }
    assertThat(Stats.meanOf(dearer)).isCloseTo(0, within(5 * 0.1 / Math.sqrt(400)));
    assertThat(Stats.of(dearer).populationStandardDeviation()).isCloseTo(0.1, within(0.02));
  }

  @Test
  void noSpreads_noLosses_aDrawIsThePlansLine() {
    Nurseries nursery = Nurseries.working();
    for (String name : List.of("maple", "elm", "larch")) {
      nursery.species(calm(nursery.nursery().species().get(name), 0, 0));
    }
    nursery.route("field tree", Steps.onArrival("pot").minutes(9).build());
    Scenario scenario = drawn(nursery.lot(field("a").quality(1, 0, true).build()), 3, 1);
    Accounts expected = Accounts.of(Projector.project(scenario));
    Samples samples = samples(scenario);
    double[] balances = expected.cash().balances();
    for (int month = 0; month < balances.length; month++) {
      for (int draw = 0; draw < 3; draw++) {
        assertThat(samples.cash[month][draw]).isCloseTo(balances[month], within(1e-6));
        assertThat(samples.hours[month][draw])
            .isCloseTo(expected.hours().needed(month), within(1e-9));
      }
    }
    assertThat(samples.lotResults[0][1]).isCloseTo(expected.lot("a").result(), within(1e-6));
  }

  /**
   * With whole plants the mean of the draws tends to the plan's line: deaths of a lot are binomial,
   * so the mean number alive after n draws lies within five times √(N s (1 − s)/n).
   */
  @Test
  void noSpreads_wholePlants_theMeanTendsToThePlansLine() {
    int draws = 400;
    Nurseries nursery = calm().withoutDemand();
    nursery.ladder("patio trees", new Grade("all", 1, 1, 0, 0));
    Scenario scenario =
        drawn(nursery.route("field tree").lot(field("a").quality(1, 0, true).build()), draws, 1);
    Accounts expected = Accounts.of(Projector.project(scenario));
    Samples samples = samples(scenario);
    for (int season = 0; season < 6; season++) {
      double alive = expected.projection().lots().get(0).standing(season * 12 + 11);
      double share = alive / 120;
      double bound = 5 * Math.sqrt(120 * share * (1 - share) / draws);
      double[] drawn = lastOf(samples.stock)[season];
      double mean = Arrays.stream(drawn).average().getAsDouble();
      assertThat(mean).isCloseTo(alive, within(bound));
      for (double each : drawn) {
        assertThat(each).isCloseTo(Math.rint(each), within(1e-6));
      }
    }
  }

  private static double[][] lastOf(double[][][] stock) {
    return stock[stock.length - 1];
  }

  @Test
  void oneThreadAndMany_giveTheSame() {
    Scenario scenario = drawn(Nurseries.working().lot(field("a").build()).lot(gamble()), 40, 3);
    Chances one = chances(scenario, 1);
    Chances many = chances(scenario, 3);
    assertThat(many.cash()).isEqualTo(one.cash());
    assertThat(many.sales()).isEqualTo(one.sales());
    assertThat(many.space()).isEqualTo(one.space());
    assertThat(many.lotResults()).isEqualTo(one.lotResults());
    assertThat(many.gambles().get(0).gains()).isEqualTo(one.gambles().get(0).gains());
    assertThat(many.gambles().get(0).swings()).isEqualTo(one.gambles().get(0).swings());
  }

  @Test
  void addingALot_leavesTheLuckOfTheOthers() {
    Nurseries alone = Nurseries.working().withoutDemand().lot(field("a").build());
    Nurseries both =
        Nurseries.working().withoutDemand().lot(field("b").build()).lot(field("a").build());
    Samples first = samples(drawn(alone, 50, 9));
    Samples second = samples(drawn(both, 50, 9));
    assertThat(second.lotResults[1]).isEqualTo(first.lotResults[0]);
    assertThat(second.lotResults[0]).isNotEqualTo(first.lotResults[0]);
  }

  @Test
  void anotherSeed_isOtherLuck() {
    Nurseries nursery = Nurseries.working().lot(field("a").build());
    assertThat(samples(drawn(nursery, 5, 1)).cash[30])
        .isNotEqualTo(samples(drawn(nursery, 5, 2)).cash[30]);
  }

  /** Consignment luck: the mean stays, the bad tenth gets worse. */
  @Test
  void consignmentLuck_lowersTheBadTenth_andKeepsTheMeanSurvival() {
    Lot sure = gamble().withPurchase(Optional.of(new Purchase(30, 200, 0, "GBP", 1, 0)));
    Lot unsure = gamble().withPurchase(Optional.of(new Purchase(30, 200, 0, "GBP", 0.3, 0)));
    int draws = 600;
    Samples calm = samples(drawn(calm().lot(sure), draws, 5));
    Samples wild = samples(drawn(calm().lot(unsure), draws, 5));
    Quantiles narrow = Quantiles.of(calm.lotResults[0]);
    Quantiles wide = Quantiles.of(wild.lotResults[0]);
    assertThat(wide.p10()).isLessThan(narrow.p10() - 3 * narrow.p10Error());
    double meanCalm = Quantiles.of(survivors(calm)).mean();
    Quantiles alive = Quantiles.of(survivors(wild));
    assertThat(alive.mean()).isCloseTo(meanCalm, within(5 * alive.meanError() + 0.01 * meanCalm));
  }

  /** Plants standing or sold by the end of the first full season, by draw. */
  private static double[] survivors(Samples samples) {
    double[] alive = new double[samples.cash[0].length];
    for (int draw = 0; draw < alive.length; draw++) {
      for (int grade = 0; grade < samples.stock.length; grade++) {
        alive[draw] += samples.stock[grade][1][draw];
        alive[draw] += samples.units[grade][0][draw] + samples.units[grade][1][draw];
      }
    }
    return alive;
  }

  /** What happens in draws of another seed lies inside P10 to P90 in 80 of 100 cases. */
  @Test
  void drawsOfOtherSeeds_fallIntoTheFan_asOftenAsTheyShould() {
    Nurseries nursery = Nurseries.working().lot(field("a").build()).lot(gamble());
    int draws = 500;
    Samples one = samples(drawn(nursery, draws, 11));
    Samples other = samples(drawn(nursery, draws, 12));
    for (int month : new int[] {14, 35, 60, 71}) {
      Quantiles fan = Quantiles.of(one.cash[month]);
      double inside =
          Arrays.stream(other.cash[month])
                  .filter(each -> each >= fan.p10() && each <= fan.p90())
                  .count()
              / (double) draws;
      // Sampling error of the share and of both edges of the fan.
      assertThat(inside).isCloseTo(0.8, within(4 * Math.sqrt((0.16 + 2 * 0.09) / draws)));
    }
  }

  @Test
  void gamble_breakEvens_giveNilWhenRunAgain_andTheMostLandedIsExact() {
    Scenario scenario =
        drawn(Nurseries.working().lot(field("a").arrived(2025, 3).build()).lot(gamble()), 60, 2);
    Accounts accounts = Accounts.of(Projector.project(scenario));
    BoughtLot bought = ValueJoin.of(accounts.projection().scenario()).bought().get(0);
    Gamble gamble = chances(scenario, 2).gambles().get(0);
    assertThat(gamble.chancePays()).isBetween(0.0, 1.0);
    assertThat(gamble.gains()).isSorted();
    double firsts = gamble.breakEvens().firsts().orElseThrow();
    Lot atBreakEven = gamble().withQuality(FixedLuck.withFirsts(gamble().quality(), firsts));
    Scenario changed = scenario.withLots(List.of(scenario.lots().get(0), atBreakEven));
    BoughtLot again = ValueJoin.of(changed).bought().get(0);
    assertThat(again.presentValue()).isCloseTo(0, within(1.0));
    // Paying so much more on arrival takes the mean gain away.
    double more = 120 * gamble.mostLandedEach().orElseThrow() - bought.landed();
    Lot dearer =
        gamble().withPurchase(Optional.of(new Purchase(30 + more / 120, 200, 0, "GBP", 0.6, 0.05)));
    Scenario dear = scenario.withLots(List.of(scenario.lots().get(0), dearer));
    assertThat(chances(dear, 2).gambles().get(0).gain().mean()).isCloseTo(0, within(0.01));
  }

  @Test
  void swings_areWidestFirst_andNameOnlyWhatHasASpread() {
    Scenario scenario = drawn(calm().lot(gamble()), 2, 2);
    Gamble gamble = chances(scenario, 1).gambles().get(0);
    assertThat(gamble.swings())
        .extracting(Gamble.Swing::says)
        .containsExactlyInAnyOrder(
            "first-year loss of this consignment",
            "share of firsts",
            "the whole consignment fails");
    assertThat(gamble.swings()).isSortedAccordingTo((a, b) -> Double.compare(b.width(), a.width()));
  }
}
