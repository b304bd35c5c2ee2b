package growingon.nursery.route;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.lot.Lot;
import growingon.project.Lots;
import growingon.project.Steps;
import java.time.Month;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which steps a lot has behind it in November 2026, and when they were done. */
class StepsDoneTest {
  private static final YearMonth FIRST = YearMonth.of(2026, 11);

  /** A field tree: lifted by its trunk, wired twice after that, re-potted every three years. */
  private static final Route FIELD =
      new Route(
          "field",
          List.of(
              Steps.onArrival("plant").build(),
              Steps.once("lift and pot", Month.MARCH, 28)
                  .pot("18 litre", null)
                  .rootWork()
                  .trainingStarts()
                  .build(),
              Steps.after("first wiring", 9, "lift and pot").to(Month.JANUARY).build(),
              Steps.every("prune", 1, Month.FEBRUARY).build(),
              Steps.after("second wiring", 32, "lift and pot").build(),
              Steps.every("re-pot", 3, Month.MARCH).pot("18 litre", null).rootWork().build()));

  private static StepsDone done(Lots lot) {
    return StepsDone.of(lot.arrived(2018, 12).build(), FIELD, FIRST);
  }

  private static YearMonth month(StepsDone done, String step) {
    return done.doneAt(FIELD.indexOf(step)).orElseThrow();
  }

  @Test
  void potted_datesTheStepThatPots_andTheOthersFollowByTheirRule() {
    StepsDone done = done(Lots.lot("a").lastStep("first wiring").potted(2024, 3).rootWork(2024, 3));

    assertThat(month(done, "lift and pot")).isEqualTo(YearMonth.of(2024, 3));
    assertThat(month(done, "first wiring")).isEqualTo(YearMonth.of(2024, 12));
    assertThat(month(done, "prune")).isEqualTo(YearMonth.of(2026, 2));
    assertThat(done.doneAt(FIELD.indexOf("second wiring"))).isEmpty();
    assertThat(done.clashes()).isEmpty();
  }

  @Test
  void stepThatATrunkDecides_withoutAMonth_liesAtTheLatestSuchMonth() {
    StepsDone done = done(Lots.lot("a").lastStep("lift and pot"));

    assertThat(month(done, "plant")).isEqualTo(YearMonth.of(2018, 12));
    assertThat(month(done, "lift and pot")).isEqualTo(YearMonth.of(2026, 3));
  }

  @Test
  void pottedWinsOverRootWork_andRootWorkOverTraining() {
    StepsDone potted =
        done(
            Lots.lot("a")
                .lastStep("lift and pot")
                .potted(2024, 3)
                .rootWork(2023, 3)
                .trainingSince(2022, 3));
    assertThat(month(potted, "lift and pot")).isEqualTo(YearMonth.of(2024, 3));

    StepsDone cut =
        done(Lots.lot("a").lastStep("lift and pot").rootWork(2023, 3).trainingSince(2022, 3));
    assertThat(month(cut, "lift and pot")).isEqualTo(YearMonth.of(2023, 3));

    StepsDone trained = done(Lots.lot("a").lastStep("lift and pot").trainingSince(2022, 3));
    assertThat(month(trained, "lift and pot")).isEqualTo(YearMonth.of(2022, 3));
  }

  @Test
  void lastStepNotStated_isWorkedOut_andNeverOneThatATrunkDecides() {
    StepsDone done = done(Lots.lot("a").potted(2024, 3));

    assertThat(done.last()).isEqualTo(FIELD.indexOf("plant"));
    assertThat(done.doneAt(FIELD.indexOf("lift and pot"))).isEmpty();
  }

  @Test
  void lastStepNotStated_endsBeforeAStepThatNowFallsIntoThePlan() {
    Route route =
        new Route(
            "liner",
            List.of(
                Steps.in("pot", Month.MARCH, 0).pot("3 litre", null).build(),
                Steps.after("wire", 12, "pot").build()));
    Lot byRule = Lots.lot("a").arrived(2025, 2).build();
    assertThat(StepsDone.of(byRule, route, FIRST).last()).isEqualTo(1);

    Lot pottedLate = Lots.lot("a").arrived(2025, 2).potted(2026, 6).build();
    StepsDone done = StepsDone.of(pottedLate, route, FIRST);
    assertThat(done.last()).isZero();
    assertThat(done.doneAt(0)).contains(YearMonth.of(2026, 6));
    assertThat(done.doneAt(1)).isEmpty();
  }

  @Test
  void recurringStep_thatPotsLast_isDatedByPotted() {
    Route route =
        new Route(
            "pots",
            List.of(
                Steps.in("pot", Month.MARCH, 0).pot("18 litre", null).build(),
                Steps.every("re-pot", 3, Month.MARCH).pot("18 litre", null).build()));
    Lot lot = Lots.lot("a").arrived(2021, 2).potted(2025, 3).build();
    StepsDone done = StepsDone.of(lot, route, FIRST);

    assertThat(done.doneAt(0)).contains(YearMonth.of(2021, 3));
    assertThat(done.doneAt(1)).contains(YearMonth.of(2025, 3));
  }

  @Test
  void contradiction_namesBothMonths() {
    Route route =
        new Route(
            "liner",
            List.of(
                Steps.in("pot", Month.MARCH, 0).pot("3 litre", null).build(),
                Steps.in("undercut", Month.MARCH, 2).rootWork().build()));
    Lot lot =
        Lots.lot("a")
            .arrived(2021, 2)
            .lastStep("undercut")
            .potted(2024, 5)
            .rootWork(2023, 3)
            .build();

    assertThat(StepsDone.of(lot, route, FIRST).clashes())
        .containsExactly(
            new StepsDone.Clash(
                "root work",
                YearMonth.of(2023, 3),
                "undercut",
                "the step pot",
                YearMonth.of(2024, 5)));
  }

  @Test
  void lotThatArrivesInThePlan_hasNothingBehindIt() {
    Lot lot = Lots.lot("a").arrived(2026, 11).build();
    assertThat(StepsDone.of(lot, FIELD, FIRST).last()).isEqualTo(-1);
  }
}
