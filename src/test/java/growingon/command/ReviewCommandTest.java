package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keeping a plan and reviewing it, from the command line, with the demonstration nursery. */
class ReviewCommandTest {
  private static final Path KEPT = Path.of("plans", "kept", "two seasons on-2022-11.json");

  @TempDir private Path folder;
  private Path plan;
  private Path nursery;
  private Path kept;

  @BeforeEach
  void layOut() throws IOException {
    nursery = Files.createDirectories(folder.resolve("demo-data").resolve("two-seasons-on"));
    try (Stream<Path> files = Files.list(Path.of("demo-data", "two-seasons-on"))) {
      for (Path file : files.toList()) {
        Files.copy(file, nursery.resolve(file.getFileName()));
      }
    }
    plan = Files.createDirectories(folder.resolve("plans")).resolve("two-seasons-on.json");
    Files.copy(Path.of("plans", "two-seasons-on.json"), plan);
    kept = folder.resolve(KEPT);
    Files.createDirectories(kept.getParent());
  }

  private Ran review(String out) {
    return Ran.of("review", plan.toString(), "--out", folder.resolve(out).toString());
  }

  private Ran keep(String... more) {
    String[] words = {"plan", plan.toString(), "--keep", "--out", folder.resolve("p").toString()};
    return Ran.of(Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new));
  }

  @Test
  void demonstration_hasALotOfEachVerdict() throws IOException {
    Files.copy(KEPT, kept);

    Ran ran = review("r");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("Withyfold Nursery, two seasons on: what happened until 2024-10-28.\n")
        .contains(
            "More than luck: 8 of 15 figures judged (deaths, growth, price); by luck alone about 2.7"
                + " would be: ")
        .contains(
            "Lots have good and bad seasons together: in nine of ten draws luck alone put 0 to 6 of"
                + " them outside; so many\n  are more than luck.")
        .contains("Compared with the plan kept as two seasons on.")
        .contains("Polder tridents paid: ")
        .contains("Cobnut Farm crabs did not pay: ")
        .contains("Hornbeam whips is too young to tell: ")
        .contains("No fault was found in the records.")
        .contains("Report: " + folder.resolve("r"));
    assertThat(ran.out().lines().filter(line -> !line.startsWith("Report: ")))
        .allMatch(line -> line.length() <= 112);
    assertThat(folder.resolve("r"))
        .isDirectoryContaining("glob:**plan.xlsx")
        .isDirectoryContaining("glob:**report.html")
        .isDirectoryContaining("glob:**figures.json");
    assertThat(Files.readString(folder.resolve("r").resolve("report.html")))
        .contains("Did the bought lots pay");
  }

  /** 25 lines over eight months, of 47 plants for 25 × 237.90 = 5,947.50; the rest is assumed. */
  @Test
  void shortDaybook_headlineCountsItsOwnLines_andNotWhatIsAssumed() throws IOException {
    Files.copy(KEPT, kept);
    StringBuilder lines = new StringBuilder("date,lot,what,quantity,grade,quality,amount\n");
    for (int line = 0; line < 25; line++) {
      int month = 1 + line / 4;
      lines.append(
          "2023-%02d-%02d,Maples of 2020,sold,%d,started,first,237.90%n"
              .formatted(month, 3 + line % 4, line < 22 ? 2 : 1));
    }
    lines.append("2023-08-28,Maples of 2020,counted,140,,,\n");
    Files.writeString(nursery.resolve("daybook.csv"), lines.toString());

    Ran ran = review("r");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains("The daybook has 26 lines, 1 count among them")
        .contains("Sold by the daybook: 47 plants for GBP 5,948 (planned of all lots: ")
        .contains("Of lots without a line ");
    String sold = Files.readString(folder.resolve("r/tables/lots-sold.csv"));
    sold.lines()
        .filter(each -> each.startsWith("Yews of 2018"))
        .map(each -> each.split(","))
        .forEach(cells -> assertThat(cells[4]).as("as planned").isEqualTo(cells[2]));
    assertThat(sold).contains("Yews of 2018");
  }

  @Test
  void planKeptByAnOlderProgram_withoutItsDraws_isJudgedOneByOne() throws IOException {
    String older = Files.readString(KEPT).replaceAll(", \"(luck )?within\" : \\{[^{}]*\\}", "");
    assertThat(older).doesNotContain("within");
    Files.writeString(kept, older);

    Ran ran = review("r");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("by luck alone about 2.7 would be: ")
        .doesNotContain("good and bad seasons together");
  }

  @Test
  void planKeptWithItsDraws_isReadBack_andJudgedBy() {
    assertThat(keep().code()).isZero();

    Ran ran = review("r");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("More than luck: 8 of 15 figures judged");
  }

  @Test
  void keeping_saysWhere_andDoneAgainChangesNothing() throws IOException {
    Ran ran = keep();
    String first = Files.readString(kept);

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("Kept: " + kept + " (review compares with it)");
    assertThat(keep().code()).isZero();
    assertThat(kept).hasContent(first);
  }

  @Test
  void keptPlan_thatSaysOtherwise_isReplacedOnlyByForce() throws IOException {
    Files.writeString(kept, "{}");

    Ran refused = keep("--draws", "0");

    assertThat(refused.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(refused.err())
        .isEqualTo(
            kept
                + " is there already and says otherwise. It was left as it is; use --force to"
                + " replace it.\n");
    assertThat(kept).hasContent("{}");
    assertThat(folder.resolve("p")).doesNotExist();
    assertThat(keep("--draws", "0", "--force").code()).isZero();
    assertThat(Files.size(kept)).isGreaterThan(1000);
  }

  @Test
  void review_doneTwice_givesTheSameBytes() throws IOException {
    Files.copy(KEPT, kept);

    review("one");
    review("two");

    assertThat(files(folder.resolve("one")))
        .isEqualTo(files(folder.resolve("two")))
        .hasSizeGreaterThan(20);
  }

  private static Map<String, Integer> files(Path root) throws IOException {
    Map<String, Integer> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = root.relativize(file).toString();
        files.put(name, java.util.Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return files;
  }

  @Test
  void withoutAKeptPlan_itSaysSo() {
    Ran ran = review("r");

    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains(
            "There is no kept plan: planned is what the files give now. Keep the next one with plan"
                + " --keep, before anything\n  happens.\n");
  }

  @Test
  void withoutADaybook_thereIsNothingToReview() throws IOException {
    Files.delete(nursery.resolve("daybook.csv"));

    Ran ran = review("r");

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            "error: "
                + plan
                + ": there is no daybook, no later stock list and no receipts, so there is nothing to"
                + " review; put the stock list that the plan began with into the folder earlier and"
                + " keep today's as stock, or add a daybook, such as a count sheet filled in, or a"
                + " table receipts")
        .endsWith("Nothing was written; put the errors right first.\n");
    assertThat(folder.resolve("r")).doesNotExist();
  }

  @Test
  void keptPlan_thatWasTamperedWith_isReported() throws IOException {
    Files.writeString(kept, Files.readString(KEPT).replaceFirst("\"seasons\"", "\"seasens\""));

    Ran ran = review("r");

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            "error: two seasons on-2022-11.json, line 4: this key is not known (seasens); the"
                + " nearest known one is seasons");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"seasons\" : 6 | \"seasons\" : 0 | line 1: this is not what was written here (0 seasons)",
        "\"seasons\" : 6 | \"seasons\" : 3 | line 1: this is not what was written here (71 months of"
            + " Maples of 2020 in 3 seasons)",
        "\"seasons\" : 6 | \"seasons\" : 1e12 | line 4, key seasons: this is not what was written"
            + " here (1000000000000)",
        "\"2022-11\" | \"2022-13\" | line 1: this is not what was written here (first month 2022-13)",
        "\"quantity\" : 200 | \"quantity\" : -2 | line 8: this is not what was written here (-2 plants"
            + " of Maples of 2020)",
        "\"trunk mm\" : [ | \"trunk mm\" : [1, | line 8: this is not what was written here (lists of"
            + " unlike length of Maples of 2020)",
      })
  void keptPlan_withFiguresThatCannotBe_isReported(String was, String is, String problem)
      throws IOException {
    Files.writeString(kept, Files.readString(KEPT).replaceFirst(Pattern.quote(was), is));

    Ran ran = review("r");

    assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).contains("error: two seasons on-2022-11.json, " + problem + ";");
  }

  @Test
  void keeping_doesNotGoWithAnEdition() {
    Ran ran = keep("--for", "bank");

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err()).contains("--keep freezes the whole plan, so it does not go with --for");
  }
}
