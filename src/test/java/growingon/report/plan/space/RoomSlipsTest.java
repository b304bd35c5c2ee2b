package growingon.report.plan.space;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.place.PlaceKind;
import growingon.problem.Problem;
import growingon.project.Lots;
import growingon.project.Nurseries;
import growingon.project.Projection;
import growingon.project.need.SpaceUse;
import growingon.report.text.Phrases;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoomSlipsTest {
  /** 100 plants, 8 on a square metre. */
  private static List<Problem> slips(double squareMetres) {
    Projection projection =
        Nurseries.bare()
            .place(Nurseries.place("bench", PlaceKind.BENCH, squareMetres))
            .lot(Lots.lot("a").plantsPerM2(8).place("bench").build())
            .project();
    return RoomSlips.of(SpaceUse.of(projection), projection.horizon(), Phrases.PLAIN);
  }

  @Test
  void place_thatWouldNeedAThousandTimesItsRoom_looksLikeASlip() {
    assertThat(slips(0.01))
        .extracting(Problem::toString)
        .containsExactly(
            "the place bench would need 12.5 m² in Nov 2026 and has 0.0 m², which looks like a slip; see"
                + " to the numbers of plants, their spacing and pots, and its square metres");
  }

  @Test
  void place_thatIsOnlyOverfull_isNone() {
    assertThat(slips(1)).isEmpty();
  }
}
