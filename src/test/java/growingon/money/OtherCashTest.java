package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.bought.BoughtLot;
import growingon.money.bought.ValueJoin;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.OtherCash.Every;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projector;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Other cash of a lot and of none: when it falls, and in whose account it stands. */
class OtherCashTest {
  private static final YearMonth FEBRUARY = YearMonth.of(2027, 2);

  private static OtherCash every(Every every, String lot, double hours) {
    return new OtherCash(
        Optional.empty(),
        every,
        "spray",
        -10,
        hours,
        Optional.of(lot),
        Optional.empty(),
        Optional.empty());
  }

  private static OtherCash every(Every every, YearMonth from, YearMonth until) {
    return new OtherCash(
        Optional.empty(),
        every,
        "spray",
        -10,
        0,
        Optional.of("a"),
        Optional.ofNullable(from),
        Optional.ofNullable(until));
  }

  private static Accounts accounts(Nurseries nursery) {
    return Accounts.of(Projector.project(nursery.scenario()));
  }

  /** Months in which other cash falls, with the plan's first month as 0. */
  private static List<Integer> months(Accounts accounts) {
    double[] flows = accounts.cash().flows();
    return java.util.stream.IntStream.range(0, flows.length)
        .filter(month -> accounts.cash().get(CashItem.OTHER, month) != 0)
        .boxed()
        .toList();
  }

  private static Nurseries oneSeason() {
    return Nurseries.bare().seasons(1).labour(12, 0.5);
  }

  @Test
  void everyMonth_ofALotBought_startsAtItsArrival_andStandsInItsAccount() {
    Accounts accounts =
        accounts(
            oneSeason()
                .otherCash(every(Every.MONTH, "a", 0.5))
                .lot(Lots.lot("a").arrived(2027, 2).bought(1, 0).build()));

    assertThat(months(accounts)).containsExactly(3, 4, 5, 6, 7, 8, 9, 10, 11);
    LotAccount lot = accounts.lot("a");
    assertThat(lot.cost(CostKind.OTHER)).isCloseTo(90, within(1e-9));
    assertThat(lot.hours()).isCloseTo(4.5, within(1e-9));
    assertThat(lot.result()).isCloseTo(-100 - 90 - 54, within(1e-9));
    assertThat(accounts.cash().total(CashItem.HOURS)).isCloseTo(-27, within(1e-9));
    assertThat(accounts.reconciliation().otherCash()).isCloseTo(0, within(1e-9));
  }

  @Test
  void from_mayLieBeforeArrival_andAMonthOfItsOwnToo() {
    Nurseries early =
        oneSeason()
            .otherCash(every(Every.MONTH, YearMonth.of(2027, 1), FEBRUARY))
            .lot(Lots.lot("a").arrived(2027, 2).bought(1, 0).build());
    assertThat(months(accounts(early))).containsExactly(2, 3);

    OtherCash once =
        new OtherCash(
            Optional.of(YearMonth.of(2026, 12)),
            Every.ONCE,
            "licence",
            -10,
            0,
            Optional.of("a"),
            Optional.empty(),
            Optional.empty());
    Nurseries licence =
        oneSeason().otherCash(once).lot(Lots.lot("a").arrived(2027, 2).bought(1, 0).build());
    assertThat(months(accounts(licence))).containsExactly(1);
  }

  /** All are sold in February, after the month's work: that month still counts. */
  @Test
  void itEndsWithTheLastPlant_theMonthOfTheLastSaleCounts() {
    Accounts accounts =
        accounts(
            oneSeason()
                .sellsAll("one", "any", 5)
                .otherCash(every(Every.MONTH, null, null))
                .lot(Lots.lot("a").notBefore(2027, 2).build()));

    assertThat(months(accounts)).containsExactly(0, 1, 2, 3);
  }

  @Test
  void everySeason_isInTheSeasonsFirstMonth_andInThePlansFirst() {
    Accounts accounts =
        accounts(
            Nurseries.bare()
                .firstMonth(2027, 2)
                .seasons(3)
                .otherCash(every(Every.SEASON, null, null))
                .lot(Lots.lot("a").counted(2027, 2).build()));

    assertThat(months(accounts)).containsExactly(0, 9, 21);
  }

  @Test
  void ofAnOfferNotTaken_isNotBooked() {
    Accounts accounts =
        accounts(
            oneSeason().otherCash(every(Every.MONTH, "not taken", 1)).lot(Lots.lot("a").build()));

    assertThat(months(accounts)).isEmpty();
    assertThat(accounts.hours().needed(3)).isZero();
  }

  @Test
  void hoursOfNoLot_areWorkedAndPaid_andStandInTheJoinUnderOtherCash() {
    OtherCash meetings =
        new OtherCash(
            Optional.empty(),
            Every.MONTH,
            "office",
            -20,
            2,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Accounts accounts = accounts(oneSeason().otherCash(meetings).lot(Lots.lot("a").build()));

    assertThat(accounts.hours().byJob().get("office")).containsOnly(2.0);
    assertThat(accounts.reconciliation().otherCash())
        .isCloseTo(12 * (-20 - 2 * 12 * 0.5), within(1e-9));
    ValueJoin join = ValueJoin.of(accounts.projection().scenario());
    assertThat(join.otherCash()).isCloseTo(12 * -32, within(1e-9));
    assertThat(join.costsOfNoLot()).isCloseTo(384, within(1e-9));
  }

  @Test
  void costOfALot_countsWithTheLotAgainstWithoutIt() {
    Nurseries nursery =
        oneSeason()
            .sellsAll("one", "any", 5)
            .otherCash(every(Every.SEASON, null, null))
            .lot(Lots.lot("a").arrived(2026, 11).bought(1, 0).build());
    BoughtLot bought = ValueJoin.of(nursery.scenario()).bought().get(0);

    assertThat(bought.presentValue()).isCloseTo(500 - 100 - 10, within(1e-9));
    assertThat(bought.bridge().result()).isCloseTo(390, within(1e-9));
  }

  @Test
  void costOfALot_isInItsCostToDate() {
    Accounts accounts =
        accounts(
            oneSeason()
                .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(0), 50))
                .otherCash(every(Every.MONTH, null, null))
                .lot(Lots.lot("a").unitCost(2).build()));

    assertThat(StockValue.of(accounts).get(0).pricedCost()).isCloseTo(200 + 120, within(1e-6));
    assertThat(Arrays.stream(accounts.cash().flows()).sum()).isCloseTo(-120, within(1e-9));
  }

  /** 1,000 and 100 less each month but the fourth, which brings 300: the third is the lowest. */
  @Test
  void lowestCash_isThatOfTheFirstMonthThatHasIt() {
    CashFlow cash =
        accounts(
                oneSeason()
                    .openingCash(1000)
                    .otherCash(
                        new OtherCash(
                            Optional.empty(),
                            Every.MONTH,
                            "rent",
                            -100,
                            0,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(YearMonth.of(2027, 4))))
                    .otherCash(once(FEBRUARY, 400)))
            .cash();

    assertThat(cash.opening()).isEqualTo(1000);
    assertThat(cash.balances())
        .containsExactly(900, 800, 700, 1000, 900, 800, 800, 800, 800, 800, 800, 800);
    assertThat(cash.lowestMonth()).isEqualTo(2);
  }

  @Test
  void lowestCash_ofSeveralMonthsAlike_isTheFirst() {
    CashFlow cash = accounts(oneSeason().openingCash(50).otherCash(once(FEBRUARY, -20))).cash();

    assertThat(cash.lowestMonth()).isEqualTo(3);
  }

  private static OtherCash once(YearMonth when, double amount) {
    return new OtherCash(Optional.of(when), Every.ONCE, "machine", amount);
  }
}
