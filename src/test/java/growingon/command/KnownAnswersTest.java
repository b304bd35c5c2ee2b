package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nurseries in files whose best answer is summed by hand, and what a grower is told of them. */
class KnownAnswersTest {
  @TempDir private Path folder;
  private KnownNursery nursery;

  @BeforeEach
  void layOut() {
    nursery = new KnownNursery(folder);
  }

  /** What is bought and sold in one month never leaves the till short, but it has to come first. */
  @Test
  void moneyBack_isNotBeforeThePlantsCome() throws IOException {
    nursery.offers("A,elm,6,1,1,100,0,2026-12,none").demand("elm,any,10,50,December,2026/27");

    Ran buying = nursery.buying();

    assertThat(buying.out())
        .as(buying.err())
        .startsWith("Buy 50 A, order by the end of Nov 2026: brings EUR 200.");
    assertThat(nursery.figure("buying-offer-gains", "A", "money_back").asText())
        .isEqualTo("2026-12");
  }

  /** 3 hours in December at 6 minutes a plant are 30 plants of 100 that would gain 4 each. */
  @Test
  void hoursThatBind_areToldInTheirOwnWords() throws IOException {
    nursery
        .table("routes", "route,step,when,minutes", "none,look,arrival,6")
        .table("hours", hoursEachMonth(3))
        .offers("A,elm,6,1,1,100,0,2026-12,none")
        .demand("elm,any,10,100,December,2026/27");

    assertThat(nursery.buying().out())
        .contains("Buy 30 A, order by the end of Nov 2026: brings EUR 120.")
        .contains(
            "Hours hold you back most: 50 % more of them would bring EUR 60; without that limit"
                + " EUR 280 more.");
  }

  private static String[] hoursEachMonth(int hours) {
    return Stream.concat(
            Stream.of("month,hours available"),
            IntStream.rangeClosed(1, 12).mapToObj(month -> month + "," + hours))
        .toArray(String[]::new);
  }

  /** 100 in hand buys 20 at 5; half as much more, 50, buys 10 more that gain 5 each. */
  @Test
  void cashThatBinds_isToldInMoney() throws IOException {
    nursery
        .settings("opening cash,100", "lowest cash allowed,0")
        .offers("A,elm,5,1,1,100,0,2026-12,none")
        .demand("elm,any,10,100,January,2026/27");

    assertThat(nursery.buying().out())
        .contains("Buy 20 A, order by the end of Nov 2026: brings EUR 100.")
        .contains(
            "The lowest cash allowed holds you back most: one that is EUR 50 lower would bring"
                + " EUR 50; without that limit EUR 400 more.");
    String limit = "The lowest cash allowed";
    assertThat(nursery.figure("buying-limits", limit, "amount").asText())
        .isEqualTo("EUR 0 allowed");
    assertThat(nursery.figure("buying-limits", limit, "used_given").asText())
        .isEqualTo("EUR 100 at the lowest");
    assertThat(nursery.figure("buying-limits", limit, "added").asText()).isEqualTo("EUR 10 lower");
  }

  /** Of 120 that would sell in a season 100 can be had: nobody buys any as given. */
  @Test
  void demandThatIsSoldOut_saysOfItsSeasonWhatSellsAsGiven() throws IOException {
    nursery
        .plan("\"seasons\": 2")
        .offers("A,elm,6,1,1,100,0,2026-12,none")
        .demand("elm,any,10,40,December,2026/27");

    assertThat(nursery.buying().out()).contains("Buy 40 A");
    String limit = "Demand for any (elm) 2026/27";
    assertThat(nursery.figure("buying-limits", limit, "when").asText()).isEqualTo("2026/27");
    assertThat(nursery.figure("buying-limits", limit, "used_given").asText()).isEqualTo("0 plants");
    assertThat(nursery.figure("buying-limits", limit, "used").asText()).isEqualTo("40 plants");
  }

  /**
   * An hour is ten plants that gain 40 and costs 20: all 100 that there are. 10 hours for 3 cost
   * 140: 400 - 140. More buyers find no more plants.
   */
  @Test
  void moreThatWouldBringNothing_isNotSaidToHoldBack() throws IOException {
    nursery
        .settings("extra hour costs,20")
        .table("routes", "route,step,when,minutes", "none,look,arrival,6")
        .table("hours", hoursEachMonth(3))
        .offers("A,elm,6,1,1,100,0,2026-12,none")
        .demand("elm,any,10,100,December,2026/27");

    assertThat(nursery.buying().out())
        .contains("Buy 100 A, order by the end of Nov 2026: brings EUR 260;")
        .contains(
            "Neither room nor hours nor cash holds you back: more of them would bring nothing.");
  }

  /** 50 are sold for 10; the others are worth 5 and cost 4, but nobody wants them ever. */
  @Test
  void plantsThatNobodyWants_areNotSaidToBeSoldOneDay() throws IOException {
    nursery
        .plan("\"horizon value\": 50")
        .offers("A,elm,4,1,1,100,0,2026-12,none")
        .demand("elm,any,10,50,December,2026/27");

    assertThat(nursery.buying().out())
        .contains(
            "Buy 100 A, order by the end of Nov 2026: brings EUR 350; 97 to 100 do as well. After"
                + " 11 seasons 50 plants are still unsold: look at the demand.");
  }

  /**
   * A pack of 100 pots costs 50. 60 A and 40 B gain 0.7 a plant: neither pays for the pack alone,
   * and both together gain 20.
   */
  @Test
  void offersThatShareAPack_areBoughtTogetherAndTheirSumIsExplained() throws IOException {
    nursery
        .table("routes", "route,step,when,pot,mix,place", "pot,pot,arrival,P,M,field")
        .table("pots", "pot,shape,litres,top mm,price,pack", "P,round,1,100,0.5,100")
        .table("mixes", "mix,component,parts", "M,peat,1")
        .table("components", "component,bag litres,bag price,wet kg per litre", "peat,100,0,1")
        .offers("A,elm,9.3,1,1,60,0,2026-12,pot", "B,oak,9.3,1,1,40,0,2026-12,pot")
        .demand("elm,any,10,60,December,2026/27", "oak,thin,10,40,December,2026/27");

    assertThat(nursery.buying().out())
        .contains(
            "Buy 60 A, order by the end of Nov 2026: brings EUR 42. Buy 40 B, order by the end of"
                + " Nov 2026: brings EUR 28.")
        .contains(
            "It brings EUR 20 more than the plan as given, in today's money. Each is weighed beside"
                + " the others, so what they bring does not add up.");
  }

  /** One plant costs 11 and 30 of carriage and sells for 10. */
  @Test
  void offerThatLoses_saysAtWhatNumber() throws IOException {
    nursery.offers("A,elm,11,1,1,100,30,2026-12,none").demand("elm,any,10,60,December,2026/27");

    Ran buying = nursery.buying();

    assertThat(buying.out()).startsWith("Buy nothing. Do not buy: misses by EUR 31 (A).");
    assertThat(nursery.figure("buying-offers", "A", "verdict").asText())
        .isEqualTo(
            "Do not buy A: the best number, 1, misses by EUR 31; it would just pay at EUR 10.00"
                + " landed (asked: EUR 41.00).");
  }

  /** Each sells at a gain of 4, without end: no number is the best. */
  @Test
  void offerWithoutAMost_saysSoAndHowManyWereTried() throws IOException {
    nursery.offers("A,elm,6,1,1,,0,2026-12,none").demand("elm,any,10,,December,2026/27");

    assertThat(nursery.buying().out())
        .startsWith("Buy 4096 A, order by the end of Nov 2026: brings EUR 16,400;")
        .contains(" It names no most: ask how many there are; more than that were not tried.");
  }

  /**
   * A plant costs 5 and sells for 10, but 30 of 100 consignments fail: of 50 that gain 250 the mean
   * is 0.7 x 500 - 250 = 100. In the worst fifth of the draws all fail and 250 is lost.
   */
  @Test
  void offerThatMayFail_isBoughtOnAverageAndNotWhereCareIsAskedFor() throws IOException {
    nursery
        .offers("A,elm,5,50,50,50,0,2026-12,none")
        .demand("elm,any,10,50,January,2026/27")
        .withColumn("offers", "fails %", "30");

    assertThat(nursery.buying().out())
        .startsWith(
            "Luck decides, a fair gamble: buy 50 A, order by the end of Nov 2026: brings EUR")
        .contains("; 30 of 100 such consignments are taken to fail as a whole.");
    assertThat(nursery.buying("--careful").out())
        .startsWith(
            "Careful: the worst fifth of the draws is made as good as can be, not the mean.\n"
                + "Buy nothing. Do not buy: makes bad luck worse (A).")
        .contains(" more on average, but make the worst fifth of the draws worse by EUR 250; ");
  }

  /** The plan ends in September 2027. */
  @Test
  void onlyOfferComesAfterThePlan_isSaidWhereThereIsNothingToDecide() throws IOException {
    nursery.offers("A,elm,6,1,1,100,0,2027-12,none").demand("elm,any,10,50,December,2027/28");

    Ran buying = nursery.buying();

    assertThat(buying.code()).isZero();
    assertThat(buying.out())
        .startsWith(
            "There is nothing to decide: no offer that comes within the plan and is not ordered"
                + " yet, and no lot that could be held to a better grade.\n")
        .contains("the offer arrives outside the plan, which runs from Oct 2026 to Sep 2027");
  }

  /**
   * 20 thick are wanted in 2027 at 30. Of 20 that stand each sells thin now at 15, so holding gains
   * 15; one bought then for 12 gains 18. All 20 are bought and none is held: 360. With 15 bought
   * and 5 held, 345, no other number alone is better.
   */
  @Test
  void heldAndBoughtPlantsForTheSameBuyers_areWeighedTogetherToTheLastPlant() throws IOException {
    nursery
        .plan("\"seasons\": 2")
        .standing(20)
        .offers("B,oak,12,1,1,40,0,2027-10,none")
        .withColumn("offers", "trunk mm", "25")
        .demand("oak,thin,15,,October,2026/27", "oak,thick,30,20,October,2027/28");

    assertThat(nursery.buying().out())
        .startsWith(
            "Buy 20 B, order by the end of Sep 2027: brings EUR 360.\n"
                + "Sell and hold as the plan does.\n");
  }

  /** Ten thick are wanted at 14, thin sell at 10 without end: half of 20 held gains 10 x 4. */
  @Test
  void halfOfALotThatIsWantedThick_isHeldAndTheLotNamed() throws IOException {
    nursery
        .plan("\"seasons\": 2")
        .standing(20)
        .demand("oak,thin,10,,October,2026/27", "oak,thick,14,10,October,2027/28");

    Ran buying = nursery.buying();

    assertThat(buying.out())
        .startsWith(
            "There is no offer to be decided.\n"
                + "Hold back plants of old, the best half to thick (+40) (sheet Sell or hold).\n"
                + "It brings EUR 40 more than the plan as given, in today's money.\n");
    assertThat(nursery.figure("buying-holds", "old", "become").asText())
        .isEqualTo("10 thick in 2027/28");
    assertThat(nursery.planned().out())
        .contains("Expected sales: 2026/27 EUR 100 and 2027/28 EUR 140.");
  }

  /** Thick sell for less than thin: what the table holds back is better sold now, 20 x (10 - 9). */
  @Test
  void holdThatLoses_isFreed() throws IOException {
    nursery
        .plan("\"seasons\": 2")
        .standing(20)
        .withColumn("stock", "hold to grade", "thick")
        .demand("oak,thin,10,,October,2026/27", "oak,thick,9,,October,2027/28");

    assertThat(nursery.buying().out())
        .startsWith(
            "There is no offer to be decided.\n"
                + "Free what is held of old (sheet Sell or hold).\n"
                + "It brings EUR 20 more than the plan as given, in today's money.\n");
  }

  /** 60 are sold for 10 and 40 more for the 6 that they cost: the fewest of what is as good. */
  @Test
  void numbersThatDoAsWell_theFewestIsAdvised() throws IOException {
    nursery
        .offers("A,elm,6,1,1,100,0,2026-12,none")
        .demand("elm,any,10,60,December,2026/27", "elm,any,6,40,December,2026/27");

    assertThat(nursery.buying().out())
        .startsWith(
            "Buy 60 A, order by the end of Nov 2026: brings EUR 240; 60 to 100 do as well.\n");
  }

  /**
   * 150 stand where 100 have room, until 100 are sold in December 2027. One more plant is within
   * the hundredth that is allowed, and gains 4; 50 gain 200 where half as much room again is still
   * full.
   */
  @Test
  void offerOfWhichOnlyOnePlantFits_isSaidNotToFit() throws IOException {
    nursery
        .plan("\"seasons\": 2")
        .table("places", "place,kind,square metres,usable %", "field,standing ground,100,100")
        .standing(150)
        .withColumn("stock", "species", "elm")
        .withColumn("stock", "plants per m2", "1")
        .offers("A,elm,6,1,1,50,0,2026-12,none")
        .withColumn("offers", "plants per m2", "1")
        .demand("elm,any,10,100,December,2026/27", "elm,any,10,100,December,2027/28");

    Ran buying = nursery.buying();

    assertThat(buying.out())
        .contains("Buy nothing. Pays, but does not fit (A).")
        .contains(
            "Leave A unless you add 49.0 m² more room in field in Dec 2026: 50 would then bring"
                + " EUR 200. The least, 2, would bring EUR 8, with 1.0 m² more room in field in Dec 2026.")
        .contains(
            "Room in field holds you back most: 50 % more of it would bring nothing, but without"
                + " that limit EUR 200 more.");
  }

  /**
   * The newsvendor with care: the worst fifth of lognormal demands of mean 100 and spread 50 % has
   * a mean of 47 (100 Φ(z - σ)/0.2, σ² = ln 1.25, z = Φ⁻¹(0.2)). Sold at 15 that pays for 79 at 9,
   * so more than that loses there, though by the mean of all draws some 80 are the best.
   */
  @Test
  void withCare_asGoodIsWhatDoesAsWellInTheWorstFifth() throws IOException {
    nursery
        .offers("A,elm,9,1,1,300,0,2026-12,none")
        .demand("elm,any,15,100,December,2026/27")
        .withColumn("demand", "units spread %", "50");

    String out = nursery.buying("--careful").out();

    Matcher said = Pattern.compile("Buy (\\d+) A, .*; (\\d+) to (\\d+) do as well\\.").matcher(out);
    assertThat(said.find()).as(out).isTrue();
    assertThat(Integer.parseInt(said.group(1))).isLessThan(70);
    assertThat(Integer.parseInt(said.group(3))).isLessThan(90);
  }
}
