package growingon.project.history;

import static growingon.project.history.GradedPlants.NO_GRADE;
import static org.assertj.core.api.Assertions.assertThat;

import growingon.nursery.market.Quality;
import org.junit.jupiter.api.Test;

class GradedPlantsTest {
  @Test
  void plants_areFoundByQualityAndGrade_keptOnesApart() {
    GradedPlants plants = new GradedPlants(2);
    plants.add(Quality.FIRST, NO_GRADE, 1);
    plants.add(Quality.FIRST, 1, 2);
    plants.add(Quality.SECOND, 1, 4);
    plants.add(Quality.THIRD, 0, 8);
    plants.addKept(1, 16);
    plants.addKept(NO_GRADE, 32);

    assertThat(plants.grades()).isEqualTo(2);
    assertThat(plants.of(Quality.FIRST, NO_GRADE)).isEqualTo(1);
    assertThat(plants.of(Quality.FIRST)).isEqualTo(3);
    assertThat(plants.of(Quality.SECOND, 1)).isEqualTo(4);
    assertThat(plants.ofGrade(NO_GRADE)).isEqualTo(1);
    assertThat(plants.ofGrade(0)).isEqualTo(8);
    assertThat(plants.ofGrade(1)).isEqualTo(6);
    assertThat(plants.allOfGrade(1)).isEqualTo(22);
    assertThat(plants.allOfGrade(NO_GRADE)).isEqualTo(33);
    assertThat(plants.kept()).isEqualTo(48);
    assertThat(plants.sum()).isEqualTo(63);
  }

  @Test
  void ladderOfNoGrades_hasPlantsWithoutOne() {
    GradedPlants plants = new GradedPlants(0);
    plants.add(Quality.THIRD, NO_GRADE, 5);

    assertThat(plants.sum()).isEqualTo(5);
    assertThat(plants.of(Quality.THIRD)).isEqualTo(5);
  }
}
