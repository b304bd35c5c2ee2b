package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers that can be planned with but that nobody means. */
class SlipsTest {
  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pots.csv | big tub,litres,,,,,35, | big tub,litres,,,,,2500,"
            + " | pots.csv, row 4, column litres | more than 2000 (2500)",
        "stock.csv | 14.5,18, | 0.5,18,"
            + " | stock.csv, row 2, column trunk mm | less than 1 (0.5)",
        "stock.csv | 14.5,18, | 1450,18,"
            + " | stock.csv, row 2, column trunk mm | more than 1000 (1450)",
        "stock.csv | ,20,30, | ,20,3000,"
            + " | stock.csv, row 3, column trunk to mm | more than 1000 (3000)",
        "stock.csv | ,10,12,70 | ,10,1200,70"
            + " | stock.csv, row 4, column girth to cm | more than 251.33 (1200)",
        "components.csv | fine bark,60, | fine bark,0.6,"
            + " | components.csv, row 2, column bag litres | less than 1 (0.6)",
        "materials.csv | wire,m,50, | wire,m,0.005,"
            + " | materials.csv, row 2, column pack | less than 0.01 (0.005)"
      })
  void valueBeyondWhatIsUsual_isWarnedOf(
      String file, String from, String to, String where, String how) throws IOException {
    SmallNursery.change(folder.resolve(file), from, to);

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: "
                + where
                + ": this looks like a slip, as it is "
                + how
                + "; see that it is right");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pots.csv | training pot,,3.40 | training pot,,3400000 | pots.csv, row 3, column price",
        "demand.csv | ,18,,10 | ,1800000,,10 | demand.csv, row 2, column price",
        "components.csv | 60,6.20 | 60,6200000 | components.csv, row 2, column bag price",
        "offers.csv | ,2.40,,50 | ,2400000,,50 | offers.csv, row 2, column unit price"
      })
  void priceOverAMillion_isWarnedOf(String file, String from, String to, String where)
      throws IOException {
    SmallNursery.change(folder.resolve(file), from, to);

    assertThat(SmallNursery.problems(folder))
        .singleElement()
        .asString()
        .startsWith("warning: " + where + ": this looks like a slip, as it is more than 1000000 (");
  }

  @Test
  void bagOfNearlyNothing_isRefused() throws IOException {
    SmallNursery.change(folder.resolve("components.csv"), "fine bark,60,", "fine bark,1e-12,");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: components.csv, row 2, column bag litres: this must be at least 0.000001"
                + " (1e-12); correct it");
  }

  @Test
  void potWithMeasuresInAnotherUnit_isWarnedOf() throws IOException {
    // pi x 1800 x (1300 x 1300 + 1300 x 1000 + 1000 x 1000) / 3 cubic mm, by hand
    SmallNursery.change(folder.resolve("pots.csv"), "round,260,200,180,", "round,2600,2000,1800,");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: pots.csv, row 3, column top mm: this looks like a slip, as the pot holds 7521"
                + " litres by its measures (2600); see that they are in mm");
  }
}
