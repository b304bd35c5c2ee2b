package growingon.write.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import growingon.load.FrozenReader;
import growingon.problem.Loaded;
import growingon.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record frozen in a file and read back. */
class FrozenFileTest {
  /** A record that holds everything that can be frozen. */
  record Sheaf(
      String name,
      int count,
      long bigSeed,
      double share,
      boolean isNew,
      Stalk first,
      List<Stalk> stalks,
      List<Double> byMonth,
      Map<String, List<Double>> byGrade) {
    Sheaf {
      if (count < 0) {
        throw new IllegalArgumentException("less than none");
      }
    }
  }

  /** A record in a record. */
  record Stalk(String grade, double lengthMm) {}

  @TempDir private Path folder;

  private static Sheaf sheaf(String name, int count, double share, List<Double> byMonth) {
    Map<String, List<Double>> byGrade = new LinkedHashMap<>();
    byGrade.put("", List.of(1.5));
    byGrade.put("stout", byMonth);
    Stalk stalk = new Stalk("stout", 0.1);
    return new Sheaf(
        name, count, 1L << 40, share, true, stalk, List.of(stalk, stalk), byMonth, byGrade);
  }

  @Property(tries = 200)
  void record_readBack_isTheSame(
      @ForAll int count, @ForAll double share, @ForAll List<Double> byMonth) throws IOException {
    Sheaf sheaf = sheaf("oats \"and\" rye", Math.abs(count / 2), share, byMonth);
    Path file = Files.createTempFile("sheaf", ".json");
    Files.write(file, FrozenFile.bytes(sheaf));

    Loaded<Sheaf> read = FrozenReader.read(file, Sheaf.class);

    Files.delete(file);
    assertThat(read.problems()).isEmpty();
    assertThat(FrozenFile.bytes(read.value().orElseThrow())).isEqualTo(FrozenFile.bytes(sheaf));
  }

  @Test
  void numberThatIsNone_comesBackAsNone() throws IOException {
    Path file = folder.resolve("sheaf.json");
    FrozenFile.write(sheaf("oats", 1, Double.NaN, List.of(Double.NaN, 2.0)), file, false);

    Sheaf read = FrozenReader.read(file, Sheaf.class).value().orElseThrow();

    assertThat(read.share()).isNaN();
    assertThat(read.byMonth()).containsExactly(Double.NaN, 2.0);
  }

  @Test
  void keys_areTheWordsOfTheNames() {
    assertThat(text(sheaf("oats", 2, 0.25, List.of(1.0))))
        .contains("\"big seed\" : 1099511627776,")
        .contains("\"by grade\" : {")
        .contains("{ \"grade\" : \"stout\", \"length mm\" : 0.1 }");
  }

  private static String text(Record frozen) {
    try {
      return new String(FrozenFile.bytes(frozen), StandardCharsets.UTF_8);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @Test
  void file_thatSaysOtherwise_isReplacedOnlyByForce() throws IOException {
    Path file = folder.resolve("kept").resolve("sheaf.json");
    Sheaf before = sheaf("oats", 1, 0.5, List.of());
    Sheaf after = sheaf("rye", 1, 0.5, List.of());
    FrozenFile.write(before, file, false);
    FrozenFile.write(before, file, false);

    assertThatThrownBy(() -> FrozenFile.write(after, file, false))
        .isInstanceOf(AlreadyFrozen.class)
        .hasMessage(
            file
                + " is there already and says otherwise. It was left as it is; use --force to"
                + " replace it.");
    assertThat(Files.readAllBytes(file)).isEqualTo(FrozenFile.bytes(before));

    FrozenFile.write(after, file, true);
    assertThat(Files.readAllBytes(file)).isEqualTo(FrozenFile.bytes(after));
    try (Stream<Path> left = Files.list(file.getParent())) {
      assertThat(left).containsExactly(file);
    }
  }

  private List<String> problems(String from, String to) throws IOException {
    Path file = folder.resolve("sheaf.json");
    String text = text(sheaf("oats", 1, 0.5, List.of(1.0)));
    assertThat(text).contains(from);
    Files.writeString(file, text.replace(from, to));
    return FrozenReader.read(file, Sheaf.class).problems().stream().map(Problem::toString).toList();
  }

  @Test
  void unknownKey_isReportedWithItsLine() throws IOException {
    assertThat(problems("\"share\"", "\"shore\""))
        .containsExactly(
            "sheaf.json, line 5: this key is not known (shore); the nearest known one is share");
  }

  @Test
  void unknownKey_withinAList_isReported() throws IOException {
    assertThat(problems("[\n    { \"grade\"", "[\n    { \"grate\""))
        .containsExactly(
            "sheaf.json, line 12: this key is not known (grate); the nearest known one is grade");
  }

  @Test
  void missingKey_isReported() throws IOException {
    assertThat(problems("  \"share\" : 0.5,\n", ""))
        .containsExactly(
            "sheaf.json, line 1: the key share is missing; bring the file back as it was, or keep"
                + " the plan again with plan --keep");
  }

  @Test
  void wordForANumber_isReported() throws IOException {
    assertThat(problems("\"share\" : 0.5", "\"share\" : \"half\""))
        .containsExactly(
            "sheaf.json, line 5, key share: this is not what was written here (half); bring the"
                + " file back as it was, or keep the plan again with plan --keep");
  }

  @Test
  void brokenNumber_forAWholeOne_isReported() throws IOException {
    assertThat(problems("\"count\" : 1", "\"count\" : 1.5"))
        .containsExactly(
            "sheaf.json, line 3, key count: this is not what was written here (1.5); bring the file"
                + " back as it was, or keep the plan again with plan --keep");
  }

  @Test
  void valueThatTheRecordRefuses_isReported() throws IOException {
    assertThat(problems("\"count\" : 1", "\"count\" : -1"))
        .containsExactly(
            "sheaf.json, line 1: this is not what was written here (less than none); bring the file"
                + " back as it was, or keep the plan again with plan --keep");
  }
}
