package growingon.project.slice;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Grade;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which grade trunks have and sell as, month by month of training. */
class GradeTableTest {
  private static final List<Grade> LADDER =
      List.of(
          new Grade("started", 1, 10, 0, 0),
          new Grade("shaped", 2, 15, 12, 3),
          new Grade("specimen", 3, 20, 24, 6));

  private final GradeTable[] tables = GradeTable.of(LADDER);

  private GradeTable at(int trainingMonths) {
    return GradeTable.at(trainingMonths, tables);
  }

  @Test
  void aTrunk_hasTheHighestGrade_thatItIsThickAndTrainedEnoughFor() {
    assertThat(at(Grading.UNTRAINED).has).containsExactly(-1, 0, 0, 0);
    assertThat(at(-1).has).containsExactly(-1, 0, 0, 0);
    assertThat(at(11).has).containsExactly(-1, 0, 0, 0);
    assertThat(at(12).has).containsExactly(-1, 0, 1, 1);
    assertThat(at(24).has).containsExactly(-1, 0, 1, 2);
    assertThat(at(500).has).containsExactly(-1, 0, 1, 2);
  }

  @Test
  void aTrunk_thatSoonHasABetterGrade_waitsForIt() {
    assertThat(at(8).sellsAs).containsExactly(-1, 0, 0, 0);
    assertThat(at(9).sellsAs).containsExactly(-1, 0, -1, -1);
    assertThat(at(12).sellsAs).containsExactly(-1, 0, 1, 1);
    assertThat(at(18).sellsAs).containsExactly(-1, 0, 1, -1);
    assertThat(at(24).sellsAs).containsExactly(-1, 0, 1, 2);
  }

  @Test
  void whereNothingStartsTraining_noTrunkWaits() {
    assertThat(at(Grading.UNTRAINED).sellsAs).containsExactly(-1, 0, 0, 0);
  }

  @Test
  void whereSomeTrunkSells_theTableSaysSo() {
    assertThat(at(18).anySells).isTrue();
    GradeTable[] trainedOnly = GradeTable.of(LADDER.subList(1, 3));
    assertThat(GradeTable.at(0, trainedOnly).anySells).isFalse();
  }
}
