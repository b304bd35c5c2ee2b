package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.MarketSure;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.lot.Luck;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is not known of a species' losses, over many draws: each loss by its own sureness. */
class LossNotKnownTest {
  private static final int DRAWS = 4000;
  private static final double FIRST = 0.3;
  private static final double LATER = 0.05;

  private static Species species(double firstSure, double laterSure) {
    return Nurseries.bareSpecies("ash", "one")
        .with()
        .firstYearLoss(FIRST)
        .laterLoss(LATER)
        .sure(new Sure(Map.of("pot", 1.0), firstSure, laterSure))
        .build();
  }

  private static double[] losses(Species species, boolean firstYear, double mean) {
    Spreads spreads = new Spreads();
    NameNumbers names = new NameNumbers();
    return IntStream.range(0, DRAWS)
        .mapToObj(draw -> new NotKnown(new Keyed(7, draw), MarketSure.KNOWN, spreads, names))
        .mapToDouble(draw -> mean * draw.loss(species, firstYear))
        .toArray();
  }

  /**
   * 80 % sure is worth 40 plants seen: a share m known so spreads by √(m (1 − m)/41). Mean and
   * spread are met within four standard errors of so many draws.
   */
  private static void isKnownFromFortyPlants(double[] losses, double mean) {
    double found = IntStream.range(0, DRAWS).mapToDouble(draw -> losses[draw]).average().orElse(0);
    double squares = 0;
    for (double loss : losses) {
      squares += (loss - found) * (loss - found);
    }
    double spread = Math.sqrt(mean * (1 - mean) / 41);
    assertThat(found).isCloseTo(mean, within(4 * spread / Math.sqrt(DRAWS)));
    assertThat(Math.sqrt(squares / DRAWS)).isCloseTo(spread, within(0.1 * spread));
  }

  @Test
  void firstYearLoss_notKnown_spreadsByItsOwnSureness() {
    isKnownFromFortyPlants(losses(species(0.8, 1), true, FIRST), FIRST);
    assertThat(losses(species(0.8, 1), false, LATER)).containsOnly(LATER);
  }

  @Test
  void laterLoss_notKnown_spreadsByItsOwnSureness() {
    isKnownFromFortyPlants(losses(species(1, 0.8), false, LATER), LATER);
    assertThat(losses(species(1, 0.8), true, FIRST)).containsOnly(FIRST);
  }

  @Test
  void lossWithoutASpread_isAsExpectedInEveryDraw() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("a").build());
    Draws draws = new Draws(nursery.scenario());
    for (int draw = 0; draw < 10; draw++) {
      Luck.OfLot luck = draws.luck(draw).of(Lots.lot("a").build(), species(1, 1));
      assertThat(luck.loss(true, FIRST, 2026)).isEqualTo(FIRST);
      assertThat(luck.loss(false, LATER, 2027)).isEqualTo(LATER);
    }
  }
}
