package growingon.review.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Quality;
import growingon.nursery.record.DaybookLine;
import growingon.nursery.record.DaybookLine.What;
import growingon.problem.Where;
import growingon.review.kept.KeptSale;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Counts put together and plants that came back, by hand. */
class CountedTest {
  private static DaybookLine line(
      Double plants, Quality quality, String grade, Double trunk, Double spread) {
    return DaybookLine.of(
            LocalDate.of(2027, 10, 4), "elms", What.COUNTED, new Where("daybook.csv", "", 2, ""))
        .quantity(optional(plants))
        .quality(Optional.ofNullable(quality))
        .grade(Optional.ofNullable(grade))
        .trunkMm(optional(trunk))
        .trunkSpread(optional(spread))
        .build();
  }

  private static OptionalDouble optional(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static final DaybookLine FIRSTS = line(30.0, Quality.FIRST, "tall", 20.0, 0.1);
  private static final DaybookLine SECONDS = line(10.0, Quality.SECOND, null, 28.0, 0.2);

  /**
   * 30 of 20 mm and 10 of 28 are 40 of 22. Of 30 the variance is 2² and they are 2 off, of 10 it is
   * 5.6² and they are 6 off: √((30 · 8 + 10 · 67.36)/40) = 4.7791 over 22.
   */
  @Test
  void trunks_ofSeveralLines_countByTheirPlants() {
    Counted counted = Counted.of(List.of(FIRSTS, SECONDS));

    assertThat(counted.plants()).hasValue(40);
    assertThat(counted.qualities()).isEqualTo(Map.of(Quality.FIRST, 30.0, Quality.SECOND, 10.0));
    assertThat(counted.grades()).isEqualTo(Map.of("tall", 30.0, "", 10.0));
    assertThat(counted.trunkMm().orElseThrow()).isCloseTo(22, within(1e-9));
    assertThat(counted.trunkSpread().orElseThrow()).isCloseTo(4.77912 / 22, within(1e-6));
  }

  /** Where a line says no plants, both count alike: 24 mm, √((4 + 16 + 31.36 + 16)/2) about it. */
  @Test
  void trunks_ofLinesWithoutPlants_countAlike() {
    Counted counted = Counted.of(List.of(FIRSTS, line(null, null, null, 28.0, 0.2)));

    assertThat(counted.plants()).hasValue(30);
    assertThat(counted.trunkMm().orElseThrow()).isCloseTo(24, within(1e-9));
    assertThat(counted.trunkSpread().orElseThrow()).isCloseTo(Math.sqrt(33.68) / 24, within(1e-9));
  }

  @Test
  void whatOneOfSeveralLinesDoesNotSay_isNotSaidOfTheCount() {
    Counted counted = Counted.of(List.of(FIRSTS, line(10.0, null, null, 28.0, null)));

    assertThat(counted.qualities()).isEmpty();
    assertThat(counted.trunkSpread()).isEmpty();
    assertThat(counted.trunkMm()).isPresent();
    assertThat(Counted.of(List.of(SECONDS)).grades()).isEmpty();
    assertThat(Counted.of(List.of(line(null, null, null, 28.0, 0.2))).plants()).isEmpty();
  }

  @Test
  void spreadOfOneLine_isItsOwn_withoutATrunkToo() {
    assertThat(Counted.of(List.of(FIRSTS)).trunkSpread()).hasValue(0.1);
    Counted spreadAlone = Counted.of(List.of(line(5.0, null, null, null, 0.3)));
    assertThat(spreadAlone.trunkSpread()).hasValue(0.3);
    assertThat(spreadAlone.trunkMm()).isEmpty();
  }

  private static final List<KeptSale> SALES =
      List.of(
          new KeptSale(1, "tall", "first", 30, 600),
          new KeptSale(2, "tall", "first", 10, 300),
          new KeptSale(2, "small", "first", 8, 80),
          new KeptSale(2, "tall", "second", 6, 60),
          new KeptSale(3, "tall", "first", 5, 100));

  private static CameBack back(double plants, double money) {
    return new CameBack(2, Optional.of("tall"), Optional.of(Quality.FIRST), plants, money);
  }

  /** 10 of the 40 tall firsts sold by then come back: a quarter of each sale, and of its money. */
  @Test
  void plantsThatCameBack_areOffTheSalesTheyCanHaveBeenOf() {
    assertThat(back(10, 180).off(SALES))
        .containsExactly(
            new KeptSale(1, "tall", "first", 22.5, 480),
            new KeptSale(2, "tall", "first", 7.5, 240),
            SALES.get(2),
            SALES.get(3),
            SALES.get(4));
  }

  @Test
  void plantsThatAllCameBack_leaveNoSale_andNoneOfAnother() {
    assertThat(back(50, 900).off(SALES)).isEqualTo(SALES.subList(2, 5));
    assertThat(back(40, 900).off(SALES.subList(2, 5))).isEqualTo(SALES.subList(2, 5));
    assertThat(back(10, 180).times(0.5)).isEqualTo(back(5, 90));
  }

  @Test
  void plantsOfWhichNothingIsSaid_areOffAllSalesSoFar() {
    CameBack any = new CameBack(2, Optional.empty(), Optional.empty(), 27, 0);

    assertThat(any.off(SALES).get(2)).isEqualTo(new KeptSale(2, "small", "first", 4, 80));
    assertThat(any.off(SALES).get(4)).isEqualTo(SALES.get(4));
  }
}
