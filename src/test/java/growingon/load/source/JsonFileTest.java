package growingon.load.source;

import static org.assertj.core.api.Assertions.assertThat;

import growingon.load.cell.Findings;
import growingon.load.settings.PlanShape;
import growingon.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON files as people and strangers write them. */
class JsonFileTest {
  @TempDir private Path folder;

  private List<String> problems(String text) throws IOException {
    return problems(text.getBytes(StandardCharsets.UTF_8));
  }

  private List<String> problems(byte[] bytes) throws IOException {
    Path file = folder.resolve("plan.json");
    Files.write(file, bytes);
    Findings findings = new Findings();
    JsonFile.read(file, PlanShape.class, findings);
    return findings.problems().stream().map(Problem::toString).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "\uFEFF{ }",
        "{ // a plan\n \"seasons\": 3, /* more */ }",
        "{\"take\": {}, \"name\": null}",
        "{\"$schema\": \"plan.schema.json\"}"
      })
  void json_withCommentsCommasAndMarks_isFine(String text) throws IOException {
    assertThat(problems(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{", "[1", "{\"a\" 1}", "{'name': 1}", "{\"seasons\": NaN}", "{\"seasons\": 05}"})
  void json_thatIsBroken_isReportedOnce(String text) throws IOException {
    assertThat(problems(text))
        .singleElement()
        .asString()
        .contains("this is no proper JSON")
        .doesNotContain("Exception");
  }

  @Test
  void json_nestedTenThousandDeep_isReported() throws IOException {
    assertThat(problems("{\"take\": " + "[".repeat(10_000)))
        .singleElement()
        .asString()
        .contains("this is no proper JSON");
  }

  @Test
  void json_notInUtf8_isReported() throws IOException {
    assertThat(problems("{\"name\": \"B\u00e4ume\"}".getBytes(StandardCharsets.ISO_8859_1)))
        .containsExactly("plan.json: this text file is not UTF-8; save it as UTF-8");
  }

  @Test
  void everyUnknownKey_isReportedWithItsLine() throws IOException {
    assertThat(problems("{\n \"season\": 3,\n \"Name\": \"x\",\n \"zzz\": 1\n}"))
        .containsExactly(
            "plan.json, line 2: this key is not known (season); the nearest known one is seasons",
            "plan.json, line 3: this key is not known (Name); the nearest known one is name",
            "plan.json, line 4: this key is not known (zzz); known here are $schema, name, nursery,"
                + " first month, seasons, take, hold, ordered, K, draws, seed, horizon value, horizon value % of list price and"
                + " report folder");
  }

  @Property(tries = 300)
  void anyText_isReadOrReported_neverACrash(@ForAll String text) throws IOException {
    Path file = Files.createTempFile("plan", ".json");
    try {
      Files.write(file, ("{\"name\": " + text).getBytes(StandardCharsets.UTF_8));
      Findings findings = new Findings();
      assertThat(JsonFile.read(file, PlanShape.class, findings).isPresent())
          .isEqualTo(!findings.hasErrors());
    } finally {
      Files.delete(file);
    }
  }
}
