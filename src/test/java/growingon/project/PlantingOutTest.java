package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Curve;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Pot;
import growingon.nursery.supply.PotShape;
import growingon.problem.Problem;
import growingon.project.history.Freed;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import growingon.project.pot.Lifting;
import java.time.Month;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Plants that are taken out of their pots and planted in a field bed. */
class PlantingOutTest {
  private static final Pot POT =
      Pot.named("3 litre", PotShape.LITRES)
          .topMm(180)
          .baseMm(180)
          .heightMm(180)
          .widthMm(180)
          .statedLitres(OptionalDouble.of(3))
          .fillShare(1)
          .price(2)
          .reuseShare(0.5)
          .emptyKg(0.1)
          .build();

  private static final Place FIELD =
      Place.named("field", PlaceKind.FIELD_BED)
          .condition(Optional.of("field"))
          .squareMetres(100)
          .usableShare(1)
          .liftFrom(LiftFrom.GROUND)
          .build();

  /** 9 mm a year in the field; in a pot it has outgrown after a year, a fifth of that. */
  private static Species ash(Optional<String> winterPlace) {
    Species bare = Nurseries.bareSpecies("ash", "one");
    return Species.named("ash")
        .ladder("one")
        .habit(bare.habit())
        .usualCondition("pot")
        .growth(
            Map.of(
                "pot", new Curve.Steady(2, Double.POSITIVE_INFINITY),
                "field", new Curve.Steady(9, Double.POSITIVE_INFINITY)))
        .growthMonths(bare.growthMonths())
        .vigourSpread(0)
        .yearSpread(0)
        .lossMonths(bare.lossMonths())
        .lossSpread(0)
        .checkFirstYear(1)
        .checkSecondYear(1)
        .potBoundMonths(0)
        .potBoundFactor(0.2)
        .winterPlace(winterPlace)
        .build();
  }

  private static Nurseries nursery(Steps plantingOut) {
    return Nurseries.bare()
        .seasons(4)
        .species(ash(Optional.of("tunnel")))
        .place(FIELD)
        .place(Nurseries.place("bench", PlaceKind.BENCH, 100))
        .place(Nurseries.place("tunnel", PlaceKind.TUNNEL, 100))
        .pot(POT)
        .route("r", plantingOut.minutes(2).place("field").plantsPerM2(9).build())
        .lot(Lots.lot("a").pot("3 litre").place("bench").route("r").build());
  }

  private static double trunkAfterFourSeasons(Projection projection) {
    return projection.lot("a").seasons().get(3).meanTrunkMm();
  }

  @Test
  void potNone_plantsOut_andFourFieldSeasonsGive46mm() {
    Projection projection = nursery(Steps.onArrival("plant out").outOfThePot()).project();
    LotHistory lot = projection.lot("a");

    assertThat(trunkAfterFourSeasons(projection)).isCloseTo(46, within(1e-9));
    assertThat(lot.stood(0).pot()).isEmpty();
    assertThat(lot.freed()).containsExactly(new Freed(1, "3 litre", 50));
    assertThat(lot.happenings()).extracting(Happening::job).containsExactly("plant out");
    assertThat(lot.happenings().get(0).lifting()).isEqualTo(Lifting.NOTHING_LIFTED);
  }

  @Test
  void fieldBedAndRootWork_plantsOutToo() {
    Projection projection = nursery(Steps.onArrival("plant out").rootWork()).project();

    assertThat(trunkAfterFourSeasons(projection)).isCloseTo(46, within(1e-9));
  }

  @Test
  void fieldBedAlone_setsThePotThere_withANotice() {
    Projection projection =
        nursery(Steps.onArrival("set out")).species(ash(Optional.empty())).project();

    assertThat(trunkAfterFourSeasons(projection)).isCloseTo(10 + 4 * 9 * 0.2, within(1e-9));
    assertThat(projection.lot("a").stood(10).pot()).isEqualTo("3 litre");
    assertThat(projection.remarks())
        .extracting(Problem::toString)
        .containsExactly(
            "lot a: the step set out sets it on the field bed field in its pot; if it is planted out,"
                + " write none under pot in that step, or mark its root work");
  }

  @Test
  void plantedOutInWinter_isCarriedInFirst_andStaysOutAfterwards() {
    LotHistory lot =
        nursery(Steps.in("plant out", Month.DECEMBER, 0).outOfThePot()).project().lot("a");

    assertThat(lot.stood(0).place()).contains("tunnel");
    assertThat(lot.stood(1).place()).contains("field");
    assertThat(lot.stood(14).place()).contains("field");
    assertThat(lot.works()).extracting(Work::job).doesNotContain(Work.WINTER_MOVE);
  }
}
