package growingon.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The program on computers that are set to languages with digits, letters or calendars of their
 * own: the same bytes as with none.
 */
class LocaleTest {
  private static final String[] COMMANDS = {
    "plan,plans/two-seasons-on.json,--draws,5",
    "review,plans/two-seasons-on.json",
    "compare,plans/two-seasons-on.json,plans/less.json,--draws,5",
    "plan,question"
  };

  @TempDir private static Path temporary;
  private static Map<String, String> expected;

  @BeforeAll
  static void runWithoutALanguage() throws Exception {
    expected = run("root", List.of("-Duser.language=", "-Duser.country="), "C");
  }

  /** Runs the four commands in a folder of their own; gives every file, and what was printed. */
  private static Map<String, String> run(String name, List<String> machine, String language)
      throws IOException, InterruptedException {
    Path folder = layOut(temporary.resolve(name));
    Ran ran =
        Forked.run(
            folder, InTurn.class, machine, Map.of("LANG", language, "LC_ALL", language), COMMANDS);
    assertThat(ran.out()).as(ran.err()).endsWith("0,0,0,0" + System.lineSeparator());
    Map<String, String> files = new TreeMap<>();
    files.put("printed", ran.out() + ran.err());
    try (Stream<Path> all = Files.walk(folder.resolve("reports"))) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), bytes(file));
      }
    }
    return files;
  }

  private static String bytes(Path file) throws IOException {
    return new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1);
  }

  private static Path layOut(Path folder) throws IOException {
    Path nursery = Files.createDirectories(folder.resolve("demo-data/two-seasons-on"));
    Path plans = Files.createDirectories(folder.resolve("plans"));
    copyAll(Path.of("demo-data/two-seasons-on"), nursery);
    String plan =
        Files.readString(Path.of("plans/two-seasons-on.json"))
            .replace("\"seasons\": 6", "\"seasons\": 3");
    Files.writeString(plans.resolve("two-seasons-on.json"), plan);
    Files.writeString(
        plans.resolve("less.json"),
        plan.replace("\"Polder tridents\": 60", "\"Polder tridents\": 40")
            .replace("two seasons on", "ISTANBUL with less"));
    Path question = Files.createDirectories(folder.resolve("question"));
    Files.writeString(
        question.resolve("quick.csv"),
        """
        line;fill in
        SPECIES;Field maple
        how many;1200
        price each;38,50
        carriage for all;1.240,00
        arrival month;FEB 2027
        trunk mm or girth cm;12-14 CM
        FIRSTS and seconds in ten;6 and 2
        POT LITRES;18
        sold at trunk mm;55
        selling price each;190
        """);
    return folder;
  }

  private static void copyAll(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"ar, EG, ar_EG.UTF-8", "tr, TR, tr_TR.UTF-8", "th, TH, th_TH.UTF-8", "fa, IR, fa_IR"})
  void program_inAnyLanguage_writesTheSameBytes(String language, String country, String variable)
      throws Exception {
    List<String> machine = List.of("-Duser.language=" + language, "-Duser.country=" + country);

    Map<String, String> files = run(language, machine, variable);

    assertThat(files.keySet()).isEqualTo(expected.keySet()).hasSizeGreaterThan(100);
    files.forEach((file, bytes) -> assertThat(bytes.equals(expected.get(file))).as(file).isTrue());
  }

  @Test
  void outputs_areThereOfAllFourCommands() {
    assertThat(expected)
        .containsKeys(
            "reports/two seasons on/plan.xlsx",
            "reports/two seasons on-review/plan.xlsx",
            "reports/question quick/plan.xlsx",
            "printed");
    assertThat(expected.keySet()).anyMatch(file -> file.contains(" against "));
  }
}
