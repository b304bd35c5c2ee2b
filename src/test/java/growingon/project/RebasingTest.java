package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Quality;
import growingon.project.history.GradedPlants;
import growingon.project.history.Happening;
import growingon.project.history.Missed;
import growingon.project.history.MonthStock;
import growingon.project.history.Sale;
import growingon.project.history.Work;
import growingon.project.known.LotFacts;
import growingon.project.known.MonthFacts;
import growingon.project.known.MonthFacts.Change;
import growingon.project.known.MonthFacts.Count;
import growingon.project.known.MonthFacts.Leaving;
import growingon.project.known.MonthFacts.Way;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import growingon.project.lot.LotPlan;
import growingon.project.lot.Luck;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A projection that starts from what is known to be there. */
class RebasingTest {
  private static final double TINY = 1e-9;

  /** So few plants are no plants: their trunks and their sale mean nothing. */
  private static final double DUST = 1e-6;

  private static Scenario nursery() {
    return Nurseries.working()
        .lot(Lots.boughtMaples("field maples").hold("branched", 0.3).build())
        .lot(Lots.pottedElms("elms").unitCost(6).build())
        .lot(
            Lots.lot("larches")
                .species("larch")
                .quantity(150)
                .sizeClass(9, 16)
                .arrived(2025, 11)
                .pot("7 litre")
                .place("bench")
                .route("liner")
                .build())
        .scenario();
  }

  /** What a diary says that was kept by a nursery in which everything came as expected. */
  private static Facts asExpected(Projection expected, int through, List<String> of) {
    Map<String, LotFacts> facts = new HashMap<>();
    for (String lot : of) {
      Map<Integer, MonthFacts> months = new HashMap<>();
      LotHistory history = expected.lot(lot);
      for (int month = history.start(); month <= through; month++) {
        months.put(month, month(history, month, month == through));
      }
      facts.put(lot, new LotFacts(1, through, through, OptionalDouble.empty(), months));
    }
    return new Facts(facts);
  }

  private static MonthFacts month(LotHistory history, int month, boolean counted) {
    List<Change> changes = new ArrayList<>();
    double died = history.died(month);
    for (Happening step : history.happenings()) {
      if (step.month() == month) {
        changes.add(new Change(Way.DIED, Optional.empty(), step.died()));
        changes.add(new Change(Way.CULLED, Optional.empty(), step.culled()));
        died -= step.died();
      }
    }
    changes.add(new Change(Way.DIED, Optional.empty(), died));
    return new MonthFacts(
        changes,
        sales(history, month),
        counted ? Optional.of(count(history, month)) : Optional.empty());
  }

  private static List<Leaving> sales(LotHistory history, int month) {
    List<Leaving> sales = new ArrayList<>();
    for (Sale sale : history.sales()) {
      if (sale.month() == month) {
        sales.add(
            new Leaving(
                true,
                Optional.of(history.grades().get(sale.grade()).name()),
                Optional.of(sale.quality()),
                sale.units(),
                OptionalDouble.of(sale.money())));
      }
    }
    return sales;
  }

  private static Count count(LotHistory history, int month) {
    MonthStock stock = history.monthStock(month);
    Map<Quality, Double> qualities = new EnumMap<>(Quality.class);
    for (Quality quality : Quality.values()) {
      qualities.put(quality, stock.standing().of(quality));
    }
    return new Count(
        OptionalDouble.of(history.standing(month)),
        qualities,
        OptionalDouble.of(stock.meanTrunkMm()),
        OptionalDouble.of(stock.trunkSpread()));
  }

  private static List<LotState> run(Scenario scenario, Facts facts) {
    Programme programme = Programme.of(scenario);
    Run run = new Run(programme, Luck.NONE, facts);
    List<LotState> lots = new ArrayList<>();
    for (LotPlan plan : programme.lots()) {
      LotHistory history = new LotHistory(plan, programme.horizon().months(), 1, true);
      lots.add(new LotState(plan, run, history, history));
    }
    run.run(lots);
    return lots;
  }

  private static void assertSameFrom(int month, Projection expected, Projection found) {
    for (LotHistory before : expected.lots()) {
      LotHistory after = found.lot(before.lot().name());
      for (int later = month; later < before.months(); later++) {
        assertSame(after.standing(later), before.standing(later));
        assertSame(after.died(later), before.died(later));
        assertSame(after.culled(later), before.culled(later));
        assertSame(after.careCost(later), before.careCost(later));
        assertSame(after.careHours(later), before.careHours(later));
        if (before.standing(later) > DUST) {
          assertSame(after.monthStock(later), before.monthStock(later));
        }
      }
      assertSameSales(salesFrom(month, after), salesFrom(month, before));
      assertSameWork(worksFrom(month, after), worksFrom(month, before));
      assertThat(after.reached()).isEqualTo(before.reached());
    }
    List<Missed> before = missedFrom(month, expected);
    List<Missed> after = missedFrom(month, found);
    assertThat(after).hasSameSizeAs(before);
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i).row()).isEqualTo(before.get(i).row());
      assertSame(after.get(i).units(), before.get(i).units());
    }
  }

  private static void assertSame(double found, double expected) {
    assertThat(found).isCloseTo(expected, within(TINY * Math.max(1, Math.abs(expected))));
  }

  private static void assertSame(MonthStock found, MonthStock expected) {
    assertSame(found.meanTrunkMm(), expected.meanTrunkMm());
    assertSame(Math.pow(found.trunkSpread(), 2), Math.pow(expected.trunkSpread(), 2));
    for (int grade = GradedPlants.NO_GRADE; grade < expected.standing().grades(); grade++) {
      for (Quality quality : Quality.values()) {
        assertSame(found.standing().of(quality, grade), expected.standing().of(quality, grade));
      }
    }
    assertSame(found.standing().kept(), expected.standing().kept());
  }

  private static List<Sale> salesFrom(int month, LotHistory history) {
    return history.sales().stream()
        .filter(sale -> sale.month() >= month && sale.units() > DUST)
        .toList();
  }

  private static void assertSameSales(List<Sale> found, List<Sale> expected) {
    assertThat(found).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      Sale sale = expected.get(i);
      assertThat(found.get(i))
          .extracting(Sale::month, Sale::row, Sale::grade, Sale::quality)
          .containsExactly(sale.month(), sale.row(), sale.grade(), sale.quality());
      assertSame(found.get(i).units(), sale.units());
      assertSame(found.get(i).money(), sale.money());
    }
  }

  private static List<Work> worksFrom(int month, LotHistory history) {
    return history.works().stream().filter(work -> work.month() >= month).toList();
  }

  private static void assertSameWork(List<Work> found, List<Work> expected) {
    assertThat(found).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      assertThat(found.get(i).job()).isEqualTo(expected.get(i).job());
      assertSame(found.get(i).hours(), expected.get(i).hours());
    }
  }

  private static List<Missed> missedFrom(int month, Projection projection) {
    return projection.missed().stream().filter(each -> each.month() >= month).toList();
  }

  private static void assertSameSlices(Scenario scenario, Facts facts) {
    List<LotState> expected = run(scenario, Facts.NONE);
    List<LotState> found = run(scenario, facts);
    for (int lot = 0; lot < expected.size(); lot++) {
      for (int slice = 0; slice < 64; slice++) {
        assertSame(found.get(lot).plants.trunk(slice), expected.get(lot).plants.trunk(slice));
      }
    }
  }

  /** Months at which the lots are unpotted, just potted, in training, sold from, sold out. */
  @ParameterizedTest
  @ValueSource(ints = {3, 5, 9, 17, 30, 44, 60})
  void rebasing_withWhatWasExpected_changesNothingLater(int through) {
    Scenario scenario = nursery();
    Projection expected = Projector.project(scenario, Facts.NONE);
    List<String> all = scenario.lots().stream().map(Lot::name).toList();
    Facts facts = asExpected(expected, through, all);
    assertSameFrom(through + 1, expected, Projector.project(scenario, facts));
    assertSameSlices(scenario, facts);
  }

  /** What one lot sold met demand, and the others do not meet it once more. */
  @ParameterizedTest
  @ValueSource(strings = {"field maples", "elms", "larches"})
  void rebasing_ofOneLot_changesNoOther(String lot) {
    Scenario scenario = nursery();
    Projection expected = Projector.project(scenario, Facts.NONE);
    Facts facts = asExpected(expected, 40, List.of(lot));
    Projection found = Projector.project(scenario, facts);
    assertSameFrom(41, expected, found);
    for (LotHistory other : found.lots()) {
      if (!other.lot().name().equals(lot)) {
        assertSameSales(other.sales(), expected.lot(other.lot().name()).sales());
      }
    }
  }

  private static Facts counted(String lot, int month, Count count) {
    MonthFacts facts = new MonthFacts(List.of(), List.of(), Optional.of(count));
    return new Facts(
        Map.of(lot, new LotFacts(1, month, month, OptionalDouble.empty(), Map.of(month, facts))));
  }

  @Property(tries = 60)
  void measuredTrunks_areMetExactly_andKeepTheirRank(
      @ForAll @DoubleRange(min = 8, max = 40) double mean,
      @ForAll @DoubleRange(min = 0, max = 0.8) double spread) {
    Count count =
        new Count(
            OptionalDouble.empty(), Map.of(), OptionalDouble.of(mean), OptionalDouble.of(spread));
    Projection found = Projector.project(nursery(), counted("larches", 10, count));
    MonthStock stock = found.lot("larches").monthStock(10);
    assertThat(stock.meanTrunkMm()).isCloseTo(mean, within(1e-9 * mean));
    assertThat(stock.trunkSpread()).isCloseTo(spread, within(1e-7));
  }

  @Test
  void count_ofPlantsAlone_scalesAllSlicesAlike() {
    Projection expected = Projector.project(nursery(), Facts.NONE);
    Count count =
        new Count(OptionalDouble.of(75), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
    Projection found = Projector.project(nursery(), counted("elms", 0, count));
    MonthStock before = expected.lot("elms").monthStock(0);
    MonthStock after = found.lot("elms").monthStock(0);
    assertThat(found.lot("elms").standing(0)).isCloseTo(75, within(TINY));
    assertThat(found.lot("elms").went(0)).isCloseTo(15, within(TINY));
    assertThat(after.meanTrunkMm()).isEqualTo(before.meanTrunkMm());
  }

  @Test
  void count_ofQualities_findsThirdsThatNobodyExpected() {
    Count count =
        new Count(
            OptionalDouble.of(80),
            Map.of(Quality.FIRST, 48.0, Quality.SECOND, 20.0, Quality.THIRD, 12.0),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    MonthStock stock =
        Projector.project(nursery(), counted("larches", 2, count)).lot("larches").monthStock(2);
    assertThat(stock.standing().of(Quality.FIRST)).isCloseTo(48, within(TINY));
    assertThat(stock.standing().of(Quality.SECOND)).isCloseTo(20, within(TINY));
    assertThat(stock.standing().of(Quality.THIRD)).isCloseTo(12, within(TINY));
  }

  @Test
  void plantsFoundInALotThatWasGone_areLikeThoseOfItsStart() {
    Count none =
        new Count(OptionalDouble.of(0), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
    Map<Integer, MonthFacts> months =
        Map.of(
            1, new MonthFacts(List.of(), List.of(), Optional.of(none)),
            3,
                new MonthFacts(
                    List.of(new Change(Way.CAME, Optional.empty(), 7)),
                    List.of(),
                    Optional.empty()));
    Facts facts = new Facts(Map.of("elms", new LotFacts(1, 3, 3, OptionalDouble.empty(), months)));
    LotHistory elms = Projector.project(nursery(), facts).lot("elms");
    assertThat(elms.standing(2)).isZero();
    assertThat(elms.standing(3)).isCloseTo(7, within(TINY));
  }

  @Test
  void saleOfWhatIsNotReady_isTakenFromAllPlantsAlike() {
    Leaving sold =
        new Leaving(true, Optional.of("specimen"), Optional.empty(), 10, OptionalDouble.of(1500));
    MonthFacts month = new MonthFacts(List.of(), List.of(sold), Optional.empty());
    Facts facts =
        new Facts(Map.of("elms", new LotFacts(1, 0, 0, OptionalDouble.empty(), Map.of(0, month))));
    LotHistory elms = Projector.project(nursery(), facts).lot("elms");
    assertThat(elms.sold(0)).isCloseTo(10, within(TINY));
    assertThat(elms.standing(0)).isCloseTo(80, within(TINY));
    assertThat(elms.sales().get(0).money()).isCloseTo(1500, within(TINY));
  }

  @Test
  void partOfALot_isThatPartInEverything() {
    Facts quarter =
        new Facts(
            Map.of(
                "elms",
                new LotFacts(
                    0.25, Integer.MIN_VALUE, Integer.MIN_VALUE, OptionalDouble.empty(), Map.of())));
    LotHistory whole = Projector.project(nursery(), Facts.NONE).lot("elms");
    LotHistory part = Projector.project(nursery(), quarter).lot("elms");
    assertThat(part.quantity()).isEqualTo(22.5);
    for (int month = 0; month < 4; month++) {
      assertThat(part.died(month)).isCloseTo(whole.died(month) / 4, within(TINY));
    }
    assertThat(part.monthStock(3).meanTrunkMm())
        .isCloseTo(whole.monthStock(3).meanTrunkMm(), within(TINY));
  }
}
