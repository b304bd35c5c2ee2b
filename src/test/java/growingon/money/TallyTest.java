package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Purchase;
import growingon.nursery.market.HorizonValue;
import growingon.nursery.market.OtherCash;
import growingon.nursery.market.OtherCash.Every;
import growingon.nursery.place.Place;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Programme;
import growingon.project.Projector;
import growingon.project.Steps;
import growingon.project.history.Sale;
import growingon.project.history.SeasonStock;
import growingon.project.known.LotFacts;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.project.lot.Luck;
import growingon.project.need.SpaceUse;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A run added up as it goes comes to what the accounts say, which are added up from a history. */
class TallyTest {
  private static final Offset<Double> SAME = within(1e-6);
  private static final int SEASONS = 6;
  private static final int EARLIER = 3;

  static Stream<HorizonValue> values() {
    return Stream.of(new HorizonValue.OfListPrice(0.4), new HorizonValue.StockValue());
  }

  /**
   * Lots of three ladders that sell, are culled and potted up to the plan's last month, with work
   * that goes on beyond it; old pots and wire come back.
   */
  private static Scenario scenario(HorizonValue value, int seasons) {
    Scenario scenario =
        Nurseries.working()
            .pot(Nurseries.roundPot("3 litre").with().reuseShare(0.8).pack(10).build())
            .route(
                "pot late",
                Steps.onArrival("pot").pot("3 litre", "training mix").minutes(2).build(),
                Steps.every("cull", 1, Month.OCTOBER).cull(0.1).build(),
                Steps.in("pot on", Month.OCTOBER, 2).pot("15 litre", "training mix").build(),
                Steps.every("wire", 1, Month.SEPTEMBER)
                    .to(Month.DECEMBER)
                    .minutes(6)
                    .material("wire", 3)
                    .build())
            .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(2), 9))
            .otherCash(new OtherCash(Optional.empty(), Every.SEASON, "rent", -900))
            .otherCash(everyMonth(Optional.of("ash"), 2))
            .otherCash(everyMonth(Optional.empty(), 3))
            .selling(0.04, 3)
            .seasons(seasons)
            .lot(Lots.boughtMaples("ridge").kept(10).build())
            .lot(Lots.pottedElms("elms").unitCost(7).build())
            .lot(
                Lots.lot("ash").quantity(200).unitCost(2).route("pot late").place("ground").build())
            .lot(Lots.lot("ash later").arrived(2029, 3).route("pot late").place("ground").build())
            .lot(Lots.lot("nowhere").quantity(20).plantsPerM2(9).build())
            .scenario();
    return scenario.withPlan(scenario.plan().withHorizonValue(value));
  }

  private static OtherCash everyMonth(Optional<String> lot, double hours) {
    return new OtherCash(
        Optional.empty(),
        Every.MONTH,
        "watering by hand",
        -4,
        hours,
        lot,
        Optional.empty(),
        Optional.empty());
  }

  private static Tally run(Scenario scenario, int counted) {
    Tally tally = new Tally(Programme.of(scenario), new GradeNumbers(scenario.nursery()), counted);
    tally.run(Luck.NONE);
    return tally;
  }

  private static Accounts accounts(Scenario scenario) {
    return Accounts.of(Projector.project(scenario));
  }

  @ParameterizedTest
  @MethodSource("values")
  void money_ofARun_isThatOfTheAccounts(HorizonValue value) {
    Accounts accounts = accounts(scenario(value, SEASONS));
    Tally tally = run(scenario(value, SEASONS), SEASONS);
    CashFlow cash = accounts.cash();

    assertThat(tally.flows()).containsExactly(cash.flows(), SAME);
    assertThat(tally.netSales())
        .containsExactly(
            months(cash, i -> cash.get(CashItem.SALES, i) + cash.get(CashItem.SELLING, i)), SAME);
    assertThat(tally.packsBought())
        .isCloseTo(
            -cash.total(CashItem.POTS)
                - cash.total(CashItem.SUBSTRATE)
                - cash.total(CashItem.MATERIALS),
            SAME);
    assertThat(tally.flowsOfNoLot(true))
        .containsExactly(months(cash, i -> cash.get(CashItem.PLACES, i)), SAME);
    for (CostKind kind : CostKind.values()) {
      double ofLots = accounts.lots().stream().mapToDouble(lot -> lot.cost(kind)).sum();
      assertThat(tally.cost(kind)).as(kind.toString()).isPositive().isCloseTo(ofLots, SAME);
    }
    assertThat(tally.horizonValue()).isPositive().isCloseTo(accounts.horizonValue(), SAME);
    assertThat(tally.lotResults()).containsExactly(ofLots(accounts, LotAccount::result), SAME);
    assertThat(tally.lotSales()).containsExactly(ofLots(accounts, LotAccount::sales), SAME);
    assertThat(tally.lotUnits()).containsExactly(ofLots(accounts, LotAccount::sold), SAME);
  }

  private static double[] months(CashFlow cash, IntToDoubleFunction figure) {
    return IntStream.range(0, cash.months()).mapToDouble(figure).toArray();
  }

  private static double[] ofLots(Accounts accounts, ToDoubleFunction<LotAccount> figure) {
    return accounts.lots().stream().mapToDouble(figure).toArray();
  }

  @ParameterizedTest
  @MethodSource("values")
  void plantsSpaceAndHours_ofARun_areThoseOfTheHistories(HorizonValue value) {
    Scenario scenario = scenario(value, SEASONS);
    Accounts accounts = accounts(scenario);
    Tally tally = run(scenario, SEASONS);

    double[] living = new double[SEASONS];
    double[] sales = new double[SEASONS];
    List<GradeName> grades = new GradeNumbers(scenario.nursery()).names();
    double[][] units = new double[grades.size()][SEASONS];
    double[][] stock = new double[grades.size()][SEASONS];
    for (LotHistory lot : accounts.projection().lots()) {
      String ladder = scenario.nursery().ladderOf(lot.lot()).name();
      for (Sale sale : lot.sales()) {
        int season = scenario.horizon().season(sale.month());
        sales[season] += sale.money();
        units[numberOf(grades, ladder, lot, sale.grade())][season] += sale.units();
      }
      for (SeasonStock end : lot.seasons()) {
        living[end.season()] += lot.standing(scenario.horizon().seasonLast(end.season()));
        for (int grade = 0; grade < lot.grades().size(); grade++) {
          stock[numberOf(grades, ladder, lot, grade)][end.season()] +=
              end.standing().ofGrade(grade);
        }
      }
    }
    assertThat(tally.livingBySeason()).containsExactly(living, SAME);
    assertThat(tally.salesBySeason()).containsExactly(sales, SAME);
    for (int grade = 0; grade < grades.size(); grade++) {
      String name = grades.get(grade).toString();
      assertThat(tally.unitsBySeason()[grade]).as(name).containsExactly(units[grade], SAME);
      assertThat(tally.stockBySeason()[grade]).as(name).containsExactly(stock[grade], SAME);
    }
    assertThat(tally.hours())
        .containsExactly(months(accounts.cash(), accounts.hours()::needed), SAME);
    assertSameSpace(tally, accounts);
  }

  private static int numberOf(List<GradeName> names, String ladder, LotHistory lot, int grade) {
    return names.indexOf(new GradeName(ladder, lot.grades().get(grade).name()));
  }

  /** Places in the order of their table, then lots without one. */
  private static void assertSameSpace(Tally tally, Accounts accounts) {
    SpaceUse space = accounts.space();
    List<Optional<String>> places =
        new ArrayList<>(
            accounts.projection().scenario().nursery().places().values().stream()
                .map(Place::name)
                .map(Optional::of)
                .toList());
    places.add(Optional.empty());
    for (int place = 0; place < places.size(); place++) {
      double[] needed =
          space.months(places.get(place)).stream()
              .mapToDouble(SpaceUse.PlaceMonth::neededM2)
              .toArray();
      assertThat(tally.space()[place]).as("%s", places.get(place)).containsExactly(needed, SAME);
    }
    assertThat(Arrays.stream(tally.space()[places.size() - 1]).sum()).isPositive();
  }

  /** What a long run says of an earlier end is what a plan that ends there says. */
  @ParameterizedTest
  @MethodSource("values")
  void earlierEnd_ofALongRun_isThatOfTheShorterPlan(HorizonValue value) {
    Scenario longer = scenario(value, SEASONS);
    Tally tally = run(longer, EARLIER);
    Tally without = run(longer.without("ridge"), EARLIER);
    Accounts shorter = accounts(scenario(value, EARLIER));
    Accounts shorterWithout = accounts(scenario(value, EARLIER).without("ridge"));
    double gain = shorter.presentValue() - shorterWithout.presentValue();
    double rate = longer.nursery().settings().discountRate();

    assertThat(tally.lotResults()).containsExactly(ofLots(shorter, LotAccount::result), SAME);
    assertThat(tally.presentValue(EARLIER - 1)).isCloseTo(shorter.presentValue(), SAME);
    assertThat(tally.gainsByEnding(without)[EARLIER - 1]).isCloseTo(gain, SAME);
    double[] gains = tally.gainOver(without, EARLIER - 1);
    assertThat(gains).hasSize(longer.horizon().seasonLast(EARLIER - 1) + 1);
    assertThat(Finance.presentValue(gains, rate)).isCloseTo(gain, SAME);
  }

  /** So many months that what is kept of each lot outgrows the room it begins with. */
  @ParameterizedTest
  @MethodSource("values")
  void besideAnother_forManyYears_isAsAlone(HorizonValue value) {
    Scenario scenario = scenario(value, 2 * SEASONS);
    GradeNumbers grades = new GradeNumbers(scenario.nursery());
    Programme programme = Programme.of(scenario);
    Tally with = new Tally(programme, grades);
    Tally without = new Tally(programme.without("ridge"), grades);

    with.runBeside(List.of(without), Luck.NONE);

    Tally alone = run(scenario, 2 * SEASONS);
    Tally aloneWithout = run(scenario.without("ridge"), 2 * SEASONS);
    assertThat(with.flows()).containsExactly(alone.flows());
    assertThat(without.flows()).containsExactly(aloneWithout.flows());
    assertThat(with.lotResults()).containsExactly(alone.lotResults());
    assertThat(without.unitsBySeason()).isDeepEqualTo(aloneWithout.unitsBySeason());
    assertThat(with.horizonValue()).isEqualTo(alone.horizonValue());
  }

  /** Lots of two ladders meet in packs, hours and cash only: their sums make the plan. */
  @ParameterizedTest
  @MethodSource("values")
  void sumsOfTwoLadders_addedUp_areThePlan(HorizonValue value) {
    Scenario scenario = scenario(value, SEASONS);
    LadderRuns runs = new LadderRuns(scenario, new Prices(scenario.nursery(), scenario.horizon()));
    LadderSums ofAsh = sumsOf(runs, scenario.without("ridge").without("elms"));
    LadderSums ofPatio =
        sumsOf(runs, scenario.without("ash").without("ash later").without("nowhere"));

    AllLadders all = new AllLadders(scenario);
    AllLadders.Sum sum = all.of(List.of(ofAsh, ofPatio));

    assertThat(all.of(List.of(ofAsh, ofPatio)).flows()).containsExactly(sum.flows());
    Accounts accounts = accounts(scenario);
    Tally tally = run(scenario, SEASONS);
    assertThat(sum.flows()).containsExactly(accounts.cash().flows(), SAME);
    assertThat(sum.balances(5000)).containsExactly(accounts.cash().balances(), SAME);
    assertThat(sum.hours()).containsExactly(tally.hours(), SAME);
    assertThat(sum.sales())
        .containsExactly(
            months(accounts.cash(), i -> accounts.cash().get(CashItem.SALES, i)), SAME);
    for (int place = 0; place < sum.space().length; place++) {
      assertThat(sum.space()[place]).containsExactly(tally.space()[place], SAME);
    }
    double rate = scenario.nursery().settings().discountRate();
    assertThat(sum.presentValue(rate)).isCloseTo(accounts.presentValue(), SAME);
  }

  private static LadderSums sumsOf(LadderRuns runs, Scenario some) {
    return runs.of(Programme.of(some), Luck.NONE);
  }

  /** Nothing is lost between what was started, what went and what stands, nor between months. */
  @Test
  void plantsAndHours_ofEveryAccount_addUp() {
    Accounts accounts = accounts(scenario(HorizonValue.NOTHING, SEASONS));
    for (LotAccount lot : accounts.lots()) {
      assertThat(lot.lost()).as(lot.lot().name()).isNotNegative();
      assertThat(lot.started() - lot.lost() - lot.sold()).isCloseTo(lot.standing(), SAME);
      Ledger ledger = lot.ledger();
      double plants = IntStream.range(0, ledger.months()).mapToDouble(ledger::plantsSold).sum();
      double hours = IntStream.range(0, ledger.months()).mapToDouble(ledger::hours).sum();
      assertThat(plants).isCloseTo(lot.sold(), SAME);
      assertThat(hours).isCloseTo(lot.hours(), SAME);
    }
    assertThat(accounts.lot("ash").lost()).isPositive();
    assertThat(accounts.lot("elms").sold()).isPositive();
  }

  /** A hundred plants at 5 and 60 of carriage cost a quarter more at that rate. */
  @Test
  void lotBoughtInAnotherCurrency_costsMoreAtADearerRate() {
    Purchase purchase = new Purchase(5, 60, 0, "EUR", 1, 0);
    Scenario scenario =
        Nurseries.bare()
            .seasons(1)
            .lot(Lots.lot("a").build().withPurchase(Optional.of(purchase)))
            .scenario();
    Tally tally = new Tally(Programme.of(scenario), new GradeNumbers(scenario.nursery()));
    tally.run(new DearerRate());

    assertThat(tally.cost(CostKind.PLANTS)).isCloseTo(500 * 1.25, SAME);
    assertThat(tally.cost(CostKind.CARRIAGE)).isCloseTo(60 * 1.25, SAME);
    assertThat(tally.lotResults()).containsExactly(new double[] {-560 * 1.25}, SAME);
  }

  /** No luck but that of the rate. */
  private record DearerRate() implements Luck {
    @Override
    public double exchange(String currency, int season) {
      return currency.equals("EUR") ? 1.25 : 1;
    }
  }

  /** A quarter of a lot of 100 that was bought at 5, with 60 of carriage. */
  @Test
  void partOfALot_isChargedItsPartOfThePrice() {
    Scenario scenario =
        Nurseries.bare().seasons(1).lot(Lots.lot("a").bought(5, 60).build()).scenario();
    LotFacts quarter =
        new LotFacts(0.25, Integer.MIN_VALUE, Integer.MIN_VALUE, OptionalDouble.empty(), Map.of());
    LotAccount lot =
        Accounts.of(Projector.project(scenario, new Facts(Map.of("a", quarter)))).lot("a");

    assertThat(lot.cost(CostKind.PLANTS)).isCloseTo(125, SAME);
    assertThat(lot.cost(CostKind.CARRIAGE)).isCloseTo(15, SAME);
  }
}
