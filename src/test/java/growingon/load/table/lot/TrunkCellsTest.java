package growingon.load.table.lot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.load.SmallNursery;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Trunks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Trunks of the stock list as growers type them: by the unit, the word or the heading. */
class TrunkCellsTest {
  private static final String TRUNK = "14.5,18,";
  private static final String NO_SPREAD = ",,";

  /** mm of trunk for a cm of girth: 10 / pi times the girth base factor of 1.25, by hand. */
  private static final double OF_GIRTH = 3.97887;

  @TempDir private Path folder;

  @BeforeEach
  void layOut() throws IOException {
    SmallNursery.copyTidy(folder);
  }

  private void type(String trunk) throws IOException {
    SmallNursery.change(folder.resolve("stock.csv"), TRUNK, trunk + NO_SPREAD);
  }

  private void rename(String heading) throws IOException {
    SmallNursery.change(
        folder.resolve("stock.csv"), "counted,trunk mm,", "counted," + heading + ",");
  }

  private Trunks trunks() {
    return SmallNursery.inputs(folder).scenario().lots().stream()
        .filter(lot -> lot.name().equals("12"))
        .map(Lot::trunks)
        .findFirst()
        .orElseThrow();
  }

  private void assertClass(double fromMm, double toMm) {
    assertThat(trunks())
        .isInstanceOfSatisfying(
            Trunks.SizeClass.class,
            size -> {
              assertThat(size.fromMm()).isCloseTo(fromMm, within(0.001));
              assertThat(size.toMm()).isCloseTo(toMm, within(0.001));
            });
  }

  @ParameterizedTest
  @CsvSource({
    "14.5 mm, 14.5",
    "trunk 14.5, 14.5",
    "1.45 cm, 14.5",
    "1.45 cm trunk, 14.5",
    "girth 4, 15.91549",
    "4 cm girth, 15.91549",
    "40 mm girth, 15.91549"
  })
  void oneSize_underTrunkMm_isInTheUnitThatItSays(String typed, double mm) throws IOException {
    type(typed);

    assertThat(trunks().meanMm()).isCloseTo(mm, within(0.001));
  }

  @Test
  void range_underTrunkMm_isAClassInTheUnitOfTheHeading() throws IOException {
    type("10-15");

    assertClass(10, 15);
    assertThat(SmallNursery.problems(folder)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"8-10cm girth", "girth 8-10", "8/10 cm girth", "girth: 8 to 10 cm"})
  void girthClass_underTrunkMm_isConvertedWithANotice(String typed) throws IOException {
    type(typed);

    assertClass(8 * OF_GIRTH, 10 * OF_GIRTH);
    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "notice: stock.csv, row 2, column trunk mm: this girth counts as a trunk of 31.8 to"
                + " 39.8 mm, by the girth base factor ("
                + typed
                + ")");
  }

  @Test
  void rangeInCm_thatIsAGirthClass_isTakenForAGirthWithAWarning() throws IOException {
    type("8-10 cm");

    assertClass(8 * OF_GIRTH, 10 * OF_GIRTH);
    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: stock.csv, row 2, column trunk mm: this is taken for a girth, as it is a"
                + " girth class of the trade, and counts as a trunk of 31.8 to 39.8 mm (8-10 cm);"
                + " if it is a trunk, write trunk behind it");
  }

  @Test
  void rangeInCm_thatSaysTrunk_isATrunk() throws IOException {
    type("8-10 cm trunk");

    assertClass(80, 100);
    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "notice: stock.csv, row 2, column trunk mm: this counts as a trunk of 80 to 100 mm"
                + " (8-10 cm trunk)");
  }

  @Test
  void rangesUnderTrunkMm_thatAreAllGirthClasses_areWarnedOf() throws IOException {
    type("12-14");

    assertClass(12, 14);
    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "warning: stock.csv, row 2, column trunk mm: this range counts in the unit of its"
                + " heading, but is also a girth class of the trade (12-14); if they are girths,"
                + " call the column girth cm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Girth", "girth cm", "Girth (cm)", "trunk girth"})
  void headingGirth_isUnderstoodAndConverted(String heading) throws IOException {
    rename(heading);
    type("10-12");

    assertClass(10 * OF_GIRTH, 12 * OF_GIRTH);
    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "notice: stock.csv, row 2, column girth cm: this girth counts as a trunk of 39.8 to"
                + " 47.7 mm, by the girth base factor (10-12)");
  }

  @Test
  void headingTrunkCm_isUnderstoodAndConverted_oncePerColumn() throws IOException {
    rename("Trunk cm");
    type("1.5");
    SmallNursery.change(folder.resolve("stock.csv"), "2024-11,,,,20,30,", "2024-11,,2.5,,,,");

    assertThat(trunks().meanMm()).isCloseTo(15, within(1e-9));
    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "notice: stock.csv, row 2, column trunk cm: this counts as a trunk of 15 mm; 1 more"
                + " row is read so (1.5)");
  }

  @Test
  void cellsOwnUnit_beatsThatOfTheHeading() throws IOException {
    rename("Girth");
    type("trunk 35 mm");

    assertThat(trunks().meanMm()).isEqualTo(35);
    assertThat(SmallNursery.problems(folder)).isEmpty();
  }

  @Test
  void weightUnderTrunkMm_isRefused() throws IOException {
    type("14 kg");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: stock.csv, row 2, column trunk mm: this number must be in mm (14 kg); write it"
                + " in mm or without a unit");
  }

  @Test
  void rangeWithASpread_isRefused() throws IOException {
    SmallNursery.change(folder.resolve("stock.csv"), TRUNK, "10-15,18,");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: stock.csv, row 2, column trunk spread %: a size class has no spread (18);"
                + " leave trunk spread % empty");
  }

  @Test
  void usualTrunk_isOfItsClass_andCountsAsNotMeasured() throws IOException {
    addUsual();

    assertThat(trunks()).isEqualTo(new Trunks.Usual("pot 3 litre", 14.5, 0.18));
  }

  @Test
  void usualTrunk_ofASizeClass_isRefused() throws IOException {
    addUsual();
    type("10-15");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: stock.csv, row 2, column usual trunk of: a usual trunk is a mean, and here is a"
                + " size class (pot 3 litre); write trunk mm in place of the class, or leave usual"
                + " trunk of empty");
  }

  private void addUsual() throws IOException {
    Path file = folder.resolve("stock.csv");
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    lines.set(0, lines.get(0) + ",usual trunk of");
    lines.set(1, lines.get(1) + ",pot 3 litre");
    Files.write(file, lines);
  }

  @Test
  void rangeThatFalls_isRefused() throws IOException {
    type("15-10");

    assertThat(SmallNursery.problems(folder))
        .containsExactly(
            "error: stock.csv, row 2, column trunk mm: the class ends below its beginning of 15"
                + " (15-10); swap them");
  }
}
