package growingon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Curve;
import growingon.nursery.Grade;
import growingon.nursery.Lot;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Cases worked by hand, apart from this program: steady growth of 3 mm a year, counts a year apart
 * at the season's end, spread of lots such that ψ = 0.08.
 */
class GrowthByHandTest {
  private static Nurseries nursery(Curve curve) {
    return Nurseries.bare()
        .species(Books.species("oak", curve))
        .lotSpread(Books.LOT_SPREAD)
        .firstMonth(2026, 11);
  }

  private static Nurseries steady() {
    return nursery(new Curve.Steady(3, Double.POSITIVE_INFINITY));
  }

  private static Lot row(String name, int year, int plants, double trunk, double spread) {
    return Lots.lot(name)
        .species("oak")
        .quantity(plants)
        .trunks(trunk, spread)
        .arrived(2022, 11)
        .counted(year, 11)
        .build();
  }

  private static Growth.Fitted fit(Books books) {
    Past past = Past.of(books.records());
    Evidence evidence = Evidence.of(past);
    Growth growth = new Growth(past, past.assumed());
    List<Interval> intervals = growth.withoutSlips(evidence.intervals()).intervals();
    return growth.fit(intervals.stream().filter(Interval::isUsed).toList());
  }

  private static double[] range(Growth.Fitted fitted) {
    double width = 1.2816 * Math.sqrt(fitted.variances()[0]);
    return new double[] {Math.exp(fitted.logs()[0] - width), Math.exp(fitted.logs()[0] + width)};
  }

  @Test
  void speed_oneIntervalOfOneLot_isPulledToWhatWasAssumed() {
    Growth.Fitted fitted =
        fit(
            Books.of(steady())
                .list(2023, 11, row("A", 2023, 100, 20, 0.15), 20)
                .list(2024, 11, row("A", 2024, 96, 22.1, 0.155), 20));
    assertThat(Math.exp(fitted.logs()[0])).isCloseTo(0.9122, within(5e-5));
    assertThat(range(fitted)[0]).isCloseTo(0.6958, within(1e-4));
    assertThat(range(fitted)[1]).isCloseTo(1.1960, within(1e-4));
    assertThat(fitted.weight(0)).isCloseTo(0.285, within(5e-4));
    assertThat(fitted.slopes().means()[0]).isCloseTo(22.7311, within(5e-5));
    assertThat(fitted.slopes().all(0)).isCloseTo(2.7401, within(5e-5));
    assertThat(fitted.slopes().byFirst()[0]).isCloseTo(0.9998, within(5e-5));
  }

  @Test
  void speed_threeIntervalsOfTwoLots_agreesWithWhatWasAssumed() {
    Growth.Fitted fitted =
        fit(
            Books.of(steady())
                .list(2023, 11, row("A", 2023, 100, 20, 0.15), 20, row("B", 2023, 60, 16, 0.12), 20)
                .list(
                    2024,
                    11,
                    row("A", 2024, 96, 22.1, 0.155),
                    20,
                    row("B", 2024, 58, 18.6, 0.14),
                    20)
                .list(
                    2025,
                    11,
                    row("A", 2025, 94, 24.6, 0.16),
                    20,
                    row("B", 2025, 57, 20.9, 0.15),
                    20));
    assertThat(Math.exp(fitted.logs()[0])).isCloseTo(0.8534, within(5e-5));
    assertThat(range(fitted)[0]).isCloseTo(0.7209, within(5e-5));
    assertThat(range(fitted)[1]).isCloseTo(1.0102, within(5e-5));
    assertThat(fitted.weight(0)).isCloseTo(0.723, within(5e-4));
    Past past = Past.of(Books.of(steady()).records());
    Errors errors = new Errors(past.assumed(), past.scenario().nursery().settings());
    double[][] variance = new double[4][4];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        Interval one = fitted.used().get(i);
        Interval other = fitted.used().get(j);
        variance[i][j] =
            errors.covariance(one, other, i, j, fitted.slopes())
                + errors.seasons(one, other, i, j, fitted.slopes());
      }
    }
    double[][] byHand = {
      {1.16083, -0.54307, 0.06538, 0},
      {-0.54307, 1.45700, 0, 0.06538},
      {0.06538, 0, 0.61879, -0.26696},
      {0, 0.06538, -0.26696, 0.85563}
    };
    for (int i = 0; i < 4; i++) {
      assertThat(variance[i]).containsExactly(byHand[i], within(6e-6));
    }
  }

  @Test
  void speed_thickOnesSold_isLearntFromThoseLeft() {
    Nurseries nursery =
        nursery(new Curve.Levelling(95, 0.036)).ladder("one", new Grade("stout", 1, 24, 0, 12));
    Growth.Fitted fitted =
        fit(
            Books.of(nursery)
                .list(2023, 11, row("A", 2023, 100, 22, 0.15), 100)
                .sold("2024-05-20", "A", 30, "stout")
                .list(2024, 11, row("A", 2024, 68, 22.6, 0.13), 68));
    assertThat(Math.exp(fitted.logs()[0])).isCloseTo(0.916, within(0.916 * 0.02));
    assertThat(range(fitted)[0]).isCloseTo(0.73, within(0.73 * 0.02));
    assertThat(range(fitted)[1]).isCloseTo(1.15, within(1.15 * 0.02));
  }
}
