package growingon.fit.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The law of what dies where units differ, by seeds that germinated on plates that did. */
class BetaBinomialTest {
  private static List<long[]> plates(String genotype, String extract) throws IOException {
    return Files.readAllLines(Path.of("src/test/resources/growth/seeds.csv")).stream()
        .map(line -> line.split(","))
        .filter(cells -> cells[1].equals(genotype) && cells[2].equals(extract))
        .map(cells -> new long[] {Long.parseLong(cells[3]), Long.parseLong(cells[4])})
        .toList();
  }

  private static double likelihood(List<long[]> plates, double share, double rho) {
    return plates.stream()
        .mapToDouble(each -> BetaBinomial.logChance(each[0], each[1], share, 1 / rho - 1))
        .sum();
  }

  /**
   * Means, correlations 1/(M + 1) and log likelihoods as fitted by VGAM 1.1-7 in R 4.2.2; what is
   * most likely there is most likely here.
   */
  @ParameterizedTest
  @CsvSource({
    "O75, bean, 0.368673201844, 0.0173240418415, -14.943521163",
    "O75, cucumber, 0.684740217333, 0.00979302002838, -14.9907933041",
    "O73, bean, 0.38900042499, 0.0162687716938, -11.8319432613",
    "O73, cucumber, 0.529515070487, 0.00193658812685, -11.8998915333"
  })
  void likelihood_ofSharesThatVary_isThatOfAnotherProgram(
      String genotype, String extract, double share, double rho, double log) throws IOException {
    List<long[]> plates = plates(genotype, extract);
    double here = likelihood(plates, share, rho);
    assertThat(here).isCloseTo(log, within(1e-7));
    for (double factor : new double[] {0.9, 1.1}) {
      assertThat(likelihood(plates, share * factor, rho)).isLessThan(here);
      assertThat(likelihood(plates, share, rho * factor)).isLessThan(here);
    }
  }
}
