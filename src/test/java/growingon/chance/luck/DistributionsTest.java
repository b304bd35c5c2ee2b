package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.Quantiles;
import growingon.chance.luck.Keyed.What;
import growingon.nursery.Settings;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.market.Demand;
import growingon.nursery.species.Species;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.lot.Luck;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.SimpsonIntegrator;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;

/**
 * Every distribution of a draw against its closed form in Hipparchus. Seeds are fixed, so nothing
 * here can fail by bad luck; the bounds are those that a true sample would break once in a million.
 */
class DistributionsTest {
  private static final int DRAWS = 20_000;

  /** Kolmogorov–Smirnov bound for a chance of one in a million: √(ln(2/10⁻⁶)/2n). */
  private static final double KS = Math.sqrt(Math.log(2e6) / 2 / DRAWS);

  private static double[] sample(IntToDoubleFunction draw) {
    return IntStream.range(0, DRAWS).mapToDouble(draw).toArray();
  }

  private static Keyed keyed(int draw) {
    return new Keyed(7, draw);
  }

  private static double kolmogorov(double[] sample, DoubleUnaryOperator distribution) {
    double[] sorted = sample.clone();
    Arrays.sort(sorted);
    double worst = 0;
    for (int i = 0; i < sorted.length; i++) {
      double at = distribution.applyAsDouble(sorted[i]);
      worst = Math.max(worst, Math.abs(at - (double) i / sorted.length));
      worst = Math.max(worst, Math.abs(at - (i + 1.0) / sorted.length));
    }
    return worst;
  }

  private static void follows(double[] sample, RealDistribution distribution) {
    assertThat(kolmogorov(sample, distribution::cumulativeProbability)).isLessThan(KS);
  }

  /** Mean within five standard errors, variance within a tenth. */
  private static void hasMoments(double[] sample, double mean, double deviation) {
    double found = Arrays.stream(sample).average().getAsDouble();
    assertThat(found).isCloseTo(mean, within(5 * deviation / Math.sqrt(DRAWS)));
    double squares = Arrays.stream(sample).map(x -> (x - found) * (x - found)).sum();
    assertThat(Math.sqrt(squares / DRAWS)).isCloseTo(deviation, within(0.1 * deviation));
  }

  @Test
  void uniform_byDraw_byName_byYear_isEven() {
    UniformRealDistribution even = new UniformRealDistribution(0, 1);
    follows(sample(i -> keyed(i).uniform(What.UNITS, 5, 2030)), even);
    follows(sample(i -> keyed(3).uniform(What.UNITS, i, 2030)), even);
    follows(sample(i -> keyed(3).uniform(What.UNITS, 5, i)), even);
  }

  /**
   * A fault planted in the sampler, a uniform raised to the power 1.1, is caught by the same check.
   */
  @Test
  void uniform_bentALittle_isCaught() {
    double[] faulty = sample(i -> Math.pow(keyed(i).uniform(What.UNITS, 5, 2030), 1.1));
    assertThat(kolmogorov(faulty, new UniformRealDistribution(0, 1)::cumulativeProbability))
        .isGreaterThan(KS);
  }

  @Test
  void uniform_neighbouringKeys_areUncorrelated() {
    double sum = 0;
    for (int i = 0; i < DRAWS; i++) {
      double one = keyed(i).uniform(What.UNITS, 5, 2030) - 0.5;
      double two = keyed(i).uniform(What.PRICE, 5, 2030) - 0.5;
      sum += one * two * 12;
    }
    assertThat(sum / DRAWS).isCloseTo(0, within(5 / Math.sqrt(DRAWS)));
  }

  @Test
  void normal_isStandardNormal() {
    follows(sample(i -> keyed(i).normal(What.PRICE, 1, 1)), new NormalDistribution());
  }

  @Test
  void lognormal_hasMeanOne_andTheStatedSpread() {
    double[] sample = sample(i -> Keyed.lognormal(0.3, keyed(i).normal(What.PRICE, 1, 1)));
    double sigma = Math.sqrt(Math.log1p(0.09));
    follows(sample, new LogNormalDistribution(-sigma * sigma / 2, sigma));
    hasMoments(sample, 1, 0.3);
  }

  @Test
  void gamma_followsItsShape() {
    follows(sample(i -> keyed(i).gamma(2.5, What.FIRSTS, 1)), new GammaDistribution(2.5, 1));
    assertThat(keyed(1).gamma(0, What.FIRSTS, 1)).isZero();
  }

  @Test
  void binomial_fewAndMany_haveTheProbabilitiesOfTheBinomial() {
    binomial(12, 0.3);
    binomial(400, 0.004);
    binomial(900, 0.2);
  }

  private static void binomial(int number, double probability) {
    BinomialDistribution exact = new BinomialDistribution(number, probability);
    double[] sample = sample(i -> keyed(i).binomial(number, probability, What.DEATHS, 9, number));
    hasMoments(sample, number * probability, Math.sqrt(number * probability * (1 - probability)));
    for (int count = 0; count <= number; count += Math.max(1, number / 12)) {
      int at = count;
      double below = Arrays.stream(sample).filter(each -> each <= at).count() / (double) DRAWS;
      assertThat(below).isCloseTo(exact.cumulativeProbability(count), within(KS));
    }
  }

  /** Mean and deviation of the logit-normal by Simpson's rule instead of Gauss–Hermite. */
  @Test
  void logitNormal_hasTheStatedMeanAndDeviation() {
    double[][] cases = {{0.05, 0.0125}, {0.12, 0.06}, {0.5, 0.1}, {0.9, 0.05}};
    NormalDistribution normal = new NormalDistribution();
    for (double[] each : cases) {
      LogitNormal share = LogitNormal.of(each[0], each[1]);
      SimpsonIntegrator simpson = new SimpsonIntegrator();
      double mean = simpson.integrate(1_000_000, z -> share.at(z) * normal.density(z), -9, 9);
      double square =
          simpson.integrate(1_000_000, z -> share.at(z) * share.at(z) * normal.density(z), -9, 9);
      assertThat(mean).isCloseTo(each[0], within(1e-5));
      assertThat(Math.sqrt(square - mean * mean)).isCloseTo(each[1], within(1e-3 * each[1]));
    }
  }

  private static final Settings SETTINGS = Nurseries.working().nursery().settings();

  private static Luck.OfLot luck(int draw, Species species) {
    return luck(draw).of(Lots.lot("a").build(), species);
  }

  private static DrawnLuck luck(int draw) {
    return new DrawnLuck(keyed(draw), SETTINGS, SPREADS, NAMES);
  }

  private static final Spreads SPREADS = new Spreads();
  private static final NameNumbers NAMES = new NameNumbers();
  private static final Species MAPLE = Nurseries.working().nursery().species().get("maple");
  private static final Species LARCH = Nurseries.working().nursery().species().get("larch");

  @Test
  void growth_ofASeason_hasMeanOneAndItsSpread_andTwoSpeciesShareHalf() {
    double[] maple = sample(i -> luck(i, MAPLE).growth(2027));
    double[] larch = sample(i -> luck(i, LARCH).growth(2027));
    hasMoments(maple, 1, MAPLE.yearSpread());
    double product = 0;
    for (int i = 0; i < DRAWS; i++) {
      product += (maple[i] - 1) * (larch[i] - 1);
    }
    double correlation = product / DRAWS / MAPLE.yearSpread() / LARCH.yearSpread();
    assertThat(correlation).isCloseTo(0.5, within(0.04));
  }

  @Test
  void growth_ofTwoSeasons_isUnrelated() {
    double product = 0;
    for (int i = 0; i < DRAWS; i++) {
      product += (luck(i, MAPLE).growth(2027) - 1) * (luck(i, MAPLE).growth(2028) - 1);
    }
    assertThat(product / DRAWS / Math.pow(MAPLE.yearSpread(), 2)).isCloseTo(0, within(0.04));
  }

  @Test
  void loss_ofASeason_hasTheExpectedMeanAndSpread() {
    hasMoments(
        sample(i -> luck(i, MAPLE).loss(false, 0.08, 2027)), 0.08, 0.08 * MAPLE.lossSpread());
  }

  private static Lot unseen(double qualitySure, double lossSure, double fails) {
    Lot lot = Lots.lot("ridge").species("maple").arrived(2027, 2).build();
    return lot.withQuality(new QualityShares(0.5, 0.3, false, qualitySure))
        .withPurchase(Optional.of(new Purchase(20, 100, 0, "GBP", lossSure, fails)));
  }

  /** 80 % sure is as if 40 of its trees had been seen: deviation √(q (1 − q)/41). */
  @Test
  void consignmentLoss_80PercentSure_isAsIfFortyTreesHadBeenSeen() {
    Lot lot = unseen(1, 0.8, 0);
    hasMoments(
        sample(i -> luck(i).of(lot, MAPLE).consignmentLoss(0.1)), 0.1, Math.sqrt(0.1 * 0.9 / 41));
    assertThat(luck(1).of(unseen(1, 1, 0), MAPLE).consignmentLoss(0.1)).isEqualTo(0.1);
  }

  /** Dirichlet from 40 plants seen: the share of firsts is Beta(20, 20). */
  @Test
  void quality_80PercentSure_isADirichletFromFortyTrees() {
    Lot lot = unseen(0.8, 1, 0);
    follows(sample(i -> luck(i).of(lot, MAPLE).quality().first()), new BetaDistribution(20, 20));
    follows(sample(i -> luck(i).of(lot, MAPLE).quality().second()), new BetaDistribution(12, 28));
  }

  @Test
  void failure_comesAsOftenAsStated() {
    double[] failed = sample(i -> luck(i).of(unseen(1, 1, 0.05), MAPLE).deadOnArrival());
    hasMoments(failed, 0.05, Math.sqrt(0.05 * 0.95));
  }

  @Test
  void growthOfALot_isALognormalOfMeanOne_asTheSpeciesSaysOrElseTheNursery() {
    Lot lot = unseen(1, 1, 0);
    Settings settings = Nurseries.bare().lotSpread(0.08).nursery().settings();
    Species ash = Nurseries.bareSpecies("ash", "one");
    double[] usual =
        sample(
            i ->
                new DrawnLuck(keyed(i), settings, new Spreads(), new NameNumbers())
                    .of(lot, ash)
                    .growth());
    hasMoments(usual, 1, 0.08);
    double psi = Math.sqrt(Math.log1p(0.08 * 0.08));
    follows(usual, new LogNormalDistribution(-psi * psi / 2, psi));
  }

  @Test
  void demand_unitsAndPrice_areUnrelatedLognormals() {
    Demand row =
        new Demand(
            Optional.empty(),
            "patio trees",
            "started",
            Optional.empty(),
            MonthSpan.ALL_YEAR,
            OptionalDouble.of(10),
            40,
            0,
            0.25,
            0.15);
    double[] units = sample(i -> luck(i).units(row, 2028));
    double[] price = sample(i -> luck(i).price(row, 2028));
    hasMoments(units, 1, 0.25);
    hasMoments(price, 1, 0.15);
    double product = 0;
    for (int i = 0; i < DRAWS; i++) {
      product += (units[i] - 1) * (price[i] - 1);
    }
    assertThat(product / DRAWS / 0.0375).isCloseTo(0, within(0.04));
  }

  @Test
  void quantiles_ofANormalSample_lieWithinTheirErrors() {
    Quantiles found = Quantiles.of(sample(i -> keyed(i).normal(What.PRICE, 4, 4)));
    NormalDistribution normal = new NormalDistribution();
    assertThat(found.p10())
        .isCloseTo(normal.inverseCumulativeProbability(0.1), within(5 * found.p10Error()));
    assertThat(found.p50()).isCloseTo(0, within(5 * found.p50Error()));
    assertThat(found.p90())
        .isCloseTo(normal.inverseCumulativeProbability(0.9), within(5 * found.p90Error()));
    assertThat(found.mean()).isCloseTo(0, within(5 * found.meanError()));
    // √(p (1 − p)/n)/f(x): the asymptotic error of a sample quantile.
    double theory = Math.sqrt(0.25 / DRAWS) / normal.density(0);
    assertThat(found.p50Error()).isCloseTo(theory, within(0.3 * theory));
  }
}
