package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.place.PlaceKind;
import growingon.nursery.route.Step;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Mix;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.time.Month;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Plants that stand apart: their work, their space, and what waits for their release. */
class TimeApartTest {
  private static Nurseries nursery(Step... steps) {
    return Nurseries.bare()
        .seasons(3)
        .place(Nurseries.place("bench", PlaceKind.BENCH, 100))
        .place(Nurseries.place("field", PlaceKind.FIELD_BED, 100))
        .place(Nurseries.place("corner", PlaceKind.QUARANTINE, 20))
        .pot(Nurseries.roundPot("pot"))
        .component(new Component("bark", 50, 8, 0, 0.8))
        .mix(new Mix("mix", Map.of("bark", 1.0), 0, 0))
        .route("r", steps);
  }

  private static Lots rootBalls() {
    return Lots.lot("a").arrived(2027, 2).apart(3).place("bench").route("r").bought(9, 0);
  }

  private static Step potting() {
    return Steps.onArrival("pot").minutes(6).pot("pot", "mix").place("bench").gap(100).build();
  }

  @Test
  void rootBallOfFebruary_apartForThreeMonths_isPottedInFebruary() {
    LotHistory lot = nursery(potting()).lot(rootBalls().build()).project().lot("a");

    assertThat(lot.happenings()).extracting(Happening::month).containsExactly(3);
    assertThat(lot.happenings().get(0).place()).contains("corner");
    assertThat(lot.happenings().get(0).toPlace()).contains("corner");
  }

  /** Pot to pot a 200 mm pot takes 0.04 m², with its own gap of 100 mm 0.09. */
  @Test
  void pottedApart_standsPotToPotInTheCorner_andInItsOwnPlaceFromRelease() {
    LotHistory lot = nursery(potting()).lot(rootBalls().build()).project().lot("a");

    for (int month = 3; month < 6; month++) {
      assertThat(lot.stood(month).place()).contains("corner");
      assertThat(lot.stood(month).m2()).isCloseTo(100 * 0.04, within(1e-9));
      assertThat(lot.stood(month).weight().kg()).isPositive();
    }
    assertThat(lot.stood(6).place()).contains("bench");
    assertThat(lot.stood(6).m2()).isCloseTo(100 * 0.09, within(1e-9));
  }

  @Test
  void crownWiderThanThePot_countsApartToo() {
    LotHistory lot = nursery(potting()).lot(rootBalls().crown(300).build()).project().lot("a");

    assertThat(lot.stood(3).m2()).isCloseTo(100 * 0.09, within(1e-9));
  }

  /** 60 under 12 mm, 20 to 30 mm, 8 above: common practice, no source. */
  @Test
  void unpottedApart_standsHeeledIn_byItsTrunk() {
    assertThat(heeledIn(11.9)).isCloseTo(100 / 60.0, within(1e-9));
    assertThat(heeledIn(12)).isCloseTo(100 / 20.0, within(1e-9));
    assertThat(heeledIn(30)).isCloseTo(100 / 20.0, within(1e-9));
    assertThat(heeledIn(30.1)).isCloseTo(100 / 8.0, within(1e-9));
  }

  private static double heeledIn(double trunkMm) {
    Step later = Steps.in("pot", Month.OCTOBER, 0).pot("pot", "mix").build();
    Lots lot = rootBalls().trunks(trunkMm, 0).plantsPerM2(3);
    return nursery(later).lot(lot.build()).project().lot("a").stood(3).m2();
  }

  @Test
  void heeledInDensity_ofTheLot_winsOverTheTrunk() {
    Step later = Steps.in("pot", Month.OCTOBER, 0).pot("pot", "mix").build();
    LotHistory lot =
        nursery(later).lot(rootBalls().plantsPerM2(3).heeledIn(25).build()).project().lot("a");

    assertThat(lot.stood(3).m2()).isCloseTo(4, within(1e-9));
    assertThat(lot.stood(6).m2()).isCloseTo(100 / 3.0, within(1e-9));
  }

  @Test
  void plantingOut_waitsForRelease_withItsMinutesThen_andMovesNothing() {
    Projection projection =
        nursery(
                Steps.onArrival("plant").minutes(3).place("field").plantsPerM2(9).build(),
                Steps.in("undercut", Month.MARCH, 1).build())
            .lot(rootBalls().build())
            .project();
    LotHistory lot = projection.lot("a");

    assertThat(lot.happenings()).extracting(Happening::month).containsExactly(6, 16);
    assertThat(lot.works()).extracting(Work::month).containsExactly(6);
    assertThat(lot.stood(5).place()).contains("corner");
    assertThat(lot.stood(6).place()).contains("field");
    assertThat(projection.remarks()).isEmpty();
  }

  @Test
  void plantingOut_whoseWindowHasClosedByRelease_isDoneInThatMonthAllTheSame() {
    Projection projection =
        nursery(Steps.in("plant", Month.MARCH, 0).minutes(3).place("field").plantsPerM2(9).build())
            .lot(rootBalls().build())
            .project();

    assertThat(projection.lot("a").happenings()).extracting(Happening::month).containsExactly(6);
    assertThat(projection.remarks()).isEmpty();
  }

  @Test
  void heldOfficially_nothingIsDoneButCare_andThePottingFollowsOnRelease() {
    LotHistory lot = nursery(potting()).lot(rootBalls().untouched().build()).project().lot("a");

    assertThat(lot.happenings()).extracting(Happening::month).containsExactly(6);
    assertThat(lot.stood(3).m2()).isCloseTo(100 / 60.0, within(1e-9));
    assertThat(lot.stood(6).pot()).isEqualTo("pot");
  }

  @Test
  void withoutAQuarantinePlace_itWaitsInItsOwn_andStepsTakeItAwayFromReleaseOnly() {
    LotHistory lot =
        Nurseries.bare()
            .seasons(2)
            .place(Nurseries.place("bench", PlaceKind.BENCH, 100))
            .place(Nurseries.place("ground", PlaceKind.STANDING_GROUND, 100))
            .pot(Nurseries.roundPot("pot"))
            .route("r", Steps.onArrival("pot").pot("pot", null).place("ground").gap(100).build())
            .lot(rootBalls().build())
            .project()
            .lot("a");

    assertThat(lot.stood(3).place()).contains("bench");
    assertThat(lot.stood(3).m2()).isCloseTo(4, within(1e-9));
    assertThat(lot.stood(6).place()).contains("ground");
    assertThat(lot.stood(6).m2()).isCloseTo(9, within(1e-9));
  }
}
