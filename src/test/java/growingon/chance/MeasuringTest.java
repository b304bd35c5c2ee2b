package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.WorthMeasuring.Row;
import growingon.chance.WorthMeasuring.Told;
import growingon.nursery.Scenario;
import growingon.nursery.species.Species;
import growingon.nursery.species.Sure;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What twenty marked trunks are worth. */
class MeasuringTest {
  /**
   * Worked out by hand, for a year spread of 10 %, a lot spread of 8 % and a vigour spread of 20 %.
   */
  @Test
  void twentyTrunks_areWorthSoManyPlants() {
    isWorth(20, 3, 0.04107, 60.9, 91.0, 0.1574);
    isWorth(9, 3.5, 0.02331, 107.3, 93.6, 0.1303);
    isWorth(30, 2, 0.1258, 19.9, 85.7, Double.NaN);
  }

  private static void isWorth(
      double trunk, double growth, double variance, double plants, double sure, double spread) {
    Species maple = Nurseries.working().nursery().species().get("maple");
    double v =
        Measured.variance(
            maple, Nurseries.working().lotSpread(0.08).nursery().settings(), trunk, growth);
    assertThat(v).isCloseTo(variance, within(0.001 * variance));
    assertThat(Measured.plants(v)).isCloseTo(plants, within(0.06));
    double after = Measured.sureAfter(0.8, Measured.plants(v));
    assertThat(100 * after).isCloseTo(sure, within(0.06));
    if (!Double.isNaN(spread)) {
      assertThat(Sure.spread(after)).isCloseTo(spread, within(6e-5));
    }
  }

  @Test
  void regression_findsTheSlopesOfWhatItWasMadeOf() {
    Random random = new Random(5);
    double[][] scores = new double[400][2];
    double[] figure = new double[400];
    for (int i = 0; i < figure.length; i++) {
      scores[i][0] = random.nextGaussian();
      scores[i][1] = random.nextGaussian();
      figure[i] = 7 + 3 * scores[i][0] - 2 * scores[i][1] + random.nextGaussian();
    }
    Regression regression = new Regression(scores, figure);
    assertThat(regression.slopes()[0]).isCloseTo(3, within(3 * regression.errors()[0]));
    assertThat(regression.slopes()[1]).isCloseTo(-2, within(3 * regression.errors()[1]));
    // One standard error of a slope is 1/√n where scores and rest have a deviation of 1.
    assertThat(regression.errors()[0]).isCloseTo(0.05, within(0.01));
  }

  private static Scenario nursery(double sure) {
    Scenario scenario =
        Nurseries.working()
            .sure(sure)
            .lot(Lots.boughtMaples("ridge").build())
            .lot(Lots.pottedElms("elms").build())
            .scenario();
    return scenario.withPlan(scenario.plan().withDraws(200));
  }

  private static WorthMeasuring worth(Scenario scenario) {
    Samples samples = new Samples(scenario, 0, scenario.plan().seasons());
    new Drawing(scenario, List.of(), samples).run(2, done -> {});
    return new Measuring(scenario, samples.cash[samples.cash.length - 1], 2).find();
  }

  @Test
  void rows_areRankedAndTheFirstIsDrawnAfresh() {
    WorthMeasuring worth = worth(nursery(0.5));
    assertThat(worth.rows()).extracting(Row::species).containsExactlyInAnyOrder("maple", "elm");
    assertThat(worth.rows().get(0).told()).isEqualTo(Told.DRAWN);
    assertThat(worth.rows()).allSatisfy(row -> assertThat(row.sureAfter()).isGreaterThan(0.8));
    // Two species of which one learns more: together they narrow at least as much as the first.
    assertThat(worth.all().getAsDouble())
        .isBetween(worth.rows().get(0).narrowing(), 1.0)
        .isPositive();
    assertThat(IntStream.range(1, worth.rows().size()))
        .allSatisfy(i -> assertThat(worth.rows().get(i).told()).isNotEqualTo(Told.DRAWN));
  }

  @Test
  void nothing_isLearntOfWhatIsKnown() {
    assertThat(worth(nursery(1)).rows()).isEmpty();
    assertThat(worth(nursery(1)).all()).isEmpty();
  }
}
