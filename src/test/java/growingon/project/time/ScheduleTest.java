package growingon.project.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import growingon.nursery.lot.Lot;
import growingon.nursery.route.Step;
import growingon.nursery.supply.Material;
import growingon.problem.Problem;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.Steps;
import growingon.project.history.Use;
import growingon.project.history.Work;
import growingon.project.lot.LotHistory;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every rule of {@link Schedule} on when steps are done, with dates; the plan starts Nov 2026. */
class ScheduleTest {
  private static List<String> dates(Lots lot, Step... steps) {
    return dates(run(lot, steps));
  }

  private static Projection run(Lots lot, Step... steps) {
    return Nurseries.bare().route("r", steps).seasons(6).lot(lot.route("r").build()).project();
  }

  private static List<String> dates(Projection projection) {
    return projection.lots().get(0).happenings().stream()
        .map(each -> each.job() + " " + projection.horizon().month(each.month()))
        .toList();
  }

  private static Lots bought(int year, int month) {
    return Lots.lot("a").arrived(year, month);
  }

  @Test
  void arrivalStep_isDoneInTheMonthOfArrival() {
    assertThat(dates(bought(2027, 1), Steps.onArrival("unpack").build()))
        .containsExactly("unpack 2027-01");
  }

  @Test
  void marchYear0_twinsOfNovemberAndFebruary_getTheSameMarch() {
    Step step = Steps.in("pot", Month.MARCH, 0).build();
    assertThat(dates(bought(2026, 11), step)).containsExactly("pot 2027-03");
    assertThat(dates(bought(2027, 2), step)).containsExactly("pot 2027-03");
  }

  @Test
  void marchYear1_twinsOfNovemberAndFebruary_getTheSameMarch() {
    Step step = Steps.in("pot", Month.MARCH, 1).build();
    assertThat(dates(bought(2026, 11), step)).containsExactly("pot 2028-03");
    assertThat(dates(bought(2027, 2), step)).containsExactly("pot 2028-03");
  }

  @Test
  void marchYear0_arrivalInMarch_isDoneAtOnce() {
    assertThat(dates(bought(2027, 3), Steps.in("pot", Month.MARCH, 0).build()))
        .containsExactly("pot 2027-03");
  }

  @Test
  void marchYear0_arrivalInApril_waitsForTheNextMarch() {
    assertThat(dates(bought(2027, 4), Steps.in("pot", Month.MARCH, 0).build()))
        .containsExactly("pot 2028-03");
  }

  @Test
  void marchToMayYear0_arrivalInApril_waitsForTheNextMarch() {
    assertThat(dates(bought(2027, 4), Steps.in("pot", Month.MARCH, 0).to(Month.MAY).build()))
        .containsExactly("pot 2028-03");
  }

  @Test
  void monthsAfterAStep_countFromWhenItWasDone() {
    assertThat(
            dates(
                bought(2027, 4),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.after("wire", 3, "pot").build()))
        .containsExactly("pot 2028-03", "wire 2028-06");
  }

  @Test
  void stepsOfOneMonth_areDoneInRowOrder() {
    assertThat(
            dates(
                bought(2026, 11),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.after("tie in", 0, "pot").build(),
                Steps.in("set out", Month.MARCH, 0).build()))
        .containsExactly("pot 2027-03", "tie in 2027-03", "set out 2027-03");
  }

  @Test
  void onceOnlyStep_isNotDueBeforeTheOneAboveIt() {
    assertThat(
            dates(
                bought(2026, 11),
                Steps.in("pot", Month.MARCH, 1).build(),
                Steps.onArrival("tie in").build()))
        .containsExactly("pot 2028-03", "tie in 2028-03");
  }

  @Test
  void datedStepHeldUp_isDoneWhenItsMonthNextComes_andLaterDatedStepsMoveByAsManyYears() {
    // The trunk is 10 mm in Nov 2026 and grows 6 mm a year: 17 mm only by June 2028.
    Projection projection =
        run(
            bought(2026, 11),
            Steps.once("reduce", Month.JUNE, 17).build(),
            Steps.in("pot", Month.MARCH, 0).build(),
            Steps.in("wire", Month.OCTOBER, 1).build());
    assertThat(dates(projection)).containsExactly("reduce 2028-06", "pot 2029-03", "wire 2030-10");
    assertThat(projection.remarks())
        .extracting(Problem::toString)
        .containsExactly(
            "lot a: step pot was due in Mar 2027 and is done in Mar 2029; its later dated steps"
                + " move by 2 years; if it is done already, name it as last step in the stock list");
  }

  @Test
  void windowStillOpen_lateStep_isDoneAtOnce_andNothingMoves() {
    // Held officially until the end of March; the window runs from March to May.
    Projection projection =
        run(
            bought(2027, 2).apart(2).untouched(),
            Steps.in("pot", Month.MARCH, 0).to(Month.MAY).minutes(60).build(),
            Steps.in("wire", Month.OCTOBER, 0).build());
    assertThat(dates(projection)).containsExactly("pot 2027-04", "wire 2027-10");
    assertThat(projection.lots().get(0).works())
        .extracting(Work::month, Work::hours)
        .containsExactly(tuple(5, 50.0), tuple(6, 50.0));
  }

  @Test
  void windowClosed_lateStep_waitsAYear() {
    assertThat(
            dates(
                bought(2027, 2).apart(3).untouched(),
                Steps.in("pot", Month.MARCH, 0).to(Month.APRIL).build()))
        .containsExactly("pot 2028-03");
  }

  @Test
  void window_spreadsHoursAndMaterialsEvenly_butChangesStateInItsFirstMonth() {
    Projection projection =
        Nurseries.bare()
            .pot(Nurseries.roundPot("p"))
            .material(new Material("wire", "m", 10, 1, 0, 0))
            .route(
                "r",
                Steps.in("pot", Month.MARCH, 0)
                    .to(Month.MAY)
                    .minutes(6)
                    .pot("p", null)
                    .material("wire", 3)
                    .build())
            .lot(bought(2026, 11).quantity(90).route("r").build())
            .project();
    LotHistory lot = projection.lots().get(0);
    assertThat(lot.works()).extracting(Work::month).containsExactly(4, 5, 6);
    assertThat(lot.works()).extracting(Work::hours).containsOnly(3.0);
    assertThat(lot.uses())
        .extracting(Use::month, Use::item, Use::amount)
        .contains(tuple(4, "p", 90.0), tuple(4, "wire", 90.0), tuple(6, "wire", 90.0));
    assertThat(lot.stood(3).pot()).isEmpty();
    assertThat(lot.stood(4).pot()).isEqualTo("p");
  }

  @Test
  void recurringStep_isLiveOnceTheStepsAboveAreDone_andCountsItsYearsFromTheLastOfThem() {
    assertThat(
            dates(
                bought(2026, 11),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.every("repot", 2, Month.MARCH).build()))
        .containsExactly("pot 2027-03", "repot 2029-03", "repot 2031-03");
  }

  @Test
  void recurringStep_neverBlocksTheStepsBelowIt() {
    assertThat(
            dates(
                bought(2026, 11),
                Steps.every("prune", 1, Month.JULY).build(),
                Steps.in("pot", Month.MARCH, 1).build()))
        .containsExactly(
            "pot 2028-03",
            "prune 2028-07",
            "prune 2029-07",
            "prune 2030-07",
            "prune 2031-07",
            "prune 2032-07");
  }

  @Test
  void recurringStep_missedWhileHeld_isDoneInTheNextYear() {
    assertThat(
            dates(
                bought(2026, 8).apart(24).untouched(), Steps.every("prune", 1, Month.JULY).build()))
        .startsWith("prune 2029-07");
  }

  @Test
  void trunkCondition_isMetInTheFirstSuchMonthInWhichTheMeanTrunkIsThickEnough() {
    // 10 mm in Nov 2026, 6 mm a year: 20 mm in July 2028, so the March after is March 2029.
    assertThat(dates(bought(2026, 11), Steps.once("pot on", Month.MARCH, 20).build()))
        .containsExactly("pot on 2029-03");
  }

  @Test
  void trunkCondition_isOfTheWholeLotsMean() {
    Projection projection =
        Nurseries.bare()
            .route("r", Steps.once("pot on", Month.MARCH, 20).build())
            .seasons(6)
            .lot(Lots.lot("wide").sizeClass(5, 15).route("r").build())
            .project();
    assertThat(dates(projection)).containsExactly("pot on 2029-03");
  }

  @Test
  void stepsOfAnEmptyLot_arePassedOver() {
    assertThat(
            dates(
                bought(2026, 11),
                Steps.in("cull all", Month.MARCH, 0).cull(1).build(),
                Steps.in("wire", Month.APRIL, 0).build()))
        .containsExactly("cull all 2027-03");
  }

  @Test
  void lastStepStated_theNextStepsFollow() {
    assertThat(
            dates(
                Lots.lot("a").arrived(2025, 11).lastStep("pot"),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.in("wire", Month.MARCH, 1).build()))
        .containsExactly("wire 2027-03");
  }

  @Test
  void lastStepStatedBeforeOneThatIsPast_thatOneIsLate() {
    assertThat(
            dates(
                Lots.lot("a").arrived(2024, 11).lastStep("pot"),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.in("wire", Month.MARCH, 1).build(),
                Steps.in("thin", Month.JUNE, 2).build()))
        .containsExactly("wire 2027-03", "thin 2028-06");
  }

  @Test
  void lastStepEmpty_isWorkedOutFromTheDates() {
    assertThat(
            dates(
                Lots.lot("a").arrived(2024, 11),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.in("wire", Month.MARCH, 1).build(),
                Steps.in("thin", Month.JUNE, 2).build()))
        .containsExactly("thin 2027-06");
  }

  @Test
  void lastStepEmpty_potDisagrees_isAWarning() {
    Lot lot = Lots.lot("a").arrived(2024, 11).route("r").build();
    Projection projection =
        Nurseries.bare()
            .pot(Nurseries.roundPot("big"))
            .route("r", Steps.in("pot", Month.MARCH, 0).pot("big", null).build())
            .lot(lot)
            .project();
    assertThat(projection.remarks())
        .extracting(Problem::toString)
        .containsExactly(
            "lot a: by its dates the last step done is pot, which would leave it in pot big (the"
                + " stock list says no pot); type the last step done into the stock list");
  }

  @Test
  void recurringStepBeforeThePlan_goesOnInItsRhythm() {
    assertThat(
            dates(
                Lots.lot("a").arrived(2022, 11),
                Steps.in("pot", Month.MARCH, 0).build(),
                Steps.every("repot", 3, Month.MARCH).build()))
        .containsExactly("repot 2029-03", "repot 2032-03");
  }

  @Test
  void timeApart_workGoesOn() {
    assertThat(
            dates(
                bought(2026, 11).apart(6),
                Steps.onArrival("unpack").build(),
                Steps.in("tie in", Month.FEBRUARY, 0).build()))
        .containsExactly("unpack 2026-11", "tie in 2027-02");
  }

  @Test
  void heldOfficially_noStepIsDone_andTheArrivalStepFollowsAtItsEnd() {
    assertThat(dates(bought(2026, 11).apart(2).untouched(), Steps.onArrival("unpack").build()))
        .containsExactly("unpack 2027-01");
  }

  @Test
  void heldOfficially_withoutTimeApart_changesNothing() {
    assertThat(dates(bought(2026, 11).untouched(), Steps.onArrival("unpack").build()))
        .containsExactly("unpack 2026-11");
  }

  @Test
  void monthsAfterAStep_overdueWithoutAWindow_isDoneAtOnce_andMovesNothing() {
    // 10 mm in Nov 2026 and 6 mm a year: 17 mm by June 2028, so "reduce" holds up what follows pot.
    Projection projection =
        run(
            bought(2026, 11),
            Steps.in("pot", Month.MARCH, 0).build(),
            Steps.once("reduce", Month.JUNE, 17).build(),
            Steps.after("wire", 3, "pot").build(),
            Steps.in("prune", Month.OCTOBER, 1).build());
    assertThat(dates(projection))
        .containsExactly("pot 2027-03", "reduce 2028-06", "wire 2028-06", "prune 2028-10");
    assertThat(projection.remarks().get(0).toString())
        .startsWith(
            "lot a: step wire was due in Jun 2027 and is done in Jun 2028; its later dated steps stay"
                + " as they are");
  }

  @Test
  void monthsAfterAStep_overdueWithItsWindowOpen_isDoneNow_itsHoursInWhatIsLeftOfIt() {
    Projection projection =
        run(
            bought(2026, 11),
            Steps.in("pot", Month.MARCH, 0).build(),
            Steps.once("reduce", Month.JUNE, 17).build(),
            Steps.after("wire", 1, "pot").to(Month.JULY).minutes(60).build(),
            Steps.in("prune", Month.OCTOBER, 1).build());
    // Due in April 2027 until July; in June 2028 two months of the window are left.
    assertThat(dates(projection))
        .containsExactly("pot 2027-03", "reduce 2028-06", "wire 2028-06", "prune 2029-10");
    assertThat(projection.lots().get(0).works())
        .extracting(Work::month, Work::hours)
        .containsExactly(tuple(19, 50.0), tuple(20, 50.0));
    assertThat(projection.remarks()).hasSize(1);
  }

  @Test
  void monthsAfterAStep_overdueWithItsWindowClosed_isDoneWhenItNextOpens() {
    Projection projection =
        run(
            bought(2026, 11),
            Steps.in("pot", Month.MARCH, 0).build(),
            Steps.once("reduce", Month.JUNE, 17).build(),
            Steps.after("wire", 9, "pot").to(Month.JANUARY).minutes(60).build());
    assertThat(dates(projection)).containsExactly("pot 2027-03", "reduce 2028-06", "wire 2028-12");
    assertThat(projection.lots().get(0).works())
        .extracting(Work::month, Work::hours)
        .containsExactly(tuple(25, 50.0), tuple(26, 50.0));
    assertThat(projection.remarks().get(0).toString())
        .startsWith("lot a: step wire was due in Dec 2027 and is done in Dec 2028");
  }

  @Test
  void dates_areThoseOfTheCalendar() {
    assertThat(run(bought(2026, 11)).horizon().month(0)).isEqualTo(YearMonth.of(2026, 11));
  }

  @Test
  void monthsAfterAStep_doneOneMonthLate_isSaid() {
    Projection projection =
        run(
            bought(2026, 11),
            Steps.in("pot", Month.MARCH, 0).build(),
            Steps.once("reduce", Month.JUNE, 1).build(),
            Steps.after("wire", 2, "pot").build());

    assertThat(dates(projection)).containsExactly("pot 2027-03", "reduce 2027-06", "wire 2027-06");
    assertThat(projection.remarks())
        .extracting(Problem::toString)
        .containsExactly(
            "lot a: step wire was due in May 2027 and is done in Jun 2027; its later dated steps stay"
                + " as they are; if it is done already, name it as last step in the stock list");
  }
}
