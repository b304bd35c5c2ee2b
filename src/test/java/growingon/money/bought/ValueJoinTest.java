package growingon.money.bought;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.Accounts;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.market.Grade;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.OtherCash.Every;
import growingon.nursery.place.PlaceKind;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What lots bought gain, from two ways: by their accounts, and joined to the plan's value. */
class ValueJoinTest {
  private static Nurseries nursery() {
    OtherCash rent = new OtherCash(Optional.empty(), Every.SEASON, "rent", -700);
    return Nurseries.working()
        .selling(0.05, 2)
        .otherCash(rent)
        .lot(Lots.boughtMaples("field maples").build())
        .lot(Lots.pottedElms("elms").unitCost(6).build())
        .lot(Lots.pottedElms("more elms").arrived(2026, 12).bought(11, 60).build());
  }

  @ParameterizedTest
  @ValueSource(strings = {"nothing", "share of list", "stock value"})
  void gainsAndCostsOfNoLot_joinThePresentValue_toTheCent(String unsold) {
    Nurseries nursery = nursery();
    if (unsold.equals("share of list")) {
      nursery.horizonValue(0.6);
    } else if (unsold.equals("stock value")) {
      nursery.stockValueAtTheEnd();
    }
    Scenario scenario = nursery.scenario();
    Accounts accounts = Accounts.of(Projector.project(scenario));
    ValueJoin join = ValueJoin.of(scenario);

    assertThat(join.presentValue()).isCloseTo(accounts.presentValue(), within(0.005));
    Accounts without =
        Accounts.of(Projector.project(scenario.without("field maples").without("more elms")));
    assertThat(join.standing() + join.places() + join.otherCash())
        .isCloseTo(without.presentValue(), within(0.005));
    assertThat(join.bought()).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"field maples", "more elms"})
  void bridge_endsAtTheResultOfTheLotsAccount(String lot) {
    Scenario scenario = nursery().stockValueAtTheEnd().scenario();
    Accounts accounts = Accounts.of(Projector.project(scenario));
    BoughtLot.Bridge bridge = bought(scenario, lot).bridge();

    assertThat(bridge.result()).isCloseTo(accounts.lot(lot).result(), within(0.005));
    assertThat(bridge.gain()).isCloseTo(bought(scenario, lot).presentValue(), within(0.005));
    double cash = 0;
    Accounts without = Accounts.of(Projector.project(scenario.without(lot)));
    for (int month = 0; month < accounts.cash().months(); month++) {
      cash += accounts.cash().net(month) - without.cash().net(month);
    }
    assertThat(bridge.cash()).isCloseTo(cash, within(0.005));
  }

  private static BoughtLot bought(Scenario scenario, String lot) {
    return ValueJoin.of(scenario).bought().stream()
        .filter(each -> each.lot().name().equals(lot))
        .findFirst()
        .orElseThrow();
  }

  /** The price counts in cost to date too, so a part of what is paid more comes back at the end. */
  @Test
  void mostToPay_whereUnsoldPlantsAreValuedAsStock_givesNilWhenTypedBack() {
    Scenario scenario = nursery().stockValueAtTheEnd().scenario();
    BoughtLot bought = bought(scenario, "field maples");
    double most = bought.bargain().mostLandedEach().orElseThrow();
    Lot lot = bought.lot();
    Purchase now = lot.purchase().get();
    double charges = (now.carriage() + now.importCharges()) / lot.quantity();
    Purchase dearer =
        new Purchase(most - charges, now.carriage(), now.importCharges(), "GBP", 1, 0);
    List<Lot> lots =
        scenario.lots().stream()
            .map(each -> each == lot ? lot.withPurchase(Optional.of(dearer)) : each)
            .toList();

    assertThat(bought(scenario.withLots(lots), "field maples").presentValue())
        .isCloseTo(0, within(0.01));
  }

  /**
   * As sheet Stock value has it: the lower of cost and list, here cost for one and list for one.
   */
  @Test
  void stockValue_isTheLowerOfCostAndList_keptPlantsLeftOut() {
    Nurseries nursery =
        Nurseries.bare()
            .seasons(1)
            .stockValueAtTheEnd()
            .demand(Nurseries.demandRow("one", "any", java.util.OptionalDouble.of(0), 10))
            .lot(Lots.lot("cheap").unitCost(4).kept(20).build())
            .lot(Lots.lot("dear").unitCost(30).build());
    Accounts accounts = Accounts.of(Projector.project(nursery.scenario()));

    assertThat(accounts.horizonValue()).isCloseTo(80 * 4 + 100 * 10, within(1e-6));
    assertThat(accounts.presentValue()).isCloseTo(1320, within(1e-6));
  }

  /**
   * Either of two lots of 40 plants for 100 meets the demand for 40 at 20 by itself, so each gains
   * nothing but its cost, −100, and both together the 800 besides. Ten standing ash bring 300, the
   * bench takes 300, the rent 50: 800 − 200 + 300 − 300 − 50.
   */
  @Test
  void lotsThatSellToTheSameDemand_gainTogether_whatNeitherAddsToTheOther() {
    ValueJoin join =
        ValueJoin.of(
            Nurseries.bare()
                .seasons(1)
                .ladder("hedge", new Grade("small", 1, 1, 0, 12))
                .species(Nurseries.bareSpecies("hornbeam", "hedge"))
                .place(Nurseries.place("bench", PlaceKind.BENCH, 50, 1, 6))
                .otherCash(new OtherCash(Optional.empty(), OtherCash.Every.SEASON, "rent", -50))
                .demand(Nurseries.demandRow("hedge", "small", OptionalDouble.of(40), 20))
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.empty(), 30))
                .lot(Lots.lot("standing").quantity(10).build())
                .lot(hornbeams("first"))
                .lot(hornbeams("second"))
                .scenario());

    assertThat(join.presentValue()).isCloseTo(550, within(1e-6));
    assertThat(join.gains()).isCloseTo(-200, within(1e-6));
    assertThat(join.standing()).isCloseTo(300, within(1e-6));
    assertThat(join.costsOfNoLot()).isCloseTo(350, within(1e-6));
    assertThat(join.together()).isCloseTo(800, within(1e-6));
  }

  private static Lot hornbeams(String name) {
    return Lots.lot(name).species("hornbeam").quantity(40).bought(2.5, 0).build();
  }
}
