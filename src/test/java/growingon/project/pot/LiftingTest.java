package growingon.project.pot;

import static growingon.project.Nurseries.litrePot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.place.LiftFrom;
import growingon.nursery.place.Place;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Species;
import growingon.nursery.supply.Component;
import growingon.nursery.supply.Mix;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Steps;
import growingon.project.history.Happening;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.time.Month;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiftingTest {
  private static final Place BENCH = place("bench", LiftFrom.BENCH);
  private static final Place GROUND = place("ground", LiftFrom.GROUND);

  private static Place place(String name, LiftFrom from) {
    return Place.named(name, PlaceKind.STANDING_GROUND)
        .squareMetres(100)
        .usableShare(1)
        .liftFrom(from)
        .build();
  }

  /** Screening values of HSE guidance INDG143; the bench values read in secondary copies (B). */
  @ParameterizedTest
  @CsvSource({
    "15.9, ONE_PERSON",
    "16, ONE_PERSON",
    "16.1, NOT_FOR_EVERYONE",
    "25, NOT_FOR_EVERYONE",
    "25.1, TWO_PEOPLE"
  })
  void bench_weightAgainstScreeningValues(double kg, Lifting expected) {
    assertThat(Lifting.of(kg, LiftFrom.BENCH)).isEqualTo(expected);
  }

  /** The values at floor level, from memory (M). */
  @ParameterizedTest
  @CsvSource({"7, ONE_PERSON", "7.1, NOT_FOR_EVERYONE", "10, NOT_FOR_EVERYONE", "10.1, TWO_PEOPLE"})
  void ground_weightAgainstScreeningValues(double kg, Lifting expected) {
    assertThat(Lifting.of(kg, LiftFrom.GROUND)).isEqualTo(expected);
  }

  @Test
  void height_oneOfTwoPlacesOnTheGround_isTheGround() {
    assertThat(Lifting.lower(Optional.of(BENCH), Optional.of(BENCH))).isEqualTo(LiftFrom.BENCH);
    assertThat(Lifting.lower(Optional.of(BENCH), Optional.of(GROUND))).isEqualTo(LiftFrom.GROUND);
    assertThat(Lifting.lower(Optional.of(GROUND), Optional.of(BENCH))).isEqualTo(LiftFrom.GROUND);
    assertThat(Lifting.lower(Optional.empty(), Optional.of(BENCH))).isEqualTo(LiftFrom.BENCH);
    assertThat(Lifting.lower(Optional.empty(), Optional.empty())).isEqualTo(LiftFrom.GROUND);
  }

  /** A mix of 0.8 kg a litre that neither shrinks nor firms, so that weights are plain. */
  private static Nurseries nursery() {
    return Nurseries.bare()
        .seasons(1)
        .place(BENCH)
        .place(GROUND)
        .pot(litrePot("15 litre", 15, 300))
        .component(new Component("bark", 50, 8, 0, 0.8))
        .mix(new Mix("plain", Map.of("bark", 1.0), 0, 0));
  }

  private static LotHistory pottedOn(String place, double ballLitres, double trunkMm) {
    return nursery()
        .route(
            "pot",
            Steps.in("pot", Month.MARCH, 0)
                .minutes(6)
                .pot("15 litre", "plain")
                .ball(1, ballLitres)
                .build(),
            Steps.in("wire", Month.APRIL, 0).minutes(10).build())
        .lot(
            Lots.lot("lot")
                .trunks(trunkMm, 0)
                .height(600)
                .place(place)
                .plantsPerM2(4)
                .route("pot")
                .build())
        .project()
        .lot("lot");
  }

  private static Happening job(LotHistory lot, String job) {
    return lot.happenings().stream().filter(each -> each.job().equals(job)).findFirst().get();
  }

  @Test
  void pottedTree_liftedBallAndThickTrunkOnTheGround_takesASecondPersonForTheLifting() {
    Happening potted = job(pottedOn("ground", 10, 80), "pot");

    // 10 l of ball at 1.6, 5 l of mix at 0.8, wood of 82 mm by March (6 mm a year)
    assertThat(potted.kgEach()).isCloseTo(16 + 4 + 3.1, within(0.1));
    assertThat(potted.lifting()).isEqualTo(Lifting.TWO_PEOPLE);
    assertThat(potted.hours()).isCloseTo(100 * (6 + 2) / 60.0, within(1e-9));
  }

  @Test
  void liner_sameLitresOnABench_takesOnePerson() {
    LotHistory lot = pottedOn("bench", 0, 10);
    Happening potted = job(lot, "pot");

    assertThat(potted.kgEach()).isCloseTo(12, within(0.1));
    assertThat(potted.lifting()).isEqualTo(Lifting.ONE_PERSON);
    assertThat(potted.hours()).isCloseTo(10, within(1e-9));
  }

  @Test
  void heavyTree_wiredWhereItStands_isNotLifted() {
    Happening wired = job(pottedOn("ground", 10, 80), "wire");

    assertThat(wired.kgEach()).isGreaterThan(Lifting.firstKg(LiftFrom.GROUND));
    assertThat(wired.lifting()).isEqualTo(Lifting.NOTHING_LIFTED);
    assertThat(wired.hours()).isCloseTo(100 * 10 / 60.0, within(1e-9));
  }

  @Test
  void hoursOfTwoPeople_areInTheMonthlyWorkAsWell() {
    LotHistory lot = pottedOn("ground", 10, 80);

    double hours = lot.works().stream().mapToDouble(Work::hours).sum();
    assertThat(hours).isCloseTo(100 * (6 + 2) / 60.0 + 100 * 10 / 60.0, within(1e-9));
  }

  /** 229 seedlings of 0.55 kg into 10 litre pots, 6 minutes each: 22.9 h, and 2 minutes to lift. */
  @Test
  void seedlingsIntoHeavyPots_secondPersonIsForTheLiftingOnly() {
    Happening potted = job(seedlings(6, 2), "pot");

    assertThat(potted.kgEach()).isGreaterThan(10);
    assertThat(potted.hours()).isCloseTo(22.9 + 229 * 2 / 60.0, within(1e-9));
  }

  @Test
  void secondPerson_isThereForNoLongerThanTheJob() {
    assertThat(job(seedlings(1.5, 2), "pot").hours()).isCloseTo(229 * 3 / 60.0, within(1e-9));
    assertThat(job(seedlings(6, 0), "pot").hours()).isCloseTo(22.9, within(1e-9));
  }

  @Test
  void stepThatOnlyMoves_isLiftingThroughout() {
    LotHistory lot =
        nursery()
            .route("carry", Steps.in("carry", Month.MARCH, 0).minutes(6).place("bench").build())
            .lot(Lots.lot("lot").pot("15 litre").place("ground").route("carry").build())
            .project()
            .lot("lot");
    assertThat(job(lot, "carry").hours()).isCloseTo(100 * 6 * 2 / 60.0, within(1e-9));
  }

  private static LotHistory seedlings(double minutes, double secondPerson) {
    return nursery()
        .secondPerson(secondPerson)
        .pot(litrePot("10 litre", 10, 280))
        .mix(new Mix("wet", Map.of("bark", 1.0), 0, 0.3))
        .route(
            "pot",
            Steps.in("pot", Month.MARCH, 0)
                .minutes(minutes)
                .pot("10 litre", "wet")
                .ball(1, 0.344)
                .build())
        .lot(
            Lots.lot("lot")
                .quantity(229)
                .trunks(3, 0)
                .place("ground")
                .plantsPerM2(60)
                .route("pot")
                .build())
        .project()
        .lot("lot");
  }

  @Test
  void winterMove_heavyPots_takesTwoPeople() {
    Species ash = Nurseries.bareSpecies("ash", "one");
    LotHistory lot =
        nursery()
            .place(place("tunnel", LiftFrom.GROUND))
            .winter(0, 3)
            .species(withWinterPlace(ash, "tunnel"))
            .lot(Lots.lot("lot").pot("15 litre").place("bench").plantsPerM2(4).build())
            .project()
            .lot("lot");

    Happening back = job(lot, Work.WINTER_MOVE);
    assertThat(back.kgEach()).isGreaterThan(10);
    assertThat(back.lifting()).isEqualTo(Lifting.TWO_PEOPLE);
    assertThat(back.hours()).isCloseTo(100 * 3 * 2 / 60.0, within(1e-9));
  }

  @Test
  void winterMove_outOfQuarantine_startsThere() {
    LotHistory lot =
        nursery()
            .place(place("tunnel", LiftFrom.GROUND))
            .place(Nurseries.place("corner", PlaceKind.QUARANTINE, 20))
            .species(withWinterPlace(Nurseries.bareSpecies("ash", "one"), "tunnel"))
            .lot(Lots.lot("lot").pot("15 litre").place("bench").plantsPerM2(4).apart(1).build())
            .project()
            .lot("lot");

    Happening move = job(lot, Work.WINTER_MOVE);
    assertThat(move.month()).isEqualTo(1);
    assertThat(move.place()).contains("corner");
    assertThat(move.toPlace()).contains("tunnel");
  }

  private static Species withWinterPlace(Species species, String place) {
    return Species.named(species.name())
        .ladder(species.ladder())
        .habit(species.habit())
        .usualCondition(species.usualCondition())
        .growth(species.growth())
        .growthMonths(species.growthMonths())
        .vigourSpread(species.vigourSpread())
        .yearSpread(species.yearSpread())
        .firstYearLoss(species.firstYearLoss())
        .laterLoss(species.laterLoss())
        .lossMonths(species.lossMonths())
        .lossSpread(species.lossSpread())
        .checkFirstYear(species.checkFirstYear())
        .checkSecondYear(species.checkSecondYear())
        .potBoundMonths(species.potBoundMonths())
        .potBoundFactor(species.potBoundFactor())
        .winterPlace(Optional.of(place))
        .healthNote(species.healthNote())
        .build();
  }
}
