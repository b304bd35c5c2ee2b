package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.place.PlaceKind;
import growingon.nursery.route.Step;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Mix;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** When potted plants go into their winter place and back; winter runs from November to March. */
class WinterTest {
  private static final String TUNNEL = "tunnel";

  private static Nurseries nursery(Step... steps) {
    Species bare = Nurseries.bareSpecies("ash", "one");
    Species ash =
        Species.named("ash")
            .ladder("one")
            .habit(bare.habit())
            .usualCondition("pot")
            .growth(bare.growth())
            .growthMonths(bare.growthMonths())
            .vigourSpread(0)
            .yearSpread(0)
            .lotSpread(bare.lotSpread())
            .lossMonths(bare.lossMonths())
            .lossSpread(0)
            .checkFirstYear(1)
            .checkSecondYear(1)
            .potBoundMonths(1200)
            .potBoundFactor(1)
            .winterPlace(Optional.of(TUNNEL))
            .build();
    return Nurseries.bare()
        .seasons(2)
        .species(ash)
        .place(Nurseries.place("bench", PlaceKind.BENCH, 100))
        .place(Nurseries.place(TUNNEL, PlaceKind.TUNNEL, 100))
        .place(Nurseries.place("corner", PlaceKind.QUARANTINE, 100))
        .pot(Nurseries.roundPot("small"))
        .pot(Nurseries.litrePot("large", 20, 300))
        .component(new Component("bark", 50, 8, 0, 0.8))
        .mix(new Mix("mix", Map.of("bark", 1.0), 0, 0))
        .route("r", steps)
        .winter(0, 3);
  }

  private static LotHistory run(Lots lot, Step... steps) {
    return nursery(steps).lot(lot.place("bench").route("r").build()).project().lot("a");
  }

  private static List<Integer> moves(LotHistory lot) {
    return lot.works().stream()
        .filter(work -> work.job().equals(Work.WINTER_MOVE))
        .map(Work::month)
        .toList();
  }

  private static Step pots(Month month) {
    return Steps.in("pot", month, 0).pot("small", "mix").build();
  }

  @Test
  void lotAtHomeInItsWinterPlace_isNotMoved() {
    LotHistory lot =
        nursery()
            .lot(Lots.lot("a").pot("small").place(TUNNEL).route("none").build())
            .project()
            .lot("a");

    assertThat(moves(lot)).isEmpty();
    assertThat(lot.stood(8).place()).contains(TUNNEL);
  }

  @Test
  void atThePlansStart_lotsAreWhereTheCalendarPutsThem_unpaid() {
    LotHistory lot = run(Lots.lot("a").arrived(2026, 6).pot("small"));

    assertThat(lot.stood(0).place()).contains(TUNNEL);
    assertThat(moves(lot)).containsExactly(5, 12, 17);
  }

  @Test
  void treePottedInMarch_staysOut_forTheOneMonthOfWinterThatIsLeft() {
    LotHistory lot = run(Lots.lot("a").plantsPerM2(9), pots(Month.FEBRUARY));

    // Potted in February, it would go in for March alone.
    assertThat(lot.stood(3).place()).contains("bench");
    assertThat(lot.stood(4).place()).contains("bench");
    assertThat(moves(lot)).containsExactly(12, 17);
  }

  @Test
  void treePottedInJanuary_goesInAtTheStartOfFebruary() {
    LotHistory lot = run(Lots.lot("a").plantsPerM2(9), pots(Month.JANUARY));

    assertThat(lot.stood(2).place()).contains("bench");
    assertThat(lot.stood(3).place()).contains(TUNNEL);
    assertThat(moves(lot)).startsWith(3, 5);
  }

  @Test
  void wayBack_isWeighedBeforeTheMonthsPottingOn() {
    LotHistory lot =
        run(
            Lots.lot("a").pot("small"),
            Steps.in("pot on", Month.APRIL, 0).pot("large", "mix").build());
    List<Happening> inApril = lot.happenings().stream().filter(each -> each.month() == 5).toList();

    assertThat(inApril).extracting(Happening::job).containsExactly(Work.WINTER_MOVE, "pot on");
    assertThat(inApril.get(0).kgEach()).isLessThan(6);
    assertThat(inApril.get(1).kgEach()).isGreaterThan(15);
    assertThat(inApril.get(0).hours()).isCloseTo(100 * 3 / 60.0, within(1e-9));
  }

  @Test
  void pottedOfferThatArrivesInWinter_standsInItsWinterPlaceAtOnce_unpaid() {
    LotHistory lot = run(Lots.lot("a").arrived(2027, 3).pot("small").bought(9, 0));

    assertThat(lot.stood(4).place()).contains(TUNNEL);
    assertThat(moves(lot)).containsExactly(5, 12, 17);
    assertThat(lot.happenings().get(0).place()).contains(TUNNEL);
  }

  @Test
  void releaseIntoTheWinterPlace_isAPaidMoveFromQuarantine_anyOtherIsFree() {
    LotHistory inWinter = run(Lots.lot("a").arrived(2027, 1).apart(1).pot("small").bought(9, 0));
    assertThat(moves(inWinter)).startsWith(3, 5);
    assertThat(inWinter.happenings().get(0).place()).contains("corner");
    assertThat(inWinter.happenings().get(0).toPlace()).contains(TUNNEL);

    LotHistory inMarch = run(Lots.lot("a").arrived(2027, 1).apart(2).pot("small").bought(9, 0));
    assertThat(inMarch.stood(4).place()).contains("bench");
    assertThat(moves(inMarch)).containsExactly(12, 17);

    LotHistory inSummer = run(Lots.lot("a").arrived(2027, 5).apart(1).pot("small").bought(9, 0));
    assertThat(moves(inSummer)).containsExactly(12, 17);
  }
}
