package growingon.fit.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.fit.evidence.Evidence;
import growingon.fit.loss.Losses;
import growingon.nursery.species.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.Test;

/** Cases worked by hand, apart from this program. */
class LossesAndSpreadsByHandTest {
  /** Assumptions that are 80 % sure are worth 40 plants. */
  private static final double SURE = 40;

  private static final double SPREAD = 0.25;

  private static Losses.Unit unit(double exposure, double deaths) {
    return new Losses.Unit("", exposure, deaths);
  }

  private static void assertPercent(Losses.Learnt learnt, double loss, double p10, double p90) {
    assertThat(100 * learnt.loss()).isCloseTo(loss, within(5e-4));
    assertThat(100 * learnt.p10()).isCloseTo(p10, within(5e-4));
    assertThat(100 * learnt.p90()).isCloseTo(p90, within(5e-4));
  }

  @Test
  void laterLoss_twoSeasons_isBetweenWhatWasAssumedAndSeen() {
    Losses.Learnt learnt =
        Losses.learn(0.02, SURE, Losses.ofSeasons(SPREAD), List.of(unit(300, 9), unit(280, 3)));
    assertPercent(learnt, 2.055, 1.265, 2.934);
    assertThat(learnt.loss() * learnt.plants()).isCloseTo(9.4620, within(5e-5));
    assertThat((1 - learnt.loss()) * learnt.plants()).isCloseTo(451.0636, within(5e-3));
  }

  @Test
  void laterLoss_noDeaths_isMoreThanNothing() {
    assertPercent(
        Losses.learn(0.02, SURE, Losses.ofSeasons(SPREAD), List.of(unit(96, 0))),
        0.603,
        0.040,
        1.465);
  }

  @Test
  void firstYearLoss_unlikeLots_isWidened() {
    Losses.Learnt learnt =
        Losses.learn(
            0.06, SURE, Losses.ofLots(SPREAD), List.of(unit(70, 28), unit(150, 15), unit(60, 2)));
    assertThat(learnt.phi()).isCloseTo(2.6436, within(5e-5));
    assertPercent(learnt, 9.395, 4.851, 14.569);
  }

  /**
   * Species whose mean is drawn from what was assumed, in lots that differ by 70 % besides the
   * seasons' 25 %, plants dying one by one.
   */
  @Test
  void firstYearLosses_ofLotsThatDiffer_lieWithinTheirRanges() {
    Random random = new Random(20_261_129);
    int inside80 = 0;
    int inside95 = 0;
    int species = 600;
    for (int each = 0; each < species; each++) {
      double truth =
          new BetaDistribution(0.06 * SURE, 0.94 * SURE)
              .inverseCumulativeProbability(random.nextDouble());
      List<Losses.Unit> lots = new ArrayList<>();
      for (int lot = 0; lot < 6; lot++) {
        lots.add(lot(random, truth));
      }
      Losses.Learnt learnt = Losses.learn(0.06, SURE, Losses.ofLots(SPREAD), lots);
      inside80 += truth >= learnt.p10() && truth <= learnt.p90() ? 1 : 0;
      BetaDistribution range =
          new BetaDistribution(
              learnt.loss() * learnt.plants(), (1 - learnt.loss()) * learnt.plants());
      boolean isInside =
          truth >= range.inverseCumulativeProbability(0.025)
              && truth <= range.inverseCumulativeProbability(0.975);
      inside95 += isInside ? 1 : 0;
    }
    assertThat((double) inside80 / species).isBetween(0.76, 0.84);
    assertThat((double) inside95 / species).isGreaterThanOrEqualTo(0.93);
  }

  private static Losses.Unit lot(Random random, double mean) {
    int plants = 60 + random.nextInt(100);
    double loss = Math.min(0.9, mean * lognormal(random, 0.7) * lognormal(random, SPREAD));
    int deaths = 0;
    for (int plant = 0; plant < plants; plant++) {
      deaths += random.nextDouble() < loss ? 1 : 0;
    }
    return unit(plants, deaths);
  }

  /** Of mean 1. */
  private static double lognormal(Random random, double spread) {
    double variance = Math.log1p(spread * spread);
    return Math.exp(Math.sqrt(variance) * random.nextGaussian() - variance / 2);
  }

  @Test
  void vigourSpread_thirtyPlants_isTold() {
    double slope = 8.4;
    List<Evidence.PlantGrowth> growths = new ArrayList<>();
    // Thirty growths of mean 8.4 mm and standard deviation 2.2 mm: half of them as much above the
    // mean as the others below.
    double off = 2.2 * Math.sqrt(29.0 / 30);
    for (int i = 0; i < 30; i++) {
      double to = 20 + slope + (i % 2 == 0 ? off : -off);
      growths.add(new Evidence.PlantGrowth(20, to, 3, "pot", Set.of(1, 2, 3)));
    }
    Spreads.Learnt learnt =
        Spreads.vigour(
            growths, Map.of("pot", new Curve.Steady(2.8, Double.POSITIVE_INFINITY)), 0.2);
    assertThat(learnt.freedom()).isCloseTo(20.928, within(5e-4));
    assertThat(100 * learnt.spread()).isCloseTo(23.36, within(5e-3));
    assertThat(100 * learnt.p10()).isCloseTo(20.20, within(5e-3));
    assertThat(100 * learnt.p90()).isCloseTo(28.10, within(5e-3));
  }
}
