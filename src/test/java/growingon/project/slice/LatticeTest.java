package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.common.math.PairedStatsAccumulator;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Coordinates are read back from what the lattice gives, correlations reckoned by Guava. */
class LatticeTest {
  private static IntToDoubleFunction vigour(Lattice lattice) {
    NormalDistribution normal = new NormalDistribution();
    return slice -> normal.cumulativeProbability(lattice.vigourScore(slice));
  }

  /** The quality coordinate: how many of K even cuts leave the slice above them. */
  private static IntToDoubleFunction quality(Lattice lattice) {
    int slices = lattice.slices();
    return slice ->
        (IntStream.rangeClosed(1, slices)
                    .filter(cut -> lattice.shareBelow((double) cut / slices, slice) < 0.5)
                    .count()
                + 0.5)
            / slices;
  }

  private static double correlation(
      Lattice lattice, IntToDoubleFunction one, IntToDoubleFunction other) {
    PairedStatsAccumulator pairs = new PairedStatsAccumulator();
    for (int slice = 0; slice < lattice.slices(); slice++) {
      pairs.add(one.applyAsDouble(slice), other.applyAsDouble(slice));
    }
    return Math.abs(pairs.pearsonsCorrelationCoefficient());
  }

  /** 0.042 is what the design states for 64 slices; the others are bounds that were tried. */
  @ParameterizedTest
  @CsvSource({"16, 0.3", "31, 0.1", "64, 0.042", "100, 0.06", "256, 0.03"})
  void coordinates_ofTrunkVigourAndQuality_areAllButUncorrelated(int slices, double most) {
    Lattice lattice = Lattice.of(slices);
    IntToDoubleFunction trunk = lattice::trunkCoordinate;
    assertThat(correlation(lattice, trunk, vigour(lattice))).isLessThanOrEqualTo(most);
    assertThat(correlation(lattice, trunk, quality(lattice))).isLessThanOrEqualTo(most);
    assertThat(correlation(lattice, vigour(lattice), quality(lattice))).isLessThanOrEqualTo(most);
  }

  @ParameterizedTest
  @ValueSource(ints = {16, 31, 64, 100})
  void eachCoordinate_takesEveryOfItsValuesOnce(int slices) {
    Lattice lattice = Lattice.of(slices);
    double[] even = IntStream.range(0, slices).mapToDouble(i -> (i + 0.5) / slices).toArray();
    for (IntToDoubleFunction each : Arrays.asList(vigour(lattice), quality(lattice))) {
      double[] values = IntStream.range(0, slices).mapToDouble(each).sorted().toArray();
      assertThat(values).containsExactly(even, within(1e-9));
    }
  }
}
