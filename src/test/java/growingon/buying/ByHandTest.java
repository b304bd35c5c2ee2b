package growingon.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.buying.answer.Answer;
import growingon.buying.answer.OfferAnswer;
import growingon.buying.answer.OfferAnswer.Verdict;
import growingon.buying.answer.PlanValue;
import growingon.buying.question.Question;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Offer;
import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Small questions whose answer is summed by hand; no luck, no discount, nothing dies or grows. */
class ByHandTest {
  private static final Offset<Double> CENT = within(0.01);

  /** So many are wanted of a grade in the first season at a price, and none later. */
  private static Demand wanted(String ladder, String grade, double units, double price) {
    return new Demand(
        Optional.empty(),
        ladder,
        grade,
        Optional.of("2026/27"),
        MonthSpan.ALL_YEAR,
        OptionalDouble.of(units),
        price,
        0,
        0,
        0);
  }

  private static Nurseries buyers(double units, double price) {
    // An offer comes in December, so a twelfth of the season's units is gone.
    return Nurseries.bare().demand(wanted("one", "any", units * 12 / 11, price));
  }

  @Test
  void carriage_decidesBetweenTwoOffers() {
    // 50 sold at 10: A 50 x (10 - 8) = 100; B 50 x (10 - 7) - 100 carriage = 50.
    Asked few = Asked.of(buyers(50, 10));
    // 150 sold at 10: A 150 x 2 = 300; B 150 x 3 - 100 = 350.
    Asked many = Asked.of(buyers(150, 10));
    for (Asked each : new Asked[] {few, many}) {
      each.offer(Lots.lot("A"), 0, 1, 1, 200, new Offer.PriceBreak(1, 8));
      each.offer(Lots.lot("B"), 100, 1, 1, 200, new Offer.PriceBreak(1, 7));
    }

    assertThat(Asked.bought(few.answer())).isEqualTo(Map.of("A", 50));
    assertThat(few.answer().recommended().gain().mean()).isCloseTo(100, CENT);
    assertThat(Asked.bought(many.answer())).isEqualTo(Map.of("B", 150));
    assertThat(many.answer().recommended().gain().mean()).isCloseTo(350, CENT);
  }

  @Test
  void priceBreak_thatMakesFortyCheaperThanThirtyNine_isTaken() {
    // 39 are wanted at 8. 39 cost 39 x 6 = 234, 40 cost 40 x 5 = 200: 312 - 200 = 112.
    Answer answer =
        Asked.of(buyers(39, 8))
            .offer(
                Lots.lot("A"),
                0,
                1,
                10,
                100,
                new Offer.PriceBreak(10, 6),
                new Offer.PriceBreak(40, 5))
            .answer();

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 40));
    assertThat(answer.recommended().gain().mean()).isCloseTo(112, CENT);
  }

  @Test
  void offerThatCostsMoreThanItFetches_isNotBoughtAndMissesByWhatItLoses() {
    // One plant bought for 12 and sold for 10: misses by 2; the most that pays is 10.
    Answer answer = Asked.of(buyers(50, 10)).offer(Lots.lot("A"), 12, 1, 100).answer();

    assertThat(Asked.bought(answer)).isEmpty();
    OfferAnswer offer = answer.offers().get(0);
    assertThat(offer.verdict()).isEqualTo(Verdict.DOES_NOT_PAY);
    assertThat(offer.at()).isEqualTo(1);
    assertThat(offer.gain().mean()).isCloseTo(-2, CENT);
    assertThat(offer.mostLanded().orElseThrow()).isCloseTo(10, CENT);
  }

  @Test
  void plantsThatStand_meetTheSameBuyersAsThoseBought() {
    // 50 are wanted from December on, 30 that stand are older and sell first: 20 x (10 - 4) = 80.
    Nurseries nursery =
        buyers(50, 10)
            .lot(Lots.lot("old").quantity(30).arrived(2025, 3).notBefore(2026, 12).build());
    Answer answer = Asked.of(nursery).offer(Lots.lot("A"), 4, 1, 100).answer();

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 20));
    assertThat(answer.recommended().gain().mean()).isCloseTo(120, CENT);
  }

  @Test
  void room_thatOneOfferAloneWouldBlock_goesToTwoOthers() {
    // 10 m2, a plant a m2. C (10 or none) gains 85; A (6 or none) 60 and B (4 or none) 30 gain 90.
    Nurseries nursery = Nurseries.bare();
    for (String name : new String[] {"A", "B", "C"}) {
      nursery.ladder(name, new Grade("any", 1, 1, 0, 12));
      nursery.species(Nurseries.bareSpecies(name, name));
      nursery.demand(wanted(name, "any", 120, 100));
    }
    nursery.place(Nurseries.place("bench", PlaceKind.BENCH, 10));
    Answer answer =
        Asked.of(nursery)
            .offer(standing("A"), 90, 6, 6)
            .offer(standing("B"), 92.5, 4, 4)
            .offer(standing("C"), 91.5, 10, 10)
            .answer();

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 6, "B", 4));
    assertThat(answer.recommended().gain().mean()).isCloseTo(90, CENT);
    OfferAnswer third = answer.offers().get(2);
    assertThat(third.verdict()).isEqualTo(Verdict.DOES_NOT_FIT);
    // 20 m2 needed, 10 and a hundredth there.
    assertThat(third.lacks().orElseThrow().amount()).isCloseTo(9.9, CENT);
  }

  /** 25 are wanted at 100 in March; there are 10 m2, and a plant stands on one from December on. */
  private static Answer withRoomThatCosts(double squareMetre) {
    Demand march =
        new Demand(
            Optional.empty(),
            "one",
            "any",
            Optional.of("2026/27"),
            new MonthSpan(3, 3),
            OptionalDouble.of(25),
            100,
            0,
            0,
            0);
    Nurseries nursery =
        Nurseries.bare()
            .demand(march)
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .extraCosts(1, squareMetre);
    return Asked.of(nursery).offer(Lots.lot("A").place("bench").plantsPerM2(1), 90, 1, 40).answer();
  }

  @Test
  void roomThatCostsLessThanItBrings_isTakenAndPaid() {
    // 25 x 10 = 250; 15 m2 too few from December to March, when they go, at 2: 15 x 4 x 2 = 120.
    Answer answer = withRoomThatCosts(2);

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 25));
    assertThat(answer.recommended().gain().mean()).isCloseTo(250 - 120, CENT);
    assertThat(answer.recommended().line().extra()).isCloseTo(120, CENT);
  }

  @Test
  void roomThatCostsMoreThanItBrings_isNotTaken() {
    // A plant brings 10 and four months of its square metre cost 16: 10 plants on what there is.
    Answer answer = withRoomThatCosts(4);

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 10));
    assertThat(answer.recommended().gain().mean()).isCloseTo(100, CENT);
    assertThat(answer.recommended().line().extra()).isZero();
  }

  private static Lots standing(String species) {
    return Lots.lot(species).species(species).place("bench").plantsPerM2(1);
  }

  @Test
  void hold_isAdvisedWhereWaitingPays() {
    // 20 plants of 10 mm grow 6 mm a year: thick at 20 mm after 20 months. Sold thin now they bring
    // 20 x 10 = 200; held to thick 20 x 30 = 600.
    Nurseries nursery =
        Nurseries.bare()
            .ladder("one", new Grade("thin", 1, 1, 0, 12), new Grade("thick", 2, 20, 0, 12))
            .sellsAll("one", "thin", 10)
            .sellsAll("one", "thick", 30)
            .lot(Lots.lot("old").quantity(20).build());
    Answer answer = Asked.of(nursery).answer();

    assertThat(Asked.held(answer))
        .isEqualTo(Map.of("old", Optional.of(new Hold("thick", 1, Hold.Which.BEST))));
    assertThat(answer.recommended().gain().mean()).isCloseTo(400, CENT);
    assertThat(answer.holds().get(0).brings().mean()).isCloseTo(400, CENT);
  }

  @Test
  void heldPlants_areSharedOutByWhatBuyersWant() {
    // Of 20 only 10 can be sold thick in the plan: hold half. 10 x 10 + 10 x 30 = 400, not 200.
    Nurseries nursery =
        Nurseries.bare()
            .ladder("one", new Grade("thin", 1, 1, 0, 12), new Grade("thick", 2, 20, 0, 12))
            .sellsAll("one", "thin", 10)
            .demand(
                new Demand(
                    Optional.empty(),
                    "one",
                    "thick",
                    Optional.of("2028/29"),
                    MonthSpan.ALL_YEAR,
                    OptionalDouble.of(10),
                    30,
                    0,
                    0,
                    0))
            .lot(Lots.lot("old").quantity(20).build());
    Answer answer = Asked.of(nursery).answer();

    assertThat(Asked.held(answer))
        .isEqualTo(Map.of("old", Optional.of(new Hold("thick", 0.5, Hold.Which.BEST))));
    assertThat(answer.recommended().gain().mean()).isCloseTo(200, CENT);
  }

  @Test
  void cash_mayNotFallBelowTheLowestAllowed() {
    // 100 in hand: at 5 each 20 can be paid, though 50 would sell at 10.
    Answer answer =
        Asked.of(buyers(50, 10).openingCash(100).lowestCash(0))
            .offer(Lots.lot("A").notBefore(2027, 1), 5, 1, 100)
            .answer();

    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 20));
  }

  @Test
  void whatIsOrderedAlready_isGiven() {
    Asked asked = Asked.of(buyers(50, 10)).offer(Lots.lot("A"), 4, 1, 100).takes("A", 30);
    Answer answer = asked.answer();

    assertThat(answer.plan(PlanValue.Kind.AS_PLANNED).orElseThrow().gain().mean())
        .isCloseTo(180, CENT);
    assertThat(Asked.bought(answer)).isEqualTo(Map.of("A", 50));
  }

  @Test
  void nothingToBuyAndNothingToHold_isNothingToDecide() {
    Asked asked = Asked.of(buyers(50, 10));

    assertThat(Buying.isNothingToDecide(asked.inputs(), Question.Scope.ALL)).isTrue();
  }
}
