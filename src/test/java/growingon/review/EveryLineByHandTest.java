package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.CULLED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.FOUND;
import static growingon.nursery.record.DaybookLine.What.LOST;
import static growingon.nursery.record.DaybookLine.What.RETURNED;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPENT;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static growingon.nursery.record.DaybookLine.What.USED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Inputs;
import growingon.nursery.lot.Offer;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.review.kept.KeptLot;
import growingon.review.kept.KeptOffer;
import growingon.review.kept.KeptPlan;
import growingon.review.kept.KeptSale;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What each line of a daybook does to its lot, and what is frozen of a plan, by hand. */
class EveryLineByHandTest {
  private static final Offset<Double> TINY = within(1e-9);

  private static Whereabouts balance(Nurseries nursery, Diary diary, String name) {
    Review review =
        Review.of(diary.of(nursery.scenario()), YearMonth.of(2028, 6), Optional.empty());
    return review.lots().stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow()
        .balance();
  }

  private static void assertSame(Whereabouts found, Whereabouts expected) {
    assertThat(found)
        .usingRecursiveComparison()
        .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1, Double.class)
        .isEqualTo(expected);
  }

  private static Nurseries nursery() {
    return Nurseries.bare()
        .seasons(2)
        .sellsAll("one", "any", 20)
        .lot(Lots.lot("ash").notBefore(2030, 1).build())
        .lot(Lots.lot("other").quantity(50).notBefore(2030, 1).build());
  }

  private static Nurseries withABoughtLot() {
    return nursery()
        .lot(Lots.lot("bought").arrived(2027, 2).notBefore(2030, 1).bought(5, 0).build());
  }

  private static Diary cameInTwoMonths() {
    return new Diary()
        .on("2027-02-03", "bought", ARRIVED, 60)
        .on("2027-03-03", "bought", ARRIVED, 40)
        .on("2027-03-04", "bought", DIED, 10);
  }

  private static Diary everyLine() {
    return new Diary()
        .on("2026-11-02", "ash", FOUND, 4)
        .on("2026-11-03", "ash", DIED, 5)
        .because("frost")
        .on("2026-11-04", "ash", CULLED, 3)
        .on("2026-11-05", "ash", LOST, 6)
        .because("Stolen in the night")
        .on("2026-11-06", "ash", LOST, 2)
        .on("2026-11-07", "ash", USED, 7)
        .on("2026-11-08", "ash", SOLD, 10)
        .amount(200)
        .on("2026-11-09", "ash", RETURNED, 1)
        .amount(20)
        .on("2026-11-10", "ash", SPLIT, 8)
        .to("other");
  }

  /** 100 + 1 + 4 − 5 − 3 − 10 − 7 − 8 − 8 = 64, and 50 + 8 of the other. */
  @Test
  void everyLine_isBookedAsWhatItSays() {
    Diary diary = everyLine();

    assertSame(
        balance(nursery(), diary, "ash"), new Whereabouts(100, 0, 1, 4, 5, 3, 10, 7, 8, 8, 64));
    assertSame(
        balance(nursery(), diary, "other"), new Whereabouts(50, 8, 0, 0, 0, 0, 0, 0, 0, 0, 58));
  }

  private static LotReview lot(Diary diary, String name) {
    return Review.of(
            diary.of(nursery().labour(12, 1).scenario()), YearMonth.of(2028, 6), Optional.empty())
        .lots()
        .stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /**
   * The same, then half of what is left becomes a lot: all that was booked stays with the first.
   */
  @Test
  void everyLineBeforeASplit_staysWithItsLot() {
    Diary diary =
        everyLine()
            .on("2026-11-20", "ash", SPLIT, 32)
            .to("half")
            .on("2026-11-21", "other", SPLIT, 29)
            .to("half of the other");

    assertSame(
        balance(nursery(), diary, "ash"), new Whereabouts(100, 0, 1, 4, 5, 3, 10, 7, 40, 8, 32));
    assertSame(
        balance(nursery(), diary, "half"), new Whereabouts(0, 32, 0, 0, 0, 0, 0, 0, 0, 0, 32));
    assertSame(
        balance(nursery(), diary, "other"), new Whereabouts(50, 8, 0, 0, 0, 0, 0, 0, 29, 0, 29));
    assertSame(
        balance(nursery(), diary, "half of the other"),
        new Whereabouts(0, 29, 0, 0, 0, 0, 0, 0, 0, 0, 29));
    assertThat(lot(diary, "ash").sales().byDaybook()).isCloseTo(180, TINY);
    assertThat(lot(diary, "half").sales().byDaybook()).isCloseTo(0, TINY);
  }

  /**
   * 100 came in two months, 10 died, then half of the 90 became a lot; 4 more were counted there.
   */
  @Test
  void plantsThatCameLaterOrWereCounted_stayWithTheLotThatIsSplit() {
    Nurseries nursery = withABoughtLot();
    Diary diary =
        cameInTwoMonths()
            .on("2027-04-02", "bought", COUNTED, 94)
            .on("2027-05-02", "bought", SPLIT, 47)
            .to("half");

    assertSame(
        balance(nursery, diary, "bought"), new Whereabouts(100, 0, 0, 4, 10, 0, 0, 0, 47, 0, 47));
    assertSame(balance(nursery, diary, "half"), new Whereabouts(0, 47, 0, 0, 0, 0, 0, 0, 0, 0, 47));
  }

  /** 20 of 100 plants that have cost 400 join another lot, and 80 of their cost with them. */
  @Test
  void plantsThatJoinAnotherLot_takeTheirShareOfTheCostAlong() {
    Diary diary =
        new Diary()
            .on("2026-11-20", "ash", SPENT)
            .amount(400)
            .because("materials")
            .on("2026-12-10", "ash", SPLIT, 20)
            .to("other");

    assertThat(lot(diary, "ash").costToDate()).isCloseTo(320, TINY);
    assertThat(lot(diary, "other").costToDate()).isCloseTo(80, TINY);
  }

  /** Ten hours at 12, then half of the plants become a lot: five hours and 60 are of each. */
  @Test
  void hoursBeforeASplit_areOfBothParts() {
    Diary diary =
        new Diary()
            .on("2026-11-20", "ash", SPENT)
            .hours(10)
            .on("2026-12-10", "ash", SPLIT, 50)
            .to("half");

    for (String name : List.of("ash", "half")) {
      LotReview lot = lot(diary, name);
      assertThat(lot.hours().isReal()).isTrue();
      assertThat(lot.hours().real()).isCloseTo(5, TINY);
      assertThat(lot.hours().byDaybook()).isCloseTo(5, TINY);
      assertThat(lot.costToDate()).isCloseTo(60, TINY);
    }
    assertThat(lot(diary, "other").hours().isReal()).isFalse();
  }

  /** 60 come in February, 40 in March: both are plants that arrived. */
  @Test
  void plantsThatComeLater_arrivedToo() {
    Nurseries nursery = withABoughtLot();
    Diary diary = cameInTwoMonths();

    assertSame(
        balance(nursery, diary, "bought"), new Whereabouts(100, 0, 0, 0, 10, 0, 0, 0, 0, 0, 90));
  }

  /**
   * 54 firsts, 36 seconds and 10 kept of 10 mm that grow half a millimetre a month; ten hours in
   * March; in June 24 firsts sell at 20.
   */
  @Test
  void frozenLot_holdsWhatThePlanSaysOfEachMonth() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .labour(12, 1)
            .salesPattern(0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0)
            .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(24), 20))
            .route("r", Steps.in("pot", Month.MARCH, 0).minutes(6).build())
            .lot(Lots.lot("ash").kept(10).quality(0.6, 0.4, true).unitCost(4).route("r").build());
    KeptPlan kept = PlanKeeping.keepLine(new Diary().of(nursery.scenario()));
    KeptLot lot = kept.lots().get(0);

    assertThat(kept.draws()).isZero();
    assertThat(lot.quantity()).isEqualTo(100);
    assertThat(lot.spentBefore()).isEqualTo(400);
    assertThat(lot.trunkMm().get(0)).isCloseTo(10.5, TINY);
    assertThat(lot.trunkMm().get(11)).isCloseTo(16, TINY);
    assertThat(lot.hours().get(4)).isCloseTo(10, TINY);
    assertThat(lot.hours().get(5)).isZero();
    assertThat(lot.living().get(6)).isCloseTo(100, TINY);
    assertThat(lot.living().get(7)).isCloseTo(76, TINY);
    assertThat(lot.byQuality().get("first").get(6)).isCloseTo(54, TINY);
    assertThat(lot.byQuality().get("first").get(7)).isCloseTo(30, TINY);
    assertThat(lot.byQuality().get("second").get(7)).isCloseTo(36, TINY);
    assertThat(lot.byGrade().get("any").get(6)).isCloseTo(100, TINY);
    assertThat(lot.byGrade().get("").get(6)).isZero();
    assertThat(lot.sales()).hasSize(1);
    KeptSale sale = lot.sales().get(0);
    assertThat(sale.month()).isEqualTo(7);
    assertThat(sale.grade()).isEqualTo("any");
    assertThat(sale.quality()).isEqualTo("first");
    assertThat(sale.units()).isCloseTo(24, TINY);
    assertThat(sale.money()).isCloseTo(480, TINY);
    assertThat(lot.result().get(3)).isCloseTo(0, TINY);
    assertThat(lot.result().get(6)).isCloseTo(-120, TINY);
    assertThat(lot.result().get(11)).isCloseTo(360, TINY);
  }

  @Test
  void frozenOffer_isPricedAtWhatIsTaken_elseAtTheLeast() {
    Offer offer =
        Offer.named("liners", Lots.lot("liners").arrived(2027, 2).build())
            .currency("GBP")
            .breaks(List.of(new Offer.PriceBreak(10, 5), new Offer.PriceBreak(100, 4)))
            .arrival(YearMonth.of(2027, 2))
            .build();
    Nurseries without = Nurseries.bare().seasons(1);
    Nurseries with = Nurseries.bare().seasons(1).lot(offer.taken(120));

    KeptOffer left = offers(without, offer).get("liners");
    assertThat(left.taken()).isZero();
    assertThat(left.unitPrice()).isEqualTo(5);
    KeptOffer taken = offers(with.lot(Lots.lot("another").build()), offer).get("liners");
    assertThat(taken.taken()).isEqualTo(120);
    assertThat(taken.unitPrice()).isEqualTo(4);
  }

  private static Map<String, KeptOffer> offers(Nurseries nursery, Offer offer) {
    KeptPlan kept =
        PlanKeeping.keepLine(new Inputs(nursery.scenario(), List.of(offer), List.of(), 1));
    return Map.of(kept.offers().get(0).name(), kept.offers().get(0));
  }
}
