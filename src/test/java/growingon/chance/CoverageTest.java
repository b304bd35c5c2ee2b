package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.Curve;
import growingon.nursery.Grade;
import growingon.nursery.Scenario;
import growingon.nursery.Species;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How often what comes true lies within the plan's P10 to P90, which should be in eight nurseries
 * of ten. The true nurseries are drawn from the stated law with another seed, so that growth and
 * losses are not what the grower took them for.
 */
class CoverageTest {
  private static final int DRAWS = 600;
  private static final int NURSERIES = 300;

  private static Scenario nursery(long seed, int draws) {
    Scenario scenario =
        Nurseries.working()
            .lotSpread(0.08)
            .sure(0.8)
            .lot(Lots.boughtMaples("ridge").build())
            .lot(Lots.pottedElms("elms").build())
            .lot(Lots.pottedElms("larches").species("larch").quantity(70).build())
            .lot(Lots.pottedElms("maples").species("maple").trunks(24, 0.2).build())
            .scenario();
    return scenario.withPlan(scenario.plan().withDraws(draws).withSeed(seed));
  }

  private static Samples samples(Scenario scenario) {
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(2, done -> {});
    return samples;
  }

  /** Share of the true figures that lie within the plan's tenths, of those that differ at all. */
  private static double inside(double[][] plan, double[][] truth) {
    long inside = 0;
    long all = 0;
    for (int i = 0; i < plan.length; i++) {
      Quantiles band = Quantiles.of(plan[i]);
      if (band.p90() - band.p10() > 1e-9) {
        all += truth[i].length;
        inside +=
            Arrays.stream(truth[i])
                .filter(each -> each >= band.p10() && each <= band.p90())
                .count();
      }
    }
    return (double) inside / all;
  }

  private static double[][] atSeasonEnds(double[][] byMonth, Scenario scenario) {
    double[][] ends = new double[scenario.plan().seasons()][];
    for (int season = 0; season < ends.length; season++) {
      ends[season] = byMonth[scenario.horizon().seasonLast(season)];
    }
    return ends;
  }

  private static double[][] together(double[][][] byGrade) {
    return Arrays.stream(byGrade).flatMap(Arrays::stream).toArray(double[][]::new);
  }

  @Test
  void bands_holdEightTrueNurseriesOfTen_andThoseOfLuckAloneFewer() {
    Scenario plan = nursery(1, DRAWS);
    Samples truth = samples(nursery(977, NURSERIES));
    Samples both = samples(plan);
    Samples luck = samples(plan.known());

    assertThat(inside(together(both.stock), together(truth.stock)))
        .as("plants")
        .isBetween(0.77, 0.83);
    assertThat(inside(both.sales, truth.sales)).as("sales").isBetween(0.77, 0.83);
    assertThat(inside(atSeasonEnds(both.cash, plan), atSeasonEnds(truth.cash, plan)))
        .as("cash")
        .isBetween(0.77, 0.83);
    assertThat(inside(both.lotResults, truth.lotResults)).as("results").isBetween(0.77, 0.83);
    assertThat(inside(together(luck.stock), together(truth.stock)))
        .as("plants, luck")
        .isLessThan(0.72);
    assertThat(inside(luck.sales, truth.sales)).as("sales, luck").isLessThan(0.72);
    assertThat(inside(atSeasonEnds(luck.cash, plan), atSeasonEnds(truth.cash, plan)))
        .as("cash, luck")
        .isLessThan(0.72);
    assertThat(inside(luck.lotResults, truth.lotResults)).as("results, luck").isLessThan(0.72);
  }

  private static final int PLANTS = 1000;
  private static final int SEASONS = 3;
  private static final double SURE_SPREAD = 0.25;

  private static Species plain() {
    Species ash = Nurseries.bareSpecies("ash", "steps");
    return Species.named(ash.name())
        .ladder(ash.ladder())
        .habit(ash.habit())
        .usualCondition(ash.usualCondition())
        .growth(Map.of("pot", new Curve.Steady(3, Double.POSITIVE_INFINITY)))
        .lotSpread(OptionalDouble.of(0.08))
        .lossSpread(0)
        .checkFirstYear(1)
        .checkSecondYear(1)
        .potBoundMonths(1200)
        .potBoundFactor(1)
        .winterPlace(ash.winterPlace())
        .build();
  }

  private static Scenario plainNursery() {
    Scenario scenario =
        Nurseries.bare()
            .ladder("steps", new Grade("stout", 1, 29, 0, 12))
            .species(plain())
            .sure(0.8)
            .seasons(SEASONS)
            .lot(
                Lots.lot("a")
                    .species("ash")
                    .quantity(PLANTS)
                    .trunks(20, 0.1)
                    .arrived(2026, 11)
                    .build())
            .scenario();
    return scenario.withPlan(scenario.plan().withDraws(DRAWS));
  }

  /** Lognormal of mean 1 with a coefficient of variation. */
  private static double lognormal(Random random, double spread) {
    double variance = Math.log1p(spread * spread);
    return Math.exp(Math.sqrt(variance) * random.nextGaussian() - variance / 2);
  }

  /** A true nursery, plant by plant, by nothing of the program: those thick enough each season. */
  private static double[] grown(Random random) {
    double speed = Math.exp(SURE_SPREAD * random.nextGaussian()) * lognormal(random, 0.08);
    double[] trunks = new double[PLANTS];
    double[] vigour = new double[PLANTS];
    for (int i = 0; i < PLANTS; i++) {
      trunks[i] = 20 * lognormal(random, 0.1);
      vigour[i] = lognormal(random, 0.2);
    }
    double[] stout = new double[SEASONS];
    for (int season = 0; season < SEASONS; season++) {
      double year = lognormal(random, 0.1);
      for (int i = 0; i < PLANTS; i++) {
        trunks[i] += 3 * speed * year * vigour[i];
        stout[season] += trunks[i] >= 29 ? 1 : 0;
      }
    }
    return stout;
  }

  @Test
  void singlePlants_grownByThemselves_lieWithinThePlansTenths() {
    Random random = new Random(11);
    double[][] truth = new double[SEASONS][1000];
    for (int nursery = 0; nursery < 1000; nursery++) {
      double[] stout = grown(random);
      for (int season = 0; season < SEASONS; season++) {
        truth[season][nursery] = stout[season];
      }
    }
    Scenario plan = plainNursery();
    double[][] last = new double[][] {truth[2]};
    assertThat(inside(seasons(samples(plan)), last)).isBetween(0.76, 0.84);
    assertThat(inside(seasons(samples(plan.known())), last)).isLessThan(0.62);
  }

  /** Plants that stand as the grade after three seasons, when about half of them do. */
  private static double[][] seasons(Samples samples) {
    double[][] stout =
        Arrays.stream(samples.stock)
            .filter(grade -> Arrays.stream(grade[2]).max().orElse(0) > 0)
            .findFirst()
            .orElseThrow();
    return new double[][] {stout[2]};
  }
}
