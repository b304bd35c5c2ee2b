package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked for on the command line that cannot be done. */
class OptionsTest {
  @TempDir private Path temporary;

  @ParameterizedTest
  @CsvSource({
    "--draws, -1, '--draws is between 0 and 100000, not -1'",
    "--draws, 100001, '--draws is between 0 and 100000, not 100001'",
    "--draws, 1000000000, '--draws is between 0 and 100000, not 1000000000'",
    "--draws, 99999999999, 'Invalid value for option ''--draws'': ''99999999999'' is no whole number, or too large'",
    "--draws, many, 'Invalid value for option ''--draws'': ''many'' is no whole number, or too large'",
    "--seed, 1e3, 'Invalid value for option ''--seed'': ''1e3'' is no whole number, or too large'"
  })
  void numberThatAPlanCouldNotState_isWrongUsage(String option, String value, String sentence) {
    Path report = temporary.resolve("report");

    Ran ran = Ran.of("plan", "plans/as-it-stands.json", option, value, "--out", report.toString());

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err()).startsWith(sentence).doesNotContain("\tat ");
    assertThat(report).doesNotExist();
  }

  @Test
  void drawsOfAComparison_haveTheSameLimit() {
    Ran ran =
        Ran.of(
            "compare",
            "plans/as-it-stands.json",
            "plans/with-the-field-lot.json",
            "--draws",
            "100001");

    assertThat(ran.code()).isEqualTo(ExitCode.WRONG_USAGE);
    assertThat(ran.err()).startsWith("--draws is between 0 and 100000, not 100001");
  }

  @Test
  void planThatIsTooLargeForTheMemory_isOneSentence() throws Exception {
    Path report = temporary.resolve("report");

    Ran ran =
        Forked.run(
            List.of("-Xmx40m"),
            Map.of(),
            "plan",
            "plans/with-the-field-lot.json",
            "--draws",
            "100000",
            "--out",
            report.toString());

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err().lines())
        .hasSize(2)
        .first()
        .asString()
        .matches(
            "[A-Z][^:]*: this is too large for the \\d+ MB of memory that the program may use; plan"
                + " fewer lots, seasons or draws, or give it more, as in java -Xmx4g -jar"
                + " growing-on\\.jar\\.");
    assertThat(ran.err()).endsWith("Nothing was written." + System.lineSeparator());
    assertThat(report).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({"-1, key draws", "100001, key draws"})
  void drawsOfAPlan_haveTheSameLimit(int draws, String where) throws IOException {
    Path plan = temporary.resolve("plan.json");
    String nursery = Path.of("demo-data").toAbsolutePath().toString();
    Files.writeString(
        plan,
        "{\"nursery\": \"%s\", \"first month\": \"2026-11\", \"draws\": %d}"
            .formatted(nursery, draws));

    Ran ran = Ran.of("check", plan.toString());

    assertThat(ran.code()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(ran.err())
        .contains(
            "error: plan.json, line 1, "
                + where
                + ": this must be between 0 and 100000 ("
                + draws
                + "); correct it");
  }
}
