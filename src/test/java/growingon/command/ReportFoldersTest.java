package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.write.KilledWriting;
import growingon.write.OwnThings;
import growingon.write.Snapshot;
import growingon.write.folder.Stage;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Report folders from the command line: whose they are, what stays in them, what is said. */
class ReportFoldersTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 3);

  @TempDir private Path temporary;
  private Path nursery;
  private Path plan;
  private Path out;

  @BeforeEach
  void started() throws IOException {
    nursery = temporary.resolve("nursery");
    assertThat(Ran.on(DAY, "start", nursery.toString()).code()).isZero();
    plan = plan("next year", "");
    out = temporary.resolve("reports").resolve("next year");
  }

  private Path plan(String name, String more) throws IOException {
    return Files.writeString(
        temporary.resolve(name + ".json"),
        "{\"name\": \"%s\",%n \"nursery\": \"nursery\", \"seasons\": 1, \"draws\": 0%s}"
            .formatted(name, more));
  }

  private Ran planned(String... options) {
    return planned(DAY, options);
  }

  private Ran planned(LocalDate day, String... options) {
    List<String> words = new ArrayList<>(List.of("plan", plan.toString()));
    if (!List.of(options).contains("--out")) {
      words.addAll(List.of("--out", out.toString()));
    }
    words.addAll(List.of(options));
    return Ran.on(day, words.toArray(String[]::new));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(each -> each.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void ownThings_andCounts_outliveEveryPlan(boolean force) throws IOException {
    String[] options = force ? new String[] {"--force"} : new String[0];
    assertThat(planned(options).code()).isZero();
    Map<String, String> own = OwnThings.putInto(out, temporary);
    fillCountSheet(out.resolve("details.xlsx"));
    byte[] counted = Files.readAllBytes(out.resolve("details.xlsx"));

    Ran ran = planned(options);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    Path aside = out.resolve("put aside").resolve("details.xlsx");
    assertThat(ran.out())
        .contains(
            "Put aside, because changed since the last run or in the way of the new report: "
                + aside
                + ".");
    assertThat(aside).hasBinaryContent(counted);
    assertThat(Snapshot.of(out)).containsAllEntriesOf(own);
    assertThat(planned(options).out()).doesNotContain("Put aside");
    assertThat(Snapshot.of(out)).containsAllEntriesOf(own);
    assertThat(aside).hasBinaryContent(counted);
  }

  private static void fillCountSheet(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    try (InputStream in = new java.io.ByteArrayInputStream(bytes);
        Workbook book = new XSSFWorkbook(in);
        OutputStream to = Files.newOutputStream(file)) {
      Row row = book.getSheet("Count sheet").getRow(8);
      row.createCell(20).setCellValue(117);
      book.write(to);
    }
  }

  /** The program is killed for real, in a process of its own. */
  @Test
  void programKilledBetweenTheRenames_nextStart_evenOfABrokenPlan_putsAllBack() throws Exception {
    assertThat(planned().code()).isZero();
    Map<String, String> before = withOwnThings();

    int code =
        KilledWriting.run(temporary, KilledCommand.class, "LAID_ASIDE", "plan", "next year.json");

    assertThat(code).isEqualTo(KilledWriting.KILLED);
    assertThat(out).doesNotExist();
    Files.writeString(temporary.resolve("broken.json"), "{");
    int check =
        KilledWriting.run(temporary, KilledCommand.class, "WRITTEN", "check", "broken.json");
    assertThat(check).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(Snapshot.of(out)).isEqualTo(before);
    assertThat(names(out.getParent())).containsExactly("next year");
  }

  private Map<String, String> withOwnThings() throws IOException {
    assertThat(OwnThings.putInto(out, temporary)).isNotEmpty();
    return Snapshot.of(out);
  }

  /** Stops the program where it is: nothing that it does on a fault runs, but for its lock. */
  private static final class Stopped extends Error {
    private static final long serialVersionUID = 1L;
  }

  private void stopPlanning(Stage at, String... words) {
    GrowingOn program =
        new GrowingOn(
            Ran.clock(DAY),
            stage -> {
              if (stage == at) {
                throw new Stopped();
              }
            });
    StringWriter told = new StringWriter();
    int code = Main.run(program, new PrintWriter(told), new PrintWriter(told), words);
    assertThat(code).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(told.toString()).contains("Stopped");
  }

  @Test
  void everyCommand_thatMeetsAReportLaidAside_putsItBack() throws IOException {
    out = temporary.resolve("own folder-for-customer");
    plan = plan("next year", ", \"report folder\": \"own folder\"");
    String[] edition = {"plan", plan.toString(), "--for", "customer"};
    Path broken = plan("broken", ", \"report folder\": \"own folder\", \"K\": \"many\"");
    assertThat(Ran.on(DAY, edition).code()).isZero();
    Map<String, String> before = Snapshot.of(out);
    for (List<String> words :
        List.of(
            List.of("check", broken.toString()),
            List.of("review", broken.toString()),
            List.of("compare", nursery.toString(), broken.toString()),
            List.of("plan", broken.toString()),
            List.of("plan", broken.toString(), "--for", "bank"),
            List.of("plan", nursery.resolve("no.json").toString(), "--out", out.toString()))) {
      stopPlanning(Stage.CARRIED_OVER, edition);
      assertThat(out).doesNotExist();

      Ran ran = Ran.on(DAY, words.toArray(String[]::new));

      assertThat(ran.code()).as(words.toString()).isEqualTo(ExitCode.BAD_INPUT);
      assertThat(ran.err())
          .startsWith(
              "A run was stopped while it wrote " + out + ": what was there before is back.");
      assertThat(Snapshot.of(out)).isEqualTo(before);
    }
  }

  @Test
  void secondRun_whileAnotherWritesTheSameReport_isWrongUsage() {
    List<Ran> second = new ArrayList<>();
    GrowingOn first =
        new GrowingOn(
            Ran.clock(DAY),
            stage -> {
              if (stage == Stage.WRITTEN) {
                second.add(planned("--for", "customer"));
              }
            });
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    String[] words = {"plan", plan.toString(), "--for", "customer", "--out", out.toString()};

    assertThat(Main.run(first, nowhere, nowhere, words)).isZero();

    assertThat(second).hasSize(1);
    assertThat(second.get(0).code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(second.get(0).err().strip())
        .isEqualTo("Another run is writing " + out + "; wait for it. Nothing was written.");
    assertThat(out.resolve("plan.xlsx")).exists();
  }

  /** As where another program holds a file open and the system lets nobody rename its folder. */
  @Test
  void folderThatCannotBeRenamed_isAsItWas_andTheTerminalSaysWhatToDo() throws IOException {
    planned("--for", "customer");
    Map<String, String> before = Snapshot.of(out);
    Path swap = out.resolveSibling(".next year.swap");
    StringWriter err = new StringWriter();
    GrowingOn program =
        new GrowingOn(
            Ran.clock(DAY),
            stage -> {
              if (stage == Stage.WRITTEN) {
                assertThat(swap.toFile().renameTo(temporary.resolve("away").toFile())).isTrue();
              }
            });

    int code =
        Main.run(
            program,
            new PrintWriter(Writer.nullWriter()),
            new PrintWriter(err),
            "plan",
            plan.toString(),
            "--for",
            "customer",
            "--out",
            out.toString());

    assertThat(code).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(err.toString().strip())
        .isEqualTo(
            out
                + " cannot be replaced; close its files in other programs and run again. It is as it was.");
    assertThat(Snapshot.of(out)).isEqualTo(before);
  }

  @Test
  void outFolder_thatHoldsAnInput_evenByForce_isWrongUsageAndNamesIt() throws IOException {
    Files.move(nursery.resolve("nursery.xlsx"), nursery.resolve("plan.xlsx"));
    Map<String, String> before = Snapshot.of(temporary);

    Ran ran = planned("--out", nursery.toString(), "--force");

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err().strip())
        .isEqualTo(
            nursery
                + " holds "
                + nursery.resolve("plan.json")
                + ", which this plan reads; name another folder with --out. Nothing was written.");
    assertThat(Snapshot.of(temporary)).isEqualTo(before);
  }

  @Test
  void outFolder_thatHoldsTheKeptPlan_isWrongUsage() throws IOException {
    assertThat(planned("--keep").code()).isZero();
    Path kept = temporary.resolve("plans").resolve("kept");
    Map<String, String> before = Snapshot.of(temporary);

    Ran ran = planned("--out", kept.toString(), "--force");

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err())
        .startsWith(
            kept + " holds " + kept.resolve("next year-2026-11.json") + ", which this plan");
    assertThat(Snapshot.of(temporary)).isEqualTo(before);
  }

  @Test
  void comparedPlans_areInputsToo() {
    Ran ran =
        Ran.on(
            DAY,
            "compare",
            plan.toString(),
            nursery.toString(),
            "--force",
            "--out",
            temporary.toString());

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err()).startsWith(temporary + " holds " + plan + ", which this plan reads; ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        ".                 | holds %s, which this plan reads",
        "nursery           | holds %s, which this plan reads",
        "next year.json    | is a file",
        "next year.json/in | is to lie in %s, a file",
      })
  void reportFolderOfThePlansFile_thatCannotBeOne_isBadInputWithFileAndKey(
      String folder, String why) throws IOException {
    plan = plan("next year", ",%n \"report folder\": \"%s\"".formatted(folder));
    Map<String, String> before = Snapshot.of(temporary);
    Path named = folder.equals("nursery") ? nursery.resolve("nursery.xlsx") : plan;

    Ran ran = Ran.on(DAY, "plan", plan.toString(), "--force");

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .isEqualToNormalizingNewlines(
            "error: next year.json, line 3, key report folder: the report's folder %s (%s); name another folder with --out\n"
                    .formatted(why.formatted(named), temporary.resolve(folder).normalize())
                + "1 error, 0 warnings, 0 notices. Nothing was written; put the errors right first.\n");
    assertThat(Snapshot.of(temporary)).isEqualTo(before);
  }

  @Test
  void plansOfTwoNames_writtenToOneFolder_doNotReplaceEachOther() throws IOException {
    plan = plan("lot (60)", "");
    assertThat(planned().code()).isZero();
    Map<String, String> before = Snapshot.of(out);
    plan = plan("lot [60]", "");

    Ran ran = planned();

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err())
        .contains("holds the report of \"lot (60)\", and this is the report of \"lot [60]\"; ");
    assertThat(Snapshot.of(out)).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"partner", "bank", "customer"})
  void edition_intoAFolderWithOtherFiles_isWrongUsageAndNamesThem(String reader)
      throws IOException {
    assertThat(planned("--for", reader).code()).isZero();
    Files.writeString(out.resolve("what I paid.txt"), "37.18 each");
    Map<String, String> before = Snapshot.of(out);

    Ran ran = planned("--for", reader, "--force");

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err().strip())
        .isEqualTo(
            out
                + " holds what is not of this edition and would be passed on with it: what I paid.txt;"
                + " move it elsewhere, or name another folder with --out. Nothing was written.");
    assertThat(Snapshot.of(out)).isEqualTo(before);
  }

  @Test
  void edition_inPlaceOfTheWholeReport_isRefused() {
    assertThat(planned().code()).isZero();

    Ran ran = planned("--for", "bank");

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err())
        .contains(
            "holds the report of \"next year\", and this is the edition of"
                + " \"Plan from Nov 2026\" for a bank; ");
  }

  @Test
  void dayOfIssue_standsOnceInWorkbookPageAndTerminal() throws IOException {
    Ran ran = planned();

    String day = "made on 3 November 2026";
    assertThat(ran.out()).containsOnlyOnce(day);
    assertThat(ran.out()).contains("Report: " + out + ", " + day + " (0 errors, 0 warnings, ");
    assertThat(Files.readString(out.resolve("report.html"))).containsOnlyOnce(day);
    assertThat(workbookText(out.resolve("plan.xlsx"))).containsOnlyOnce(day);
    assertThat(Files.readString(out.resolve("figures.json")))
        .containsOnlyOnce("\"made on\" : \"2026-11-03\"");
  }

  private static String workbookText(Path file) throws IOException {
    StringBuilder text = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry each = zip.getNextEntry(); each != null; each = zip.getNextEntry()) {
        if (each.getName().endsWith(".xml")) {
          text.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return text.toString();
  }

  @Test
  void samePlanOnTheSameDay_hasTheSameBytes_andOnAnotherDayTheSameFigures() throws IOException {
    planned();
    Map<String, String> first = Snapshot.of(out);
    planned(DAY);
    assertThat(Snapshot.of(out)).isEqualTo(first);

    planned(DAY.plusDays(1));

    Map<String, String> later = Snapshot.of(out);
    assertThat(later.keySet()).isEqualTo(first.keySet());
    assertThat(later.keySet().stream().filter(each -> !later.get(each).equals(first.get(each))))
        .containsExactlyInAnyOrder(
            "details.xlsx", "figures.json", "jobs.ics", "plan.xlsx", "report.html");
  }

  @Test
  void datedFiles_areNamedByPlanReaderAndDay_andReplacedByTheNextRun() throws IOException {
    assertThat(planned("--dated").code()).isZero();
    assertThat(names(out)).contains("next year 2026-11-03.xlsx", "next year 2026-11-03.html");

    Ran ran = planned(DAY.plusDays(1), "--dated");

    assertThat(ran.out()).doesNotContain("Put aside");
    assertThat(names(out))
        .containsExactly(
            "charts",
            "figures.json",
            "jobs.ics",
            "next year 2026-11-04 details.xlsx",
            "next year 2026-11-04.html",
            "next year 2026-11-04.xlsx",
            "problems.txt",
            "tables");
    Path bank = temporary.resolve("for the bank");
    planned("--for", "bank", "--dated", "--out", bank.toString());
    assertThat(names(bank))
        .contains(
            "Plan from Nov 2026 bank 2026-11-03.xlsx", "Plan from Nov 2026 bank 2026-11-03.html");
  }
}
