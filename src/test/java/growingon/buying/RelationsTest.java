package growingon.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import growingon.buying.answer.Answer;
import growingon.buying.answer.LimitWorth;
import growingon.buying.question.Aim;
import growingon.buying.question.Question;
import growingon.buying.question.Spread;
import growingon.buying.question.Wish;
import growingon.buying.search.BruteForceTest;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold whatever the answer is. */
class RelationsTest {
  private static final Wish QUICK = new Wish(Question.Scope.ALL, Aim.MEAN, true, 0);

  private record Means(double room, double hours, double units, double cash) {}

  private static final Means USUAL = new Means(12, 100, 30, 200);

  private static Nurseries nursery(Means means) {
    return Nurseries.bare()
        .slices(16)
        .place(Nurseries.place("bench", PlaceKind.BENCH, means.room()))
        .hoursAvailable(means.hours())
        .labour(1, 0)
        .openingCash(means.cash())
        .lowestCash(0)
        .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(means.units()), 12));
  }

  private static Asked asked(Means means, double priceOfA) {
    return Asked.of(nursery(means))
        .offer(standing("A"), priceOfA, 1, 60)
        .offer(standing("B"), 20, 5, 5, 60, new Offer.PriceBreak(5, 5));
  }

  private static Lots standing(String name) {
    return Lots.lot(name).place("bench").plantsPerM2(4).notBefore(2027, 3);
  }

  private static double value(Means means) {
    return value(asked(means, 6));
  }

  private static double value(Asked asked) {
    return asked.answer(QUICK).recommended().value().mean();
  }

  @Test
  void higherPrice_neverRaisesTheNumber() {
    int last = Integer.MAX_VALUE;
    for (double price : new double[] {2, 5, 8, 11, 13}) {
      Answer answer = Asked.of(nursery(USUAL)).offer(standing("A"), price, 1, 60).answer(QUICK);
      int bought = Asked.bought(answer).getOrDefault("A", 0);

      assertThat(bought).isLessThanOrEqualTo(last);
      last = bought;
    }
    assertThat(last).isZero();
  }

  @Test
  void moreOfAnything_neverLowersTheValue() {
    double usual = value(USUAL);

    assertThat(value(new Means(16, 100, 30, 200))).isGreaterThanOrEqualTo(usual - 1e-6);
    assertThat(value(new Means(12, 200, 30, 200))).isGreaterThanOrEqualTo(usual - 1e-6);
    assertThat(value(new Means(12, 100, 45, 200))).isGreaterThanOrEqualTo(usual - 1e-6);
    assertThat(value(new Means(12, 100, 30, 400)) - 200).isGreaterThanOrEqualTo(usual - 200 - 1e-6);
  }

  @Test
  void offersInAnotherOrder_getTheSameAdvice() {
    Answer one = asked(USUAL, 6).answer(QUICK);
    Answer other =
        Asked.of(nursery(USUAL))
            .offer(standing("B"), 20, 5, 5, 60, new Offer.PriceBreak(5, 5))
            .offer(standing("A"), 6, 1, 60)
            .answer(QUICK);

    assertThat(Asked.bought(other)).isEqualTo(Asked.bought(one));
  }

  /** A nursery of lots that stand, with holds as given, and an offer, all of it times a number. */
  private static Asked standing(int times, List<Integer> lots) {
    Nurseries nursery =
        nursery(new Means(12 * times, 100 * times, 30 * times, 200 * times))
            .ladder("one", new Grade("any", 1, 5, 0, 12), new Grade("stout", 2, 12, 0, 12))
            .demand(Nurseries.demandRow("one", "stout", OptionalDouble.of(10.0 * times), 21))
            .discountRate(0.05);
    for (int number : lots) {
      nursery.lot(
          Lots.lot("lot " + nursery.scenario().lots().size())
              .quantity(number)
              .trunks(9, 0.2)
              .place("bench")
              .plantsPerM2(8)
              .arrived(2025, 3)
              .hold("stout", 0.5)
              .build());
    }
    return Asked.of(nursery).offer(standing("A"), 10, 5, 5, 60 * times, new Offer.PriceBreak(5, 5));
  }

  private static double valueOfPurchases(Asked asked) {
    return asked
        .answer(new Wish(Question.Scope.PURCHASES, Aim.MEAN, true, 0))
        .recommended()
        .value()
        .mean();
  }

  @Test
  void lotInTwoHalves_isWorthWhatTheWholeIs() {
    double whole = valueOfPurchases(standing(1, List.of(40)));

    double halves = valueOfPurchases(standing(1, List.of(20, 20)));

    assertThat(halves).isCloseTo(whole, within(1e-6 * whole));
  }

  @Test
  void twiceOfEverything_isWorthTwiceAsMuch() {
    double once = value(standing(1, List.of(30, 24)));

    double twice = value(standing(2, List.of(60, 48)));

    assertThat(twice).isCloseTo(2 * once, withinPercentage(2));
  }

  @Test
  void worth_isNeverBelowNil() {
    for (LimitWorth limit : asked(USUAL, 6).answer(QUICK).limitsWorth()) {
      assertThat(limit.steps()).allMatch(step -> step.worth() >= 0);
    }
  }

  /** Nothing beside the answer gains more than what is not worth saying. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void answer_hasNoBetterNeighbour(int number) {
    Answer answer = BruteForceTest.nursery(number, 0.1).answer();

    assertThat(answer.withLuck()).isTrue();
    assertThat(answer.found().certificate().holds()).isTrue();
    assertThat(answer.limits().allow(answer.recommended().line())).isTrue();
  }

  @Test
  void twoSeeds_giveValuesWithinFourStandardErrors() {
    Answer one = BruteForceTest.nursery(3, 0.1).answer();
    Answer other = BruteForceTest.nursery(3, 0.1).seed(2).answer();
    Spread first = one.recommended().value();
    Spread second = other.recommended().value();

    double error = Math.hypot(first.error(), second.error());
    assertThat(Math.abs(first.mean() - second.mean())).isLessThan(4 * error);
  }
}
