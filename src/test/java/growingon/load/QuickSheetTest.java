package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Form;
import growingon.nursery.Habit;
import growingon.nursery.Inputs;
import growingon.nursery.Lot;
import growingon.nursery.Quick;
import growingon.nursery.Trunks;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.Use;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the ten cells are read as. */
class QuickSheetTest {
  private static final LoadOptions OPTIONS = new LoadOptions(LocalDate.of(2026, 11, 20));
  private static final List<List<String>> TEN =
      List.of(
          List.of("species", "Scots pine"),
          List.of("how many", "50"),
          List.of("price each", "20"),
          List.of("carriage for all", "100"),
          List.of("arrival month", "Mar 2027"),
          List.of("trunk mm or girth cm", "30"),
          List.of("firsts and seconds in ten", "6 and 2"),
          List.of("pot litres", "15"),
          List.of("sold at trunk mm", "45"),
          List.of("selling price each", "120"));

  @TempDir private Path folder;

  private Loaded<Inputs> load(Map<String, String> changes) throws IOException {
    List<String> lines = new ArrayList<>(List.of("line;fill in"));
    for (List<String> cell : TEN) {
      lines.add(cell.get(0) + ";" + changes.getOrDefault(cell.get(0), cell.get(1)));
    }
    changes.forEach(
        (line, value) -> {
          if (TEN.stream().noneMatch(cell -> cell.get(0).equals(line))) {
            lines.add(line + ";" + value);
          }
        });
    Files.write(folder.resolve("quick.csv"), lines);
    return Loader.load(folder, OPTIONS);
  }

  private Inputs inputs(String line, String value) throws IOException {
    Loaded<Inputs> loaded = load(Map.of(line, value));
    assertThat(loaded.problems()).isEmpty();
    return loaded.value().orElseThrow();
  }

  private Lot lot(String line, String value) throws IOException {
    return inputs(line, value).scenario().lots().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "35, 35",
    "35 mm, 35",
    "trunk 35 mm, 35",
    // a girth of 11 cm is a diameter of 35.01 mm, times the girth base factor of 1.25: by hand
    "11 cm, 43.77",
    "girth 11, 43.77",
    // the middle of 10 and 12 cm
    "10-12 cm, 43.77",
    "10 to 12 cm girth, 43.77"
  })
  void trunkOrGirth_inAnyForm_isATrunk(String typed, double mm) throws IOException {
    assertThat(lot("trunk mm or girth cm", typed).trunks().meanMm()).isCloseTo(mm, within(0.01));
  }

  @Test
  void girthClass_isAClassOfTrunks() throws IOException {
    assertThat(lot("trunk mm or girth cm", "12-14 cm").trunks())
        .isInstanceOf(Trunks.SizeClass.class);
  }

  @ParameterizedTest
  @CsvSource({
    "6 and 2, 0.6, 0.2",
    "6 + 2, 0.6, 0.2",
    "5.5 and 1.5, 0.55, 0.15",
    // three in four of the usable are firsts
    "8, 0.6, 0.2",
    "0, 0, 0"
  })
  void firstsAndSeconds_inAnyForm_areShares(String typed, double firsts, double seconds)
      throws IOException {
    Lot lot = lot("firsts and seconds in ten", typed);

    assertThat(lot.quality().first()).isCloseTo(firsts, within(1e-9));
    assertThat(lot.quality().second()).isCloseTo(seconds, within(1e-9));
  }

  /**
   * 120 pots of 25 litres filled to 90 % with a mix that shrinks by a tenth and firms by a tenth, 5
   * % wasted: 3,465 litres, and 2,426 where the old ball fills 30 % of the pot.
   */
  @ParameterizedTest
  @CsvSource({"0, 3465", "30, 2426"})
  void oldBall_takesItsPartOfTheMix(String percent, double litres) throws IOException {
    Loaded<Inputs> loaded =
        load(
            Map.of(
                "how many",
                "120",
                "pot litres",
                "25",
                "firsts and seconds in ten",
                "10 and 0",
                "old ball in the pot %",
                percent));
    Projection projection = Projector.project(loaded.value().orElseThrow().scenario());
    double used =
        projection.lots().get(0).uses().stream()
            .filter(use -> use.kind() == Use.Kind.COMPONENT)
            .mapToDouble(Use::amount)
            .sum();

    assertThat(used).isCloseTo(litres, within(0.5));
  }

  @Test
  void evergreen_isKnownByItsName_andMayBeTypedOver() throws IOException {
    assertThat(inputs("species", "Scots pine").scenario().nursery().species().get("Scots pine"))
        .satisfies(pine -> assertThat(pine.habit()).isEqualTo(Habit.EVERGREEN));
    assertThat(inputs("kind", "deciduous").scenario().nursery().species().get("Scots pine"))
        .satisfies(pine -> assertThat(pine.habit()).isEqualTo(Habit.DECIDUOUS));
  }

  @ParameterizedTest
  @CsvSource({"Mar 2027, ROOT_BALL, 2027-09", "Jul 2027, CONTAINER, 2027-07"})
  void form_goesByTheMonth_andSetsTheFirstSale(String arrival, Form form, String notBefore)
      throws IOException {
    Lot lot = lot("arrival month", arrival);

    assertThat(lot.form()).isEqualTo(form);
    assertThat(lot.notBefore()).isEqualTo(YearMonth.parse(notBefore));
  }

  @Test
  void currency_isThatOfASignBesideAPrice() throws IOException {
    assertThat(inputs("price each", "£20").scenario().nursery().settings().currency())
        .isEqualTo("GBP");
  }

  @Test
  void usualValues_thatAreTyped_areNotListedAsUsual() throws IOException {
    assertThat(usual("gap mm", "80")).doesNotContain("gap mm").contains("hourly rate");
    assertThat(usual("trunk mm or girth cm", "30")).doesNotContain("girth base factor");
    assertThat(usual("trunk mm or girth cm", "12 cm")).contains("girth base factor");
  }

  private List<String> usual(String line, String value) throws IOException {
    return inputs(line, value).quick().orElseThrow().usual().stream()
        .map(Quick.Usual::what)
        .toList();
  }

  @Test
  void lineThatIsNotKnown_isNamedWithTheNearest() throws IOException {
    assertThat(load(Map.of("hourly rat", "12")).problems())
        .extracting(Problem::toString)
        .containsExactly(
            "quick.csv, row 12, column line: the quick sheet has no such line (hourly rat);"
                + " the nearest line is hourly rate");
  }

  @Test
  void planThatIsNamed_isPlannedThoughTheQuickSheetIsFilled() throws IOException {
    SmallNursery.copyTidy(folder);
    Map<String, String> none = Map.of();

    assertThat(load(none).value().orElseThrow().quick()).isPresent();
    assertThat(Loader.load(folder.resolve("plan.json"), OPTIONS).value().orElseThrow().quick())
        .isEmpty();
  }
}
