package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.chance.LotDraws.Figures;
import growingon.chance.LotDraws.Span;
import growingon.chance.LotDraws.Tenths;
import growingon.money.Accounts;
import growingon.money.CostKind;
import growingon.money.Ledger;
import growingon.nursery.Scenario;
import growingon.nursery.market.Demand;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import growingon.project.Steps;
import growingon.project.lot.LotHistory;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What draws say month by month: where nothing is left to luck, what histories and accounts say.
 */
class LotDrawsTest {
  private static final Offset<Double> ROUNDED = within(0.01);
  private static final int MONTHS = 12;

  private static Scenario scenario(double fails, int draws) {
    Scenario scenario =
        Nurseries.bare()
            .seasons(1)
            .labour(12, 1)
            .selling(0.1, 1)
            .route(
                "r",
                Steps.in("pot", Month.MARCH, 0).minutes(6).cull(0.1).build(),
                Steps.in("tie in", Month.MAY, 0).minutes(3).build())
            .demand(
                new Demand(
                    Optional.empty(),
                    "one",
                    "any",
                    Optional.empty(),
                    new MonthSpan(6, 8),
                    OptionalDouble.of(45),
                    20,
                    2,
                    0,
                    0))
            .lot(
                Lots.lot("bought")
                    .arrived(2027, 1)
                    .quality(0.2, 0.7, true)
                    .route("r")
                    .bought(3, 40, 1, fails)
                    .build())
            .lot(Lots.lot("old").arrived(2026, 3).quantity(30).route("r").build())
            .scenario();
    return scenario.withPlan(scenario.plan().withDraws(draws).withSeed(3));
  }

  private static void isAll(Tenths tenths, double expected) {
    assertThat(tenths.p10()).isCloseTo(expected, ROUNDED);
    assertThat(tenths.p50()).isCloseTo(expected, ROUNDED);
    assertThat(tenths.p90()).isCloseTo(expected, ROUNDED);
  }

  @Test
  void figures_withoutLuck_areThoseOfHistoriesAndAccounts() {
    Scenario scenario = scenario(0, 5);
    LotDraws draws = LotDraws.draw(scenario, 1, done -> {});
    Accounts accounts = Accounts.of(Projector.project(scenario));
    double[] together = new double[MONTHS];
    for (int lot = 0; lot < 2; lot++) {
      LotHistory history = accounts.projection().lots().get(lot);
      Ledger ledger = accounts.lots().get(lot).ledger();
      Figures figures = draws.lot(lot);
      double units = 0;
      double sales = 0;
      double hours = 0;
      double result = 0;
      for (int month = 0; month < MONTHS; month++) {
        units += ledger.plantsSold(month);
        sales += ledger.sales(month);
        hours += ledger.hours(month);
        result += ledger.sales(month);
        for (CostKind kind : CostKind.values()) {
          result -= ledger.cost(kind, month);
        }
        together[month] += result;
        isAll(figures.living().get(month), history.standing(month));
        isAll(figures.unitsSold().get(month), units);
        isAll(figures.sales().get(month), sales);
        isAll(figures.hours().get(month), hours);
        isAll(figures.result().get(month), result);
      }
      isAll(figures.trunkMm().get(5), lot == 0 ? 12 : 13);
      isAll(draws.resultAfter(List.of(lot), -1), result);
    }
    for (int month = 0; month < MONTHS; month++) {
      isAll(draws.together().result().get(month), together[month]);
    }
    isAll(draws.resultAfter(List.of(0, 1), 6), together[11] - together[6]);
    assertThat(draws.together().trunkMm()).isEmpty();
  }

  /** Plants that grow 0.5 mm a month bring 2 more for each mm above one: more than list price. */
  @Test
  void price_isMoneyAsAShareOfListPrice_whateverTheQuality() {
    Scenario scenario = scenario(0, 5);
    LotDraws draws = LotDraws.draw(scenario, 1, done -> {});
    LotHistory old = Projector.project(scenario).lots().get(1);
    double money = old.sales().get(0).money();
    double units = old.sales().get(0).units();

    Span june = draws.judged(1).price().get(old.sales().get(0).month());
    assertThat(june.p10()).isCloseTo(money / units / 20, within(1e-4));
    assertThat(june.p90()).isCloseTo(money / units / 20, within(1e-4));
    assertThat(june.outside()).isZero();
    assertThat(draws.judged(1).price().get(2).p10()).isNaN();
    assertThat(draws.within(1).price()).containsOnly("f8");
    assertThat(draws.within(1).living()).containsOnly("f8");
  }

  /** Half of the consignments fail: all of those plants are dead in the month of arrival. */
  @Test
  void deaths_areThoseOfTheDraws() {
    LotDraws draws = LotDraws.draw(scenario(0.5, 40), 1, done -> {});
    Span january = draws.judged(0).deaths().get(2);

    assertThat(january.p10()).isZero();
    assertThat(january.p90()).isCloseTo(100, ROUNDED);
    assertThat(january.outside()).isZero();
    assertThat(draws.judged(0).deaths().get(1).p90()).isZero();
    assertThat(draws.lot(0).living().get(2).p10()).isZero();
    assertThat(draws.lot(0).living().get(2).p90()).isCloseTo(100, ROUNDED);
  }
}
