package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What selling costs, in money and in hours. */
class SellingTest {
  private static Nurseries nursery() {
    return Nurseries.bare()
        .seasons(1)
        .labour(12, 0.5)
        .selling(0.1, 3)
        .place(place("bench", OptionalDouble.empty()))
        .place(place("bed", OptionalDouble.of(25)))
        .sellsAll("one", "any", 20);
  }

  private static Place place(String name, OptionalDouble minutesASale) {
    return Place.named(name, PlaceKind.STANDING_GROUND)
        .squareMetres(100)
        .usableShare(1)
        .liftFrom(LiftFrom.GROUND)
        .minutesASale(minutesASale)
        .build();
  }

  private static Accounts accounts(Nurseries nursery) {
    return Accounts.of(Projector.project(nursery.scenario()));
  }

  private static Lots hundred() {
    return Lots.lot("a").place("bench").plantsPerM2(4);
  }

  /**
   * 100 plants at 20: 200 of 2,000 for selling, and 100 × 3 minutes = 5 hours, half of them paid.
   */
  @Test
  void sellingCost_isALineOfItsOwn_inCashAndAccount_andSalesStayGross() {
    Accounts accounts = accounts(nursery().lot(hundred().build()));
    LotAccount lot = accounts.lot("a");

    assertThat(lot.sales()).isCloseTo(2000, within(1e-9));
    assertThat(lot.cost(CostKind.SELLING)).isCloseTo(200, within(1e-9));
    assertThat(lot.hours()).isCloseTo(5, within(1e-9));
    assertThat(lot.result()).isCloseTo(2000 - 200 - 60, within(1e-9));
    assertThat(accounts.cash().total(CashItem.SALES)).isCloseTo(2000, within(1e-9));
    assertThat(accounts.cash().total(CashItem.SELLING)).isCloseTo(-200, within(1e-9));
    assertThat(accounts.cash().total(CashItem.HOURS)).isCloseTo(-30, within(1e-9));
    assertThat(accounts.presentValue()).isCloseTo(1770, within(1e-9));
  }

  @Test
  void minutesASale_ofThePlace_winOverTheSetting_andAreAJob() {
    Accounts accounts = accounts(nursery().lot(hundred().place("bed").build()));

    assertThat(accounts.lot("a").hours()).isCloseTo(100 * 25 / 60.0, within(1e-9));
    assertThat(accounts.hours().byJob().get(Work.SELLING)[0])
        .isCloseTo(100 * 25 / 60.0, within(1e-9));
    assertThat(accounts.projection().lot("a").happenings())
        .extracting(Happening::job)
        .containsExactly(Work.SELLING);
  }

  @Test
  void boughtLot_gainsLessByWhatSellingCosts() {
    BoughtLot bought =
        ValueJoin.of(nursery().lot(hundred().bought(5, 0).build()).scenario()).bought().get(0);

    assertThat(bought.presentValue()).isCloseTo(2000 - 200 - 30 - 500, within(1e-9));
    // Prices at which it just pays: 500 for the plants and 30 for hours from 90 % of the receipts.
    assertThat(bought.bargain().leastPriceShare().orElseThrow())
        .isCloseTo(530 / 1800.0, within(1e-9));
  }

  @Test
  void unsoldPlants_countNetOfSellingCost_butAreWorthTheListPrice() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .selling(0.1, 0)
            .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 20))
            .horizonValue(0.5)
            .lot(Lots.lot("a").build());
    Accounts accounts = accounts(nursery);

    assertThat(accounts.unsoldAtList()).isCloseTo(2000, within(1e-9));
    assertThat(accounts.horizonValue()).isCloseTo(900, within(1e-9));
    assertThat(accounts.presentValue()).isCloseTo(900, within(1e-9));
  }

  /** Half are sold; what selling them took is not carried by the others. */
  @Test
  void costToDate_ofTheOthers_isWithoutWhatSellingTook() {
    Accounts accounts =
        accounts(
            Nurseries.bare()
                .seasons(1)
                .labour(12, 1)
                .selling(0.1, 3)
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(50), 20))
                .lot(Lots.lot("a").unitCost(7).build()));

    StockValue value = StockValue.of(accounts).get(0);
    assertThat(value.priced()).isCloseTo(50, within(1e-6));
    assertThat(value.pricedCost()).isCloseTo(350, within(1e-6));
  }
}
