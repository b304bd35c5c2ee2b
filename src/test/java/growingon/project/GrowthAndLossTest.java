package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.market.Demand;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.time.MonthShares;
import growingon.nursery.time.MonthSpan;
import growingon.project.history.GradedPlants;
import growingon.project.history.Missed;
import growingon.project.history.Sale;
import growingon.project.history.Use;
import growingon.project.lot.LotHistory;
import java.time.Month;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.junit.jupiter.api.Test;

/** Growth, losses, qualities and grades of the projection, checked against outside values. */
class GrowthAndLossTest {
  /**
   * Diameter classes moved forward: Kinane, "Stand Table Projection" (2025), after Univ. of Georgia
   * PMRC reports 1996-1 and 2004-4. Survivors of classes 6 to 13 inches, each evenly spread over
   * its projected midpoint ± 0.5, counted by whole-inch class. Here: eight lots stated as size
   * classes of 100,000 times the survivors' number, grown by the step from one common start, and
   * graded on a ladder of whole inches. Inches stand for mm.
   */
  @Test
  void sizeClasses_standTable_matchesThePublishedOverlap() {
    double[] survivors = {
      28.056320, 39.031314, 54.082730, 39.028160, 31.237741, 18.223254, 13.880280, 7.491157
    };
    double[] midpoints = {
      7.830235, 8.995082, 10.143294, 11.277157, 12.398423, 13.508477, 14.608438, 15.699231
    };
    double[] published = {
      4.762969, 23.485303, 38.839361, 46.333017, 35.960959, 29.608815, 21.402985, 14.701094,
      10.698406, 5.238046
    };
    Grade[] inches =
        IntStream.rangeClosed(7, 16)
            .mapToObj(inch -> new Grade("inch " + inch, inch, inch - 0.5, 0, 0))
            .toArray(Grade[]::new);
    Nurseries nursery = Nurseries.bare().ladder("inches", inches).seasons(1).slices(512);
    for (int i = 0; i < survivors.length; i++) {
      // Every class grows by steady growth from its own class to its projected midpoint.
      double growth = midpoints[i] - (6 + i);
      Species tree = steady("class " + (6 + i), "inches", growth);
      int quantity = (int) Math.round(survivors[i] * 1e6);
      nursery
          .species(tree)
          .lot(
              Lots.lot("class " + (6 + i))
                  .species(tree.name())
                  .sizeClass(5.5 + i, 6.5 + i)
                  .quantity(quantity)
                  .build());
    }
    double[] counted = new double[published.length];
    for (LotHistory lot : nursery.project().lots()) {
      GradedPlants standing = lot.seasons().get(0).standing();
      for (int inch = 0; inch < counted.length; inch++) {
        counted[inch] += standing.of(Quality.FIRST, inch) / 1e6;
      }
    }
    // A slice is 1/512 of a class, so a class edge is met within one slice of each lot.
    for (int inch = 0; inch < counted.length; inch++) {
      assertThat(counted[inch]).isCloseTo(published[inch], within(0.11));
    }
    assertThat(IntStream.range(0, counted.length).mapToDouble(i -> counted[i]).sum())
        .isCloseTo(231.030954, within(1e-4));
  }

  private static Species steady(String name, String ladder, double mmAYear) {
    Species bare = Nurseries.bareSpecies(name, ladder);
    return withGrowth(bare, new Curve.Steady(mmAYear, Double.POSITIVE_INFINITY));
  }

  private static Species withGrowth(Species s, Curve curve) {
    return Species.named(s.name())
        .ladder(s.ladder())
        .habit(s.habit())
        .usualCondition(s.usualCondition())
        .growth(Map.of("pot", curve))
        .growthMonths(s.growthMonths())
        .vigourSpread(s.vigourSpread())
        .yearSpread(s.yearSpread())
        .firstYearLoss(s.firstYearLoss())
        .laterLoss(s.laterLoss())
        .lossMonths(s.lossMonths())
        .lossSpread(s.lossSpread())
        .checkFirstYear(s.checkFirstYear())
        .checkSecondYear(s.checkSecondYear())
        .potBoundMonths(s.potBoundMonths())
        .potBoundFactor(s.potBoundFactor())
        .winterPlace(s.winterPlace())
        .healthNote(s.healthNote())
        .build();
  }

  private static Species withLosses(Species s, double first, double later, MonthShares months) {
    return Species.named(s.name())
        .ladder(s.ladder())
        .habit(s.habit())
        .usualCondition(s.usualCondition())
        .growth(s.growth())
        .growthMonths(s.growthMonths())
        .vigourSpread(s.vigourSpread())
        .yearSpread(s.yearSpread())
        .firstYearLoss(first)
        .laterLoss(later)
        .lossMonths(months)
        .lossSpread(s.lossSpread())
        .checkFirstYear(s.checkFirstYear())
        .checkSecondYear(s.checkSecondYear())
        .potBoundMonths(s.potBoundMonths())
        .potBoundFactor(s.potBoundFactor())
        .winterPlace(s.winterPlace())
        .healthNote(s.healthNote())
        .build();
  }

  private static Species withChecks(Species s, double one, double two, int months, double bound) {
    return Species.named(s.name())
        .ladder(s.ladder())
        .habit(s.habit())
        .usualCondition(s.usualCondition())
        .growth(s.growth())
        .growthMonths(s.growthMonths())
        .vigourSpread(s.vigourSpread())
        .yearSpread(s.yearSpread())
        .firstYearLoss(s.firstYearLoss())
        .laterLoss(s.laterLoss())
        .lossMonths(s.lossMonths())
        .lossSpread(s.lossSpread())
        .checkFirstYear(one)
        .checkSecondYear(two)
        .potBoundMonths(months)
        .potBoundFactor(bound)
        .winterPlace(s.winterPlace())
        .healthNote(s.healthNote())
        .build();
  }

  /**
   * A lognormal lot under steady growth: the share above a grade is the lognormal tail beyond the
   * grade less the growth, by Hipparchus, within the half slice that K = 256 can resolve.
   */
  @Test
  void lognormalLot_steadyGrowth_shareAboveAGrade_isTheLognormalTail() {
    double mean = 20;
    double spread = 0.3;
    double sigma = Math.sqrt(Math.log1p(spread * spread));
    LogNormalDistribution trunks =
        new LogNormalDistribution(Math.log(mean) - sigma * sigma / 2, sigma);
    Projection projection =
        Nurseries.bare()
            .ladder("one", new Grade("big", 1, 30, 0, 0))
            .slices(256)
            .seasons(4)
            .lot(Lots.lot("a").quantity(1000).trunks(mean, spread).build())
            .project();
    for (int season = 0; season < 4; season++) {
      double grown = 6.0 * (season + 1);
      double tail = 1 - trunks.cumulativeProbability(30 - grown);
      GradedPlants standing = projection.lots().get(0).seasons().get(season).standing();
      double graded = standing.of(Quality.FIRST, 0) / 1000;
      assertThat(graded).isCloseTo(tail, within(0.5 / 256 + 1e-9));
    }
  }

  /**
   * Acer campestre street trees survive 95.5 % a year, so 79.4 % five years (Roman and Scatena
   * 2011; the five-year figure is derived).
   */
  @Test
  void yearlyLoss_streetTreeSurvival_is79PercentAfterFiveYears() {
    Species tree =
        withLosses(Nurseries.bareSpecies("maple", "one"), 0.045, 0.045, MonthShares.EVEN);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .seasons(5)
            .lot(Lots.lot("a").species("maple").quantity(1000).build())
            .project();
    assertThat(projection.lots().get(0).standing(59) / 1000).isCloseTo(0.794, within(0.0005));
  }

  /** Monthly survival (1 − q)^s compounds to 1 − q whatever the month shares. */
  @Test
  void yearlyLoss_unevenMonthShares_compoundsToTheYear() {
    MonthShares uneven = MonthShares.of(5, 4, 1, 0, 0, 2, 6, 6, 1, 0, 0, 3);
    Species tree = withLosses(Nurseries.bareSpecies("maple", "one"), 0.12, 0.03, uneven);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .seasons(2)
            .lot(Lots.lot("a").species("maple").quantity(1000).build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.standing(11)).isCloseTo(880, within(1e-9));
    assertThat(lot.standing(23)).isCloseTo(880 * 0.97, within(1e-9));
  }

  @Test
  void firstYear_isTheArrivalMonthAndTheElevenAfter() {
    Species tree = withLosses(Nurseries.bareSpecies("maple", "one"), 0.5, 0, MonthShares.EVEN);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .seasons(3)
            .lot(Lots.lot("a").species("maple").arrived(2027, 2).build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.standing(2)).isZero();
    assertThat(lot.died(3)).isPositive();
    assertThat(lot.died(14)).isPositive();
    assertThat(lot.died(15)).isZero();
    assertThat(lot.standing(14)).isCloseTo(50, within(1e-9));
  }

  /** 9,500 to sell at a loss of 5 %: start exactly 10,000 (Rutgers geranium budget). */
  @Test
  void startNumber_rutgersGeraniums_tenThousandStartedSellNineThousandFiveHundred() {
    Projection projection =
        Nurseries.bare()
            .route("r", Steps.onArrival("pot").loss(0.05).build())
            .sellsAll("one", "any", 1.2)
            .seasons(1)
            .lot(Lots.lot("geraniums").quantity(10_000).route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.sold(0)).isCloseTo(9_500, within(1e-9));
    assertThat(lot.sales().get(0).money()).isCloseTo(11_400, within(1e-9));
  }

  /**
   * The check after transplanting lasts longer than a season (Arboriculture and Urban Forestry,
   * trunk growth of moved against unmoved trees, year 1 and 2): growth in the month of root work
   * and the next 11 by the first value, 12 more by the second, then full.
   */
  @Test
  void rootWorkCheck_slowsGrowthForTwoYears_andNewRootWorkRestartsIt() {
    Species tree = withChecks(Nurseries.bareSpecies("ash", "one"), 0.5, 0.75, 1200, 1);
    Nurseries once =
        Nurseries.bare()
            .species(tree)
            .route("r", Steps.onArrival("tidy roots").rootWork().build())
            .lot(Lots.lot("a").route("r").build());
    assertTrunks(once.project(), 13, 17.5, 23.5);
    Nurseries twice =
        Nurseries.bare()
            .species(tree)
            .route(
                "r",
                Steps.onArrival("tidy roots").rootWork().build(),
                Steps.in("again", Month.NOVEMBER, 1).rootWork().build())
            .lot(Lots.lot("a").route("r").build());
    assertTrunks(twice.project(), 13, 16, 20.5);
  }

  /** Counted 18 months before the plan, roots cut 6 months before it: the first year is full. */
  @Test
  void rootWorkCheck_countOlderThanTheRootWork_doesNotSlowTheMonthsBeforeIt() {
    Species tree = withChecks(Nurseries.bareSpecies("ash", "one"), 0.5, 0.75, 1200, 1);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .lot(Lots.lot("a").arrived(2024, 11).counted(2025, 5).rootWork(2026, 5).build())
            .project();
    // 10 + 6 in the year before the work, then 3 in half a year checked by half
    double start = 10 + 6 + 0.5 * 3;
    assertTrunks(projection, start + 0.5 * 3 + 0.75 * 3, start + 1.5 + 2.25 + 2.25 + 3);
  }

  @Test
  void growthAfterRootWork_asTheStepSays_insteadOfTheSpeciesCheck() {
    Species tree = withChecks(Nurseries.bareSpecies("ash", "one"), 0.5, 0.75, 1200, 1);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .route("r", Steps.onArrival("trim").rootWork().growthAfter(0.9, 1).build())
            .lot(Lots.lot("a").route("r").build())
            .project();
    assertTrunks(projection, 15.4, 21.4, 27.4);
  }

  private static void assertTrunks(Projection projection, double... atSeasonEnds) {
    for (int season = 0; season < atSeasonEnds.length; season++) {
      assertThat(projection.lots().get(0).seasons().get(season).meanTrunkMm())
          .isCloseTo(atSeasonEnds[season], within(1e-9));
    }
  }

  @Test
  void potBound_fullRateForItsMonths_thenTheFactor_andPottingRestartsIt() {
    Species tree = withChecks(Nurseries.bareSpecies("ash", "one"), 1, 1, 12, 0.5);
    Nurseries nursery =
        Nurseries.bare()
            .species(tree)
            .pot(Nurseries.roundPot("p"))
            .route(
                "r",
                Steps.onArrival("pot").pot("p", null).build(),
                Steps.in("repot", Month.NOVEMBER, 2).pot("p", null).build())
            .seasons(4)
            .lot(Lots.lot("a").route("r").build());
    assertTrunks(nursery.project(), 16, 19, 25, 28);
  }

  @Test
  void conditionChanges_theTrunkCarriesOver_andTheNewCurveGoesOnFromThere() {
    Species bare = Nurseries.bareSpecies("ash", "one");
    Species tree =
        Species.named("ash")
            .ladder("one")
            .habit(bare.habit())
            .usualCondition("pot")
            .growth(
                Map.of(
                    "pot", new Curve.Steady(2, Double.POSITIVE_INFINITY),
                    "field", new Curve.Logistic(60, 0.6)))
            .growthMonths(bare.growthMonths())
            .vigourSpread(0)
            .yearSpread(0)
            .lossMonths(bare.lossMonths())
            .lossSpread(0)
            .checkFirstYear(1)
            .checkSecondYear(1)
            .potBoundMonths(1200)
            .potBoundFactor(1)
            .build();
    Place field =
        Place.named("field", PlaceKind.FIELD_BED)
            .condition(Optional.of("field"))
            .squareMetres(100)
            .usableShare(1)
            .liftFrom(LiftFrom.GROUND)
            .build();
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .pot(Nurseries.roundPot("p"))
            .place(field)
            .place(Nurseries.place("bench", PlaceKind.BENCH, 100))
            .route(
                "r",
                Steps.in("lift and pot", Month.NOVEMBER, 1).pot("p", null).place("bench").build())
            .lot(Lots.lot("a").route("r").place("field").plantsPerM2(5).build())
            .project();
    double lifted = 60 * 10 / (10 + 50 * Math.exp(-0.6));
    assertTrunks(projection, lifted, lifted + 2, lifted + 4);
  }

  @Test
  void countOlderThanThePlan_isCarriedForwardByGrowthAndLosses() {
    Species tree = withLosses(Nurseries.bareSpecies("maple", "one"), 0.2, 0.1, MonthShares.EVEN);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .seasons(1)
            .lot(
                Lots.lot("a")
                    .species("maple")
                    .arrived(2024, 11)
                    .counted(2025, 11)
                    .quantity(100)
                    .build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.diedBefore()).isCloseTo(10, within(1e-9));
    assertThat(lot.standing(11)).isCloseTo(81, within(1e-9));
    assertThat(lot.seasons().get(0).meanTrunkMm()).isCloseTo(22, within(1e-9));
  }

  @Test
  void sort_thirdsNotPotted_areCulledThere_andUseNoPotMixOrMinutes() {
    Projection projection =
        Nurseries.bare()
            .pot(Nurseries.roundPot("p"))
            .route("r", Steps.onArrival("pot").sort().minutes(6).pot("p", null).build())
            .lot(Lots.lot("a").quality(0.5, 0.2, false).route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.culled(0)).isCloseTo(30, within(1e-9));
    assertThat(lot.uses()).extracting(Use::amount).containsExactly(70.0);
    assertThat(lot.works().get(0).hours()).isCloseTo(7, within(1e-9));
    GradedPlants standing = lot.seasons().get(0).standing();
    assertThat(standing.of(Quality.FIRST, 0)).isCloseTo(50, within(1e-9));
    assertThat(standing.of(Quality.SECOND, 0)).isCloseTo(20, within(1e-9));
  }

  @Test
  void sort_lotOfThirdsAlone_buysNoPots() {
    Projection projection =
        Nurseries.bare()
            .pot(Nurseries.roundPot("p"))
            .route("r", Steps.onArrival("pot").sort().minutes(6).pot("p", null).build())
            .lot(Lots.lot("a").quality(0, 0, false).route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.uses()).isEmpty();
    assertThat(lot.works()).isEmpty();
    assertThat(lot.standing(0)).isZero();
  }

  @Test
  void lotWithoutASortingStep_isSortedOnArrival() {
    Projection projection =
        Nurseries.bare().lot(Lots.lot("a").quality(0.6, 0.3, false).build()).project();
    assertThat(projection.lots().get(0).culled(0)).isCloseTo(10, within(1e-9));
  }

  @Test
  void unsortedLot_isNotSoldBeforeItsSort() {
    Projection projection =
        Nurseries.bare()
            .route("r", Steps.in("pot", Month.MARCH, 0).sort().build())
            .sellsAll("one", "any", 10)
            .lot(Lots.lot("a").quality(0.8, 0.1, false).route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.sold(3)).isZero();
    assertThat(lot.sold(4)).isCloseTo(90, within(1e-9));
    assertThat(lot.sales())
        .extracting(sale -> Math.round(sale.money() * 1e6) / 1e6)
        .containsExactly(800.0, 60.0);
  }

  @Test
  void cull_takesTheWorstQualityFirst_andNeverKeptPlants() {
    Projection projection =
        Nurseries.bare()
            .quality(Quality.THIRD, 0.2, true)
            .route("r", Steps.onArrival("thin").cull(0.3).build())
            .lot(Lots.lot("a").quantity(110).kept(10).quality(0.5, 0.3, true).route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    GradedPlants standing = lot.seasons().get(0).standing();
    assertThat(lot.culled(0)).isCloseTo(30, within(1e-9));
    assertThat(standing.of(Quality.FIRST, 0)).isCloseTo(50, within(1e-9));
    assertThat(standing.of(Quality.SECOND, 0)).isCloseTo(20, within(1e-9));
    assertThat(standing.of(Quality.THIRD)).isCloseTo(0, within(1e-9));
    assertThat(lot.keptAtEnd()).isCloseTo(10, within(1e-9));
  }

  @Test
  void thirdWithoutAPrice_doesNotGrade() {
    Projection projection =
        Nurseries.bare()
            .quality(Quality.THIRD, 0, true)
            .lot(Lots.lot("a").quality(0.5, 0.2, true).build())
            .project();
    GradedPlants standing = projection.lots().get(0).seasons().get(0).standing();
    assertThat(standing.of(Quality.THIRD, GradedPlants.NO_GRADE)).isCloseTo(30, within(1e-9));
    assertThat(standing.of(Quality.THIRD, 0)).isZero();
  }

  @Test
  void grade_needsTrunkAndTraining() {
    Projection projection =
        Nurseries.bare()
            .ladder("one", new Grade("started", 1, 10, 0, 0), new Grade("trained", 2, 10, 24, 0))
            .route("r", Steps.in("tie in", Month.JANUARY, 0).trainingStarts().build())
            .lot(Lots.lot("a").route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.reached().get(0).middle()).hasValue(0);
    assertThat(lot.reached().get(1).middle()).hasValue(26);
  }

  @Test
  void plantThickEnough_lackingAtMostTheWaitMonthsOfTraining_waitsForTheHigherGrade() {
    Nurseries nursery =
        Nurseries.bare()
            .ladder("one", new Grade("started", 1, 10, 0, 0), new Grade("trained", 2, 10, 24, 6))
            .route("r", Steps.onArrival("tie in").trainingStarts().build())
            .demand(Nurseries.demandRow("one", "started", OptionalDouble.of(12), 50))
            .demand(Nurseries.demandRow("one", "trained", OptionalDouble.empty(), 90))
            .lot(Lots.lot("a").route("r").build());
    LotHistory lot = nursery.project().lots().get(0);
    // One a month as started until it lacks 6 months of 24; then it waits until it is trained.
    assertThat(lot.sold(17)).isCloseTo(1, within(1e-9));
    assertThat(lot.sold(18)).isZero();
    assertThat(lot.sold(23)).isZero();
    assertThat(lot.sold(24)).isCloseTo(82, within(1e-9));
  }

  /** Thick enough for the branched grade, which asks for 12 months of training, wait 18. */
  @Test
  void trainingThatIsToStart_withinTheWaitMonths_isWaitedFor() {
    // Training starts in May 2027, six months ahead: 18 months are lacking, and that is waited for.
    assertThat(firstSaleWhereTrainingStarts(Steps.in("wire", Month.MAY, 0))).isEqualTo(18);
    // In June it would be 19: sold at once, at the lower grade.
    assertThat(firstSaleWhereTrainingStarts(Steps.in("wire", Month.JUNE, 0))).isZero();
    // A step that a trunk decides has no date.
    assertThat(firstSaleWhereTrainingStarts(Steps.once("wire", Month.MAY, 1))).isZero();
  }

  private static int firstSaleWhereTrainingStarts(Steps step) {
    return Nurseries.bare()
        .ladder("one", new Grade("any", 1, 1, 0, 0), new Grade("branched", 2, 5, 12, 18))
        .sellsAll("one", "any", 10)
        .sellsAll("one", "branched", 30)
        .route("r", step.trainingStarts().build())
        .lot(Lots.lot("a").route("r").build())
        .project()
        .lot("a")
        .sales()
        .get(0)
        .month();
  }

  @Test
  void holdShare_isNotSoldBelowItsGrade() {
    Nurseries nursery =
        Nurseries.bare()
            .ladder("one", new Grade("small", 1, 10, 0, 0), new Grade("big", 2, 16, 0, 0))
            .sellsAll("one", "small", 10)
            .sellsAll("one", "big", 30)
            .lot(Lots.lot("a").hold("big", 0.4).build());
    LotHistory lot = nursery.project().lots().get(0);
    assertThat(lot.sold(0)).isCloseTo(60, within(1e-9));
    assertThat(lot.sold(11)).isCloseTo(40, within(1e-9));
  }

  @Test
  void keptPlants_takeSpaceWorkAndLosses_butAreNotSold() {
    Species tree = withLosses(Nurseries.bareSpecies("maple", "one"), 0.1, 0, MonthShares.EVEN);
    Projection projection =
        Nurseries.bare()
            .species(tree)
            .place(Nurseries.place("bench", PlaceKind.BENCH, 10))
            .route("r", Steps.in("wire", Month.JANUARY, 0).minutes(60).build())
            .sellsAll("one", "any", 10)
            .seasons(1)
            .lot(
                Lots.lot("a")
                    .species("maple")
                    .quantity(20)
                    .kept(20)
                    .route("r")
                    .place("bench")
                    .plantsPerM2(4)
                    .build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.sales()).isEmpty();
    assertThat(lot.keptAtEnd()).isCloseTo(18, within(1e-9));
    assertThat(lot.stood(0).m2()).isCloseTo(5, within(1e-9));
    assertThat(lot.works().get(0).plants()).isCloseTo(20 * Math.pow(0.9, 2 / 12.0), within(1e-9));
  }

  @Test
  void sales_oldestArrivalFirst_ofLotsThatArrivedTogetherTheSameShare() {
    Nurseries nursery =
        Nurseries.bare()
            .demand(Nurseries.demandRow("one", "any", OptionalDouble.of(1440), 1))
            .lot(Lots.lot("young").arrived(2026, 9).build())
            .lot(Lots.lot("old b").arrived(2025, 9).quantity(50).build())
            .lot(Lots.lot("old a").arrived(2025, 9).quantity(150).build());
    Projection projection = nursery.project();
    assertThat(projection.lot("old a").sold(0)).isCloseTo(90, within(1e-9));
    assertThat(projection.lot("old b").sold(0)).isCloseTo(30, within(1e-9));
    assertThat(projection.lot("young").sold(0)).isZero();
    assertThat(projection.lot("young").sold(1)).isCloseTo(40, within(1e-9));
  }

  @Test
  void demand_speciesRowsBeforeAnySpecies_dearerFirst_firstsBeforeSeconds() {
    Demand any = Nurseries.demandRow("one", "any", OptionalDouble.of(120), 50);
    Demand cheap = row("ash", 240, 20);
    Demand dear = row("ash", 240, 30);
    Projection projection =
        Nurseries.bare()
            .demand(any)
            .demand(cheap)
            .demand(dear)
            .lot(Lots.lot("a").quantity(45).quality(30 / 45.0, 15 / 45.0, true).build())
            .project();
    assertThat(projection.lots().get(0).sales())
        .extracting(Sale::row, Sale::quality, sale -> Math.round(sale.units() * 1e6) / 1e6)
        .containsExactly(
            tuple(2, Quality.FIRST, 20.0),
            tuple(1, Quality.FIRST, 10.0),
            tuple(1, Quality.SECOND, 10.0),
            tuple(0, Quality.SECOND, 5.0));
    assertThat(projection.missed().stream().filter(each -> each.month() == 0))
        .extracting(Missed::row, each -> Math.round(each.units() * 1e6) / 1e6)
        .containsExactly(tuple(0, 5.0));
  }

  private static Demand row(String species, double units, double price) {
    return new Demand(
        Optional.of(species),
        "one",
        "any",
        Optional.empty(),
        MonthSpan.ALL_YEAR,
        OptionalDouble.of(units),
        price,
        0,
        0,
        0);
  }

  @Test
  void price_morePerMm_addsForTheTrunkAboveTheGradesLeast() {
    Demand row =
        new Demand(
            Optional.empty(),
            "one",
            "any",
            Optional.empty(),
            new MonthSpan(10, 10),
            OptionalDouble.empty(),
            40,
            2,
            0,
            0);
    Projection projection =
        Nurseries.bare()
            .demand(row)
            .seasons(1)
            .lot(Lots.lot("a").sizeClass(10, 20).quality(0, 1, true).build())
            .project();
    // Mean trunk 15 + 6 mm by the end of October, 20 above the least of 1 mm.
    assertThat(projection.lots().get(0).sales().get(0).money())
        .isCloseTo(100 * (40 + 2 * 20) * 0.6, within(1e-6));
  }

  @Test
  void demandOfMonthsBeforeThePlan_isNotCaughtUp() {
    Demand row = Nurseries.demandRow("one", "any", OptionalDouble.of(12), 1);
    Projection projection =
        Nurseries.bare()
            .demand(row)
            .seasonStart(Month.OCTOBER)
            .seasons(1)
            .firstMonth(2027, 4)
            .lot(Lots.lot("a").counted(2027, 4).build())
            .project();
    assertThat(projection.horizon().months()).isEqualTo(6);
    assertThat(projection.horizon().seasonLabel(0)).isEqualTo("2026/27 from Apr");
    double sold = projection.lots().get(0).sales().stream().mapToDouble(Sale::units).sum();
    assertThat(sold).isCloseTo(6, within(1e-9));
  }

  /**
   * A cohort through size classes (desert tortoise size matrix without births, Doak et al. 1994 in
   * Caswell 2001): a lot cannot run a stage matrix, so this is the nearest of its kind: the
   * survivors of the first class, 56.7 of 100 staying after a year when 14.9 move up, are deaths of
   * 28.4 % a year whatever the class.
   */
  @Test
  void cohort_tortoiseFirstYear_losesTheMatrixsDeaths() {
    Species tree =
        withLosses(Nurseries.bareSpecies("t", "one"), 1 - 0.567 - 0.149, 0, MonthShares.EVEN);
    Projection projection =
        Nurseries.bare().species(tree).seasons(1).lot(Lots.lot("a").species("t").build()).project();
    assertThat(projection.lots().get(0).standing(11)).isCloseTo(56.7 + 14.9, within(1e-9));
  }
}
