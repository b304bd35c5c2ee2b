package growingon.chance.luck;

import static org.assertj.core.api.Assertions.assertThat;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;

class LogitNormalTest {
  /** Hipparchus 4.0.1 works the rule out; what is written down must be that to the last digit. */
  @Test
  void quadrature_isThatOfTheLibrary() {
    GaussIntegrator library = new GaussIntegratorFactory().hermite(40);
    assertThat(LogitNormal.HERMITE).hasSameClassAs(library);
    assertThat(LogitNormal.HERMITE.getNumberOfPoints()).isEqualTo(40);
    for (int i = 0; i < 40; i++) {
      assertThat(LogitNormal.HERMITE.getPoint(i)).isEqualTo(library.getPoint(i));
      assertThat(LogitNormal.HERMITE.getWeight(i)).isEqualTo(library.getWeight(i));
    }
  }
}
