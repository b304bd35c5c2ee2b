package growingon.write;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.report.model.Audience;
import growingon.report.model.Report;
import growingon.report.text.Phrases;
import growingon.write.folder.Placing;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that can be told apart in a mail. */
class FileNamesTest {
  private static final Report REPORT = SampleReport.small().madeOn(LocalDate.of(2026, 11, 3));

  @TempDir private Path temporary;

  @Test
  void datedNames_sayPlanReaderAndDay() {
    assertThat(FileNames.dated(REPORT))
        .isEqualTo(
            new FileNames(
                "small 2026-11-03.xlsx", "small 2026-11-03 details.xlsx", "small 2026-11-03.html"));
    assertThat(FileNames.dated(REPORT.madeFor(Audience.BANK)))
        .isEqualTo(
            new FileNames(
                "small bank 2026-11-03.xlsx",
                "small bank 2026-11-03 details.xlsx",
                "small bank 2026-11-03.html"));
  }

  @Test
  void datedNames_ofALongPlan_areShortEnoughForAFile() {
    Report report = Report.of("𠀋/".repeat(50), "", Phrases.PLAIN, "").build();

    String name = FileNames.dated(report.madeFor(Audience.CUSTOMER).madeOn(LocalDate.MIN)).page();

    assertThat(name).startsWith("𠀋_𠀋_").doesNotContain("/");
    assertThat(name.getBytes(StandardCharsets.UTF_8)).hasSizeLessThan(255);
  }

  @Test
  void datedReport_madeOnALaterDay_replacesTheEarlier() throws IOException {
    Path folder = temporary.resolve("small");
    Placing dated = new Placing(folder, false, true, List.of(), stage -> {});
    ReportFolder.write(REPORT, dated);

    List<String> notices = ReportFolder.write(REPORT.madeOn(LocalDate.of(2026, 12, 24)), dated);

    assertThat(notices).isEmpty();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(each -> each.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "charts",
              "tables",
              "figures.json",
              "problems.txt",
              "small 2026-12-24.xlsx",
              "small 2026-12-24.html");
    }
  }
}
