package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.luck.Keyed.What;
import growingon.nursery.lot.Lot;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.lot.Luck;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Random numbers by key, against the mixing of the Java library, and at their ends. */
class KeyedTest {
  /** The first number that the library's generator gives from a state is that state mixed. */
  private static long mixed(long state) {
    return new SplittableRandom(state).nextLong();
  }

  /** A plan's draws stay what they are from one edition of the program to the next. */
  @Test
  void uniform_isTheKeyMixedOnceForEachOfItsParts() {
    long seed = 20261107;
    int draw = 17;
    long whose = 123_456_789L;
    long year = 2031;
    long key = mixed(mixed(seed) + draw);
    long of = mixed(mixed(key + What.LOSS_OF_SPECIES.ordinal()) + whose);
    double expected = ((mixed(of + year) >>> 11) + 0.5) / Math.pow(2, 53);

    assertThat(new Keyed(seed, draw).uniform(What.LOSS_OF_SPECIES, whose, year))
        .isEqualTo(expected);
  }

  @Test
  void binomial_ofNothingOrOfWhatIsSure_isNoneOrAll() {
    Keyed keyed = new Keyed(1, 0);
    assertThat(keyed.binomial(0, 0.5, What.DEATHS, 1, 1)).isZero();
    assertThat(keyed.binomial(90, 0, What.DEATHS, 1, 1)).isZero();
    assertThat(keyed.binomial(90, 1, What.DEATHS, 1, 1)).isEqualTo(90);
  }

  @Test
  void lognormal_withoutASpread_isOne() {
    assertThat(Keyed.lognormal(0, 1.3)).isEqualTo(1);
  }

  /**
   * The 0.3 of a plant that sales have left are one or none: of 2.3 plants of which a fifth dies
   * 0.46 die on average, within four standard errors of 20,000 draws, √(0.5/20,000) each.
   */
  @Test
  void deaths_ofAPartOfAPlant_areThoseOfOneOrNone() {
    Nurseries nursery = Nurseries.bare().lot(Lots.lot("a").build());
    Draws draws = new Draws(nursery.scenario());
    Lot lot = nursery.scenario().lots().get(0);
    double sum = 0;
    for (int draw = 0; draw < 1000; draw++) {
      Luck.OfLot luck = draws.luck(draw).of(lot, Nurseries.bareSpecies("ash", "one"));
      for (int month = 0; month < 20; month++) {
        double deaths = luck.deaths(month, 0, 2.3, 0.2);
        assertThat(deaths).isBetween(0.0, 2.3);
        sum += deaths;
      }
    }
    assertThat(sum / 20_000).isCloseTo(0.46, within(0.02));
  }
}
