package growingon.write.folder;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.google.common.hash.Hashing;
import growingon.report.model.Audience;
import growingon.report.model.Report;
import growingon.write.ReportFolder;
import growingon.write.SampleReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By figures.json the program knows the files that it wrote, and whether they are unchanged. */
class FileListTest {
  private static final Report REPORT =
      SampleReport.small().madeFor(Audience.BANK).madeOn(LocalDate.of(2026, 11, 3));

  @TempDir private Path temporary;
  private Path folder;

  @BeforeEach
  void written() throws IOException {
    folder = temporary.resolve("small");
    ReportFolder.write(REPORT, folder);
  }

  private Set<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).map(folder::relativize).collect(Collectors.toSet());
    }
  }

  private Set<Path> unchanged() throws IOException {
    return FileList.read(folder).map(list -> list.unchanged(folder).keySet()).orElse(Set.of());
  }

  private FileList list() throws IOException {
    return FileList.read(folder).orElseThrow();
  }

  @Test
  void report_asItWasWritten_isUnchangedInEveryFile() throws IOException {
    assertThat(unchanged()).isEqualTo(files()).contains(Path.of("figures.json"));
    assertThat(list().plan()).isEqualTo("small");
    assertThat(list().reader()).isEqualTo("bank");
  }

  @Test
  void digests_areThoseOfTheFiles() throws IOException {
    JsonNode figures = new ObjectMapper().readTree(folder.resolve("figures.json").toFile());
    Set<Path> named = new TreeSet<>();
    for (Map.Entry<String, JsonNode> each : figures.get("files").properties()) {
      named.add(Path.of(each.getKey()));
      assertThat(each.getValue().asText()).as(each.getKey()).isEqualTo(digest(each.getKey()));
    }
    assertThat(named).isEqualTo(files());
    assertThat(figures.get("made on").asText()).isEqualTo("2026-11-03");
    assertThat(figures.get("made by").asText()).isEqualTo("growing-on planner");
  }

  /** Of figures.json the digest of what it is without its own digest. */
  private String digest(String name) throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve(name));
    if (name.equals("figures.json")) {
      String text = new String(bytes, StandardCharsets.UTF_8);
      bytes =
          text.replaceFirst("(\"figures.json\" : )\"[0-9a-f]{64}\"", "$1\"\"")
              .getBytes(StandardCharsets.UTF_8);
    }
    return Hashing.sha256().hashBytes(bytes).toString();
  }

  @Test
  void everyFile_changedInOneByte_isKnownAsChanged() throws IOException {
    for (Path file : files()) {
      byte[] bytes = Files.readAllBytes(folder.resolve(file));
      byte[] changed = bytes.clone();
      changed[changed.length - 2] ^= 1;
      Files.write(folder.resolve(file), changed);

      assertThat(unchanged()).doesNotContain(file);
      Files.write(folder.resolve(file), bytes);
    }
    assertThat(unchanged()).isEqualTo(files());
  }

  @Test
  void figures_withTheHeadChanged_areKnownAsChanged() throws IOException {
    Path figures = folder.resolve("figures.json");
    Files.writeString(figures, Files.readString(figures).replace("Ninefold", "Tenfold"));

    assertThat(unchanged()).hasSize(files().size() - 1);
    assertThat(list().names(Path.of("figures.json"))).isTrue();
  }

  @Test
  void names_thatLeadOutOfTheFolder_areNobodys() throws IOException {
    Path outside = Files.writeString(temporary.resolve("outside.txt"), "mine");
    String digest = Hashing.sha256().hashString("mine", StandardCharsets.UTF_8).toString();
    Path figures = folder.resolve("figures.json");
    String entries =
        "\"../outside.txt\" : \"%s\", \"%s\" : \"%s\", \"\" : \"x\", \"charts/../plan.xlsx\" : \"x\","
            .formatted(digest, outside.toString().replace('\\', '/'), digest);
    Files.writeString(
        figures, Files.readString(figures).replace("\"files\" : {", "\"files\" : {" + entries));

    assertThat(unchanged()).hasSize(files().size() - 1);
    assertThat(unchanged()).allMatch(path -> !path.toString().contains("outside"));
  }
}
