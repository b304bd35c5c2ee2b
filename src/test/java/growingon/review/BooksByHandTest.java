package growingon.review;

import static growingon.nursery.record.DaybookLine.What.ARRIVED;
import static growingon.nursery.record.DaybookLine.What.COUNTED;
import static growingon.nursery.record.DaybookLine.What.CULLED;
import static growingon.nursery.record.DaybookLine.What.DIED;
import static growingon.nursery.record.DaybookLine.What.LOST;
import static growingon.nursery.record.DaybookLine.What.SOLD;
import static growingon.nursery.record.DaybookLine.What.SPLIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Inputs;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Species;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.review.book.Booked;
import growingon.review.book.Bookkeeping;
import growingon.review.book.Loss;
import growingon.review.book.Suspicion;
import growingon.review.kept.KeptJudging;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the books say of deaths and of plants that joined, of places, and of a frozen plan. */
class BooksByHandTest {
  private static final YearMonth TODAY = YearMonth.of(2028, 6);

  private static Nurseries twoLots() {
    return Nurseries.bare()
        .place(Nurseries.place("bench", PlaceKind.BENCH, 40))
        .lot(Lots.lot("ash").place("bench").notBefore(2030, 1).build())
        .lot(Lots.lot("other").quantity(50).notBefore(2030, 1).build());
  }

  private static Booked booked(Diary diary, String name) {
    return Bookkeeping.of(diary.of(twoLots().scenario()), TODAY).booked().stream()
        .filter(each -> each.lot().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Diary diary() {
    return new Diary()
        .on("2026-11-05", "ash", DIED, 5)
        .on("2026-11-20", "ash", LOST, 3)
        .on("2026-12-06", "ash", LOST, 4)
        .because("Stolen")
        .on("2026-12-07", "ash", DIED, 2)
        .on("2026-12-08", "ash", CULLED, 1)
        .on("2026-12-09", "ash", ARRIVED, 6)
        .on("2026-12-10", "other", SPLIT, 9)
        .to("ash");
  }

  private static void assertMonths(Map<Integer, Double> found, double... expected) {
    assertThat(found).hasSize(expected.length);
    for (int month = 0; month < expected.length; month++) {
      assertThat(found.get(month)).isCloseTo(expected[month], within(1e-9));
    }
  }

  /** 5 died and 3 went missing in November, 2 died in December; 4 were stolen and 1 was culled. */
  @Test
  void deaths_areThoseThatDiedOrWentMissing_andPlantsThatJoinedAreThoseThatCame() {
    Booked ash = booked(diary(), "ash");

    assertMonths(ash.dead(), 8, 2);
    assertThat(ash.joined()).containsOnlyKeys(1);
    assertThat(ash.joined().get(1)).isCloseTo(15, within(1e-9));
    assertThat(ash.alive()).isCloseTo(100, within(1e-9));
    assertThat(booked(diary(), "other").dead()).isEmpty();
  }

  /** No more die than are alive: of 41 that are left of the other 41. */
  @Test
  void deaths_areNoMoreThanWereAlive() {
    Diary many = diary().on("2027-01-05", "other", DIED, 500);

    assertThat(booked(many, "other").dead().get(2)).isCloseTo(41, within(1e-9));
  }

  /** A quarter of 100 is split off: of what happened before it has a quarter. */
  @Test
  void part_hasItsShareOfWhatHappenedBefore() {
    Diary split =
        diary()
            .on("2027-01-04", "ash", COUNTED, 100)
            .trunks(12, 0.1)
            .on("2027-01-10", "ash", SPLIT, 25)
            .to("own")
            .on("2027-01-12", "own", DIED, 1);
    Booked ash = booked(split, "ash");
    Booked own = booked(split, "own");

    assertMonths(ash.dead(), 6, 1.5);
    assertMonths(own.dead(), 2, 0.5, 1);
    assertThat(ash.joined().get(1)).isCloseTo(11.25, within(1e-9));
    assertThat(own.joined().get(1)).isCloseTo(3.75, within(1e-9));
    assertThat(own.root()).isEqualTo("ash");
    assertThat(own.part()).isCloseTo(0.25, within(1e-9));
    assertThat(own.counts()).hasSize(1);
    assertThat(own.alive()).isCloseTo(24, within(1e-9));
  }

  /** Plants are split before they go, whatever the order of the rows. */
  @Test
  void plantsSplitOffOnADay_canGoOnIt() {
    Review review =
        Review.of(
            new Diary()
                .on("2026-12-01", "own", SOLD, 4)
                .amount(80)
                .on("2026-12-01", "own", DIED, 6)
                .on("2026-12-01", "ash", SPLIT, 30)
                .to("own")
                .of(twoLots().scenario()),
            TODAY,
            Optional.empty());

    assertThat(review.faults()).isEmpty();
    assertThat(review.lots().get(1).alive().real()).isCloseTo(20, within(1e-9));
    assertThat(review.lastDate()).contains(LocalDate.of(2026, 12, 1));
  }

  @ParameterizedTest
  @CsvSource({"7, bench", "100, ''"})
  void suspicion_saysWhereTheLotStands_ifAnyOfItDoes(double died, String place) {
    Review review =
        Review.of(
            new Diary()
                .on("2026-12-01", "ash", DIED, died)
                .because("notifiable spots")
                .of(twoLots().scenario()),
            TODAY,
            Optional.empty());

    assertThat(review.suspicions())
        .extracting(Suspicion::place)
        .containsExactly(Optional.of(place).filter(each -> !each.isEmpty()));
    assertThat(review.lots().get(0).place().orElse("")).isEqualTo(place);
    assertThat(review.losses()).extracting(Loss::species).containsExactly("ash");
  }

  private static Inputs drawn(Nurseries nursery) {
    Inputs inputs =
        new Diary().of(nursery.lots(List.of(Lots.lot("ash").build())).seasons(1).scenario());
    return inputs.withPlan(inputs.scenario().plan().withDraws(8));
  }

  private static KeptJudging judging(Nurseries nursery) {
    return PlanKeeping.keep(drawn(nursery), 1, done -> {}).lots().get(0).judging().orElseThrow();
  }

  /** Seconds bring 0.6 and thirds 0.2 of 20; what is wanted by no row has no price. */
  @Test
  void listPricesThatAreKept_areThoseOfEachGradeAndQuality() {
    assertThat(judging(Nurseries.bare().sellsAll("one", "any", 20)).list())
        .isEqualTo(Map.of("any, first", 20.0, "any, second", 12.0, "any, third", 4.0));
    assertThat(judging(Nurseries.bare()).list()).isEmpty();
  }

  /** Where no price is said to spread, every real one would be unlikely. */
  @Test
  void price_isJudged_whereARowOfTheLotsLadderSaysHowItSpreads() {
    Nurseries sure = Nurseries.bare().sellsAll("one", "any", 20);
    Nurseries unsure = Nurseries.bare().demand(Nurseries.uncertainRow(Optional.empty(), 0, 0.2));

    assertThat(judging(sure).all().price().p10()).isEmpty();
    assertThat(judging(unsure).all().price().p10()).hasSize(12);
    assertThat(judging(unsure).all().deaths().p10()).hasSize(12);
  }

  /** 12 % die in the first year: 12 of 100 by its end. */
  @Test
  void deathsThatAreKept_areAllUpToTheMonthsEnd() {
    Species ash =
        Nurseries.bareSpecies("ash", "one").with().firstYearLoss(0.12).laterLoss(0.12).build();
    List<Double> died = judging(Nurseries.bare().species(ash)).died();

    assertThat(died).hasSize(12).isSorted();
    assertThat(died.get(11)).isCloseTo(12, within(1e-6));
  }

  /** With nothing unknown luck is all there is; of what is not known the two are told apart. */
  @Test
  void luckThatIsKept_isThatOfAllDraws_orOfDrawsOfLuckAlone() {
    Nurseries known = Nurseries.bare().sure(1);
    Nurseries unknown = Nurseries.bare().sure(0.2);

    KeptJudging ofKnown = judging(known);
    assertThat(ofKnown.luck()).contains(ofKnown.all());
    assertThat(ofKnown.luckWithin()).isEqualTo(ofKnown.within());
    KeptJudging ofUnknown = judging(unknown);
    assertThat(ofUnknown.luck()).isPresent();
    assertThat(ofUnknown.luck().get().trunkMm()).isNotEqualTo(ofUnknown.all().trunkMm());
    assertThat(PlanKeeping.keep(drawn(Nurseries.bare()), 1, done -> {}).draws()).isEqualTo(8);
    assertThat(PlanKeeping.keep(drawn(Nurseries.bare()), 1, done -> {}).bands()).isPresent();
  }
}
