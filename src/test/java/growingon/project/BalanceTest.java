package growingon.project;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.nursery.Scenario;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.QualityShares;
import growingon.nursery.species.Species;
import growingon.project.history.Recorder;
import growingon.project.lot.LotHistory;
import growingon.project.lot.Luck;
import org.junit.jupiter.api.Test;

/** Faults planted in a run, which the check of conservation must find by itself. */
class BalanceTest {
  private static Scenario elms() {
    return Nurseries.working().lot(Lots.pottedElms("elms").build()).scenario();
  }

  private static void projectAgain(Projection right, Runnable fault) {
    fault.run();
    new Projection(
        right.scenario(), right.horizon(), right.lots(), right.missed(), right.remarks());
  }

  @Test
  void deathBookedTwice_isFoundInItsMonth() {
    Projection right = Projector.project(elms());
    LotHistory history = right.lot("elms");
    assertThatThrownBy(() -> projectAgain(right, () -> history.died(7, history.died(7))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("elms")
        .hasMessageContaining(right.horizon().month(7).toString());
  }

  @Test
  void saleOfATenThousandthOfAPlantThatWasNeverHeld_isFound() {
    Projection right = Projector.project(elms());
    assertThatThrownBy(
            () -> projectAgain(right, () -> right.lot("elms").sold(9, 0, 0, null, 1e-4, 5)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(right.horizon().month(9).toString());
  }

  /** A run without a history, as of a draw, is checked at its end. */
  @Test
  void plantsThatAreNoNumber_areFoundAtTheEndOfARunWithoutAHistory() {
    Luck lostCount =
        new Luck() {
          @Override
          public OfLot of(Lot lot, Species species) {
            return new OfLot() {
              @Override
              public double deaths(int month, int event, double living, double share) {
                return month == 7 ? Double.NaN : living * share;
              }

              @Override
              public QualityShares quality() {
                return lot.quality();
              }
            };
          }
        };
    Run run = new Run(Programme.of(elms()), lostCount);
    Recorder deaf = new LotHistory(Programme.of(elms()).lots().get(0), 72, 1, false);
    assertThatThrownBy(() -> run.withRecorders(lot -> deaf))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("elms");
  }
}
