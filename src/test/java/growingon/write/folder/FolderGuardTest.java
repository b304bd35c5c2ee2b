package growingon.write.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.write.LightReport;
import growingon.write.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a report may not go, and what is said of it. */
class FolderGuardTest {
  private static final String ANOTHER = "; name another folder with --out";
  private static final String NOTHING = ". Nothing was written.";

  @TempDir private Path temporary;
  private Path folder;

  @BeforeEach
  void name() {
    folder = temporary.resolve("folder");
  }

  private void assertRefused(Placing placing, String why) throws IOException {
    Map<String, String> before = Snapshot.of(temporary);

    assertThatThrownBy(() -> LightReport.write(placing))
        .isInstanceOf(NotAReportFolder.class)
        .hasMessage(placing.folder() + " " + why + NOTHING);

    assertThat(Snapshot.of(temporary)).isEqualTo(before);
  }

  private Placing reading(Path... inputs) {
    return new Placing(folder, true, false, List.of(inputs), stage -> {});
  }

  @Test
  void placesOfTheUser_evenByForceOrThroughALink_areRefused() throws IOException {
    Path home = Path.of(System.getProperty("user.home"));
    Path work = Path.of(System.getProperty("user.dir")).toAbsolutePath();
    Path link = Files.createSymbolicLink(temporary.resolve("link"), work.getParent());
    Path among = Files.createSymbolicLink(temporary.resolve("among"), home.getRoot());
    for (Path never :
        List.of(home, work, work.getParent(), link, link.resolve(work.getFileName()))) {
      assertRefused(
          Placing.in(never).forced(), "is the home or working folder, or holds it" + ANOTHER);
    }
    Files.delete(link);
    for (Path root : List.of(temporary.getRoot(), among)) {
      assertRefused(Placing.in(root).forced(), "is the root of a disk" + ANOTHER);
    }
    Files.delete(among);
  }

  @Test
  void file_orAFolderBelowOne_isRefused() throws IOException {
    Path file = Files.writeString(folder, "a file");

    assertRefused(Placing.in(file).forced(), "is a file" + ANOTHER);
    assertRefused(
        Placing.in(file.resolve("within/it")).forced(),
        "is to lie in " + file.toRealPath() + ", a file" + ANOTHER);
  }

  @Test
  void linkToNothing_isRefused() throws IOException {
    Files.createSymbolicLink(folder, Path.of("nowhere"));

    assertRefused(
        Placing.in(folder).forced(), "is a link to something that is not there" + ANOTHER);
  }

  @Test
  void nameTooLongForTheFilesBesideIt_isRefused() throws IOException {
    assertRefused(
        Placing.in(temporary.resolve("界".repeat(67))),
        "has too long a name; give it a shorter one");

    LightReport.write(Placing.in(temporary.resolve("界".repeat(66))));
  }

  @Test
  void pathThatTheDiskRefuses_isRefusedWithItsReason() {
    Path impossible = temporary.resolve("x".repeat(300)).resolve("report");

    assertThatThrownBy(() -> LightReport.write(Placing.in(impossible)))
        .isInstanceOf(NotAReportFolder.class)
        .hasMessageStartingWith(impossible + " cannot be made or replaced (")
        .hasMessageEndingWith(")" + ANOTHER + NOTHING);
  }

  @Test
  void folderThatHoldsAnInput_evenByForce_isRefusedAndNamesIt() throws IOException {
    Path workbook = Files.createDirectory(folder).resolve("plan.xlsx");
    Files.writeString(workbook, "an input");

    assertRefused(
        reading(temporary.resolve("not there.csv"), workbook),
        "holds " + workbook + ", which this plan reads" + ANOTHER);
  }

  @Test
  void reportThatHoldsAnInput_isRefusedToo() throws IOException {
    LightReport.write(Placing.in(folder));
    Path kept = Files.createDirectory(folder.resolve("kept")).resolve("light-2026-11.json");
    Files.writeString(kept, "{}");

    assertRefused(reading(kept), "holds " + kept + ", which this plan reads" + ANOTHER);
  }

  @Test
  void input_reachedThroughLinks_isFound() throws IOException {
    Path nursery = Files.createDirectory(temporary.resolve("nursery"));
    Path real = Files.createDirectory(folder).resolve("stock list.csv");
    Files.writeString(real, "lot");
    Path link = Files.createSymbolicLink(nursery.resolve("stock.csv"), real);

    assertRefused(reading(link), "holds " + link + ", which this plan reads" + ANOTHER);

    Path other = Files.createSymbolicLink(temporary.resolve("other"), nursery);
    Path daybook = Files.writeString(nursery.resolve("daybook.csv"), "date");
    assertRefused(
        new Placing(other, true, false, List.of(daybook), stage -> {}),
        "holds " + daybook + ", which this plan reads" + ANOTHER);
  }

  @Test
  void folderBesideTheInputs_orWithinTheirFolder_isAllowed() throws IOException {
    Path stock = Files.createDirectory(temporary.resolve("nursery")).resolve("stock.csv");
    Files.writeString(stock, "lot");
    Path within = temporary.resolve("nursery/report");
    Placing placing =
        new Placing(within, false, false, List.of(stock, stock.getParent()), stage -> {});

    assertThatCode(() -> LightReport.write(placing)).doesNotThrowAnyException();
  }

  @Test
  void folderOfFilesOfOthers_isRefusedAndNamesFive() throws IOException {
    Files.createDirectory(folder);
    for (int i = 1; i <= 7; i++) {
      Files.writeString(folder.resolve("note " + i + ".txt"), "a note");
    }

    assertRefused(
        Placing.in(folder),
        "is no report of this program and holds note 1.txt, note 2.txt, note 3.txt, note 4.txt,"
            + " note 5.txt and 2 more"
            + ANOTHER
            + ", or have the report put beside them with --force");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "7",
        "{\"made by\": \"someone else\"}",
        "{\"made by\": {}}",
        "{\"plan\": 1"
      })
  void figuresOfAnotherProgram_makeNoReport(String figures) throws IOException {
    Files.createDirectory(folder);
    Files.writeString(folder.resolve("figures.json"), figures);

    assertRefused(
        Placing.in(folder),
        "is no report of this program and holds figures.json"
            + ANOTHER
            + ", or have the report put beside them with --force");
  }

  @Test
  void folderWithWhatADesktopLeaves_isAsGoodAsEmpty() throws IOException {
    Files.writeString(Files.createDirectory(folder).resolve(".DS_Store"), "layout");

    LightReport.write(Placing.in(folder), "light", "bank");

    assertThat(folder.resolve(".DS_Store")).hasContent("layout");
    assertThat(folder.resolve("plan.xlsx")).exists();
  }

  @Test
  void reportOfAnotherPlan_isRefusedUnlessForced() throws IOException {
    LightReport.write(Placing.in(folder), "lot (60)", "");
    Map<String, String> before = Snapshot.of(folder);

    assertThatThrownBy(() -> LightReport.write(Placing.in(folder), "lot [60]", ""))
        .hasMessage(
            folder
                + " holds the report of \"lot (60)\", and this is the report of \"lot [60]\""
                + ANOTHER
                + ", or replace it with --force"
                + NOTHING);
    assertThat(Snapshot.of(folder)).isEqualTo(before);

    LightReport.write(Placing.in(folder).forced(), "lot [60]", "");
    assertThat(FileList.read(folder).orElseThrow().plan()).isEqualTo("lot [60]");
  }

  @Test
  void edition_ofAnotherReader_isRefusedUnlessForced() throws IOException {
    LightReport.write(Placing.in(folder), "light", "");

    assertThatThrownBy(() -> LightReport.write(Placing.in(folder), "light", "bank"))
        .hasMessage(
            folder
                + " holds the report of \"light\", and this is the edition of \"light\" for a bank"
                + ANOTHER
                + ", or replace it with --force"
                + NOTHING);

    LightReport.write(Placing.in(folder).forced(), "light", "bank");
    assertThat(FileList.read(folder).orElseThrow().reader()).isEqualTo("bank");
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void edition_besideOtherFiles_isRefusedEvenByForce(boolean force) throws IOException {
    LightReport.write(Placing.in(folder), "light", "bank");
    LightReport.write(Placing.in(folder), "light", "bank");
    Files.writeString(folder.resolve("what I paid.txt"), "37.18 each");
    Files.writeString(folder.resolve("plan.xlsx"), "changed");
    Files.createDirectory(folder.resolve("tables/empty"));
    Map<String, String> before = Snapshot.of(folder);
    Placing placing = force ? Placing.in(folder).forced() : Placing.in(folder);

    assertThatThrownBy(() -> LightReport.write(placing, "light", "bank"))
        .hasMessage(
            folder
                + " holds what is not of this edition and would be passed on with it: plan.xlsx, "
                + Path.of("tables", "empty")
                + ", what I paid.txt; move it elsewhere, or name another folder with --out"
                + NOTHING);
    assertThat(Snapshot.of(folder)).isEqualTo(before);
  }

  @Test
  void names_thatHideOrTurnText_areShownPlain() throws IOException {
    LightReport.write(Placing.in(folder), "a\\u001b[31m\\u202eb", "");

    assertThatThrownBy(() -> LightReport.write(Placing.in(folder)))
        .hasMessageContaining("holds the report of \"a [31mb\", and this");
  }

  @Test
  void refusedFolder_leavesNothingBeside() throws IOException {
    Path file = Files.writeString(Files.createDirectory(folder).resolve("a.txt"), "a");

    assertThatThrownBy(() -> LightReport.write(Placing.in(folder)))
        .isInstanceOf(NotAReportFolder.class);

    assertThat(file).hasContent("a");
    try (Stream<Path> beside = Files.list(temporary)) {
      assertThat(beside).containsExactly(folder);
    }
  }
}
