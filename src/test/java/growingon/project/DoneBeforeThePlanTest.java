package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.lot.Lot;
import growingon.nursery.place.PlaceKind;
import growingon.nursery.species.Species;
import growingon.project.history.Stood;
import growingon.project.lot.Facts;
import growingon.project.lot.LotHistory;
import java.time.Month;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * What steps that were done before the plan left behind, by hand: 100 ash of 10 mm, come in March
 * 2024, that grow 0.5 mm a month from November 2026. They were potted up on the bench when they
 * came, and potted on to the ground, with their roots cut, in March 2026.
 */
class DoneBeforeThePlanTest {
  private static final Offset<Double> TINY = within(1e-9);

  /** Months of the plan, as offsets. */
  private static final int FEBRUARY = 3;

  private static Species ash(int potBoundMonths) {
    return Nurseries.bareSpecies("ash", "one")
        .with()
        .potBoundMonths(potBoundMonths)
        .potBoundFactor(0.2)
        .build();
  }

  private static LotHistory run(Species species, Lot lot) {
    Nurseries nursery =
        Nurseries.bare()
            .species(species)
            .pot(Nurseries.litrePot("7 litre", 7, 200))
            .pot(Nurseries.litrePot("15 litre", 15, 300))
            .place(Nurseries.place("bench", PlaceKind.BENCH, 400))
            .place(Nurseries.place("ground", PlaceKind.STANDING_GROUND, 400))
            .place(Nurseries.place("corner", PlaceKind.STANDING_GROUND, 400))
            .route(
                "two pots",
                Steps.onArrival("pot up")
                    .pot("7 litre", null)
                    .place("bench")
                    .plantsPerM2(20)
                    .build(),
                Steps.in("pot on", Month.MARCH, 2)
                    .pot("15 litre", null)
                    .place("ground")
                    .plantsPerM2(4)
                    .rootWork()
                    .growthAfter(0.5, 0.8)
                    .build(),
                Steps.in("label", Month.JULY, 2).build())
            .lot(lot);
    return Projector.project(nursery.scenario(), Facts.NONE).lot("a");
  }

  private static Lots a() {
    return Lots.lot("a").arrived(2024, 3).pot("15 litre").route("two pots");
  }

  private static double trunk(LotHistory lot, int month) {
    return lot.monthStock(month).meanTrunkMm();
  }

  /** 100 plants at 4 a square metre need 25, at 20 on the bench they would need 5. */
  @Test
  void place_isThatOfTheLastStep_unlessTheStockListSaysIt() {
    Stood untold = run(ash(1200), a().build()).stood(0);
    Stood placed = run(ash(1200), a().place("corner").build()).stood(0);
    Stood spaced = run(ash(1200), a().plantsPerM2(10).build()).stood(0);

    assertThat(untold.place()).contains("ground");
    assertThat(untold.m2()).isCloseTo(25, TINY);
    assertThat(untold.pot()).isEqualTo("15 litre");
    assertThat(placed.place()).contains("corner");
    assertThat(placed.m2()).isCloseTo(25, TINY);
    assertThat(spaced.place()).contains("ground");
    assertThat(spaced.m2()).isCloseTo(10, TINY);
  }

  /** Half as much up to a year from March 2026, four fifths in the next. */
  @Test
  void rootsCutByAStep_checkGrowthAsTheStepSays() {
    LotHistory lot = run(ash(1200), a().build());

    assertThat(trunk(lot, FEBRUARY)).isCloseTo(10 + 4 * 0.25, TINY);
    assertThat(trunk(lot, FEBRUARY + 1)).isCloseTo(11 + 0.4, TINY);
    assertThat(trunk(lot, FEBRUARY + 12)).isCloseTo(11 + 12 * 0.4, TINY);
    assertThat(trunk(lot, FEBRUARY + 13)).isCloseTo(11 + 12 * 0.4 + 0.5, TINY);
  }

  /** The month of the stock list holds: a year from November 2026. */
  @Test
  void rootsCutInTheMonthThatTheStockListSays_checkGrowthFromThen() {
    LotHistory lot = run(ash(1200), a().rootWork(2026, 10).build());

    assertThat(trunk(lot, 10)).isCloseTo(10 + 11 * 0.25, TINY);
    assertThat(trunk(lot, 11)).isCloseTo(10 + 11 * 0.25 + 0.4, TINY);
  }

  /**
   * Potted in March 2026 they are pot-bound a year later: a fifth of 0.4 mm a month from then. If
   * the stock list says June, the step was done in June, and roots were cut then.
   */
  @Test
  void pottedByAStep_areBoundFromItsMonth_unlessTheStockListSaysIt() {
    LotHistory byStep = run(ash(12), a().build());
    LotHistory stated = run(ash(12), a().potted(2026, 6).build());
    LotHistory neither = run(ash(36), a().lastStep("pot up").build());

    assertThat(trunk(byStep, FEBRUARY)).isCloseTo(11, TINY);
    assertThat(trunk(byStep, FEBRUARY + 1)).isCloseTo(11 + 0.4 * 0.2, TINY);
    assertThat(trunk(stated, FEBRUARY + 3)).isCloseTo(10 + 7 * 0.25, TINY);
    assertThat(trunk(stated, FEBRUARY + 4)).isCloseTo(11.75 + 0.4 * 0.2, TINY);
    assertThat(neither.stood(0).place()).contains("bench");
    assertThat(neither.stood(0).m2()).isCloseTo(5, TINY);
  }
}
