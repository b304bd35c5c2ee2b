package growingon.fit.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SiteSpeedTest {
  /** Worked by hand: 0.75 of the mean logarithm 0.2544. */
  @Test
  void speed_ofThreeSpecies_isDrawnTowardsTheLibrary() {
    SiteSpeed site = SiteSpeed.of(List.of(Math.log(1.3), Math.log(1.1), Math.log(1.5)));

    assertThat(site.speed()).isCloseTo(1.210, within(5e-4));
    assertThat(site.species()).isEqualTo(3);
    assertThat(site.rounded()).isEqualTo(1.21);
  }
}
