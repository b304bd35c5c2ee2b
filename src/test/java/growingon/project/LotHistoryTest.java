package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.project.history.SeasonStock;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is taken down of a lot for those who read it later, by hand. */
class LotHistoryTest {
  private static final Offset<Double> EXACTLY = within(1e-9);

  private static Nurseries stout() {
    return Nurseries.bare()
        .seasons(3)
        .ladder("stout", new Grade("small", 1, 5, 0, 12), new Grade("stout", 2, 20, 0, 12))
        .species(Nurseries.bareSpecies("rowan", "stout"))
        .demand(Nurseries.demandRow("stout", "small", OptionalDouble.of(0), 10));
  }

  private static Lots rowans() {
    return Lots.lot("a").species("rowan").kept(20).quality(0.75, 0.25, true);
  }

  /**
   * 60 firsts and 20 seconds of 100, 20 of which are kept: none may be sold before the second
   * season, then they are small with 22 mm after two years stout.
   */
  @Test
  void seasons_sayWhatCouldBeSoldThen_andWhatStands() {
    LotHistory lot = stout().lot(rowans().notBefore(2027, 11).build()).project().lots().get(0);

    SeasonStock first = lot.seasons().get(0);
    assertThat(first.meanTrunkMm()).isCloseTo(16, EXACTLY);
    assertThat(first.standing().of(Quality.FIRST, 0)).isCloseTo(60, EXACTLY);
    assertThat(first.standing().kept()).isCloseTo(20, EXACTLY);
    assertThat(first.ready().sum()).isZero();
    SeasonStock second = lot.seasons().get(1);
    assertThat(second.ready().of(Quality.FIRST, 1)).isCloseTo(60, EXACTLY);
    assertThat(second.ready().of(Quality.SECOND, 1)).isCloseTo(20, EXACTLY);
    assertThat(second.ready().sum()).isCloseTo(80, EXACTLY);
    assertThat(lot.yearEnds()).hasSize(3);
    assertThat(lot.yearEnds().get(1).month()).isEqualTo(23);
    assertThat(lot.yearEnds().get(1).standing().ofGrade(1)).isCloseTo(80, EXACTLY);
    assertThat(lot.reached().get(1).middle()).hasValue(19);
  }

  /** Ten are known to be sold as stout at 10.5 mm; 90 are counted in December, of 14 mm. */
  @Test
  void whatIsKnown_isHeldAgainstWhatWasToBeExpected() {
    MonthFacts.Leaving sold =
        new MonthFacts.Leaving(
            true, Optional.of("stout"), Optional.empty(), 10, OptionalDouble.of(150));
    MonthFacts.Count counted =
        new MonthFacts.Count(
            OptionalDouble.of(88), Map.of(), OptionalDouble.of(14), OptionalDouble.empty());
    LotFacts known =
        new LotFacts(
            1,
            1,
            1,
            OptionalDouble.empty(),
            Map.of(
                0, new MonthFacts(List.of(), List.of(sold), Optional.empty()),
                1, new MonthFacts(List.of(), List.of(), Optional.of(counted))));
    LotHistory lot =
        Projector.project(stout().lot(rowans().build()).scenario(), new Facts(Map.of("a", known)))
            .lot("a");

    assertThat(lot.soldUnready()).isCloseTo(10, EXACTLY);
    assertThat(lot.beforeCount(0)).isEmpty();
    assertThat(lot.beforeCount(1).orElseThrow().plants()).isCloseTo(90, EXACTLY);
    assertThat(lot.beforeCount(1).orElseThrow().meanTrunkMm()).isCloseTo(11, EXACTLY);
    assertThat(lot.went(1)).isCloseTo(2, EXACTLY);
    assertThat(lot.standing(1)).isCloseTo(88, EXACTLY);
    assertThat(lot.grown(0).orElseThrow().condition()).isEqualTo("pot");
    assertThat(lot.grown(0).orElseThrow().years()).isCloseTo(1 / 12.0, EXACTLY);
    assertThat(lot.monthStock(2).meanTrunkMm()).isCloseTo(14.5, EXACTLY);
  }
}
