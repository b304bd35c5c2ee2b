package growingon.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.Chances;
import growingon.chance.Gamble;
import growingon.chance.Gamble.BreakEvens;
import growingon.chance.Gamble.Swing;
import growingon.chance.Quantiles;
import growingon.chance.luck.Assumption;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.BoughtLot.Bargain;
import growingon.money.bought.Ending;
import growingon.nursery.lot.Lot;
import growingon.nursery.number.Writing;
import growingon.report.MapleNursery;
import growingon.report.figures.Context;
import growingon.report.text.Phrases;
import growingon.report.words.VerdictWords.Verdict;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sentences about 80 plants that cost GBP 1,380 landed, GBP 17.25 each. */
class VerdictWordsTest {
  private static final Context PLAN = MapleNursery.context(MapleNursery.scenario());
  private static final Swing FIRSTS = swing(Assumption.FIRSTS, "40 %", "80 %", -500, 900);
  private static final Swing FAILS =
      swing(Assumption.FAILURE, "it does", "it does not", -1400, 400);
  private static final BreakEvens NONE =
      new BreakEvens(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false);

  private static Swing swing(
      Assumption of, String low, String high, double gainLow, double gainHigh) {
    double between = (gainLow + gainHigh) / 2;
    return new Swing(of, "Acer", low, high, gainLow, between, gainHigh, Optional.empty());
  }

  private static BreakEvens breakEvens(double survivors, double firsts, double price) {
    return new BreakEvens(
        OptionalDouble.of(survivors),
        OptionalDouble.of(firsts),
        OptionalDouble.of(price),
        OptionalDouble.empty(),
        false);
  }

  /** Gains from low to high in even steps. */
  private static double[] steps(int draws, double low, double high) {
    return IntStream.range(0, draws)
        .mapToDouble(i -> draws == 1 ? low : low + (high - low) * i / (draws - 1))
        .toArray();
  }

  private static String sentence(double[] gains, BreakEvens breakEvens, Swing... swings) {
    return words(gains, 400, MapleNursery.ridgeLot(), breakEvens, swings).sentence();
  }

  private static VerdictWords words(
      double[] gains, double plan, Lot lot, BreakEvens breakEvens, Swing... swings) {
    double mean = DoubleStream.of(gains).average().orElseThrow();
    double squares = DoubleStream.of(gains).map(g -> (g - mean) * (g - mean)).sum();
    double error = Math.sqrt(squares / Math.max(1, gains.length - 1) / gains.length);
    Quantiles gain =
        new Quantiles(
            gains[gains.length / 10],
            gains[gains.length / 2],
            gains[gains.length * 9 / 10],
            mean,
            0,
            0,
            0,
            error);
    BoughtLot bought =
        new BoughtLot(
            lot,
            1380,
            new double[PLAN.accounts().cash().months()],
            plan,
            List.of(0.1),
            OptionalInt.empty(),
            List.of(),
            new double[PLAN.accounts().cash().months()],
            new Bargain(OptionalDouble.of(20), OptionalInt.of(1), OptionalDouble.of(1), 40),
            new Ending(lot, 0, List.of(new Ending.BySeason(plan, 0, 0, 0, 0)), OptionalInt.of(0)),
            Optional.empty(),
            new BoughtLot.Bridge(plan, 0, 0, 0, 0, 0, 0, plan));
    Gamble gamble =
        new Gamble(
            bought,
            gain,
            gains,
            share(gains, 0, true),
            share(gains, -138, false),
            OptionalInt.empty(),
            OptionalInt.empty(),
            1380 + mean >= 0
                ? OptionalDouble.of((1380 + mean) / lot.quantity())
                : OptionalDouble.empty(),
            List.of(gain),
            new double[] {share(gains, 0, true)},
            breakEvens,
            List.of(swings));
    return new VerdictWords(MapleNursery.with(PLAN, chances(gains.length, gamble)), gamble);
  }

  private static double share(double[] gains, double limit, boolean atLeast) {
    return (double) Arrays.stream(gains).filter(g -> atLeast ? g >= limit : g < limit).count()
        / gains.length;
  }

  private static Chances chances(int draws, Gamble gamble) {
    return new Chances(
        draws,
        List.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        List.of(),
        new double[0],
        List.of(),
        OptionalDouble.empty(),
        new double[0],
        List.of(),
        Map.of(),
        List.of(gamble),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void fairGamble_saysWhyAndWhatWouldChangeIt() {
    assertThat(sentence(steps(1001, -400, 1600), breakEvens(60, 0.31, 0.9), FIRSTS))
        .isEqualTo(
            "Ridge lot is a fair gamble: it pays in 80 of 100 draws, gains GBP 600 on average (GBP"
                + " -200 P10, GBP 1,400 P90), and loses more than a tenth of its cost in 13; the"
                + " share of firsts matters most: below 31 firsts in 100 it does not pay; it stays"
                + " worth its price up to GBP 24.75 a plant landed (now GBP 17.25). Measuring would"
                + " not change this; seeing the lot sorted would.");
  }

  @Test
  void goodGamble_isOneThatHardlyEverLoses() {
    assertThat(sentence(steps(1001, -100, 1900), NONE, FIRSTS))
        .startsWith(
            "Ridge lot is a good gamble: it pays in 95 of 100 draws, gains GBP 900 on average (GBP"
                + " 100 P10, GBP 1,700 P90), and loses more than a tenth of its cost in none; the"
                + " share of firsts matters most: even without firsts it pays; ");
  }

  @Test
  void safeLot_namesItsWorstDraw() {
    assertThat(sentence(steps(1001, 50, 1950), NONE))
        .isEqualTo(
            "Ridge lot is safe: it pays in all of 100 draws and gains GBP 1,000 on average, GBP 50 in"
                + " the worst; no assumption about it that is unsure moves it; it stays worth its"
                + " price up to GBP 29.75 a plant landed (now GBP 17.25).");
  }

  @Test
  void poorGamble_namesThePriceAtWhichItWouldBeWorthBuying() {
    String sentence =
        words(
                steps(1001, -1200, 600),
                -250,
                MapleNursery.ridgeLot(),
                breakEvens(90, 0.77, 1.1),
                FIRSTS)
            .sentence();

    assertThat(sentence)
        .isEqualTo(
            "Ridge lot is a poor gamble: it pays in 33 of 100 draws, loses GBP 300 on average (GBP"
                + " -1,020 P10, GBP 420 P90), and loses more than a tenth of its cost in 59; the"
                + " share of firsts matters most: it would pay from 77 firsts in 100 on; it would be"
                + " worth buying at GBP 13.50 a plant landed (now GBP 17.25). Measuring would not"
                + " change this; seeing the lot sorted would.");
  }

  @Test
  void longShot_thatGainsOnAverageButPaysSeldom_isPoor() {
    double[] gains = steps(1000, -100, -1);
    Arrays.fill(gains, 900, 1000, 5000);

    assertThat(words(gains, 400, MapleNursery.ridgeLot(), NONE).verdict()).isEqualTo(Verdict.POOR);
  }

  @Test
  void hopelessLot_losesEvenInTheBestDraw() {
    String sentence =
        words(steps(1001, -2800, -200), -1500, MapleNursery.ridgeLot(), NONE, FIRSTS).sentence();

    assertThat(sentence)
        .isEqualTo(
            "Ridge lot is hopeless: it pays in none of 100 draws, loses GBP 1,500 on average and"
                + " loses GBP 200 even in the best; the share of firsts matters most: even with"
                + " firsts only it does not pay; even as a gift, landed free, it would lose on"
                + " average.");
  }

  @Test
  void drawsThatDoNotDiffer_areSafeOrHopeless() {
    assertThat(sentence(steps(1000, 300, 300), NONE))
        .startsWith(
            "Ridge lot is safe: it gains GBP 300 in every draw; no assumption about it that"
                + " is unsure moves it; ");
    assertThat(words(steps(1000, -300, -300), -300, MapleNursery.ridgeLot(), NONE).sentence())
        .startsWith("Ridge lot is hopeless: it loses GBP 300 in every draw; ");
  }

  @Test
  void fewDraws_areSaidToBeTooFew() {
    assertThat(sentence(steps(1, 300, 300), NONE))
        .startsWith("Ridge lot is safe: it pays in the one draw made and gains GBP 300")
        .endsWith(" 1 draw is too few to tell.");
    assertThat(sentence(steps(99, -100, 900), NONE)).endsWith(" 99 draws are too few to tell.");
  }

  @Test
  void meanWithinItsSamplingError_isSaidToDecideNothing() {
    assertThat(sentence(steps(101, -1000, 1020), NONE, FIRSTS))
        .endsWith(
            " Whether it gains on average the 101 draws do not tell: the sampling error is GBP"
                + " 59.");
    assertThat(sentence(steps(1001, -1000, 1300), NONE, FIRSTS)).doesNotContain("do not tell");
  }

  @Test
  void wholeFailure_isToldByItsChance_notAsWhatMattersMost() {
    String sentence =
        words(
                steps(1001, -400, 1600),
                400,
                MapleNursery.unseenRidgeLot(),
                breakEvens(60, 0.31, 0.9),
                FAILS,
                FIRSTS)
            .sentence();

    assertThat(sentence)
        .contains(
            "; the share of firsts matters most: below 31 firsts in 100 it does not pay; 2 of 100"
                + " such consignments are taken to fail as a whole; ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "GROWTH; growth matters most: it loses GBP 500 at a and gains GBP 900" + " at b",
        "LOSS; the yearly loss matters most: it loses GBP 500 at a and" + " gains GBP 900 at b",
        "CONSIGNMENT; the first-year loss of this consignment matters most:"
            + " below 60 of 100 alive after the first year it does not pay",
        "UNITS; the units wanted matter most: it loses GBP 500 at a and" + " gains GBP 900 at b",
        "PRICE; the selling prices matter most: below 90 % of the"
            + " prices stated it does not pay",
        "MINUTES; the minutes of work matter most: it loses GBP 500 at"
            + " a and gains GBP 900 at b"
      })
  void eachAssumption_asTheWidestSwing_isTheReason(Assumption assumption, String reason) {
    Swing swing = swing(assumption, "a", "b", -500, 900);

    assertThat(sentence(steps(1001, -400, 1600), breakEvens(60, 0.31, 0.9), swing))
        .contains("; " + reason + "; ");
  }

  @Test
  void assumptionWithoutAValueAtWhichItTurns_isToldByItsEnds() {
    for (Assumption assumption : List.of(Assumption.CONSIGNMENT, Assumption.PRICE)) {
      Swing swing = swing(assumption, "a", "b", 300, 900);
      assertThat(sentence(steps(1001, -400, 1600), NONE, swing))
          .contains(" most: it gains GBP 300 at a and gains GBP 900 at b; ");
    }
    Swing falling = swing(Assumption.FIRSTS, "40 %", "80 %", 900, 300);
    assertThat(sentence(steps(1001, -400, 1600), breakEvens(60, 0.9, 0.9), falling))
        .contains(" most: it gains GBP 900 at 40 % and gains GBP 300 at 80 %; ");
  }

  @Test
  void verdicts_eachHaveWordsOfTheirOwn() {
    assertThat(Arrays.stream(Verdict.values()).map(Verdict::toString))
        .doesNotHaveDuplicates()
        .hasSize(5);
  }

  /** Of a lot that is not sold, nothing is said but when its money is back. */
  @Test
  void lot_notSoldByThePlansEnd_isNeverHopeless() {
    EndingWords ending = later(OptionalInt.of(3));
    assertThat(ending.told("a fair gamble"))
        .isEqualTo("not back by 2026/27; pays from 2029/30; a fair gamble when sold, by 2029/30");
    assertThat(ending.sentence())
        .contains(
            "Ridge lot is not back by 2026/27: 59 plants, GBP 17,069 at list, stand then. It pays"
                + " from 2029/30.");
    assertThat(ending.headlines())
        .containsExactly(
            "Ridge lot: not back by 2026/27; 59 plants, GBP 17,069 at list, stand.",
            "  Pays from 2029/30.");
    assertThat(ending.heading()).contains("judged at the end of 2029/30, when it is sold");
  }

  @Test
  void lot_neverSold_isSentToTheDemand() {
    assertThat(later(OptionalInt.empty()).told("a poor gamble"))
        .isEqualTo(
            "not back by 2026/27; pays from 2029/30; 59 still unsold after 4 seasons: look at the"
                + " demand");
    assertThat(later(OptionalInt.empty()).isSold()).isFalse();
  }

  private static EndingWords later(OptionalInt soldOut) {
    BoughtLot bought = PLAN.bought().get(0);
    List<Ending.BySeason> seasons =
        IntStream.of(-900, -800, -100, 700)
            .mapToObj(gain -> new Ending.BySeason(gain, 59, 59, 40, 17_069))
            .toList();
    BoughtLot other =
        new BoughtLot(
            bought.lot(),
            bought.landed(),
            bought.flows(),
            -900,
            bought.ratesOfReturn(),
            bought.payback(),
            bought.overflows(),
            bought.hoursShort(),
            bought.bargain(),
            new Ending(bought.lot(), 0, seasons, soldOut),
            Optional.empty(),
            bought.bridge());
    return new EndingWords(
        other,
        Optional.empty(),
        59,
        PLAN.accounts().projection().horizon(),
        new Phrases("GBP", Writing.USUAL));
  }
}
