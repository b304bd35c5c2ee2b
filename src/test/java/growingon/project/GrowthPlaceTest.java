package growingon.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Scenario;
import org.junit.jupiter.api.Test;

/** What grows where, by hand. */
class GrowthPlaceTest {
  /**
   * Ash grow half a millimetre in the first month: 100 of 10.5 mm and 50 of 16.5 are 150 of 12.5.
   * The ash that come later do not count; of rowans, none of which is there yet, those that come
   * do.
   */
  @Test
  void plants_areThoseOfTheFirstMonth_orWhereNoneGrowThenThoseThatCome() {
    Scenario scenario =
        Nurseries.bare()
            .seasons(1)
            .species(Nurseries.bareSpecies("rowan", "one"))
            .lot(Lots.lot("small").trunks(10, 0).build())
            .lot(Lots.lot("large").quantity(50).trunks(16, 0).build())
            .lot(Lots.lot("later").arrived(2027, 2).quantity(500).trunks(30, 0).build())
            .lot(Lots.lot("r").species("rowan").arrived(2027, 2).quantity(30).trunks(20, 0).build())
            .lot(Lots.lot("s").species("rowan").arrived(2027, 4).quantity(10).trunks(24, 0).build())
            .scenario();

    assertThat(GrowthPlace.of(Programme.of(scenario)))
        .satisfiesExactly(
            ash -> isThere(ash, "ash", 150, 12.5),
            rowan -> isThere(rowan, "rowan", 40, (30 * 20.5 + 10 * 24.5) / 40));
  }

  private static void isThere(GrowthPlace place, String species, double plants, double trunkMm) {
    assertThat(place.species()).isEqualTo(species);
    assertThat(place.condition()).isEqualTo("pot");
    assertThat(place.plants()).isCloseTo(plants, within(1e-9));
    assertThat(place.trunkMm()).isCloseTo(trunkMm, within(1e-9));
    assertThat(place.mmASeason()).isCloseTo(6, within(1e-9));
  }
}
