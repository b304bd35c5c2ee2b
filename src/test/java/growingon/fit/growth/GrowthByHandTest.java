package growingon.fit.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.fit.Books;
import growingon.fit.Fit;
import growingon.fit.evidence.Evidence;
import growingon.fit.evidence.Interval;
import growingon.fit.past.Past;
import growingon.fit.value.Value;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.species.Curve;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import java.util.Optional;
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

  private static SpeedFit.Fitted fit(Books books) {
    Past past = Past.of(books.records());
    Evidence evidence = Evidence.of(past);
    SpeedFit growth = new SpeedFit(past, past.assumed());
    List<Interval> intervals = growth.withoutSlips(evidence.intervals()).intervals();
    return growth.fit(intervals.stream().filter(Interval::isUsed).toList());
  }

  /** Of each interval with each, what is not known of the one goes with the other by. */
  private static double[][] variances(SpeedFit.Fitted fitted) {
    Past past = Past.of(Books.of(steady()).records());
    Errors errors = new Errors(past.assumed(), past.scenario().nursery().settings());
    int number = fitted.used().size();
    double[][] variances = new double[number][number];
    for (int i = 0; i < number; i++) {
      for (int j = 0; j < number; j++) {
        Interval one = fitted.used().get(i);
        Interval other = fitted.used().get(j);
        variances[i][j] =
            errors.covariance(one, other, i, j, fitted.slopes())
                + errors.seasons(one, other, i, j, fitted.slopes());
      }
    }
    return variances;
  }

  private static Value speed(Books books) {
    return Fit.of(books.records(), List.of()).values().stream()
        .filter(each -> each.what() == Value.What.GROWTH && each.species().equals("oak"))
        .findFirst()
        .orElseThrow();
  }

  private static double[] range(SpeedFit.Fitted fitted) {
    double width = 1.2816 * Math.sqrt(fitted.variances()[0]);
    return new double[] {Math.exp(fitted.logs()[0] - width), Math.exp(fitted.logs()[0] + width)};
  }

  @Test
  void speed_oneIntervalOfOneLot_isPulledToWhatWasAssumed() {
    Books books =
        Books.of(steady())
            .list(2023, 11, row("A", 2023, 100, 20, 0.15), 20)
            .list(2024, 11, row("A", 2024, 96, 22.1, 0.155), 20);
    SpeedFit.Fitted fitted = fit(books);
    assertThat(variances(fitted)[0][0]).isCloseTo(1.1765, within(5e-5));
    assertThat(speed(books).verdict()).isEqualTo(Value.Verdict.TOO_THIN);
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
    Books books =
        Books.of(steady())
            .list(2023, 11, row("A", 2023, 100, 20, 0.15), 20, row("B", 2023, 60, 16, 0.12), 20)
            .list(2024, 11, row("A", 2024, 96, 22.1, 0.155), 20, row("B", 2024, 58, 18.6, 0.14), 20)
            .list(2025, 11, row("A", 2025, 94, 24.6, 0.16), 20, row("B", 2025, 57, 20.9, 0.15), 20);
    SpeedFit.Fitted fitted = fit(books);
    assertThat(speed(books).verdict()).isEqualTo(Value.Verdict.AGREES);
    assertThat(Math.exp(fitted.logs()[0])).isCloseTo(0.8534, within(5e-5));
    assertThat(range(fitted)[0]).isCloseTo(0.7209, within(5e-5));
    assertThat(range(fitted)[1]).isCloseTo(1.0102, within(5e-5));
    assertThat(fitted.weight(0)).isCloseTo(0.723, within(5e-4));
    double[][] variance = variances(fitted);
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

  private static Books thickOnesGone() {
    Nurseries nursery =
        nursery(new Curve.Levelling(95, 0.036)).ladder("one", new Grade("stout", 1, 24, 0, 12));
    return Books.of(nursery)
        .list(2023, 11, row("A", 2023, 100, 22, 0.15), 100)
        .list(2024, 11, row("A", 2024, 68, 22.6, 0.13), 68);
  }

  /**
   * Why a sale that nobody wrote down is refused: taken as it is, it would look like slow growth.
   */
  @Test
  void speed_thickOnesSoldWithoutALine_wouldBeFarTooSlow_andIsRefused() {
    Past past = Past.of(thickOnesGone().records());
    Interval refused =
        Evidence.of(past).intervals().stream()
            .filter(each -> each.subject().equals("A"))
            .findFirst()
            .orElseThrow();
    assertThat(refused.refused().orElseThrow())
        .isEqualTo(
            "A: 32 of 100 plants gone between Oct 2023 and Oct 2024, 2 to be expected, and no line"
                + " says how; were they sold? Its thick ones would be missing from the mean. Write"
                + " the sales (or deaths) down, even as one line.");
    SpeedFit.Fitted fitted = new SpeedFit(past, past.assumed()).fit(List.of(taken(refused)));
    assertThat(Math.exp(fitted.logs()[0])).isCloseTo(0.656, within(0.656 * 0.02));
  }

  private static Interval taken(Interval refused) {
    return new Interval(
        refused.subject(),
        refused.lot(),
        refused.root(),
        refused.species(),
        refused.from(),
        refused.to(),
        refused.first(),
        refused.second(),
        refused.plants(),
        refused.bySeason(),
        refused.byCondition(),
        refused.stretches(),
        refused.states(),
        Optional.empty(),
        refused.tells());
  }

  @Test
  void speed_thickOnesSold_isLearntFromThoseLeft() {
    SpeedFit.Fitted fitted = fit(thickOnesGone().sold("2024-05-20", "A", 30, "stout"));
    assertThat(Math.exp(fitted.logs()[0])).isCloseTo(0.916, within(0.916 * 0.02));
    assertThat(range(fitted)[0]).isCloseTo(0.73, within(0.73 * 0.02));
    assertThat(range(fitted)[1]).isCloseTo(1.15, within(1.15 * 0.02));
  }
}
