package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Quality;
import growingon.nursery.place.Care;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StockValueTest {
  private static Nurseries nursery() {
    return Nurseries.bare().seasons(2).labour(0, 1);
  }

  /** 100 plants at 6 each cost 600; 40 are sold and take 240 with them; 60 at 10 list are 600. */
  @Test
  void stock_ofWhichSomeIsSold_keepsItsShareOfTheCost() {
    Accounts accounts =
        Accounts.of(
            nursery()
                .withoutDemand()
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(40), 10))
                .lot(Lots.lot("a").quantity(100).unitCost(6).build())
                .seasons(1)
                .project());
    StockValue value = StockValue.of(accounts).get(0);
    assertThat(value.priced()).isCloseTo(60, within(1e-9));
    assertThat(value.pricedCost()).isCloseTo(360, within(1e-9));
    assertThat(value.list()).isCloseTo(600, within(1e-9));
    assertThat(value.value()).isCloseTo(360, within(1e-9));
  }

  @Test
  void stock_dearerThanItsListPrice_isWorthTheListPrice() {
    Accounts accounts =
        Accounts.of(
            nursery()
                .withoutDemand()
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 10))
                .lot(Lots.lot("a").quantity(100).unitCost(12).kept(20).build())
                .project());
    List<StockValue> values = StockValue.of(accounts);
    assertThat(values).hasSize(2);
    assertThat(values.get(1).priced()).isCloseTo(80, within(1e-9));
    assertThat(values.get(1).pricedCost()).isCloseTo(960, within(1e-9));
    assertThat(values.get(1).value()).isCloseTo(800, within(1e-9));
  }

  @Test
  void stock_withoutAPrice_standsAtItsCost() {
    Accounts accounts =
        Accounts.of(
            nursery()
                .withoutDemand()
                .lot(Lots.lot("a").quantity(10).unitCost(5).build())
                .project());
    StockValue value = StockValue.of(accounts).get(0);
    assertThat(value.priced()).isZero();
    assertThat(value.unpriced()).isCloseTo(10, within(1e-9));
    assertThat(value.value()).isCloseTo(50, within(1e-9));
  }

  /**
   * Two ways to a number: the last year's end is the plan's end, and nothing is held for selling.
   */
  @Test
  void list_atThePlansEnd_isThatOfTheAccounts() {
    Accounts accounts =
        Accounts.of(
            nursery()
                .withoutDemand()
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(7), 10))
                .lot(Lots.lot("a").quantity(90).quality(0.6, 0.3, true).unitCost(3).build())
                .project());
    int last = accounts.projection().horizon().months() - 1;
    double list =
        StockValue.of(accounts).stream()
            .filter(each -> each.month() == last)
            .mapToDouble(StockValue::list)
            .sum();
    assertThat(list).isPositive().isCloseTo(accounts.unsoldAtList(), within(1e-6));
  }

  /**
   * 100 plants at 6 and 4 to the square metre need 25 m² × 6 minutes = 2.5 hours of care at 12 and
   * 25 × 0.2 of its cost each month, 35 × 12 = 420 in a year: with 600 for the plants 1,020.
   */
  @Test
  void stock_carriesTheHoursAndTheCostOfItsCare() {
    Accounts accounts =
        Accounts.of(
            Nurseries.bare()
                .seasons(1)
                .labour(12, 1)
                .place(Nurseries.place("bench", PlaceKind.BENCH, 100))
                .care(new Care(Optional.empty(), MonthSpan.ALL_YEAR, 6, 0.2))
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 20))
                .lot(Lots.lot("a").unitCost(6).place("bench").plantsPerM2(4).build())
                .project());

    assertThat(StockValue.of(accounts).get(0).pricedCost()).isCloseTo(1020, within(1e-9));
  }

  /** 100 plants at a list price of 20 are 2,000, of which selling takes a tenth. */
  @Test
  void listPrice_standsLessWhatSellingCosts() {
    Accounts accounts =
        Accounts.of(
            Nurseries.bare()
                .seasons(1)
                .selling(0.1, 0)
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 20))
                .lot(Lots.lot("a").unitCost(50).build())
                .project());

    assertThat(StockValue.of(accounts).get(0).list()).isCloseTo(1800, within(1e-9));
    assertThat(StockValue.of(accounts).get(0).value()).isCloseTo(1800, within(1e-9));
  }

  /** Year by year, in it lot by lot; one that is sold out is in no later year. */
  @Test
  void stock_ofSeveralYears_standsByYearAndThenByLot() {
    Accounts accounts =
        Accounts.of(
            nursery()
                .seasons(3)
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(40), 10))
                .lot(Lots.lot("old").quantity(90).arrived(2025, 3).build())
                .lot(Lots.lot("new").quantity(100).build())
                .project());

    assertThat(StockValue.of(accounts))
        .extracting(StockValue::month, each -> each.lot().name(), each -> Math.round(each.priced()))
        .containsExactly(
            tuple(11, "old", 50L),
            tuple(11, "new", 100L),
            tuple(23, "old", 10L),
            tuple(23, "new", 100L),
            tuple(35, "new", 70L));
  }

  /** 60 firsts at 6 are worth 360, as they list at 600; 40 seconds without a price their 240. */
  @Test
  void worthAtThePlansEnd_countsPlantsWithoutAPriceAtTheirCost() {
    Accounts accounts =
        Accounts.of(
            nursery()
                .seasons(1)
                .stockValueAtTheEnd()
                .quality(Quality.SECOND, 0, true)
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 10))
                .lot(Lots.lot("a").quality(0.6, 0.4, true).unitCost(6).build())
                .project());

    assertThat(accounts.horizonValue()).isCloseTo(600, within(1e-9));
  }
}
