package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import growingon.write.folder.FolderName;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Paths and names that no file system, or not every one, can take: one sentence each. */
class OddPathsTest {
  private static final String COUNT = "1 error, 0 warnings, 0 notices.";
  private static final String REFUSED = COUNT + " Nothing was written; put the errors right first.";

  private static final Path DEMO_STOCK = Path.of("demo-data", "stock.xlsx");

  /** In this one Java knows no letter beyond those of English. */
  private static final Map<String, String> ENGLISH_ONLY = Map.of("LC_ALL", "C", "LANG", "C");

  @TempDir private Path temporary;
  private Path nursery;

  @BeforeEach
  void layOut() throws IOException {
    nursery = Files.createDirectory(temporary.resolve("nursery"));
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/load/tidy"))) {
      for (Path file : files.toList()) {
        Files.copy(file, nursery.resolve(file.getFileName()));
      }
    }
  }

  private static void assertRefused(Ran ran, String... lines) {
    assertThat(ran.code()).as(ran.out() + ran.err()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err().lines()).containsExactly(lines);
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan.json", "plan.xlsx"})
  @Timeout(300) // A guard: who waits for a pipe waits for ever.
  void pipe_isNotWaitedFor(String name) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "no pipes here");
    Path pipe = temporary.resolve(name);
    new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();

    assertRefused(
        Ran.of("check", pipe.toString()),
        "error: "
            + name
            + ": this is no file but a pipe or a device, which is not read; save it as a file",
        COUNT);
  }

  @Test
  void damagedWorkbook_isOneSentence_andTheLibraryIsSilent() throws Exception {
    Path folder = Files.createDirectory(temporary.resolve("damaged"));
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(DEMO_STOCK));
        ZipOutputStream out =
            new ZipOutputStream(Files.newOutputStream(folder.resolve("stock.xlsx")))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        String part = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        boolean relations = entry.getName().equals("_rels/.rels");
        String broken = relations ? part.replaceFirst("Relationship ", "Relationship <") : part;
        out.write(broken.getBytes(StandardCharsets.ISO_8859_1));
      }
    }

    assertRefused(
        Forked.run(List.of(), Map.of(), "check", folder.toString()),
        "error: stock.xlsx: this workbook is damaged; open it in a spreadsheet program, let it be"
            + " repaired, and save it again",
        COUNT);
  }

  @Test
  void folderWithoutAnyTable_isOneError() throws IOException {
    Path empty = Files.createDirectory(temporary.resolve("empty"));

    assertRefused(
        Ran.of("check", empty.toString()),
        "error: empty: there is no table of a nursery here; give a plan.json, a nursery folder or"
            + " one .xlsx workbook, or start a new folder",
        COUNT);
  }

  @Test
  void rootOfTheDisk_isCalledByItsName() {
    Ran ran = Ran.of("check", "/");

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err()).startsWith("error: /: there is no table of a nursery here;");
  }

  @Test
  void nameWithALineBreak_isShownOnOneLine() {
    assertRefused(
        Ran.of("check", temporary.resolve("two\nlines.json").toString()),
        "error: "
            + temporary
            + "/two lines.json: there is no such file or folder; give a plan.json, a nursery folder"
            + " or one .xlsx workbook",
        COUNT);
  }

  @Test
  void fileOfANursery_withALineBreak_isShownOnOneLine() throws IOException {
    Files.writeString(nursery.resolve("my\ncare.csv"), "a,b\n");

    Ran ran = Ran.of("check", nursery.toString());

    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines())
        .contains("notice: my care.csv: this is no table of a nursery and is not read (my care)");
  }

  @ParameterizedTest
  @CsvSource({"check,''", "plan,' Nothing was written; put the errors right first.'"})
  void letterBeyondEnglish_whereJavaKnowsNone_isOneSentence(String command, String more)
      throws Exception {
    Ran ran = Forked.run(List.of(), ENGLISH_ONLY, command, "gr\u00fcn");

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err().lines())
        .hasSize(2)
        .first()
        .asString()
        .matches(
            "error: this cannot be a path on this computer \\(.*\\); write it otherwise; where"
                + " letters such as \u00f6 do not come through, set LC_ALL=C\\.UTF-8");
  }

  @Test
  void workingFolderBeyondEnglish_whereJavaKnowsNone_isOneSentence() throws Exception {
    Path folder = Files.createDirectory(temporary.resolve("gr\u00fcn"));

    Ran ran = Forked.run(folder, Main.class, List.of(), ENGLISH_ONLY, "start", "mine");

    assertRefused(
        ran,
        "error: the folder that you work in is gone, or its name has letters that do not come"
            + " through; go to another folder, or set LC_ALL=C.UTF-8",
        REFUSED);
    try (Stream<Path> all = Files.list(temporary)) {
      assertThat(all).containsExactlyInAnyOrder(folder, nursery);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "CON | Windows keeps this one for a device | rename the plan",
        "lpt1 | Windows keeps this one for a device | rename the plan",
        "nul.old | Windows keeps this one for a device | rename the plan"
      })
  void nameOfADevice_isRefusedOnReading(String name, String why, String remedy) throws IOException {
    assertNameRefused(name, "a plan's name is that of its report folder, and " + why, remedy);
  }

  @Test
  void nameOfTooManyBytes_isRefusedOnReading() throws IOException {
    assertNameRefused(
        "\u6728".repeat(34),
        "a plan's name is that of its report folder, and is too long for one",
        "rename the plan with at most 100 letters, or 33 where a letter takes three bytes");
  }

  private void assertNameRefused(String name, String sentence, String remedy) throws IOException {
    Path plan = named(name);

    Ran ran = Ran.of("plan", plan.toString(), "--out", temporary.resolve("out").toString());

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err().lines())
        .contains(
            "error: named.json, line 1, key name: " + sentence + " (" + name + "); " + remedy);
  }

  private Path named(String name) throws IOException {
    return Files.writeString(
        nursery.resolve("named.json"),
        "{\"name\": \"%s\", \"first month\": \"2026-11\", \"seasons\": 1}".formatted(name));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"lot (60)", "lot [60]", "Tom's & Anna's", "\ud83c\udf33\ud83c\udf33", "50 %"})
  void name_thatFoldersMayHave_isThatOfTheFolder(String name) throws IOException {
    assertThat(FolderName.of(name)).isEqualTo(name);
    assertThat(Ran.of("check", named(name).toString()).code()).isZero();
  }

  @Test
  void numberThatNobodyCanReckonWith_inAKeptPlan_isOneSentence() throws IOException {
    Path plans = Files.createDirectories(temporary.resolve("plans/kept")).getParent();
    Path demo = Path.of("demo-data/two-seasons-on").toAbsolutePath();
    Files.writeString(
        plans.resolve("two-seasons-on.json"),
        Files.readString(Path.of("plans/two-seasons-on.json"))
            .replace("../demo-data/two-seasons-on", demo.toString()));
    String kept = Files.readString(Path.of("plans/kept/two seasons on-2022-11.json"));
    Files.writeString(
        plans.resolve("kept/two seasons on-2022-11.json"),
        kept.replaceFirst("\"quantity\" : [0-9.]+", "\"quantity\" : 1e6448825751"));

    Ran ran = Ran.of("review", plans.resolve("two-seasons-on.json").toString());

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err().lines())
        .filteredOn(line -> line.startsWith("error"))
        .containsExactly(
            "error: two seasons on-2022-11.json, line 8: this number is too large to reckon with"
                + " (1e6448825751); correct it");
  }
}
