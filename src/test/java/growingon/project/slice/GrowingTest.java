package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Nursery;
import growingon.nursery.lot.Hold;
import growingon.nursery.lot.Lot;
import growingon.nursery.market.Grade;
import growingon.nursery.market.Quality;
import growingon.nursery.species.Curve;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.history.BeforeCount;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The plants of one lot, by hand and against counting slice by slice. Of 100 ash of 10 mm 10 are
 * kept; of the others 45 are firsts, 27 seconds and 18 thirds, which sell as no grade. They grow 6
 * mm a year.
 */
class GrowingTest {
  private static final Offset<Double> TINY = within(1e-9);
  private static final int SLICES = 16;
  private static final Curve SIX = steady(6);

  private static Curve steady(double mm) {
    return new Curve.Steady(mm, Double.POSITIVE_INFINITY);
  }

  private static Lots ash() {
    return Lots.lot("ash").kept(10).quality(0.5, 0.3, true);
  }

  private static Growing fresh(Lot lot, double vigourSpread, double thicker, Grade... grades) {
    Nursery nursery =
        Nurseries.bare().quality(Quality.THIRD, 0, false).ladder("sizes", grades).nursery();
    GrowthStart start =
        new GrowthStart(
            lot,
            nursery.ladders().get("sizes"),
            vigourSpread,
            Lattice.of(SLICES),
            nursery.qualities());
    return new Growing(start, lot.quality(), thicker);
  }

  private static Growing begun(Lot lot, double vigourSpread, double thicker, Grade... grades) {
    Growing plants = fresh(lot, vigourSpread, thicker, grades);
    plants.growBy(SIX);
    return plants;
  }

  private static Growing begun(Lots lot) {
    return begun(lot.build(), 0, 1, new Grade("any", 1, 1, 0, 12));
  }

  /** Half of them dead, so that each of them stands for half a plant. */
  private static Growing halfDead() {
    Growing plants = begun(ash());
    assertThat(plants.die(50)).isEqualTo(50);
    return plants;
  }

  private static void assertPlants(
      Growing plants, double firsts, double seconds, double thirds, double kept) {
    assertThat(plants.standing(0).of(Quality.FIRST)).isCloseTo(firsts, TINY);
    assertThat(plants.standing(0).of(Quality.SECOND)).isCloseTo(seconds, TINY);
    assertThat(plants.standing(0).of(Quality.THIRD)).isCloseTo(thirds, TINY);
    assertThat(plants.standing(0).kept()).isCloseTo(kept, TINY);
    assertThat(plants.keptLiving()).isCloseTo(kept, TINY);
    assertThat(plants.living()).isCloseTo(firsts + seconds + thirds + kept, TINY);
    assertThat(plants.count()).isCloseTo(plants.living(), TINY);
  }

  @Test
  void plantsThatDie_areOfAllAlike_asFarAsThereAreAny() {
    Growing plants = begun(ash());
    assertPlants(plants, 45, 27, 18, 10);

    assertThat(plants.die(0)).isZero();
    assertThat(plants.die(20)).isEqualTo(20);
    assertPlants(plants, 36, 21.6, 14.4, 8);
    assertThat(plants.isEmpty()).isFalse();
    assertThat(plants.die(500)).isCloseTo(80, TINY);
    assertThat(plants.isEmpty()).isTrue();
    assertThat(plants.die(5)).isZero();
  }

  @Test
  void cullOfAShare_takesTheWorstFirst_orAllAlike_butNoKeptOnes() {
    Growing worst = begun(ash());
    assertThat(worst.cull(0.3, true)).isCloseTo(27, TINY);
    assertPlants(worst, 45, 18, 0, 10);
    assertThat(worst.cull(1, true)).isCloseTo(63, TINY);
    assertPlants(worst, 0, 0, 0, 10);

    Growing alike = begun(ash());
    assertThat(alike.cull(0.3, false)).isCloseTo(27, TINY);
    assertPlants(alike, 31.5, 18.9, 12.6, 10);
    assertThat(alike.cull(0, false)).isZero();

    Growing dead = halfDead();
    assertThat(dead.cull(0.3, true)).isCloseTo(13.5, TINY);
    assertPlants(dead, 22.5, 9, 0, 5);
    assertThat(dead.cull(0.2, false)).isCloseTo(6.3, TINY);
  }

  @Test
  void cullOfAQuality_isOfAllOfIt_orOfSoMany_asFarAsThereAreAny() {
    Growing plants = halfDead();

    assertThat(plants.cullAll(Quality.THIRD)).isCloseTo(9, TINY);
    assertThat(plants.cullPlants(Quality.SECOND, 7)).isCloseTo(7, TINY);
    assertPlants(plants, 22.5, 6.5, 0, 5);
    assertThat(plants.cullPlants(Quality.SECOND, 0)).isZero();
    assertThat(plants.cullPlants(Quality.SECOND, 70)).isCloseTo(6.5, TINY);
    assertThat(plants.cullPlants(Quality.THIRD, 1)).isZero();
    assertPlants(plants, 22.5, 0, 0, 5);
  }

  @Test
  void plantsTakenAlike_areNoKeptOnes_andAPartIsOfAll() {
    Growing plants = halfDead();
    assertThat(plants.takeAlike(15)).isCloseTo(15, TINY);
    assertPlants(plants, 15, 9, 6, 5);
    assertThat(plants.takeAlike(0)).isZero();
    assertThat(plants.takeAlike(500)).isCloseTo(30, TINY);
    assertPlants(plants, 0, 0, 0, 5);

    Growing part = begun(ash());
    part.keepPart(1);
    assertPlants(part, 45, 27, 18, 10);
    part.keepPart(0.25);
    assertPlants(part, 11.25, 6.75, 4.5, 2.5);
  }

  @Test
  void plantsThatCome_areLikeThoseThatAreThere_orLikeThoseOfTheStart() {
    Growing plants = begun(ash());
    plants.come(0);
    plants.come(50);
    assertPlants(plants, 67.5, 40.5, 27, 15);
    plants.die(150);
    plants.come(0);
    assertThat(plants.isEmpty()).isTrue();
    plants.come(20);
    assertPlants(plants, 10, 6, 4, 0);

    Growing allKept = begun(ash().kept(100));
    allKept.die(100);
    allKept.come(20);
    assertPlants(allKept, 20, 0, 0, 0);
  }

  @Test
  void plantsCounted_cameOrDied() {
    Growing plants = begun(ash());
    plants.countAs(60);
    assertPlants(plants, 27, 16.2, 10.8, 6);
    plants.countAs(120);
    assertPlants(plants, 54, 32.4, 21.6, 12);
  }

  /** 90 that are not kept are 3 to 1; of a quality that nobody knew of are some of all. */
  @Test
  void plantsSorted_areInTheProportionsCounted() {
    Growing plants = begun(ash());
    plants.sortAs(Map.of());
    assertPlants(plants, 45, 27, 18, 10);
    plants.sortAs(Map.of(Quality.FIRST, 30.0, Quality.THIRD, 10.0));
    assertPlants(plants, 67.5, 0, 22.5, 10);
    plants.sortAs(Map.of(Quality.SECOND, 5.0, Quality.THIRD, 5.0));
    assertPlants(plants, 0, 45, 45, 10);
    assertThat(plants.meanTrunk()).isCloseTo(10, TINY);
    plants.cull(1, true);
    plants.sortAs(Map.of(Quality.FIRST, 3.0));
    assertPlants(plants, 0, 0, 0, 10);
  }

  /** Of the slices' plants a tenth is kept; four fifths of the others are firsts or seconds. */
  private static double mean(Growing plants, DoubleUnaryOperator of) {
    Lattice lattice = Lattice.of(SLICES);
    IntToDoubleFunction weight = slice -> (10 + 90 * lattice.shareBelow(0.8, slice)) / SLICES;
    double all = IntStream.range(0, SLICES).mapToDouble(weight).sum();
    return IntStream.range(0, SLICES)
            .mapToDouble(i -> weight.applyAsDouble(i) * of.applyAsDouble(plants.trunk(i)))
            .sum()
        / all;
  }

  @Test
  void meanOfTrunksAndOfTheirSquares_isThatOfThePlantsThatSlicesStandFor() {
    Growing plants = begun(ash().trunks(10, 0.3).build(), 0.2, 1, new Grade("any", 1, 1, 0, 12));
    double before = plants.meanSquaredTrunk();
    plants.cullAll(Quality.THIRD);

    assertThat(plants.meanSquaredTrunk()).isNotCloseTo(before, within(1e-6));
    for (int month = 0; month < 3; month++) {
      plants.die(5);
      plants.grow(0.5);
      assertThat(plants.meanTrunk()).isCloseTo(mean(plants, mm -> mm), TINY);
      assertThat(plants.meanSquaredTrunk()).isCloseTo(mean(plants, mm -> mm * mm), TINY);
    }
    double mean = plants.meanTrunk();
    double spread = Math.sqrt(plants.meanSquaredTrunk() - mean * mean) / mean;
    assertThat(plants.beforeCount().trunkSpread()).isCloseTo(spread, TINY);
    assertThat(plants.stock(0, plants.standing(0)).trunkSpread()).isCloseTo(spread, TINY);
    assertThat(plants.beforeCount().plants()).isCloseTo(67, TINY);
    double thickest = IntStream.range(0, SLICES).mapToDouble(plants::trunk).max().orElseThrow();
    assertThat(plants.stock(0, plants.standing(0)).thickestMm()).isEqualTo(thickest);
    assertThat(plants.squaredTrunkAtMost()).isGreaterThanOrEqualTo(thickest * thickest);
  }

  @Test
  void plantsAllAlike_haveTheSizeOfEach_andReachItJustThen() {
    Growing plants = begun(ash());
    plants.grow(0.5);

    assertThat(plants.meanTrunk()).isCloseTo(13, TINY);
    assertThat(plants.meanSquaredTrunk()).isCloseTo(169, TINY);
    assertThat(plants.squaredTrunkAtMost()).isCloseTo(169, TINY);
    assertThat(plants.reaches(12.9)).isTrue();
    assertThat(plants.reaches(13.1)).isFalse();
    plants.growBy(SIX);
    plants.growBy(steady(12));
    plants.grow(0.5);
    assertThat(plants.meanTrunk()).isCloseTo(19, TINY);
    plants.die(100);
    assertThat(plants.beforeCount()).isEqualTo(new BeforeCount(0, 0, 0));
    assertThat(plants.stock(0, plants.standing(0)).meanTrunkMm()).isZero();
    assertThat(plants.stock(0, plants.standing(0)).trunkSpread()).isZero();
  }

  @Test
  void plantsBeforeTheirFirstMonth_haveTheTrunksStated() {
    Growing plants = fresh(ash().build(), 0, 1.2, new Grade("any", 1, 1, 0, 12));

    assertThat(plants.meanTrunk()).isCloseTo(12, TINY);
    assertThat(plants.meanSquaredTrunk()).isCloseTo(144, TINY);
  }

  /** The thickest and the strongest are never the same slice: a trunk at most is just that. */
  @Test
  void meanTrunk_reachesWhatItIs_whereTrunksDiffer() {
    Growing plants = begun(ash().trunks(10, 0.3).build(), 0.2, 1, new Grade("any", 1, 1, 0, 12));
    plants.grow(1);

    assertThat(plants.reaches(plants.meanTrunk() - 1e-6)).isTrue();
    assertThat(plants.reaches(plants.meanTrunk() + 1e-6)).isFalse();
  }

  private static final Grade[] SIZES = {
    new Grade("small", 1, 9, 0, 0),
    new Grade("middling", 2, 12, 0, 0),
    new Grade("big", 3, 18, 0, 0),
    new Grade("huge", 4, 25, 0, 0)
  };

  /** Slices by their trunks now, each the same share of 100 plants. */
  private static void assertGraded(Growing plants) {
    plants.gradeForSale(0);
    int thickEnough = 0;
    for (int grade = SIZES.length - 1; grade >= 0; grade--) {
      double least = SIZES[grade].leastTrunkMm();
      int before = thickEnough;
      thickEnough =
          (int) IntStream.range(0, SLICES).filter(slice -> plants.trunk(slice) >= least).count();
      double ready = 100.0 / SLICES * (thickEnough - before);
      assertThat(plants.ready(Quality.FIRST, grade)).isCloseTo(ready, TINY);
      assertThat(plants.standing(0).allOfGrade(grade)).isCloseTo(ready, TINY);
      assertThat(plants.shareGraded(grade, 0)).isCloseTo((double) thickEnough / SLICES, TINY);
    }
  }

  private static Growing allFirsts(double thicker) {
    return begun(Lots.lot("ash").trunks(10, 0.25).build(), 0.3, thicker, SIZES);
  }

  /**
   * By the law that they start with, by another one, after a measuring, and thicker than stated.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.17, 0.83})
  void plantsThatGrow_areReadyAsTheGradesThatTheirTrunksHave(double thicker) {
    Growing plants = allFirsts(thicker);
    assertThat(plants.meanTrunk()).isCloseTo(10 * thicker, within(0.1));
    for (int month = 0; month < 40; month++) {
      assertGraded(plants);
      plants.grow(1 / 12.0);
      if (month == 9) {
        plants.growBy(steady(9));
      }
      if (month == 19) {
        plants.measured(14, OptionalDouble.of(0.35));
        assertThat(plants.meanTrunk()).isCloseTo(14, TINY);
        assertThat(plants.beforeCount().trunkSpread()).isCloseTo(0.35, TINY);
      }
    }
    assertGraded(plants);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void lotThatGoesOnApart_growsAndSellsByItself(boolean byAnotherLaw) {
    Growing plants = allFirsts(1);
    plants.grow(0.3);
    if (byAnotherLaw) {
      plants.growBy(steady(9));
      plants.grow(0.1);
    }
    assertGraded(plants);
    Growing apart = new Growing(plants);
    for (int month = 0; month < 24; month++) {
      apart.grow(1 / 12.0);
      assertGraded(apart);
    }
    assertGraded(plants);
    plants.grow(2);
    assertGraded(plants);
    plants.sell(Quality.FIRST, 3, 1);
    assertThat(plants.ready(Quality.FIRST, 3)).isZero();
    assertGraded(apart);
  }

  @Test
  void trunksMeasuredWithoutASpread_keepTheOneTheyHad() {
    Growing plants = allFirsts(1);
    plants.grow(1);
    double spread = plants.beforeCount().trunkSpread();
    plants.measured(20, OptionalDouble.empty());

    assertThat(plants.meanTrunk()).isCloseTo(20, TINY);
    assertThat(plants.beforeCount().trunkSpread()).isCloseTo(spread, TINY);
    assertGraded(plants);
  }

  /** Where all were alike, the slices that were to be the thinnest are so again. */
  @Test
  void trunksAllAlike_measuredWithASpread_differByIt() {
    Growing plants = begun(ash());
    plants.measured(20, OptionalDouble.of(0.3));

    assertThat(plants.meanTrunk()).isCloseTo(20, TINY);
    assertThat(plants.beforeCount().trunkSpread()).isCloseTo(0.3, TINY);
    assertThat(IntStream.range(1, SLICES)).allMatch(i -> plants.trunk(i) > plants.trunk(i - 1));
    plants.measured(22, OptionalDouble.of(0));
    assertThat(plants.beforeCount().trunkSpread()).isCloseTo(0, within(1e-6));
    assertThat(plants.meanTrunk()).isCloseTo(22, TINY);
  }

  /** A year on all have 16 mm, which is 15 above the least of the grade. */
  @Test
  void plantsSold_areOfTheirQualityAndGrade_andAreNoMoreReady() {
    Growing plants = begun(ash());
    plants.grow(1);
    plants.gradeForSale(0);

    assertThat(plants.ready(Quality.FIRST, 0)).isCloseTo(45, TINY);
    assertThat(plants.ready(Quality.THIRD, 0)).isZero();
    assertThat(plants.mmAboveLeast(Quality.FIRST, 0)).isCloseTo(45 * 15, TINY);
    assertThat(plants.readyAfter(Quality.FIRST, 0, new double[] {0.2, 0.5, 0.9}, 2))
        .isCloseTo(18, TINY);
    plants.sell(Quality.FIRST, 0, 0.2);
    assertThat(plants.ready(Quality.FIRST, 0)).isCloseTo(36, TINY);
    assertPlants(plants, 36, 27, 18, 10);
    plants.die(45.5);
    assertThat(plants.ready(Quality.FIRST, 0)).isCloseTo(18, TINY);
    assertThat(plants.offered(Quality.FIRST, 0)).isCloseTo(18, TINY);
    assertThat(plants.readyAfter(Quality.FIRST, 0, new double[] {0.5}, 1)).isCloseTo(9, TINY);
    assertThat(plants.mmAboveLeast(Quality.FIRST, 0)).isCloseTo(18 * 15, TINY);
    plants.sell(Quality.FIRST, 0, 1);
    assertThat(plants.offered(Quality.FIRST, 0)).isZero();
    assertPlants(plants, 0, 13.5, 9, 5);
  }

  private static Growing forSale() {
    Growing plants = begun(ash());
    plants.grow(1);
    plants.gradeForSale(0);
    return plants;
  }

  private static void assertTaken(
      Taken taken, int grade, Quality quality, double plants, double mm) {
    assertThat(taken.grade()).isEqualTo(grade);
    assertThat(taken.quality()).isEqualTo(quality);
    assertThat(taken.plants()).isCloseTo(plants, TINY);
    assertThat(taken.mmAboveLeast()).isCloseTo(mm, TINY);
  }

  /** Of 30 seconds there are 27, and 3 are firsts. */
  @Test
  void plantsTaken_areWhatIsSaidOfThem_thenOfTheBestThatIsReady() {
    Growing plants = forSale();
    List<Taken> taken =
        Taken.of(plants, Optional.of(0), Optional.of(Quality.SECOND), 30, List.of(0), true);

    assertThat(taken).hasSize(2);
    assertTaken(taken.get(0), 0, Quality.SECOND, 27, 15);
    assertTaken(taken.get(1), 0, Quality.FIRST, 3, 15);
    assertPlants(plants, 42, 0, 18, 10);
  }

  /** 45 firsts and 27 seconds are ready; of 23 more 18 are thirds, and 5 are kept ones. */
  @Test
  void plantsTakenThatWereNotReady_areOfAllAlike_keptOnesLast() {
    Growing plants = forSale();
    List<Taken> taken = Taken.of(plants, Optional.empty(), Optional.empty(), 95, List.of(0), false);

    assertThat(taken).hasSize(3);
    assertTaken(taken.get(0), 0, Quality.FIRST, 45, 0);
    assertTaken(taken.get(1), 0, Quality.SECOND, 27, 0);
    assertTaken(taken.get(2), -1, Quality.FIRST, 23, 0);
    assertPlants(plants, 0, 0, 0, 5);
  }

  @Test
  void plantsTakenAsAGradeThatTheyAreNot_areOfOneThatIsReady() {
    Growing plants = allFirsts(1);
    plants.gradeForSale(0);
    double small = plants.ready(Quality.FIRST, 0);
    double middling = plants.ready(Quality.FIRST, 1);
    List<Taken> taken =
        Taken.of(
            plants, Optional.of(3), Optional.empty(), middling + 2, List.of(3, 2, 1, 0), false);

    assertThat(taken).hasSize(2);
    assertTaken(taken.get(0), 1, Quality.FIRST, middling, 0);
    assertTaken(taken.get(1), 0, Quality.FIRST, 2, 0);
    assertThat(plants.ready(Quality.FIRST, 0)).isCloseTo(small - 2, TINY);
  }

  private static Growing holding(Hold.Which which) {
    Lot lot = Lots.lot("ash").trunks(10, 0.1).build();
    return begun(
        lot.withHold(Optional.of(new Hold("big", 0.3, which))),
        0,
        1,
        new Grade("small", 1, 1, 0, 0),
        new Grade("big", 2, 100, 0, 0));
  }

  /** Half of 100 become seconds of which nobody knew: as of all, 30 in a hundred are held. */
  @Test
  void plantsOfAQualityThatNobodyKnewOf_areHeldAsTheOthers() {
    Growing plants = holding(Hold.Which.ALIKE);
    plants.sortAs(Map.of(Quality.FIRST, 1.0, Quality.SECOND, 1.0));
    plants.gradeForSale(0);

    assertPlants(plants, 50, 50, 0, 0);
    assertThat(plants.ready(Quality.FIRST, 0)).isCloseTo(35, TINY);
    assertThat(plants.ready(Quality.SECOND, 0)).isCloseTo(35, TINY);
  }

  private static double trunks(Growing plants, int from, int until) {
    return IntStream.range(from, until).mapToDouble(plants::trunk).sum();
  }

  /**
   * Slices go from the thinnest to the thickest, 6.25 plants each: 70 that are free are 11 of them
   * and a fifth of the next.
   */
  @Test
  void plantsHeld_areTheThickest_orAShareOfAll() {
    Growing best = holding(Hold.Which.BEST);
    best.gradeForSale(0);
    assertThat(best.ready(Quality.FIRST, 0)).isCloseTo(70, TINY);
    assertThat(best.mmAboveLeast(Quality.FIRST, 0))
        .isCloseTo(6.25 * (trunks(best, 0, 11) + 0.2 * best.trunk(11)) - 70, within(1e-6));
    assertThat(best.living()).isCloseTo(100, TINY);

    Growing alike = holding(Hold.Which.ALIKE);
    alike.gradeForSale(0);
    assertThat(alike.ready(Quality.FIRST, 0)).isCloseTo(70, TINY);
    assertThat(alike.mmAboveLeast(Quality.FIRST, 0))
        .isCloseTo(0.7 * 6.25 * trunks(alike, 0, SLICES) - 70, within(1e-6));
  }
}
