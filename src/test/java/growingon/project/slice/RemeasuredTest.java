package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RemeasuredTest {
  private static final double[] TRUNKS = {10, 12, 15, 19, 60};

  /** All plants of the thickest slice were sold. */
  private static final double[] WEIGHTS = {3, 4, 2, 1, 0};

  @Test
  void thickestSliceWithoutPlants_meanAndSpreadAreMetAllTheSame() {
    double[] moved = new Remeasured(TRUNKS, WEIGHTS, new double[5]).to(20, OptionalDouble.of(0.4));

    assertThat(Remeasured.spread(moved, WEIGHTS)).isCloseTo(0.4, within(1e-9));
    double mean = (3 * moved[0] + 4 * moved[1] + 2 * moved[2] + moved[3]) / 10;
    assertThat(mean).isCloseTo(20, within(1e-9));
    assertThat(DoubleStream.of(moved)).allMatch(Double::isFinite);
  }

  @Test
  void spreadThatNoSteepnessGives_keepsTheOneThereIs() {
    double[] oneSlice = {0, 5, 0, 0, 0};
    double[] moved = new Remeasured(TRUNKS, oneSlice, new double[5]).to(24, OptionalDouble.of(0.3));

    assertThat(moved[1]).isCloseTo(24, within(1e-9));
    assertThat(DoubleStream.of(moved)).allMatch(Double::isFinite);
  }

  @Property(tries = 60)
  void remeasured_keepsRankAndWeights(
      @ForAll @DoubleRange(min = 8, max = 40) double mean,
      @ForAll @DoubleRange(min = 0.01, max = 0.8) double spread) {
    double[] trunks = {12, 9, 15, 11, 30};
    double[] weights = {1, 0, 3, 2, 0.5};
    double[] moved =
        new Remeasured(trunks, weights, new double[5]).to(mean, OptionalDouble.of(spread));
    assertThat(moved[1]).isLessThan(moved[3]);
    assertThat(moved[3]).isLessThan(moved[0]);
    assertThat(moved[0]).isLessThan(moved[2]);
    assertThat(moved[2]).isLessThan(moved[4]);
  }
}
