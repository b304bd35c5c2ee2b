package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.money.Accounts;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Purchase;
import growingon.nursery.species.Species;
import growingon.project.history.SeasonStock;
import growingon.project.lot.LotHistory;
import growingon.project.lot.Luck;
import growingon.project.need.SpaceUse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for every projection. */
class ProjectionProperties {
  @Provide
  Arbitrary<List<Lot>> lots() {
    return lot().list().ofMinSize(1).ofMaxSize(5).map(ProjectionProperties::named);
  }

  private static Arbitrary<Lots> lot() {
    Arbitrary<String> species = Arbitraries.of("maple", "elm", "larch");
    Arbitrary<Integer> arrival = Arbitraries.integers().between(-30, 30);
    Arbitrary<Integer> quantity = Arbitraries.integers().between(0, 300);
    Arbitrary<Double> trunk = Arbitraries.doubles().between(5, 45);
    Arbitrary<Double> spread = Arbitraries.doubles().between(0, 0.4);
    Arbitrary<Double> firsts = Arbitraries.doubles().between(0, 1);
    Arbitrary<Integer> kept = Arbitraries.integers().between(0, 10);
    Arbitrary<Double> held = Arbitraries.doubles().between(0, 1);
    return Combinators.combine(species, arrival, quantity, trunk, spread, firsts, kept, held)
        .as(ProjectionProperties::lot);
  }

  private static Lots lot(
      String species,
      int arrival,
      int quantity,
      double trunk,
      double spread,
      double firsts,
      int kept,
      double held) {
    var month = Nurseries.NOV_2026.plusMonths(arrival);
    Lots lot =
        Lots.lot(species + arrival)
            .species(species)
            .arrived(month.getYear(), month.getMonthValue())
            .quantity(quantity * 2)
            .kept(Math.min(kept, quantity) * 2)
            .trunks(trunk, spread)
            .quality(firsts, (1 - firsts) / 2, false)
            .hold("branched", held)
            .place("ground")
            .plantsPerM2(9)
            .route(quantity % 2 == 0 ? "field tree" : "liner");
    return arrival < 0 ? lot.unitCost(3) : lot.bought(11, 80).apart(quantity % 3);
  }

  private static List<Lot> named(List<Lots> lots) {
    List<Lot> named = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      Lot lot = lots.get(i).build();
      named.add(lot.withQuantity("lot " + i, lot.quantity(), lot.kept()));
    }
    return named;
  }

  private static Accounts accounts(Nurseries nursery) {
    return Accounts.of(nursery.project());
  }

  /** The program checks the balance itself; here it is checked once more over the whole plan. */
  @Property(tries = 200)
  void conservation_arrivedIsDeadCulledSoldAndStanding(@ForAll("lots") List<Lot> lots) {
    for (LotHistory lot : Nurseries.working().lots(lots).project().lots()) {
      double gone = lot.diedBefore();
      for (int month = 0; month < lot.months(); month++) {
        gone += lot.died(month) + lot.culled(month) + lot.sold(month);
      }
      double standing =
          lot.lot().arrived().isAfter(Nurseries.NOV_2026.plusMonths(lot.months()))
              ? lot.lot().quantity()
              : lot.standing(lot.months() - 1);
      assertThat(gone + standing).isCloseTo(lot.lot().quantity(), within(1e-7));
      assertThat(lot.keptAtEnd()).isLessThanOrEqualTo(lot.standing(lot.months() - 1) + 1e-9);
    }
  }

  /** Lots know of each other through sales only, so it does not matter who runs them. */
  @Property(tries = 30)
  void lots_onAllProcessors_fareAsOneByOne(@ForAll("lots") List<Lot> lots) {
    Programme programme = Programme.of(Nurseries.working().lots(lots).scenario());
    Projection alone = new Run(programme, Luck.NONE).withHistories(true, false);
    Projection together = new Run(programme, Luck.NONE).withHistories(true, true);
    assertThat(together)
        .usingRecursiveComparison()
        .ignoringFields("scenario", "horizon")
        .isEqualTo(alone);
  }

  @Property(tries = 100)
  void moreLoss_neverGivesMorePlants(
      @ForAll("lots") List<Lot> lots,
      @ForAll @DoubleRange(min = 0, max = 0.3) double less,
      @ForAll @DoubleRange(min = 0, max = 0.3) double more) {
    Projection low =
        Nurseries.working().species(withLoss(less)).lots(asMaple(lots.get(0))).project();
    Projection high =
        Nurseries.working().species(withLoss(less + more)).lots(asMaple(lots.get(0))).project();
    assertThat(living(high.lots().get(0))).isLessThanOrEqualTo(living(low.lots().get(0)) + 1e-6);
  }

  /** Plants that live: standing and sold, since fewer living may sell earlier. */
  private static double living(LotHistory lot) {
    double living = lot.standing(lot.months() - 1);
    for (int month = 0; month < lot.months(); month++) {
      living += lot.sold(month);
    }
    return living;
  }

  private static List<Lot> asMaple(Lot lot) {
    return List.of(
        Lot.named(lot.name(), "maple")
            .form(lot.form())
            .quantity(lot.quantity())
            .arrived(lot.arrived())
            .counted(lot.counted())
            .trunks(lot.trunks())
            .quality(lot.quality())
            .potting(lot.potting())
            .standing(lot.standing())
            .route(lot.route())
            .lastStep(lot.lastStep())
            .trainingSince(lot.trainingSince())
            .hold(lot.hold())
            .kept(lot.kept())
            .notBefore(lot.notBefore())
            .apartMonths(lot.apartMonths())
            .unitCost(lot.unitCost())
            .purchase(lot.purchase())
            .papers(lot.papers())
            .build());
  }

  private static Species withLoss(double loss) {
    Species maple = Nurseries.working().nursery().species().get("maple");
    return Species.named(maple.name())
        .ladder(maple.ladder())
        .habit(maple.habit())
        .usualCondition(maple.usualCondition())
        .growth(maple.growth())
        .growthMonths(maple.growthMonths())
        .vigourSpread(maple.vigourSpread())
        .yearSpread(maple.yearSpread())
        .firstYearLoss(loss)
        .laterLoss(loss / 2)
        .lossMonths(maple.lossMonths())
        .lossSpread(maple.lossSpread())
        .checkFirstYear(maple.checkFirstYear())
        .checkSecondYear(maple.checkSecondYear())
        .potBoundMonths(maple.potBoundMonths())
        .potBoundFactor(maple.potBoundFactor())
        .winterPlace(maple.winterPlace())
        .healthNote(maple.healthNote())
        .build();
  }

  @Property(tries = 100)
  void halvingALotIntoTwoEqualLots_changesNoTotal(@ForAll("lots") List<Lot> lots) {
    List<Lot> halves = new ArrayList<>(lots);
    Lot whole = halves.remove(0);
    halves.add(0, half(whole, whole.name()));
    halves.add(1, half(whole, whole.name() + " too"));
    Accounts one = accounts(Nurseries.working().lots(lots));
    Accounts two = accounts(Nurseries.working().lots(halves));
    for (int month = 0; month < one.cash().months(); month++) {
      assertThat(two.cash().net(month)).isCloseTo(one.cash().net(month), within(1e-6));
      assertThat(two.hours().needed(month)).isCloseTo(one.hours().needed(month), within(1e-7));
      for (Optional<String> place : one.space().places()) {
        assertThat(two.space().months(place).get(month).neededM2())
            .isCloseTo(one.space().months(place).get(month).neededM2(), within(1e-7));
      }
    }
  }

  /** Half the plants and half of what is paid for the whole order. */
  private static Lot half(Lot whole, String name) {
    return whole
        .withQuantity(name, whole.quantity() / 2, whole.kept() / 2)
        .withPurchase(
            whole
                .purchase()
                .map(
                    each ->
                        new Purchase(
                            each.unitPrice(),
                            each.carriage() / 2,
                            each.importCharges() / 2,
                            each.currency(),
                            each.lossSure(),
                            each.fails())));
  }

  @Property(tries = 100)
  void orderOfStockRows_changesNothing(
      @ForAll("lots") List<Lot> lots, @ForAll @IntRange(min = 0, max = 1000) int seed) {
    List<Lot> shuffled = new ArrayList<>(lots);
    Collections.shuffle(shuffled, new Random(seed));
    Projection one = Nurseries.working().lots(lots).project();
    Projection two = Nurseries.working().lots(shuffled).project();
    for (LotHistory lot : one.lots()) {
      assertThat(two.lot(lot.lot().name()).sales()).isEqualTo(lot.sales());
      for (int month = 0; month < lot.months(); month++) {
        assertThat(two.lot(lot.lot().name()).standing(month)).isEqualTo(lot.standing(month));
      }
    }
  }

  /** What rounding leaves of a lot is nobody's plant; it once made a month the first of sales. */
  @Property(tries = 100)
  void noSale_isOfWhatRoundingLeft(@ForAll("lots") List<Lot> lots) {
    for (LotHistory lot : Nurseries.working().lots(lots).project().lots()) {
      assertThat(lot.sales()).allMatch(sale -> sale.units() > 1e-9);
    }
  }

  @Property(tries = 60)
  void planOfFewerSeasons_isThePrefixOfALongerOne(
      @ForAll("lots") List<Lot> lots, @ForAll @IntRange(min = 3, max = 6) int seasons) {
    Projection some = Nurseries.working().seasons(seasons).lots(lots).project();
    Projection more = Nurseries.working().seasons(seasons + 1).lots(lots).project();
    for (LotHistory lot : some.lots()) {
      LotHistory longer = more.lot(lot.lot().name());
      assertThat(longer.sales().subList(0, lot.sales().size())).isEqualTo(lot.sales());
      for (int month = 0; month < lot.months(); month++) {
        assertThat(longer.standing(month)).isEqualTo(lot.standing(month));
      }
    }
  }

  @Property(tries = 60)
  void space_isAdditiveOverLots_whileNothingIsSold(@ForAll("lots") List<Lot> lots) {
    SpaceUse together = SpaceUse.of(withoutDemand(lots).project());
    List<SpaceUse> alone =
        lots.stream().map(lot -> SpaceUse.of(withoutDemand(List.of(lot)).project())).toList();
    for (Optional<String> place : together.places()) {
      for (int month = 0; month < 72; month++) {
        double sum = 0;
        for (SpaceUse each : alone) {
          sum += each.months(place).get(month).neededM2();
        }
        assertThat(together.months(place).get(month).neededM2()).isCloseTo(sum, within(1e-9));
      }
    }
  }

  private static Nurseries withoutDemand(List<Lot> lots) {
    return Nurseries.working().withoutDemand().lots(lots);
  }

  /**
   * K = 16 and K = 256 agree: the mean trunk within 10 % (16 points cut the lognormal's tail
   * short), and the share of a lot at or above a grade within 0.2, about twice the discrepancy of a
   * 16-point lattice.
   */
  @Property(tries = 60, seed = "20261125")
  void sixteenSlices_agreeWith256_withinTheirDiscrepancy(@ForAll("lots") List<Lot> lots) {
    Projection few = withoutDemand(lots).slices(16).project();
    Projection many = withoutDemand(lots).slices(256).project();
    for (LotHistory lot : many.lots()) {
      LotHistory coarse = few.lot(lot.lot().name());
      for (int i = 0; i < lot.seasons().size(); i++) {
        SeasonStock fine = lot.seasons().get(i);
        SeasonStock rough = coarse.seasons().get(i);
        assertThat(rough.meanTrunkMm())
            .isCloseTo(fine.meanTrunkMm(), within(0.1 * fine.meanTrunkMm() + 1e-9));
        for (int grade = 0; grade < lot.grades().size(); grade++) {
          double difference = atLeast(rough, grade) - atLeast(fine, grade);
          assertThat(Math.abs(difference)).isLessThanOrEqualTo(0.2 * lot.lot().quantity() + 1e-9);
        }
      }
    }
  }

  private static double atLeast(SeasonStock stock, int grade) {
    double plants = 0;
    for (int g = grade; g < stock.standing().grades(); g++) {
      plants += stock.standing().allOfGrade(g);
    }
    return plants;
  }
}
