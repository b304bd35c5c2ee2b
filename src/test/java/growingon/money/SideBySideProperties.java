package growingon.money;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.chance.luck.Draws;
import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.HorizonValue;
import growingon.project.Nurseries;
import growingon.project.Programme;
import growingon.project.ReadyLots;
import growingon.project.lot.Luck;
import growingon.whole.RandomNurseries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is run side by side is to the last digit what it is when run alone. */
class SideBySideProperties {
  private static final int OTHERS = 5;

  @Provide
  Arbitrary<Nurseries> nurseries() {
    return RandomNurseries.any();
  }

  @Property(tries = 150)
  void programmesBesideEachOther_comeToWhatEachComesToAlone(
      @ForAll("nurseries") Nurseries nursery, @ForAll int seed) {
    Random random = new Random(seed);
    Scenario scenario = valued(nursery.scenario(), random.nextBoolean());
    Luck luck = random.nextBoolean() ? Luck.NONE : new Draws(scenario).luck(random.nextInt(100));
    GradeNumbers grades = new GradeNumbers(scenario.nursery());
    List<Programme> programmes = programmes(scenario, random);
    List<Tally> beside = programmes.stream().map(each -> new Tally(each, grades)).toList();

    beside.get(0).runBeside(beside.subList(1, beside.size()), luck);

    for (int i = 0; i < programmes.size(); i++) {
      Tally alone = new Tally(programmes.get(i), grades);
      alone.run(luck);
      assertAlike(beside.get(i), alone);
    }
  }

  @Property(tries = 100)
  void sumsBesideEachOther_areThoseOfEachAlone(
      @ForAll("nurseries") Nurseries nursery, @ForAll int seed) {
    Random random = new Random(seed);
    Scenario scenario = valued(nursery.scenario(), true);
    Luck luck = new Draws(scenario).luck(random.nextInt(100));
    Prices prices = new Prices(scenario.nursery(), scenario.horizon());
    List<Programme> programmes = programmes(scenario, random);
    LadderRuns runs = new LadderRuns(scenario, prices);

    List<LadderSums> beside = runs.of(programmes.get(0), programmes.subList(1, OTHERS), luck);

    for (int i = 0; i < OTHERS; i++) {
      LadderSums alone = new LadderRuns(scenario, prices).of(programmes.get(i), luck);
      assertThat(beside.get(i)).usingRecursiveComparison().isEqualTo(alone);
    }
  }

  static Scenario valued(Scenario scenario, boolean atStockValue) {
    return atStockValue
        ? scenario.withPlan(scenario.plan().withHorizonValue(new HorizonValue.StockValue()))
        : scenario;
  }

  /**
   * The scenario's programme and others with lots left out, of other numbers and held otherwise.
   */
  private static List<Programme> programmes(Scenario scenario, Random random) {
    ReadyLots ready = new ReadyLots(scenario);
    List<Programme> programmes = new ArrayList<>(List.of(ready.programme(scenario.lots())));
    for (int i = 0; i < OTHERS; i++) {
      List<Lot> lots = new ArrayList<>();
      for (Lot lot : scenario.lots()) {
        switch (random.nextInt(8)) {
          case 0 -> {}
          case 1 -> lots.add(lot.withHold(Optional.empty()));
          default -> lots.add(lot);
        }
      }
      programmes.add(ready.programme(lots));
    }
    return programmes;
  }

  static void assertAlike(Tally beside, Tally alone) {
    assertThat(beside.flows()).containsExactly(alone.flows());
    assertThat(beside.netSales()).containsExactly(alone.netSales());
    assertThat(beside.hours()).containsExactly(alone.hours());
    assertThat(beside.space()).isDeepEqualTo(alone.space());
    assertThat(beside.salesBySeason()).containsExactly(alone.salesBySeason());
    assertThat(beside.unitsBySeason()).isDeepEqualTo(alone.unitsBySeason());
    assertThat(beside.stockBySeason()).isDeepEqualTo(alone.stockBySeason());
    assertThat(beside.livingBySeason()).containsExactly(alone.livingBySeason());
    assertThat(beside.lotResults()).containsExactly(alone.lotResults());
    assertThat(beside.lotSales()).containsExactly(alone.lotSales());
    assertThat(beside.lotUnits()).containsExactly(alone.lotUnits());
    assertThat(beside.horizonValue()).isEqualTo(alone.horizonValue());
    for (CostKind kind : CostKind.values()) {
      assertThat(beside.cost(kind)).isEqualTo(alone.cost(kind));
    }
  }
}
