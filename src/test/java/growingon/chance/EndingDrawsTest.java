package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.load.LoadOptions;
import growingon.load.Loader;
import growingon.money.bought.BoughtLot;
import growingon.money.bought.Ending;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Scenario;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A nursery of 40 lots that may buy a block of crab apples: endings on the line and in draws. */
class EndingDrawsTest {
  private static final Scenario PLAN = plan();

  private static Scenario plan() {
    try {
      Path file =
          Path.of(EndingDrawsTest.class.getResource("/nurseries/with-the-field-lot.json").toURI());
      return Loader.load(file, new LoadOptions(LocalDate.of(2026, 11, 20)))
          .value()
          .orElseThrow()
          .scenario();
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Scenario to(int seasons, int draws) {
    return PLAN.withPlan(PLAN.plan().withSeasons(seasons).withDraws(draws));
  }

  /**
   * They sell from the sixth season on; what they displace moves their gain after they are gone.
   */
  @Test
  void crabApples_payFromTheSixthSeason_andChangeLittleOnceSold() {
    Ending ending = ValueJoin.of(PLAN).bought().get(0).ending();
    for (int season = 0; season < 5; season++) {
      assertThat(ending.seasons().get(season).gain()).isNegative();
    }
    assertThat(ending.seasons().get(5).gain()).isBetween(3000.0, 4000.0);
    assertThat(ending.seasons().get(7).gain())
        .isBetween(6000.0, 6500.0)
        .isLessThan(ending.seasons().get(6).gain());
    assertThat(ending.paysFrom()).hasValue(5);
    assertThat(ending.judgedAt()).isEqualTo(5);
  }

  @Test
  void gain_ofEverySeason_isThatOfAPlanToThere_onTheLineAndInDraws() {
    int draws = 6;
    List<BoughtLot> bought = ValueJoin.of(to(6, draws)).bought();
    Ending ending = bought.get(0).ending();
    Samples longest = new Samples(to(6, draws), 1, Drawing.endings(to(6, draws), bought));
    new Drawing(to(6, draws), bought, longest).run(2, done -> {});
    for (int season = 0; season < ending.seasons().size(); season++) {
      Scenario toThere = to(season + 1, draws);
      List<BoughtLot> there = ValueJoin.of(toThere).bought();
      assertThat(ending.seasons().get(season).gain())
          .isCloseTo(there.get(0).presentValue(), within(1e-6));
      if (season < longest.gainsByEnding[0].length) {
        Samples samples = new Samples(toThere, 1, Drawing.endings(toThere, there));
        new Drawing(toThere, there, samples).run(2, done -> {});
        assertThat(samples.gainsByEnding[0][season])
            .containsExactly(longest.gainsByEnding[0][season], within(1e-6));
      }
    }
  }
}
