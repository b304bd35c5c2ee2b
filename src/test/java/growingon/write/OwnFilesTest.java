package growingon.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.write.folder.NotPutBack;
import growingon.write.folder.Placing;
import growingon.write.folder.Stage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a grower has put into a report folder, or has changed there, is never lost. */
class OwnFilesTest {
  @TempDir private Path temporary;
  private Path reports;
  private Path folder;

  @BeforeEach
  void written() throws IOException {
    reports = Files.createDirectory(temporary.resolve("reports"));
    folder = reports.resolve("light");
    LightReport.write(Placing.in(folder));
  }

  private List<String> again(boolean force) throws IOException {
    Placing placing = Placing.in(folder);
    return LightReport.write(force ? placing.forced() : placing);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void ownThings_writtenOverAndOver_stayAsTheyAre(boolean force) throws IOException {
    Map<String, String> report = Snapshot.of(folder);
    Map<String, String> own = OwnThings.putInto(folder, temporary);
    assertThat(own).hasSizeGreaterThan(20);

    for (int run = 0; run < 3; run++) {
      assertThat(again(force)).isEmpty();

      Map<String, String> both = new TreeMap<>(report);
      both.putAll(own);
      assertThat(Snapshot.of(folder)).isEqualTo(both);
    }
    assertThat(temporary.resolve("photos/tree.jpg")).hasContent("a tree");
    assertThat(names(reports)).containsExactly("light");
  }

  @Test
  void changedFiles_arePutAside_andTheTerminalSaysWhere() throws IOException {
    Map<String, String> before = Snapshot.of(folder);
    Files.writeString(folder.resolve("plan.xlsx"), "with counts", StandardOpenOption.APPEND);
    Files.writeString(folder.resolve("charts/cash.png"), "painted over");
    Map<String, String> changed =
        Snapshot.of(folder, List.of("plan.xlsx", "charts/cash.png")::contains);

    List<String> notices = again(false);

    assertThat(notices)
        .containsExactly(
            "Put aside, because changed since the last run or in the way of the new report: "
                + folder.resolve("put aside").resolve("charts").resolve("cash.png")
                + ", "
                + folder.resolve("put aside").resolve("plan.xlsx")
                + ".");
    assertThat(Snapshot.of(folder.resolve("put aside"), name -> !name.equals("charts")))
        .isEqualTo(changed);
    assertThat(Snapshot.of(folder, before::containsKey)).isEqualTo(before);
  }

  @Test
  void fileChangedAgain_isPutAsideBesideTheFirst() throws IOException {
    for (String counts : List.of("first counts", "second counts")) {
      Files.writeString(folder.resolve("plan.xlsx"), counts);
      again(false);
    }

    assertThat(folder.resolve("put aside/plan.xlsx")).hasContent("first counts");
    assertThat(folder.resolve("put aside 2/plan.xlsx")).hasContent("second counts");
    assertThat(again(false)).isEmpty();
  }

  @Test
  void figures_changedByHand_arePutAsideTheRestIsReplaced() throws IOException {
    Path figures = folder.resolve("figures.json");
    String changed = Files.readString(figures).replace("\"cash\"", "\"money\"");
    assertThat(changed).isNotEqualTo(Files.readString(figures));
    Files.writeString(figures, changed);

    again(false);

    assertThat(names(folder.resolve("put aside"))).containsExactly("figures.json");
    assertThat(folder.resolve("put aside/figures.json")).hasContent(changed);
  }

  @Test
  void ownFile_thatANewReportNeedsTheNameOf_isPutAside() throws IOException {
    Path other = Files.createDirectory(reports.resolve("other"));
    Files.writeString(other.resolve("plan.xlsx"), "an input of another nursery");
    Files.writeString(other.resolve("charts"), "a file, no folder");

    List<String> notices = LightReport.write(Placing.in(other).forced());

    assertThat(notices).hasSize(1);
    assertThat(other.resolve("put aside/plan.xlsx")).hasContent("an input of another nursery");
    assertThat(other.resolve("put aside/charts")).hasContent("a file, no folder");
    assertThat(other.resolve("charts/cash.png")).exists();
  }

  @Test
  void chartsBehindALink_areNotDeletedThroughIt() throws IOException {
    Path moved = Files.move(folder.resolve("charts"), temporary.resolve("charts"));
    Map<String, String> charts = Snapshot.of(moved);
    Files.createSymbolicLink(folder.resolve("charts"), moved);

    again(false);

    assertThat(Snapshot.of(moved)).isEqualTo(charts).isNotEmpty();
    assertThat(Files.readSymbolicLink(folder.resolve("put aside/charts"))).isEqualTo(moved);
    assertThat(folder.resolve("charts/cash.png")).exists();
  }

  @Test
  void reportThatListsNoFiles_asOlderVersionsWrote_isPutAsideWhole() throws IOException {
    Path figures = folder.resolve("figures.json");
    String text = Files.readString(figures);
    Files.writeString(figures, text.replaceFirst("\"files\" : \\{[^}]*},\\s*", ""));
    assertThat(Files.readString(figures)).doesNotContain("\"files\"");
    Files.writeString(folder.resolve("my notes.txt"), "ask about the lime");
    Map<String, String> before = Snapshot.of(folder, name -> !name.equals("my notes.txt"));

    again(false);

    assertThat(Snapshot.of(folder.resolve("put aside"))).isEqualTo(before);
    assertThat(folder.resolve("my notes.txt")).hasContent("ask about the lime");
    assertThat(folder.resolve("figures.json")).hasContent(text);
  }

  @Test
  void reportFolder_thatIsALink_staysOne() throws IOException {
    Path link = Files.createSymbolicLink(temporary.resolve("shared"), folder);
    Map<String, String> own = OwnThings.putInto(folder, temporary);

    LightReport.write(Placing.in(link));

    assertThat(Files.readSymbolicLink(link)).isEqualTo(folder);
    assertThat(Snapshot.of(folder)).containsAllEntriesOf(own);
  }

  @Test
  void filesOfTheUser_namedLikeThoseOfTheProgram_stay() throws IOException {
    for (String name : List.of(".light.new", ".light.old", ".light.swap", ".light.swap 2")) {
      Files.createDirectories(reports.resolve(name).resolve("new"));
      Files.writeString(reports.resolve(name).resolve("old"), "mine");
    }
    Files.writeString(reports.resolve(".light.lock"), "mine");
    Files.createDirectories(reports.resolve(".gone.swap/old"));
    Map<String, String> before = Snapshot.of(reports, name -> name.startsWith("."));

    again(false);
    assertThat(ReportFolder.putBack(reports)).isEmpty();

    assertThat(Snapshot.of(reports, name -> name.startsWith("."))).isEqualTo(before);
    assertThat(reports.resolve("gone")).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "WRITTEN, false", "LAID_ASIDE, false", "CARRIED_OVER, false", "IN_PLACE, false",
    "CLEARED, false", "WRITTEN, true", "LAID_ASIDE, true", "CARRIED_OVER, true",
    "IN_PLACE, true", "CLEARED, true"
  })
  void programKilled_atAnyStage_losesNothing(String stage, boolean force) throws Exception {
    Map<String, String> own = OwnThings.putInto(folder, temporary);
    Files.writeString(folder.resolve("plan.xlsx"), "with counts");
    Map<String, String> before = Snapshot.of(folder);

    int code =
        KilledWriting.run(
            temporary, KilledWriting.class, folder.toString(), stage, String.valueOf(force));
    assertThat(code).isEqualTo(KilledWriting.KILLED);
    boolean between = List.of("LAID_ASIDE", "CARRIED_OVER").contains(stage);
    assertThat(Files.exists(folder)).isEqualTo(!between);
    List<String> said = ReportFolder.putBack(reports);

    boolean done = List.of("IN_PLACE", "CLEARED").contains(stage);
    assertThat(said)
        .isEqualTo(
            between
                ? List.of(
                    "A run was stopped while it wrote %s: what was there before is back."
                        .formatted(folder))
                : List.of());
    if (done) {
      assertThat(folder.resolve("put aside/plan.xlsx")).hasContent("with counts");
      assertThat(Snapshot.of(folder)).containsAllEntriesOf(own);
    } else {
      assertThat(Snapshot.of(folder)).isEqualTo(before);
    }
    assertThat(names(reports)).containsExactly("light");

    again(force);

    assertThat(folder.resolve("put aside/plan.xlsx")).hasContent("with counts");
    assertThat(Snapshot.of(folder)).containsAllEntriesOf(own);
    assertThat(names(reports)).containsExactly("light");
  }

  @Test
  void runAfterOneThatWasKilledBetweenTheRenames_beginsFromTheReportBefore() throws Exception {
    Map<String, String> own = OwnThings.putInto(folder, temporary);
    KilledWriting.run(temporary, KilledWriting.class, folder.toString(), "CARRIED_OVER", "false");
    assertThat(folder).doesNotExist();

    again(false);

    assertThat(Snapshot.of(folder)).containsAllEntriesOf(own);
    assertThat(names(reports)).containsExactly("light");
  }

  @Test
  void reportMadeAnew_afterARunWasKilled_staysAndTheOneBeforeIsPutBesideIt() throws Exception {
    Map<String, String> own = OwnThings.putInto(folder, temporary);
    Map<String, String> before = Snapshot.of(folder);
    KilledWriting.run(temporary, KilledWriting.class, folder.toString(), "CARRIED_OVER", "false");
    Files.createDirectory(folder);
    Files.writeString(folder.resolve("from the backup.txt"), "old");

    assertThat(ReportFolder.putBack(reports))
        .containsExactly(
            "A run was stopped while it wrote %s: what was there before is in %s, as something else is there now."
                .formatted(folder, folder.toRealPath().resolveSibling("light (put back)")));

    assertThat(names(folder)).containsExactly("from the backup.txt");
    assertThat(Snapshot.of(reports.resolve("light (put back)"))).isEqualTo(before);
    assertThat(own).isNotEmpty();
    assertThat(names(reports)).containsExactly("light", "light (put back)");
  }

  @ParameterizedTest
  @EnumSource(
      value = Stage.class,
      names = {"WRITTEN", "LAID_ASIDE", "CARRIED_OVER"})
  void faultBeforeTheSecondRename_leavesAllAsItWas(Stage at) throws IOException {
    OwnThings.putInto(folder, temporary);
    Files.writeString(folder.resolve("plan.xlsx"), "with counts");
    Map<String, String> before = Snapshot.of(folder);
    Placing failing =
        new Placing(
            folder,
            false,
            false,
            List.of(),
            stage -> {
              if (stage == at) {
                throw new IllegalStateException("out of order");
              }
            });

    assertThatThrownBy(() -> LightReport.write(failing)).hasMessage("out of order");

    assertThat(Snapshot.of(folder)).isEqualTo(before);
    assertThat(names(reports)).containsExactly("light");
  }

  @Test
  void folderMadeAnew_whileARunFails_isToldWithThePlaceOfTheOneBefore() throws IOException {
    Map<String, String> before = Snapshot.of(folder);
    Path beside = folder.toRealPath().resolveSibling("light (put back)");
    Placing disturbed =
        new Placing(
            folder,
            false,
            false,
            List.of(),
            stage -> {
              if (stage == Stage.LAID_ASIDE) {
                disturb(folder.resolve("of somebody else.txt"));
              }
            });

    assertThatThrownBy(() -> LightReport.write(disturbed))
        .isInstanceOf(NotPutBack.class)
        .hasMessageStartingWith(folder + " could not be written (")
        .hasMessageEndingWith("What was there before is whole in " + beside + ".");

    assertThat(Snapshot.of(beside)).isEqualTo(before);
    assertThat(names(folder)).containsExactly("of somebody else.txt");
    assertThat(names(reports)).containsExactly("light", "light (put back)");
  }

  @Test
  void fileThatComesWhileARunSwaps_goesOverToo() throws IOException {
    Path note = folder.resolve("charts/just now.txt");
    Path swap = folder.toRealPath().resolveSibling(".light.swap");
    Placing disturbed =
        new Placing(
            folder,
            false,
            false,
            List.of(),
            stage -> {
              if (stage == Stage.LAID_ASIDE) {
                disturb(swap.resolve("old/charts/just now.txt"));
                disturb(swap.resolve("old/plan.xlsx"));
              }
            });

    LightReport.write(disturbed);

    assertThat(note).hasContent("held open");
    assertThat(folder.resolve("put aside/plan.xlsx")).hasContent("held open");
    assertThat(folder.resolve("plan.xlsx")).hasContent("a workbook");
    assertThat(names(reports)).containsExactly("light");
  }

  /** A file that is in the way of deleting stands in for one that another program holds open. */
  @Test
  void partOfTheReportBefore_thatCannotBeDeleted_isANoticeAndNoHindrance() throws IOException {
    Path swap = folder.toRealPath().resolveSibling(".light.swap");
    Placing disturbed =
        new Placing(
            folder,
            false,
            false,
            List.of(),
            stage -> {
              if (stage == Stage.IN_PLACE) {
                disturb(swap.resolve("old/charts/held open.tmp"));
              }
            });

    List<String> notices = LightReport.write(disturbed);

    assertThat(notices)
        .containsExactly(
            "Part of the report before could not be deleted: it is in "
                + swap
                + ", in the way of nothing. Delete it when no other program uses it.");
    Map<String, String> report = Snapshot.of(folder);
    assertThat(again(false)).isEmpty();
    assertThat(Snapshot.of(folder)).isEqualTo(report);
    assertThat(ReportFolder.putBack(reports)).isEmpty();
    assertThat(names(reports)).containsExactly(".light.swap", "light");
    Path away = Files.move(folder, temporary.resolve("away"));
    assertThat(ReportFolder.putBack(reports)).isEmpty();
    assertThat(names(reports)).containsExactly(".light.swap");
    Files.move(away, folder);

    Files.delete(swap.resolve("old/charts/held open.tmp"));
    again(false);
    assertThat(names(reports)).containsExactly("light");
  }

  private static void disturb(Path file) {
    try {
      Files.createDirectories(file.getParent());
      Files.writeString(file, "held open");
    } catch (IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
  }
}
