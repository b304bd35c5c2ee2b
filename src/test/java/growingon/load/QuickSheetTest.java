package growingon.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import growingon.nursery.Inputs;
import growingon.nursery.Quick;
import growingon.nursery.lot.Form;
import growingon.nursery.lot.Lot;
import growingon.nursery.lot.Trunks;
import growingon.nursery.species.Habit;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import growingon.project.Projection;
import growingon.project.Projector;
import growingon.project.history.Use;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
    "35 mm trunk, 35",
    "3.5 cm trunk, 35",
    "30-40 mm, 35",
    "trunk 30-40, 35",
    "110 mm girth, 43.77",
    // the middle of 10 and 12 cm
    "10-12 cm, 43.77",
    "10 to 12 cm girth, 43.77"
  })
  void trunkOrGirth_inAnyForm_isATrunk(String typed, double mm) throws IOException {
    assertThat(lot("trunk mm or girth cm", typed).trunks().meanMm()).isCloseTo(mm, within(0.01));
  }

  @ParameterizedTest
  @ValueSource(strings = {"10-12", "10/12", "10 to 12"})
  void rangeWithoutUnit_isAskedAbout(String typed) throws IOException {
    assertThat(problems("trunk mm or girth cm", typed))
        .containsExactly(
            "quick.csv, row 7, column fill in: this may be a trunk in mm or a girth in cm ("
                + typed
                + "); write "
                + typed
                + " mm for the trunk, or "
                + typed
                + " cm for the girth");
  }

  @Test
  void sizeThatBecameADate_isAskedFor() throws IOException {
    assertThat(problemsInWorkbook("trunk mm or girth cm", LocalDate.of(2026, 12, 10)))
        .containsExactly(
            "quick.xlsx, sheet quick, row 7, column fill in: this size has become a date"
                + " (2026-12-10); format the cell as text and type it again, as in 10-12 cm");
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

  @ParameterizedTest
  @ValueSource(strings = {"price each", "carriage for all", "selling price each"})
  void numberCell_withThreeDecimals_isNotAskedAboutThousands(String line) throws IOException {
    assertThat(problemsInWorkbook(line, 1.125)).isEmpty();
  }

  @Test
  void priceWithThreeDecimals_isThatPrice() throws IOException {
    Inputs inputs = workbook("price each", 1.125).value().orElseThrow();

    assertThat(inputs.offers().get(0).unitPrice(50)).isEqualTo(1.125);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,200", "1.200"})
  void priceAsText_thatMayBeThousands_isAskedAbout(String typed) throws IOException {
    assertThat(problemsInWorkbook("carriage for all", typed))
        .containsExactly(
            "quick.xlsx, sheet quick, row 5, column fill in: this may be thousands or decimals ("
                + typed
                + "); write 1200 or 1.2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1,200", "1.200", "1200"})
  void plantsAsText_withAMarkBeforeThreeDigits_areThousands(String typed) throws IOException {
    Inputs inputs = workbook("how many", typed).value().orElseThrow();

    assertThat(inputs.offers().get(0).take()).isEqualTo(1200);
  }

  @Test
  void priceAsText_withSignAndThousands_isRead() throws IOException {
    Inputs inputs = workbook("carriage for all", "£ 1,200.00").value().orElseThrow();

    assertThat(inputs.offers().get(0).carriage()).isEqualTo(1200);
    assertThat(inputs.scenario().nursery().settings().currency()).isEqualTo("GBP");
  }

  @ParameterizedTest
  @CsvSource({
    "root-work check 1, fast, 'this is no number (fast); write digits, such as 12.5'",
    "root-work check 2, 0, this must be more than 0 and at most 2 (0); correct it",
    "pot-bound factor, -1, this must be more than 0 and at most 2 (-1); correct it",
    "pot-bound months, 1.5, this must be a whole number (1.5); round it",
    "growth mm a year, -1, this must be 0 or more (-1); correct it",
    "grit in the mix %, 140, this must be between 0 and 100 (140); correct it",
    "cost per m2 a year, much, 'this is no number (much); write digits, such as 12.5'"
  })
  void lineThatCannotBeRead_isTheOnlyProblem(String line, String typed, String sentence)
      throws IOException {
    assertThat(problems(line, typed))
        .containsExactly("quick.csv, row 12, column fill in: " + sentence);
  }

  private List<String> problems(String line, String value) throws IOException {
    return load(Map.of(line, value)).problems().stream().map(Problem::toString).toList();
  }

  private List<String> problemsInWorkbook(String line, Object value) throws IOException {
    return workbook(line, value).problems().stream().map(Problem::toString).toList();
  }

  private Loaded<Inputs> workbook(String line, Object value) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("quick");
      Books.row(sheet, 0, 0, "line", "fill in");
      for (int i = 0; i < TEN.size(); i++) {
        String name = TEN.get(i).get(0);
        Books.row(sheet, i + 1, 0, name, name.equals(line) ? value : TEN.get(i).get(1));
      }
      Books.save(book, folder.resolve("quick.xlsx"));
    }
    return Loader.load(folder.resolve("quick.xlsx"), OPTIONS);
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
