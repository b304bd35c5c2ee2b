package growingon.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.report.model.Report;
import growingon.report.model.Sheet;
import growingon.report.model.Table;
import growingon.write.folder.AnotherRun;
import growingon.write.folder.FolderGuard;
import growingon.write.folder.FolderSwap;
import growingon.write.folder.NotAReportFolder;
import growingon.write.folder.Placing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFolderTest {
  @TempDir Path temporary;

  @Test
  void report_written_hasEveryFile() throws IOException {
    Path folder = temporary.resolve("deep/down/plan");
    ReportFolder.write(SampleReport.report(), folder);
    assertThat(files(folder).keySet())
        .contains(
            "plan.xlsx",
            "figures.json",
            "problems.txt",
            "report.html",
            "charts/bench-space.png",
            "charts/cash.png",
            "tables/cash.csv",
            "tables/monthly.csv");
    assertThat(files(folder)).hasSize(4 + 6 + 10);
    assertThat(names(folder.getParent())).containsExactly("plan");
  }

  @Test
  void sameReport_writtenTwice_givesTheSameBytes() throws IOException {
    Path one = temporary.resolve("one");
    Path two = temporary.resolve("two");
    TimeZone before = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      ReportFolder.write(SampleReport.report(), one);
      TimeZone.setDefault(TimeZone.getTimeZone("America/Lima"));
      ReportFolder.write(SampleReport.report(), two);
    } finally {
      TimeZone.setDefault(before);
    }
    Map<String, byte[]> first = files(one);
    Map<String, byte[]> second = files(two);
    assertThat(first.keySet()).isEqualTo(second.keySet());
    first.forEach((name, bytes) -> assertThat(second.get(name)).as(name).isEqualTo(bytes));
  }

  @Test
  void report_writtenAgain_replacesAllThatItWrote() throws IOException {
    Path folder = temporary.resolve("plan");
    ReportFolder.write(SampleReport.report(), folder);
    assertThat(folder.resolve("charts/cash.png")).exists();

    List<String> notices = ReportFolder.write(SampleReport.small(), Placing.in(folder).forced());

    assertThat(notices).isEmpty();
    Path alone = temporary.resolve("alone");
    ReportFolder.write(SampleReport.small(), alone);
    assertSame(files(alone), files(folder));
    assertThat(names(temporary)).containsExactly("alone", "plan");
  }

  @Test
  void emptyFolder_inTheWay_isFilled() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("plan"));
    ReportFolder.write(SampleReport.small(), folder);
    assertThat(folder.resolve("plan.xlsx")).exists();
  }

  @Test
  void folderOfSomethingElse_inTheWay_isRefusedAndLeftAlone() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("plan"));
    Files.writeString(folder.resolve("stock.csv"), "lot,quantity");
    Files.writeString(folder.resolve("figures.json"), "{\"made by\": \"someone else\"}");

    assertThatThrownBy(() -> ReportFolder.write(SampleReport.small(), folder))
        .isInstanceOf(NotAReportFolder.class)
        .hasMessage(
            folder
                + " is no report of this program and holds figures.json, stock.csv; name another"
                + " folder with --out, or have the report put beside them with --force. Nothing was"
                + " written.");

    assertThat(names(folder)).containsExactly("figures.json", "stock.csv");
    assertThat(names(temporary)).containsExactly("plan");
  }

  @Test
  void folderOfSomethingElse_forced_keepsItsFiles() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("plan"));
    Files.createDirectory(folder.resolve("inputs"));
    Files.writeString(folder.resolve("inputs/stock.csv"), "lot,quantity");

    ReportFolder.write(SampleReport.small(), Placing.in(folder).forced());

    assertThat(folder.resolve("plan.xlsx")).exists();
    assertThat(folder.resolve("inputs/stock.csv")).hasContent("lot,quantity");
  }

  @Test
  void step_failingHalfWay_leavesTheLastReport() throws IOException {
    Path folder = temporary.resolve("plan");
    ReportFolder.write(SampleReport.small(), folder);
    Map<String, byte[]> before = files(folder);

    assertThatThrownBy(
            () ->
                swap(folder)
                    .replaceWith(
                        fresh -> {
                          Files.writeString(fresh.resolve("plan.xlsx"), "half");
                          throw new IOException("disk full");
                        }))
        .isInstanceOf(IOException.class)
        .hasMessage("disk full");

    assertSame(before, files(folder));
    assertThat(names(temporary)).containsExactly("plan");
  }

  @Test
  void report_thatBreaksARule_leavesTheLastReport() throws IOException {
    Path folder = temporary.resolve("plan");
    ReportFolder.write(SampleReport.small(), folder);
    Map<String, byte[]> before = files(folder);
    Report good = SampleReport.small();
    Report bad =
        Report.of(good.plan(), good.nursery(), good.say(), good.firstMonth())
            .sheets(List.of(new Sheet("Summary", List.of(), List.of(), List.of("no-such"), true)))
            .charts(good.charts())
            .build();

    assertThatThrownBy(() -> ReportFolder.write(bad, folder))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("sheet Summary names a chart that is not there: [no-such]");

    assertSame(before, files(folder));
    assertThat(names(temporary)).containsExactly("plan");
  }

  @Test
  void tables_differentOnesOfOneName_areAFaultOfTheProgram() {
    Report small = SampleReport.small();
    Report twice =
        Report.of(small.plan(), small.nursery(), small.say(), small.firstMonth())
            .sheets(small.sheets())
            .charts(small.charts())
            .extra(List.of(new Table("to-order", "Another", List.of(), List.of(), List.of())))
            .build();
    assertThatThrownBy(() -> ReportFolder.write(twice, temporary.resolve("plan")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("two tables have one name: to-order");
  }

  @Test
  void thread_interruptedWhileWriting_leavesTheLastReport() throws IOException {
    Path folder = temporary.resolve("plan");
    ReportFolder.write(SampleReport.small(), folder);
    Map<String, byte[]> before = files(folder);
    Thread.currentThread().interrupt();
    try {
      assertThatThrownBy(() -> ReportFolder.write(SampleReport.small(), folder))
          .isInstanceOf(IOException.class);
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
    assertSame(before, files(folder));
    assertThat(names(temporary)).containsExactly("plan");
  }

  @Test
  void run_whileAnotherWritesTheSame_isRefused() throws IOException {
    Path folder = temporary.resolve("plan");
    swap(folder)
        .replaceWith(
            fresh -> {
              Files.writeString(fresh.resolve("plan.xlsx"), "of the first");
              assertThatThrownBy(() -> ReportFolder.write(SampleReport.small(), folder))
                  .isInstanceOf(AnotherRun.class)
                  .hasMessage(
                      "Another run is writing " + folder + "; wait for it. Nothing was written.");
            });
    assertThat(folder.resolve("plan.xlsx")).hasContent("of the first");
    assertThat(names(temporary)).containsExactly("plan");
  }

  private static FolderSwap swap(Path folder) throws IOException {
    Placing placing = Placing.in(folder);
    return new FolderSwap(placing, new FolderGuard(placing, SampleReport.small().plan(), ""));
  }

  private static void assertSame(Map<String, byte[]> before, Map<String, byte[]> after) {
    assertThat(after.keySet()).isEqualTo(before.keySet());
    before.forEach((name, bytes) -> assertThat(after.get(name)).as(name).isEqualTo(bytes));
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    }
    return files;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> paths = Files.list(folder)) {
      return paths.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }
}
