package growingon.review.bought;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.review.bought.Trading.Cell;
import growingon.review.bought.Trading.Sold;
import growingon.review.kept.KeptSale;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** The split of a difference by cause. */
class CausesTest {
  private static final List<String> QUALITIES = List.of("first", "second", "third");
  private static final List<String> GRADES = List.of("", "small", "large");

  @Provide
  Arbitrary<Trading> trading() {
    Arbitrary<Double> money = Arbitraries.doubles().between(-2000, 90000);
    Arbitrary<Double> plants = Arbitraries.doubles().between(0, 900);
    Arbitrary<List<KeptSale>> sales = sale().list().ofMaxSize(12);
    return Combinators.combine(money, money, plants, sales).as(CausesTest::trading);
  }

  private static Arbitrary<KeptSale> sale() {
    return Combinators.combine(
            Arbitraries.of(GRADES),
            Arbitraries.of(QUALITIES),
            Arbitraries.doubles().between(0, 200),
            Arbitraries.doubles().between(0, 30000))
        .as((grade, quality, units, money) -> new KeptSale(0, grade, quality, units, money))
        .filter(sale -> sale.units() > 0 || sale.money() == 0);
  }

  private static Trading trading(double cost, double hours, double unsold, List<KeptSale> sales) {
    double sold = sales.stream().mapToDouble(KeptSale::units).sum();
    return Trading.of(cost, hours, unsold + sold, sales);
  }

  @Property(tries = 2000)
  void parts_sumToTheDifferenceToTheCent(
      @ForAll("trading") Trading planned, @ForAll("trading") Trading real) {
    List<CausePart> parts = Causes.parts(Causes.steps(planned, real, GrownWorth.NONE, 0));
    assertThat(parts).extracting(CausePart::cause).containsExactly(Cause.values());
    long cents = parts.stream().mapToLong(CausePart::cents).sum();
    double difference = (real.result() - planned.result()) * 100;
    assertThat((double) cents).isCloseTo(difference, within(0.5 + 1e-4));
  }

  private static List<CausePart> parts(Trading planned, Trading real) {
    return Causes.parts(Causes.steps(planned, real, GrownWorth.NONE, 0));
  }

  /** What trunks make a plant worth more is growth; that it is sold no dearer, the grade sold. */
  @Property(tries = 500)
  void growth_thatIsNotSold_isTakenBackByTheGradeSold(
      @ForAll("told") Told same, @ForAll @DoubleRange(min = 0.01, max = 300) double more) {
    Trading lot = same.trading();
    long worth = Math.round(lot.living() * lot.shareSold() * more * 100);
    for (CausePart part : Causes.parts(Causes.steps(lot, lot, new GrownWorth(20, 20 + more), 0))) {
      long expected =
          switch (part.cause()) {
            case GROWTH -> worth;
            case GRADE_SOLD -> -worth;
            default -> 0;
          };
      assertThat((double) part.cents()).isCloseTo(expected, within(1.0 + 1e-4));
    }
  }

  @Property(tries = 500)
  void parts_ofTheSame_areNil(@ForAll("trading") Trading same) {
    assertThat(Causes.parts(Causes.steps(same, same, GrownWorth.NONE, 0)))
        .extracting(CausePart::cents)
        .containsOnly(0L);
  }

  /** A lot that sells some of every cell, told by its causes one by one. */
  private record Told(
      double cost,
      double hours,
      double living,
      double shareSold,
      double[] qualities,
      double[][] grades,
      double[][] prices) {
    Trading trading() {
      Map<Cell, Sold> cells = new HashMap<>();
      double sold = living * shareSold;
      for (int q = 0; q < QUALITIES.size(); q++) {
        for (int g = 0; g < GRADES.size(); g++) {
          double units = sold * qualities[q] * grades[q][g];
          cells.put(
              new Cell(QUALITIES.get(q), GRADES.get(g)), new Sold(units, units * prices[q][g]));
        }
      }
      return new Trading(cost, hours, living, sold, cells);
    }

    Told with(Cause changed, Told other) {
      return new Told(
          changed == Cause.COST ? other.cost : cost,
          changed == Cause.HOURS ? other.hours : hours,
          changed == Cause.LOSSES ? other.living : living,
          changed == Cause.BUYERS ? other.shareSold : shareSold,
          changed == Cause.QUALITY ? other.qualities : qualities,
          changed == Cause.GRADE_SOLD ? other.grades : grades,
          changed == Cause.PRICE ? other.prices : prices);
    }
  }

  @Provide
  Arbitrary<Told> told() {
    Arbitrary<Double> money = Arbitraries.doubles().between(0, 50000);
    Arbitrary<Double> share = Arbitraries.doubles().between(0.05, 1);
    Arbitrary<double[]> three = share.array(double[].class).ofSize(3).map(CausesTest::toShares);
    Arbitrary<double[][]> shares = three.array(double[][].class).ofSize(3);
    Arbitrary<double[][]> prices =
        Arbitraries.doubles()
            .between(1, 400)
            .array(double[].class)
            .ofSize(3)
            .array(double[][].class)
            .ofSize(3);
    return Combinators.combine(
            money, money, Arbitraries.doubles().between(1, 800), share, three, shares, prices)
        .as(Told::new);
  }

  private static double[] toShares(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    double[] shares = new double[weights.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = weights[i] / sum;
    }
    return shares;
  }

  @Property(tries = 1000)
  void oneCauseAlone_carriesTheWholeDifference(
      @ForAll("told") Told planned, @ForAll("told") Told other, @ForAll Cause cause) {
    Trading before = planned.trading();
    Trading after = planned.with(cause, other).trading();
    for (CausePart part : parts(before, after)) {
      double expected = part.cause() == cause ? (after.result() - before.result()) * 100 : 0;
      assertThat((double) part.cents())
          .as("%s", part.cause())
          .isCloseTo(expected, within(part.cause() == cause ? 0.5 + 1e-4 : 0));
    }
  }

  @Property(tries = 200)
  void nothingSold_whereSomeWasPlanned_foundNoBuyer(@ForAll("told") Told planned) {
    Trading before = planned.trading();
    Trading after = Trading.of(before.cost(), before.hours(), before.living(), List.of());
    for (CausePart part : parts(before, after)) {
      double expected = part.cause() == Cause.BUYERS ? -before.money() * 100 : 0;
      assertThat((double) part.cents()).isCloseTo(expected, within(0.5 + 1e-4));
    }
  }
}
