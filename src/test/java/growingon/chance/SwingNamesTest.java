package growingon.chance;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.money.Accounts;
import growingon.money.bought.ValueJoin;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Purchase;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.lot.Trunks;
import growingon.nursery.market.Demand;
import growingon.nursery.market.MarketSure;
import growingon.nursery.time.MonthSpan;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The words for what moves a gamble; verdicts and charts go by them. */
class SwingNamesTest {
  private static Scenario everythingUnsure() {
    return Nurseries.working()
        .lotSpread(0.1)
        .sure(0.7)
        .market(new MarketSure(0.9, 0.8))
        .labourSpread(0.1)
        .exchangeSpread(0.08)
        .demand(
            new Demand(
                Optional.of("maple"),
                "patio trees",
                "branched",
                Optional.empty(),
                MonthSpan.ALL_YEAR,
                OptionalDouble.of(20),
                95,
                0,
                0.2,
                0.1))
        .lot(
            Lots.boughtMaples("ridge")
                .build()
                .withTrunks(new Trunks.Usual("no pot", 21, 0.3))
                .withQuality(new QualityShares(0.5, 0.3, false, 0.7))
                .withPurchase(Optional.of(new Purchase(30, 200, 0, "EUR", 0.6, 0.05))))
        .scenario();
  }

  @Test
  void swings_ofALotOfWhichNothingIsSure_areWordedSo() {
    Scenario scenario = everythingUnsure();
    Scenario drawn =
        new Scenario(scenario.nursery(), scenario.plan().withDraws(4).withSeed(1), scenario.lots());
    Accounts accounts = Accounts.of(Projector.project(drawn));
    Chances chances = Chances.draw(accounts, ValueJoin.of(drawn).bought(), 1, done -> {});

    assertThat(chances.gambles().get(0).swings())
        .extracting(swing -> swing.says())
        .containsExactlyInAnyOrder(
            "growth, mean of the seasons",
            "growth of this lot",
            "growth of maple, not known",
            "trunks, not measured",
            "first-year loss, not known",
            "later loss, not known",
            "all selling prices, not known",
            "all units wanted, not known",
            "yearly loss, mean of the seasons",
            "first-year loss of this consignment",
            "share of firsts",
            "units wanted, mean of the seasons",
            "selling prices, mean of the seasons",
            "minutes of work, mean of the seasons",
            "exchange rate",
            "the whole consignment fails");
  }
}
